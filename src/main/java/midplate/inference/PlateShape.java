package midplate.inference;

import java.util.ArrayList;
import java.util.List;

/**
 * How readings and their noise behave near the two lines, and the search for the values that fit best.
 *
 * @param leftAtLines share of the noise variance left at the lines [1], in (0, 1]
 * @param stretch how far the scale of Rf reaches beyond the lines
 */
record PlateShape(double leftAtLines, Stretch stretch) {
    static final PlateShape START = new PlateShape(0.1, new Stretch(0.01, 0.01));
    private static final double FACTOR = 1.25;
    private static final double LEAST_NOISE = 0.02;
    private static final double LEAST_STRETCH = 0.002;
    private static final double MOST_STRETCH = 0.1;

    /** This shape and those in which one of its numbers is a little smaller or larger. */
    private List<PlateShape> neighbours() {
        List<PlateShape> all = new ArrayList<>();
        all.add(this);
        for (double factor : new double[] {1 / FACTOR, FACTOR}) {
            all.add(new PlateShape(held(leftAtLines * factor, LEAST_NOISE, 1), stretch));
            all.add(new PlateShape(
                    leftAtLines,
                    new Stretch(held(stretch.start() * factor, LEAST_STRETCH, MOST_STRETCH), stretch.front())));
            all.add(new PlateShape(
                    leftAtLines,
                    new Stretch(stretch.start(), held(stretch.front() * factor, LEAST_STRETCH, MOST_STRETCH))));
        }
        return all;
    }

    private static double held(double value, double least, double most) {
        return StrictMath.max(least, StrictMath.min(most, value));
    }

    /**
     * The neighbour under which the readings are most likely, summed over the traits: the likelihood itself and not its
     * expectation, in which the traits, weighed under the old shape, would hold the shape where it is.
     */
    PlateShape better(
            TraitGrid grid,
            double[] prior,
            List<Weights> weights,
            double[][] rf,
            Climb[] climbs,
            double[] scales,
            double atLines) {
        PlateShape best = this;
        double most = Double.NEGATIVE_INFINITY;
        for (PlateShape shape : neighbours()) {
            double fit = logLikelihood(FitTables.of(grid, climbs, scales, shape, atLines), prior, weights, rf);
            if (fit > most) {
                most = fit;
                best = shape;
            }
        }
        return best;
    }

    /** Logarithm of the likelihood of all readings, over the traits that matter for each series. */
    private static double logLikelihood(FitTables tables, double[] prior, List<Weights> weights, double[][] rf) {
        double sum = 0;
        for (int i = 0; i < rf.length; i++) {
            Weights series = weights.get(i);
            double evidence = 0;
            for (int k = 0; k < series.size(); k++) {
                int node = series.node(k);
                double product = prior[node];
                for (int j = 0; j < rf[i].length; j++) {
                    if (!Double.isNaN(rf[i][j])) {
                        product *= tables.likelihood(rf[i][j], j, node);
                    }
                }
                evidence += product;
            }
            sum += StrictMath.log(evidence);
        }
        return sum;
    }
}
