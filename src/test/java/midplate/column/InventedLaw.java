package midplate.column;

import java.util.Random;

/**
 * Invented columns, with no code of the forecast in them: a compound is held by {@code k = e^−(c + 1.2·ln(1 + p))}, leaves at
 * {@code V₀ + V_m·k} in one eluent, starts and ends by a fifth of that before and after. Columns scatter by a tenth for all spots
 * together and by a twentieth for each.
 */
final class InventedLaw implements BandLaw {
    private static final double CLIMB = 1.2;
    private static final double ML_PER_GRAM = 1.6;
    private static final double SHARED = 0.1;
    private static final double OWN = 0.05;
    private static final double HALF_WIDTH = 0.2;
    private static final int CASES = 256;

    private final double[] c;
    private final double[] shared = new double[CASES];
    private final double[][] own;

    private InventedLaw(double[] c, double scatterOfEach) {
        this.c = c;
        this.own = new double[c.length][CASES];
        Random random = new Random(11);
        for (int i = 0; i < CASES; i++) {
            shared[i] = Math.exp(SHARED * random.nextGaussian());
        }
        for (int spot = 0; spot < c.length; spot++) {
            Random each = new Random(Double.hashCode(c[spot]));
            for (int i = 0; i < CASES; i++) {
                own[spot][i] = Math.exp(scatterOfEach * each.nextGaussian());
            }
        }
    }

    /** Spots that show these Rf [1] at 10 % strong. */
    static InventedLaw at10(double... rfs) {
        double[] c = new double[rfs.length];
        for (int i = 0; i < rfs.length; i++) {
            c[i] = Math.log(rfs[i] / (1 - rfs[i])) - CLIMB * Math.log(11);
        }
        return new InventedLaw(c, OWN);
    }

    double k(int spot, double percent) {
        return Math.exp(-(c[spot] + CLIMB * Math.log(1 + percent)));
    }

    @Override
    public int spots() {
        return c.length;
    }

    @Override
    public Bands bands(Bed bed, Program program, double loadMl) {
        return new Bands() {
            @Override
            public int cases() {
                return CASES;
            }

            private double at(int spot, int one, double part) {
                double factor = part * shared[one] * own[spot][one];
                return factor * voidMl(bed) + run(bed, program, spot, factor) + loadMl / 2;
            }

            @Override
            public double startMl(int spot, int one) {
                return at(spot, one, 1 - HALF_WIDTH);
            }

            @Override
            public double middleMl(int spot, int one) {
                return at(spot, one, 1);
            }

            @Override
            public double endMl(int spot, int one) {
                return at(spot, one, 1 + HALF_WIDTH);
            }
        };
    }

    /** Eluent that brings a spot through, step by step [ml]. */
    private double run(Bed bed, Program program, int spot, double factor) {
        double left = 1;
        double run = 0;
        for (Program.Step step : program.steps()) {
            double whole = factor * voidMl(bed) * k(spot, step.percentStrong());
            if (left * whole <= step.volumeMl()) {
                return run + left * whole;
            }
            run += step.volumeMl();
            left -= step.volumeMl() / whole;
        }
        throw new AssertionError("the last step must be endless");
    }

    @Override
    public Range90 rf(int spot, double percentStrong) {
        double rf = 1 / (1 + k(spot, percentStrong));
        return new Range90(rf, rf - 0.05 * rf, rf + 0.05 * rf);
    }

    @Override
    public double idealMl(int spot, Bed bed, Program program) {
        return voidMl(bed) + run(bed, program, spot, 1);
    }

    @Override
    public double unretainedMl(Bed bed) {
        return voidMl(bed);
    }

    @Override
    public double voidMl(Bed bed) {
        return ML_PER_GRAM * bed.silicaGrams();
    }
}
