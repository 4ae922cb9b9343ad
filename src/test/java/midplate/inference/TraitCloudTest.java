package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import midplate.inference.TraitGrid.Trait;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Bayes' rule summed plainly over every node of the grid, beside what the program keeps: columns of one c and one s, each with two t a
 * deviation to either side of their mean. Weights of the nodes are drawn by chance.
 */
@DisplayName("What is known of a spot")
class TraitCloudTest {
    private static final TraitGrid GRID = TraitGrid.spots(Trait.OWN, Trait.OWN);
    private static final Climb PLAIN = new Climb(1, 0.4, 0);
    private static final Climb BARE = new Climb(1.3, -1.2, 0);
    private static final Climb EARLY = new Climb(1, -0.8, 0.4);
    private static final double[] PRIOR = prior();

    private static double[] prior() {
        Random random = new Random(4);
        double[] prior = new double[GRID.size()];
        for (int node = 0; node < prior.length; node++) {
            boolean near = Math.abs(GRID.c(node)) < 1.05 && Math.abs(GRID.s(node) - 1) < 0.25;
            prior[node] = near ? 0.01 + random.nextDouble() : 0;
        }
        return TraitPrior.normalized(prior);
    }

    private static double[] onMarks(IntToDoubleFunction quantity) {
        double[] marks = new double[LogitScale.SIZE];
        for (int mark = 0; mark < marks.length; mark++) {
            marks[mark] = quantity.applyAsDouble(mark);
        }
        return marks;
    }

    /** A reading that is likeliest at an η. */
    private static double[] likelihood(double eta) {
        return onMarks(mark -> {
            double away = (-16 + 0.01 * mark - eta) / 0.5;
            return 3 * Math.exp(-0.5 * away * away) + 1e-3;
        });
    }

    /** Climbs of the plates read, of which some tell of t. */
    static Stream<List<Climb>> plates() {
        return Stream.of(
                List.of(),
                List.of(PLAIN),
                List.of(BARE),
                List.of(EARLY),
                List.of(PLAIN, EARLY),
                List.of(EARLY, BARE, EARLY));
    }

    /** Prior times likelihoods at every node; the errors of the plates are 0, 0.1 and 0.2. */
    private static double[] plainly(List<Climb> climbs) {
        double[] weights = PRIOR.clone();
        for (int r = 0; r < climbs.size(); r++) {
            double[] likelihood = likelihood(0.2 * r);
            for (int node = 0; node < weights.length; node++) {
                double eta = climbs.get(r).eta(GRID.c(node), GRID.s(node), GRID.t(node)) + 0.1 * r;
                weights[node] *= likelihood[LogitScale.mark(eta)];
            }
        }
        return weights;
    }

    private static Posterior.Weighed weighed(Posterior posterior, List<Climb> climbs) {
        List<double[]> likelihoods = Stream.iterate(0, r -> r + 1)
                .limit(climbs.size())
                .map(r -> likelihood(0.2 * r))
                .toList();
        double[] shifts = {0, 0.1, 0.2};
        return posterior.weigh(
                likelihoods, climbs.toArray(Climb[]::new), java.util.Arrays.copyOf(shifts, climbs.size()));
    }

    private static TraitCloud cloud(List<Climb> climbs) {
        Posterior posterior = TraitPrior.of(GRID, PRIOR).nodes();
        return posterior.cloud(weighed(posterior, climbs));
    }

    private static double sum(TraitCloud cloud, IntToDoubleFunction quantity) {
        double sum = 0;
        for (int i = 0; i < cloud.size(); i++) {
            sum += cloud.weight(i) * quantity.applyAsDouble(i);
        }
        return sum;
    }

    private static double mean(double[] weights, IntToDoubleFunction quantity) {
        double sum = 0;
        double all = 0;
        for (int node = 0; node < weights.length; node++) {
            sum += weights[node] * quantity.applyAsDouble(node);
            all += weights[node];
        }
        return sum / all;
    }

    @ParameterizedTest
    @MethodSource("plates")
    void theEvidenceIsTheSumOverAllNodes(List<Climb> climbs) {
        double evidence = weighed(TraitPrior.of(GRID, PRIOR).nodes(), climbs).evidence();
        double plain = java.util.Arrays.stream(plainly(climbs)).sum();
        assertEquals(1, evidence / plain, 1e-3, "rarest nodes left out");
    }

    @ParameterizedTest
    @MethodSource("plates")
    void weightMeansAndTheSpreadOfTAreThoseOfAllNodes(List<Climb> climbs) {
        double[] plain = plainly(climbs);
        TraitCloud cloud = cloud(climbs);
        assertEquals(1, sum(cloud, i -> 1), 1e-12);
        assertEquals(mean(plain, GRID::c), cloud.meanC(), 1e-3);
        assertEquals(mean(plain, GRID::s), cloud.meanS(), 1e-3);
        assertEquals(mean(plain, GRID::t), sum(cloud, cloud::t), 1e-3);
        assertEquals(mean(plain, node -> GRID.t(node) * GRID.t(node)), sum(cloud, i -> cloud.t(i) * cloud.t(i)), 2e-3);
        assertEquals(mean(plain, node -> GRID.c(node) * GRID.t(node)), sum(cloud, i -> cloud.c(i) * cloud.t(i)), 2e-3);
    }

    @Test
    void eachColumnKeepsItsMeanAndVarianceOfT() {
        double[] plain = plainly(List.of(EARLY));
        TraitCloud cloud = cloud(List.of(EARLY));
        Map<List<Long>, double[]> columns = new HashMap<>();
        for (int node = 0; node < plain.length; node++) {
            add(columns, GRID.c(node), GRID.s(node), GRID.t(node), plain[node]);
        }
        Map<List<Long>, double[]> kept = new HashMap<>();
        for (int i = 0; i < cloud.size(); i++) {
            add(kept, cloud.c(i), cloud.s(i), cloud.t(i), cloud.weight(i));
        }
        assertEquals(2 * kept.size(), cloud.size(), "two for each column");
        assertTrue(kept.size() > 100, "columns " + kept.size());
        kept.forEach((column, sums) -> {
            double[] all = columns.get(column);
            assertEquals(all[1] / all[0], sums[1] / sums[0], 1e-3);
            assertEquals(all[2] / all[0], sums[2] / sums[0], 2e-3);
        });
    }

    private static void add(Map<List<Long>, double[]> columns, double c, double s, double t, double weight) {
        double[] sums =
                columns.computeIfAbsent(List.of(Math.round(1000 * c), Math.round(1000 * s)), key -> new double[3]);
        sums[0] += weight;
        sums[1] += weight * t;
        sums[2] += weight * t * t;
    }

    // The expectation over the points one by one; where all climb alike the program goes along rows instead.
    @ParameterizedTest
    @MethodSource("plates")
    void anExpectationIsTheSumOverThePoints(List<Climb> climbs) {
        TraitCloud cloud = cloud(climbs);
        double[] smooth = onMarks(LogitScale::logistic);
        for (Climb climb : List.of(PLAIN, BARE, EARLY, new Climb(1, 0, 0), new Climb(1, 17, 0), new Climb(1, -17, 0))) {
            for (double shift : new double[] {0, -0.3, 0.123}) {
                double plain =
                        sum(cloud, i -> 1 / (1 + Math.exp(-climb.eta(cloud.c(i), cloud.s(i), cloud.t(i)) - shift)));
                assertEquals(plain, cloud.expect(smooth, climb, shift), 0.0013, "half a mark at a slope of 1/4");
                double[] marks = new double[LogitScale.SIZE];
                cloud.spread(marks, climb, shift, 2);
                double spread = 0;
                for (int mark = 0; mark < marks.length; mark++) {
                    spread += marks[mark] * smooth[mark];
                }
                assertEquals(2 * plain, spread, 0.0026);
            }
        }
    }

    // Own algebra: of even steps of the summed weights each stands for the same share.
    @Test
    void thinnedItKeepsItsMeans() {
        TraitCloud cloud = cloud(List.of(PLAIN, EARLY));
        TraitCloud thin = cloud.thinned(100, 0.5);
        assertEquals(100, thin.size());
        assertEquals(1, sum(thin, i -> 1), 1e-12);
        assertEquals(cloud.meanC(), thin.meanC(), 0.05);
        assertEquals(cloud.meanS(), thin.meanS(), 0.01);
        assertEquals(sum(cloud, cloud::t), sum(thin, thin::t), 0.15);
    }
}
