package midplate.column;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import midplate.catalogue.FlashColumn;
import midplate.catalogue.FlashColumns;

/**
 * How much sample a bed carries, by how far the target lies from its nearest neighbour on a plate.
 *
 * <p>Glass columns by the published table: its rows are load = 1.00 mg/mm²·d² at ΔRf 0.2 and more, 0.40 mg/mm²·d² at 0.1 and more,
 * in a bed 150 mm high; a higher bed carries in proportion. Between the two distances the load goes straight from one to the other
 * (own). Cartridges carry the same share of their silica: 1.00/58.9 = 1.7 % and
 * 0.68 % of it at 0.5 g/ml (derived, not printed). Closer together than 0.1 the table says nothing: there the load is taken to
 * fall in proportion to ΔRf, down to 0.03, less than which plates do not tell (own).
 *
 * @see "Still1978"
 */
final class BedLoad {
    /** From here on the table gives the greater load [1 in Rf]. */
    static final double WIDE = 0.2;
    /** From here on the lesser [1 in Rf]. */
    static final double NARROW = 0.1;

    /** Plates cannot tell less apart: a smaller distance asks for no larger bed [1 in Rf]. */
    private static final double LEAST = 0.03;

    private static final double WIDE_MG_PER_MM2 = 1.00;
    private static final double NARROW_MG_PER_MM2 = 0.40;
    private static final double MM3_PER_ML = 1000;
    /** Silica under a square of one millimetre of the diameter [g/mm²]: π/4 · 150 mm · 0.5 g/ml. */
    private static final double SILICA_G_PER_MM2 =
            Math.PI / 4 * GlassColumn.USUAL_BED_MM * GlassColumn.SILICA_G_PER_ML / MM3_PER_ML;

    private static final GlassColumn WIDEST =
            GlassColumn.of(FlashColumns.builtIn().widest());

    private BedLoad() {}

    /**
     * The most that a bed carries [mg].
     *
     * @param gap ΔRf of the target to its nearest neighbour [1]; infinite where it has none
     */
    static double mostMg(Bed bed, double gap) {
        if (gap < NARROW) {
            return mostMg(bed, NARROW) * Math.max(LEAST, gap) / NARROW;
        }
        if (bed instanceof GlassColumn glass) {
            double narrow = ofTable(glass.diameterMm(), FlashColumn::loadNarrowMg, NARROW_MG_PER_MM2);
            double wide = ofTable(glass.diameterMm(), FlashColumn::loadWideMg, WIDE_MG_PER_MM2);
            return between(narrow, wide, gap) * glass.bedMm() / GlassColumn.USUAL_BED_MM;
        }
        return between(NARROW_MG_PER_MM2, WIDE_MG_PER_MM2, gap) / SILICA_G_PER_MM2 * bed.silicaGrams();
    }

    private static double between(double narrow, double wide, double gap) {
        return narrow + (wide - narrow) * Math.min(1, (gap - NARROW) / (WIDE - NARROW));
    }

    /** As printed in a row; between two rows by the square of the diameter, never above the row that follows. */
    private static double ofTable(double diameterMm, ToDoubleFunction<FlashColumn> load, double perMm2) {
        FlashColumn next = FlashColumns.builtIn().rows().stream()
                .filter(row -> row.diameterMm() >= diameterMm)
                .findFirst()
                .orElseThrow();
        double printed = load.applyAsDouble(next);
        double square = diameterMm * diameterMm * perMm2;
        return next.diameterMm() == diameterMm ? printed : Math.min(square, printed);
    }

    /** The smallest bed that carries a mass [mg]: a cartridge, or the widest glass column; empty where none does. */
    static Optional<Bed> smallest(double massMg, double gap) {
        return Stream.concat(cartridges().stream(), Stream.of(WIDEST))
                .filter(bed -> mostMg(bed, gap) >= massMg)
                .findFirst();
    }

    /** The bed that carries most. */
    static Bed largest() {
        return WIDEST;
    }

    private static List<Bed> cartridges() {
        return Cartridge.SIZES.stream().map(size -> (Bed) new Cartridge(size)).toList();
    }
}
