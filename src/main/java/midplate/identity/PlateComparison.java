package midplate.identity;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * How far apart one compound may look in two lanes of one plate. All figures that a verdict rests on stand here.
 *
 * <p>The centre of a spot in one lane has the variance σ² = a² + (b·d)² + (c·L)² [mm²], with d its length and L the run [mm]: a from
 * the ruler, b from judging the middle of a spot, c from lanes that do not run alike. A streak adds d²/12, the variance of an even
 * spread over its length (own algebra). The gap of two lanes, divided by the root of both variances summed, is taken for Student's t
 * with ν degrees of freedom, since a hand slips now and then. a, b, c and ν were chosen on simulated plates that share no code
 * with this (own choice; see the accuracy in the README).
 */
final class PlateComparison {
    /** Reading a centre with a ruler, a [mm] (own choice; a ruler is read to half a millimetre, common practice). */
    static final double READING_MM = 0.31;
    /** Judging the middle, b, as a share of the spot's length [1] (own choice). */
    static final double PER_SIZE = 0.05;
    /** Lanes that run unlike each other, c, as a share of the run [1] (own choice). */
    static final double PER_RUN = 0.0045;
    /** Degrees of freedom of a gap, ν [1] (own choice). */
    static final double DEGREES = 5;
    /** Length of a spot that was not measured [mm]; common practice, no source: 2 to 4 mm after a run. */
    static final double USUAL_SIZE_MM = 3;
    /** The run taken where only Rf were noted [mm]; common practice, no source: a plate of 6 to 7 cm. */
    static final double USUAL_RUN_MM = 50;

    /**
     * Two samples are called different where one compound would look at least so different with less than this chance [1] (own
     * choice): 1 in 50. At 1 in 100 a difference of 0.05 in Rf is missed too often, at 1 in 20 a chemist who asks each day is
     * misled every month.
     */
    static final double STATED = 0.02;
    /**
     * The same where no co-spot counts beside the lanes [1] (own choice): a misreading in one of two lanes is caught by no third, so
     * half that chance is asked.
     */
    static final double STATED_ALONE = 0.01;
    /** They are called not told apart where that chance is above this [1] (own choice); between the two nothing is decided. */
    static final double UNREMARKABLE = 0.1;
    /** A difference would have been seen where it is told with this chance [1] (common practice: power of 80 %). */
    static final double POWER = 0.8;

    /** A spot longer than this share of the run is overloaded [1]; common practice, no source. */
    static final double OVERLOADED = 0.2;

    /** One compound from two loads in one place is so much longer than either [1] (own choice). */
    static final double CO_SPOT_LONGER = 1.1;
    /** Spread of the logarithm of one spot's length as measured [1] (own choice): a quarter more or less. */
    static final double SIZE_SPREAD = 0.22;
    /** Degrees of freedom of that [1] (own choice). */
    static final double SIZE_DEGREES = 4;
    /** The chance that a lane of one compound shows a second spot, at a distance that fits the other lanes [1] (own choice). */
    static final double SECOND_SPOT = 0.03;
    /** Two spots of a co-spot fit the gap of the lanes where the distances differ by less than this share [1] (own choice). */
    static final double FITS = 0.5;
    /** Or by less than so many standard deviations of that gap [1] (own choice). */
    static final double FITS_WITHIN = 2;
    /**
     * A co-spot speaks against a gap where it is so many times likelier as one compound [1] (own choice).
     */
    static final double SPEAKS_AGAINST = 5;

    /** Spread of an Rf between plates of one bench [1]; from memory, as usually told: 0.02 to 0.04. */
    static final double BETWEEN_PLATES = 0.03;
    /** Spread of an Rf between laboratories [1]; from memory, as usually told: 0.05 to 0.10. */
    static final double BETWEEN_LABORATORIES = 0.07;
    /** Spread of an hRf after correction with reference spots, on the scale of Rf [1]; from memory: 2 to 4 hRf. */
    static final double AFTER_CORRECTION = 0.03;
    /**
     * What the model errs by for a reference holds for another compound but for this share of it [1] (own choice): part of it belongs to
     * the plate and the pair of solvents, part to the compound.
     */
    static final double OWN_SHARE = 0.5;

    private static final TDistribution GAP = new TDistribution(null, DEGREES);
    private static final TDistribution SIZE = new TDistribution(null, SIZE_DEGREES);
    private static final double BAND = GAP.inverseCumulativeProbability(0.95);
    private static final double POWERED = GAP.inverseCumulativeProbability(POWER);

    private PlateComparison() {}

    /**
     * Variance of the centre of a spot in one lane [mm²].
     *
     * @param sizeMm its length [mm]
     * @param runMm the run [mm]
     */
    static double variance(double sizeMm, SpotShape shape, double runMm) {
        double judged = PER_SIZE * sizeMm;
        double lane = PER_RUN * runMm;
        double drawn = shape == SpotShape.STREAK ? sizeMm * sizeMm / 12 : 0;
        return READING_MM * READING_MM + judged * judged + lane * lane + drawn;
    }

    /** The chance that one compound reads at least so far apart, either way [1]. */
    static double chanceOfGap(double gap, double deviation) {
        return 2 * GAP.cumulativeProbability(-Math.abs(gap) / deviation);
    }

    /** Half of the 90 % band of a gap, in the unit of its deviation. */
    static double halfBand(double deviation) {
        return BAND * deviation;
    }

    /**
     * The least gap that the lanes of one plate tell with the usual power, in the unit of its deviation.
     *
     * @param stated below which chance of one compound two are called different [1]
     */
    static double leastTold(double deviation, double stated) {
        return (GAP.inverseCumulativeProbability(1 - stated / 2) + POWERED) * deviation;
    }

    /** How much longer a co-spot is than expected, in its own spread: ln(d / expected) / spread [1]. */
    static double longer(double sizeMm, double expectedMm) {
        return Math.log(sizeMm / expectedMm) / (SIZE_SPREAD * Math.sqrt(1.5));
    }

    /** The chance that a co-spot is at least so much longer [1]. */
    static double chanceOfLonger(double longer) {
        return SIZE.cumulativeProbability(-longer);
    }

    /** Density of that [1]. */
    static double densityOfLonger(double longer) {
        return SIZE.density(longer);
    }
}
