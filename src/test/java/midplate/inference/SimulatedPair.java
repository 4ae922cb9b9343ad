package midplate.inference;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import midplate.catalogue.PairBasis;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;

/**
 * An invented pair whose compounds and plates are simulated. It shares the formulas with the model and no code: compounds
 * have c normal, s normal around a line in c and t standard normal; a plate has a spot at {@code (1 + ε₀ + ε₁)/(1 + e^(−η)) −
 * ε₀} with {@code η = a·c + s·G + t·L + δ}; readings scatter around that by Student's t with 5 degrees of freedom, and those
 * beyond a line are read on it.
 */
@SuppressWarnings("ArrayRecordComponent")
record SimulatedPair(
        double[] percents,
        double[] hold,
        double[] strength,
        double[] early,
        double[] scales,
        double leftAtLines,
        double start,
        double front,
        double meanC,
        double deviationC,
        double slopeS,
        double deviationS) {
    /** Much like hexane and ethyl acetate. */
    static final SimulatedPair USUAL =
            usual(new double[] {1.3, 1, 1, 1, 1, 1, 1, 1}, new double[] {0, 0.45, 0.6, 0, 0, 0, 0, 0});
    /** The same without a third trait, all compounds held alike in every eluent. */
    static final SimulatedPair TWO_TRAITS = usual(new double[] {1, 1, 1, 1, 1, 1, 1, 1}, new double[8]);

    private static SimulatedPair usual(double[] hold, double[] early) {
        return new SimulatedPair(
                new double[] {0, 2, 5, 16, 25, 50, 67, 100},
                hold,
                new double[] {-3, -1.8, -1.3, -0.5, 0, 1.2, 1.9, 2.5},
                early,
                new double[] {0.05, 0.04, 0.04, 0.025, 0.025, 0.025, 0.025, 0.03},
                0.1,
                0.015,
                0.02,
                0.4,
                1.8,
                -0.04,
                0.18);
    }

    /** What a fit may move at each of the shares, as of hexane and ethyl acetate. */
    static ShareKind[] kinds() {
        ShareKind[] kinds = new ShareKind[8];
        Arrays.fill(kinds, ShareKind.PLAIN);
        kinds[0] = ShareKind.BARE;
        kinds[1] = ShareKind.EARLY;
        kinds[2] = ShareKind.EARLY;
        return kinds;
    }

    /** A spot read no farther than this from a line sits on it [1]. */
    private static final double AT_LINES = 0.005;

    /** A compound's traits. */
    record Compound(double c, double s, double t) {}

    /** How plates scatter beyond the noise: each reading by itself [1 in Rf], and all of a plate alike [ln units]. */
    record Hand(double readingError, double sharedError) {
        static final Hand AUTOMATED = new Hand(0, 0);
        /** 0.015 and 0.035 in Rf midway, where a shift of η is 4 times that of Rf. */
        static final Hand BENCH = new Hand(0.015, 0.14);
    }

    Compound compound(Random random) {
        double c;
        double s;
        do {
            c = meanC + deviationC * random.nextGaussian();
            s = 1 + slopeS * (c - meanC) + deviationS * random.nextGaussian();
        } while (!(s > 0.3 && s < 2));
        return new Compound(c, s, random.nextGaussian());
    }

    /** The error of a plate [ln units]. */
    static double plateError(Hand hand, Random random) {
        return hand.sharedError() * random.nextGaussian();
    }

    /** What is read of a compound at one of the shares. */
    double read(Compound compound, int share, double plateError, Hand hand, Random random) {
        return clipped(scattered(compound, share, plateError, hand, random));
    }

    private double scattered(Compound compound, int share, double plateError, Hand hand, Random random) {
        double at = beyond(compound, share, plateError);
        double rf = clipped(at);
        double sigma = Math.sqrt(scales[share] * scales[share] * (leftAtLines + (1 - leftAtLines) * 4 * rf * (1 - rf))
                + hand.readingError() * hand.readingError());
        return at + sigma * student(random);
    }

    /** Where a plate has a compound [1], not held between the lines. */
    private double beyond(Compound compound, int share, double plateError) {
        double eta =
                hold[share] * compound.c() + compound.s() * strength[share] + compound.t() * early[share] + plateError;
        return (1 + start + front) / (1 + Math.exp(-eta)) - start;
    }

    private static double clipped(double rf) {
        return Math.max(0, Math.min(1, rf));
    }

    /** Student's t with 5 degrees of freedom: a normal deviate over the root of a mean of five squares. */
    private static double student(Random random) {
        double squares = 0;
        for (int i = 0; i < 5; i++) {
            double each = random.nextGaussian();
            squares += each * each;
        }
        return random.nextGaussian() / Math.sqrt(squares / 5);
    }

    /** Compounds drawn by chance. */
    List<Compound> compounds(int count, Random random) {
        return Stream.generate(() -> compound(random)).limit(count).toList();
    }

    /** A table to calibrate on: a compound a row, all shares. */
    double[][] table(List<Compound> compounds, Random random) {
        double[][] rf = new double[compounds.size()][percents.length];
        for (int i = 0; i < rf.length; i++) {
            for (int share = 0; share < percents.length; share++) {
                rf[i][share] = read(compounds.get(i), share, 0, Hand.AUTOMATED, random);
            }
        }
        return rf;
    }

    /** The pair as its calibration would be, were it perfect. */
    PlatePair measured() {
        return measured(new PlatePair.Traits(List.of(spread())));
    }

    /** The same with compounds spread in another way. */
    PlatePair measured(PlatePair.Traits traits) {
        SolventCatalogue catalogue = SolventCatalogue.builtIn();
        return new PlatePair(
                PairBasis.MEASURED,
                Sorbent.SILICA,
                catalogue.solvent("hexane"),
                catalogue.solvent("ethyl acetate"),
                0,
                100,
                list(percents),
                list(strength),
                list(new double[percents.length]),
                list(hold),
                list(early),
                list(scales),
                leftAtLines,
                AT_LINES,
                start,
                front,
                traits,
                1,
                1,
                0,
                new PlatePair.Provenance(List.of(), "", "", ""));
    }

    /** How the traits of compounds are spread. */
    PlatePair.Bell spread() {
        double varianceC = deviationC * deviationC;
        return new PlatePair.Bell(
                1,
                meanC,
                1,
                0,
                varianceC,
                slopeS * varianceC,
                0,
                deviationS * deviationS + slopeS * slopeS * varianceC,
                0,
                1);
    }

    /** The model of that pair. */
    PlateModels models() {
        return PlateModels.of(List.of(measured()));
    }

    private static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }
}
