package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import midplate.catalogue.MeasuredPair;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;

/**
 * An invented pair whose compounds and plates are simulated. It shares the formulas with the model and no code: compounds
 * have c normal and s normal around a line in c, plates show {@code (1 + ε₀ + ε₁)/(1 + e^(−(c + s·G + δ))) − ε₀}, readings
 * scatter by Student's t with 5 degrees of freedom.
 */
@SuppressWarnings("ArrayRecordComponent")
record SimulatedPair(
        double[] percents,
        double[] strength,
        double[] scales,
        double leftAtLines,
        double start,
        double front,
        double meanC,
        double deviationC,
        double slopeS,
        double deviationS) {
    /** Much like hexane and ethyl acetate. */
    static final SimulatedPair USUAL = new SimulatedPair(
            new double[] {0, 2, 5, 16, 25, 50, 67, 100},
            new double[] {-3, -1.8, -1.3, -0.5, 0, 1.2, 1.9, 2.5},
            new double[] {0.05, 0.04, 0.04, 0.025, 0.025, 0.025, 0.025, 0.03},
            0.1,
            0.015,
            0.02,
            0.4,
            1.8,
            -0.04,
            0.18);

    /** A compound's traits. */
    record Compound(double c, double s) {}

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
        return new Compound(c, s);
    }

    /** The error of a plate [ln units]. */
    static double plateError(Hand hand, Random random) {
        return hand.sharedError() * random.nextGaussian();
    }

    /** Whether a reading may lie beyond the lines. */
    enum Lines {
        /** It is put on the line, as on a plate. */
        HELD,
        /** It stays where the noise puts it. */
        CROSSED
    }

    /** What is read of a compound at one of the shares. */
    double read(Compound compound, int share, double plateError, Hand hand, Random random) {
        return clipped(scattered(compound, share, plateError, hand, random));
    }

    private double scattered(Compound compound, int share, double plateError, Hand hand, Random random) {
        double eta = compound.c() + compound.s() * strength[share] + plateError;
        double rf = clipped((1 + start + front) / (1 + Math.exp(-eta)) - start);
        double sigma = Math.sqrt(scales[share] * scales[share] * (leftAtLines + (1 - leftAtLines) * 4 * rf * (1 - rf))
                + hand.readingError() * hand.readingError());
        return rf + sigma * student(random);
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

    /** A table to calibrate on: a compound a row, all shares. */
    double[][] table(int compounds, Random random, Lines lines) {
        double[][] rf = new double[compounds][percents.length];
        for (double[] row : rf) {
            Compound compound = compound(random);
            for (int share = 0; share < row.length; share++) {
                double read = scattered(compound, share, 0, Hand.AUTOMATED, random);
                row[share] = lines == Lines.HELD ? clipped(read) : read;
            }
        }
        return rf;
    }

    /** The pair as its calibration would be, were it perfect. */
    MeasuredPair measured() {
        SolventCatalogue catalogue = SolventCatalogue.builtIn();
        List<Double> density = new ArrayList<>();
        double sum = 0;
        for (int i = 0; i <= 240; i++) {
            double z = (-12 + 0.1 * i - meanC) / deviationC;
            density.add(Math.exp(-0.5 * z * z));
            sum += density.get(i);
        }
        double all = sum;
        density.replaceAll(each -> each / all);
        return new MeasuredPair(
                Sorbent.SILICA,
                catalogue.solvent("hexane"),
                catalogue.solvent("ethyl acetate"),
                0,
                100,
                list(percents),
                list(strength),
                list(new double[percents.length]),
                list(scales),
                leftAtLines,
                start,
                front,
                new MeasuredPair.Traits(-12, 0.1, density, 1, slopeS, meanC, deviationS),
                1,
                1,
                0,
                new MeasuredPair.Provenance(List.of(), "", "", ""));
    }

    /** The model of that pair. */
    PlateModels models() {
        return PlateModels.of(List.of(measured()), List.of());
    }

    private static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }
}
