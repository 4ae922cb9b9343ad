package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import midplate.catalogue.PlatePair;

/**
 * Fits a pair to readings of many compounds at several shares of the strong solvent, by expectation and maximization.
 *
 * <p>Each round weighs the traits (c, s, t) of every compound on a grid, given the curves, the noise and a normal spread of
 * traits (E), and then moves all of these to where the weighed readings want them (M): G, σ₀ and, where a share has one, L or a by one step of
 * Fisher's scoring ({@link ShareSums}), the spread of c and s by its moments; t stays standard normal, which is what gives L its
 * unit. The origin of G and the unit of s are free, so after each round G is set to 0 at the reference share and the mean of s
 * to 1 (which also makes the rounds converge fast). At the end the spread is freed from the normal form ({@link
 * CompoundSpread}). One thread, StrictMath, fixed order: the same readings give the same numbers on every machine.
 *
 * @see "Xu2022"
 * @see "DempsterLairdRubin1977"
 */
final class Calibration {
    private static final int ROUNDS = 80;
    private static final int SHAPE_EVERY = 2;
    private static final double LEAST_SCALE = 0.015;
    private static final double MOST_SCALE = 0.5;
    private static final double NEGLIGIBLE = 1e-5;
    /** A share below all shares [% v/v]. */
    static final double NONE = -1;

    private static final double FIRST_EARLY = 0.3;
    /** Half the last digit of most readings, rounded up [1]. */
    private static final double AT_LINES = 0.005;

    private final double[] percents;
    private final double[][] rf;
    private final int reference;
    private final Form form;
    private final ShareKind[] kinds;
    private final double atLines;
    private final double elsewhere;
    private final TraitGrid grid;

    private Climb[] climbs;
    private double[] scales;
    private PlateShape shape = PlateShape.START;
    private NormalSpread spread = NormalSpread.START;

    private Calibration(
            double[] percents, double[][] rf, int reference, Form form, ShareKind[] kinds, double elsewhere) {
        this.elsewhere = elsewhere;
        this.percents = percents;
        this.rf = rf;
        this.reference = reference;
        this.form = form;
        this.kinds = kinds;
        this.atLines = form == Form.TWO_TRAITS ? 0 : AT_LINES;
        this.grid = TraitGrid.fit(area(), early());
        this.climbs = new Climb[percents.length];
        for (int j = 0; j < percents.length; j++) {
            double strength = 1.4 * StrictMath.log((percents[j] + 2) / (percents[reference] + 2));
            climbs[j] = new Climb(1, strength, kinds[j] == ShareKind.EARLY ? FIRST_EARLY : 0);
        }
        this.scales = new double[percents.length];
        Arrays.fill(scales, 0.05);
    }

    private TraitGrid.Trait area() {
        return form == Form.ONE_TRAIT ? TraitGrid.Trait.ALIKE : TraitGrid.Trait.OWN;
    }

    private TraitGrid.Trait early() {
        return Arrays.asList(kinds).contains(ShareKind.EARLY) ? TraitGrid.Trait.OWN : TraitGrid.Trait.ALIKE;
    }

    /**
     * Fits a pair.
     *
     * @param percents shares of the strong solvent [% v/v], rising
     * @param rf a row for each series, a column for each share [1]; NaN where nothing was read
     * @param form how much compounds may differ
     * @param kinds for each share what beside G may be moved; with fewer than three traits, nothing
     */
    static PairFit fit(double[] percents, double[][] rf, Form form, ShareKind[] kinds) {
        return fit(percents, rf, form, kinds, NONE);
    }

    /**
     * Fits a pair some of whose readings were made in another pair, too.
     *
     * @param elsewhere readings at this share and below count for another pair, where compounds are compared between pairs [% v/v]
     */
    static PairFit fit(double[] percents, double[][] rf, Form form, ShareKind[] kinds, double elsewhere) {
        ShareKind[] plain = new ShareKind[percents.length];
        Arrays.fill(plain, ShareKind.PLAIN);
        return new Calibration(
                        percents,
                        rf,
                        percents.length / 2,
                        form,
                        form == Form.THREE_TRAITS ? kinds.clone() : plain,
                        elsewhere)
                .run();
    }

    private PairFit run() {
        List<Double> logLikelihood = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            double[] prior = spread.on(grid);
            FitTables tables = tables(grid);
            List<Weights> weights = new ArrayList<>();
            double sum = 0;
            for (double[] row : rf) {
                Weights each = Weights.of(prior, tables, row, NEGLIGIBLE);
                weights.add(each);
                sum += StrictMath.log(each.evidence());
            }
            logLikelihood.add(sum);
            if (round % SHAPE_EVERY == SHAPE_EVERY - 1) {
                shape = shape.better(grid, prior, weights, rf, climbs, scales, atLines);
            }
            maximize(weights, tables);
            spread = NormalSpread.of(grid, weights);
            recentre();
        }
        return result(logLikelihood);
    }

    private FitTables tables(TraitGrid on) {
        return FitTables.of(on, climbs, scales, shape, atLines);
    }

    private void maximize(List<Weights> weights, FitTables tables) {
        for (int j = 0; j < percents.length; j++) {
            ShareSums sums = ShareSums.of(j, kinds[j], weights, rf, tables);
            climbs[j] = sums.moved(climbs[j]);
            double scale = scales[j] * StrictMath.exp(sums.scaleStep());
            scales[j] = StrictMath.max(LEAST_SCALE, StrictMath.min(MOST_SCALE, scale));
        }
        for (int j = 1; j < climbs.length; j++) {
            if (climbs[j].strength() < climbs[j - 1].strength()) {
                climbs[j] = new Climb(climbs[j].hold(), climbs[j - 1].strength(), climbs[j].early());
            }
        }
    }

    /** G is 0 at the reference share and s is 1 on average: c and its spread take up what is moved. */
    private void recentre() {
        double origin = climbs[reference].strength();
        double unit = spread.meanS();
        spread = spread.moved(origin, unit);
        for (int j = 0; j < climbs.length; j++) {
            climbs[j] = new Climb(
                    climbs[j].hold(), (climbs[j].strength() - climbs[j].hold() * origin) * unit, climbs[j].early());
        }
    }

    /** The readings of a series without those that count for another pair. */
    private double[] own(double[] row) {
        double[] own = row.clone();
        for (int j = 0; j < own.length; j++) {
            if (percents[j] <= elsewhere) {
                own[j] = Double.NaN;
            }
        }
        return own;
    }

    private PairFit result(List<Double> logLikelihood) {
        TraitGrid fine = TraitGrid.spots(area(), early());
        FitTables tables = tables(fine);
        PlatePair.Traits traits = form == Form.TWO_TRAITS
                ? LineSpread.freed(fine, spread, tables, rf)
                : CompoundSpread.freed(fine, spread, tables, rf);
        double[] prior = TraitPrior.normalized(new Bells(fine).summed(traits.bells()));
        List<PairFit.Estimate> compounds = new ArrayList<>();
        List<Moments> told = new ArrayList<>();
        double[] normal = spread.on(fine);
        Moments before = spread.moments(fine);
        double deviation = 0;
        int readings = 0;
        double[] information = new double[percents.length];
        for (int i = 0; i < rf.length; i++) {
            Weights weights = Weights.of(prior, tables, rf[i], NEGLIGIBLE);
            compounds.add(PairFit.Estimate.of(fine, weights));
            told.add(Moments.of(fine, Weights.of(normal, tables, own(rf[i]), NEGLIGIBLE), before.mean().length));
            for (int j = 0; j < percents.length; j++) {
                if (!Double.isNaN(rf[i][j])) {
                    int share = j;
                    deviation += StrictMath.abs(rf[i][j] - weights.mean(node -> tables.rf(share, node)));
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
                climbs,
                error,
                scales,
                shape,
                atLines,
                traits,
                compounds,
                told,
                before,
                readings,
                deviation / readings,
                logLikelihood);
    }
}
