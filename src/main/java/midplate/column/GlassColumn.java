package midplate.column;

import midplate.catalogue.FlashColumns;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * A glass column packed by hand.
 *
 * @param diameterMm inner diameter [mm], 10 to 50 as in the published table
 * @param bedMm height of the silica [mm], 100 to 250; the published one is {@value #USUAL_BED_MM}
 * @see "Still1978"
 */
public record GlassColumn(double diameterMm, double bedMm) implements Bed {
    /** The published height of the bed [mm]. */
    public static final double USUAL_BED_MM = 150;

    /** Mass of dry silica in a volume of bed [g/ml]; from memory, confidence high. */
    public static final double SILICA_G_PER_ML = 0.5;

    private static final double LOWEST_MM = 100;
    private static final double HIGHEST_MM = 250;
    private static final double MM3_PER_ML = 1000;

    /** Refuses a column to which the published table does not reach. */
    public GlassColumn {
        FlashColumns table = FlashColumns.builtIn();
        if (!(diameterMm >= table.narrowest() && diameterMm <= table.widest())) {
            throw new Refusal(
                    "column.bed.diameterMm",
                    Message.of("column.diameter-out-of-range"),
                    Double.toString(diameterMm),
                    Allowed.mm(Allowed.closed(table.narrowest(), table.widest())),
                    Message.of("column.todo-diameter"));
        }
        if (!(bedMm >= LOWEST_MM && bedMm <= HIGHEST_MM)) {
            throw new Refusal(
                    "column.bed.bedMm",
                    Message.of("column.height-out-of-range"),
                    Double.toString(bedMm),
                    Allowed.mm(Allowed.closed(LOWEST_MM, HIGHEST_MM)),
                    Message.of("column.todo-height"));
        }
    }

    /** A column of that diameter [mm] with the published height of bed. */
    public static GlassColumn of(double diameterMm) {
        return new GlassColumn(diameterMm, USUAL_BED_MM);
    }

    /** Cross-section [mm²]. */
    double areaMm2() {
        return Math.PI / 4 * diameterMm * diameterMm;
    }

    /** Volume of the whole bed [ml]. */
    double volumeMl() {
        return areaMm2() * bedMm / MM3_PER_ML;
    }

    @Override
    public double silicaGrams() {
        return SILICA_G_PER_ML * volumeMl();
    }

    @Override
    public BedBasis basis() {
        return BedBasis.PUBLISHED;
    }
}
