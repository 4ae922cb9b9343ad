package midplate.inference;

import midplate.plate.Setting;

/**
 * What a setting adds to the noise of the calibration.
 *
 * <p>The calibrated noise is that of one automated laboratory. By hand two things come on top: an error of each reading by
 * itself, and an error shared by all spots of a plate (mixing, humidity, how the front was marked), which moves η =
 * ln(Rf/(1 − Rf)) of all of them alike. Published reproducibility: one plate 0.01 to 0.02, between plates 0.02 to 0.05,
 * between laboratories 0.05 to 0.10 in Rf. Bench: 0.015 and 0.035; class: 0.02 and 0.06, a value between the last two
 * since a class shares its bottles and its plates. A shared error of d in Rf at 0.5 is 4·d in η.
 *
 * <p>What is left of a reading when all others of its compound are told goes together in compounds that were measured one after the
 * other, of unlike structure, and not in compounds of like structure that were measured apart: what they share comes to 0.024 to 0.050 in Rf
 * midway up the plate ({@code midplate.benchmark.SharedScatter}; figures in the README). So the published range holds for the machine that
 * measured, too; it is in the calibrated noise of each reading already, and what a hand adds on top stays recalled.
 *
 * <p>The open repeats agree with that as far as they go: two series of one structure, run at different times in the laboratory
 * that measured, lie 0.04 apart in Rf on average over all their ratios, and 0.02 to 0.04 around that at each. The first is
 * common to the plates of a series, so that most of it is gone from one plate to the next on the same day; how much plates of
 * one day differ by hand these measurements cannot tell.
 *
 * @param readingError standard deviation of each reading by itself [1 in Rf]
 * @param sharedError standard deviation shared by the spots of a plate [ln units]
 * @see "Geiss1987"
 */
record PlateScatter(double readingError, double sharedError) {
    private static final PlateScatter AUTOMATED = new PlateScatter(0, 0);
    private static final PlateScatter BENCH = new PlateScatter(0.015, 4 * 0.035);
    private static final PlateScatter CLASS = new PlateScatter(0.02, 4 * 0.06);

    /** The scatter of a setting. */
    static PlateScatter of(Setting setting) {
        return switch (setting) {
            case AUTOMATED -> AUTOMATED;
            case BENCH -> BENCH;
            case CLASS -> CLASS;
        };
    }

    /** The same with the shared error counted as one more error of each reading, midway up the plate. */
    PlateScatter unshared() {
        double midway = sharedError / 4;
        return new PlateScatter(Math.sqrt(readingError * readingError + midway * midway), 0);
    }

    boolean isShared() {
        return sharedError > 0;
    }
}
