package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Fits a pair to readings of many compounds at several shares of the strong solvent, by expectation and maximization.
 *
 * <p>Each round weighs the traits (c, s) of every compound on a grid, given the curve, the noise and a normal spread of
 * traits (E), and then moves all of these to where the weighed readings want them (M): the strength at each share by one step
 * of iteratively reweighted least squares for Student's t, its scale by the weighted mean square, the spread by its moments.
 * The origin of G and the unit of s are free, so after each round G is set to 0 at the reference share and the mean of s to
 * 1 (which also makes the rounds converge fast). At the end the spread of c is freed from the normal form
 * ({@link TraitSpread}). One thread, StrictMath, fixed order: the same readings give the same numbers on every machine.
 *
 * @see "Xu2022"
 * @see "DempsterLairdRubin1977"
 */
final class Calibration {
    private static final int ROUNDS = 80;
    private static final int SHAPE_EVERY = 2;
    private static final double LEAST_SCALE = 0.015;
    private static final double NEGLIGIBLE = 1e-5;

    private final double[] percents;
    private final double[][] rf;
    private final int reference;
    private final TraitGrid grid;

    private double[] strength;
    private double[] scales;
    private PlateShape shape = PlateShape.START;
    private NormalSpread spread = NormalSpread.START;

    private Calibration(double[] percents, double[][] rf, int reference, TraitGrid grid) {
        this.percents = percents;
        this.rf = rf;
        this.reference = reference;
        this.grid = grid;
        this.strength = new double[percents.length];
        for (int j = 0; j < percents.length; j++) {
            strength[j] = 1.4 * StrictMath.log((percents[j] + 2) / (percents[reference] + 2));
        }
        this.scales = new double[percents.length];
        Arrays.fill(scales, 0.05);
    }

    /**
     * Fits a pair.
     *
     * @param percents shares of the strong solvent [% v/v], rising
     * @param rf a row for each series, a column for each share [1]; NaN where nothing was read
     * @param grid the traits to weigh
     */
    static PairFit fit(double[] percents, double[][] rf, TraitGrid grid) {
        return new Calibration(percents, rf, percents.length / 2, grid).run();
    }

    private PairFit run() {
        List<Double> logLikelihood = new ArrayList<>();
        List<Weights> weights = List.of();
        for (int round = 0; round < ROUNDS; round++) {
            double[] prior = spread.on(grid);
            FitTables tables = FitTables.of(grid, strength, scales, shape);
            weights = new ArrayList<>();
            double sum = 0;
            for (double[] row : rf) {
                Weights each = Weights.of(prior, tables, row, NEGLIGIBLE);
                weights.add(each);
                sum += StrictMath.log(each.evidence());
            }
            logLikelihood.add(sum);
            if (round % SHAPE_EVERY == SHAPE_EVERY - 1) {
                shape = shape.better(grid, prior, weights, rf, strength, scales);
            }
            maximize(weights, tables);
            spread = NormalSpread.of(grid, weights);
            recentre();
        }
        return result(logLikelihood);
    }

    private void maximize(List<Weights> weights, FitTables tables) {
        for (int j = 0; j < percents.length; j++) {
            ShareSums sums = ShareSums.of(j, weights, rf, tables);
            strength[j] += sums.step();
            scales[j] = StrictMath.max(LEAST_SCALE, sums.scale());
        }
        for (int j = 1; j < strength.length; j++) {
            strength[j] = StrictMath.max(strength[j], strength[j - 1]);
        }
    }

    /** G is 0 at the reference share and s is 1 on average: c and its spread take up what is moved. */
    private void recentre() {
        double origin = strength[reference];
        double unit = spread.meanS();
        spread = spread.moved(origin, unit);
        for (int j = 0; j < strength.length; j++) {
            strength[j] = (strength[j] - origin) * unit;
        }
    }

    private PairFit result(List<Double> logLikelihood) {
        FitTables tables = FitTables.of(grid, strength, scales, shape);
        TraitSpread free = TraitSpread.freed(grid, spread, tables, rf);
        double[] meanC = new double[rf.length];
        double deviation = 0;
        int readings = 0;
        double[] information = new double[percents.length];
        for (int i = 0; i < rf.length; i++) {
            Weights weights = Weights.of(free.onGrid(), tables, rf[i], NEGLIGIBLE);
            meanC[i] = weights.mean(grid::c);
            for (int j = 0; j < percents.length; j++) {
                if (!Double.isNaN(rf[i][j])) {
                    double[] fitted = tables.rf(j);
                    deviation += StrictMath.abs(rf[i][j] - weights.mean(node -> fitted[node]));
                    readings++;
                    information[j] += tables.information(j, weights);
                }
            }
        }
        double[] error = new double[percents.length];
        for (int j = 0; j < error.length; j++) {
            error[j] = 1 / StrictMath.sqrt(information[j]);
        }
        return new PairFit(
                percents,
                strength,
                error,
                scales,
                shape,
                free.traits(),
                meanC,
                readings,
                deviation / readings,
                logLikelihood);
    }
}
