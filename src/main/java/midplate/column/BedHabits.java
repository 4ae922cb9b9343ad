package midplate.column;

import java.util.List;
import midplate.catalogue.FlashColumn;
import midplate.catalogue.FlashColumns;

/** How a bed is usually run: flow, volume of a fraction, how the sample is put on. */
final class BedHabits {
    /** Wet loads above this share of the void widen every band [1]; common practice, no source. */
    static final double WET_SHARE = 0.1;
    /** Dry loads: so many times the mass of the sample in silica [1], 2 to 3; common practice, no source. */
    static final double DRY_TIMES = 2.5;
    /** So many tubes are still handled by one person; common practice, no source. */
    static final int MOST_TUBES = 80;

    private static final double HEAD_MM_PER_MIN = 50;
    private static final double MM3_PER_ML = 1000;
    private static final double MG_PER_G = 1000;
    /** To dissolve a sample for a wet load [ml/g]; common practice, no source. */
    private static final double WET_ML_PER_G = 2;

    private static final double LEAST_WET_ML = 0.1;
    /** Flows at which cartridges were measured: silica [g], flow [ml/min]. */
    private static final double[][] FLOWS = {{4, 10}, {8, 10}, {25, 15}, {40, 30}};
    /** Of like beds the cross-section grows so with the silica. */
    private static final double AREA_POWER = 2.0 / 3;
    /** Volumes that racks and tubes are made for [ml]. */
    private static final List<Double> TUBES_ML = List.of(
            1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 18.0, 20.0, 25.0, 30.0, 40.0, 50.0, 75.0, 100.0, 150.0,
            200.0, 250.0);
    /** The band wanted is cut into so many fractions at least; common practice, no source. */
    static final double BAND_PARTS = 6;
    /** The largest tube in use beside a cartridge: silica up to [g], tube [ml]; common practice, no source. */
    private static final double[][] LARGEST_TUBES = {{4, 8}, {8, 10}, {12, 15}, {40, 25}, {120, 50}};

    private BedHabits() {}

    /**
     * The usual flow [ml/min]: for cartridges that at which the size was measured; between two sizes straight from one to the
     * other; above them the speed of the largest in a bed of like shape, whose cross-section grows with the two-thirds power of the
     * silica. For glass the published 5 cm of head a minute.
     */
    static double flowMlMin(Bed bed) {
        if (bed instanceof GlassColumn glass) {
            return tenth(glass.areaMm2() * HEAD_MM_PER_MIN / MM3_PER_ML);
        }
        double grams = bed.silicaGrams();
        for (int i = 1; i < FLOWS.length; i++) {
            if (grams <= FLOWS[i][0]) {
                double part = (grams - FLOWS[i - 1][0]) / (FLOWS[i][0] - FLOWS[i - 1][0]);
                return Math.rint(FLOWS[i - 1][1] + part * (FLOWS[i][1] - FLOWS[i - 1][1]));
            }
        }
        double[] largest = FLOWS[FLOWS.length - 1];
        return Math.rint(largest[1] * Math.pow(grams / largest[0], AREA_POWER));
    }

    private static double tenth(double value) {
        return Math.rint(10 * value) / 10;
    }

    /** Volume to dissolve a sample in [ml]: half a gram in each millilitre, within what the bed takes. */
    static double wetMl(double massMg, double voidMl) {
        double wanted = WET_ML_PER_G * massMg / MG_PER_G;
        return Math.max(LEAST_WET_ML, Math.min(tenth(wanted), Math.floor(10 * WET_SHARE * voidMl) / 10));
    }

    /** What eluent fills in the silica that a sample is dried onto [ml]: taken as the volume in which it comes onto the bed; own. */
    static double dryMl(double massMg) {
        return drySilicaGrams(massMg) * BedLaw.POROSITY / GlassColumn.SILICA_G_PER_ML;
    }

    /** Silica to dry a sample onto [g]. */
    static double drySilicaGrams(double massMg) {
        return Math.ceil(100 * DRY_TIMES * massMg / MG_PER_G) / 100;
    }

    /**
     * The usual volume of a fraction [ml]: a sixth of the band wanted, in the volumes of tubes, but no more than the tubes in use
     * beside such a bed hold (for glass the published fraction, straight between the rows of its table), and no less than makes
     * {@value #MOST_TUBES} tubes of the run.
     *
     * @param bandMl width of the band wanted [ml]
     * @param runMl eluent from the first drop to the last [ml]
     */
    static double fractionMl(Bed bed, double bandMl, double runMl) {
        double largest = largestMl(bed);
        double part = bandMl / BAND_PARTS;
        double wanted = part >= largest
                ? largest
                : TUBES_ML.stream()
                        .filter(size -> size <= part)
                        .reduce((one, other) -> other)
                        .orElse(TUBES_ML.get(0));
        return Math.max(wanted, tube(runMl / MOST_TUBES));
    }

    private static double largestMl(Bed bed) {
        if (bed instanceof GlassColumn glass) {
            return Math.rint(FlashColumns.builtIn().at(glass.diameterMm(), FlashColumn::fractionMl));
        }
        for (double[] each : LARGEST_TUBES) {
            if (bed.silicaGrams() <= each[0]) {
                return each[1];
            }
        }
        return LARGEST_TUBES[LARGEST_TUBES.length - 1][1];
    }

    /** The smallest usual volume that is no smaller [ml]. */
    private static double tube(double ml) {
        return TUBES_ML.stream().filter(size -> size >= ml).findFirst().orElse(Math.ceil(ml));
    }
}
