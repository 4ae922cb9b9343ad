package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import midplate.catalogue.ColumnLaw;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;

/**
 * How wide bands are, by least squares over the runs of all compounds, whether their plates are known or not; what is left falls into
 * a part of each compound and one of each run by the analysis of variance.
 */
final class ColumnWidthFit {
    /** A narrower band, ln(end/start) [1], is one whose end was missed. */
    static final double LEAST_WIDTH = 0.05;
    /** Later bands are too few to say how wide they are: the share of runs that come earlier [1]. */
    private static final double COMMON = 0.99;

    /** The place of the load among what is found. */
    private static final int LOAD = 3;

    private ColumnWidthFit() {}

    /** The runs that are taken. */
    static List<ColumnMeasurement> used(ColumnMeasurements columns) {
        return columns.runs().stream()
                .filter(run -> run.width() >= LEAST_WIDTH && run.loadMl() > 0)
                .toList();
    }

    /**
     * The fit.
     *
     * @param columns all runs
     * @param law V₀ on each cartridge
     * @param allowed whether the load counts
     */
    static ColumnLaw.Width of(ColumnMeasurements columns, ColumnLikelihood law, Set<ColumnTerm> allowed) {
        List<ColumnMeasurement> runs = used(columns);
        double[] loads = runs.stream()
                .mapToDouble(run -> run.loadMl() / run.grams())
                .sorted()
                .toArray();
        double[] places = runs.stream()
                .mapToDouble(run -> StrictMath.log(run.middleMl() / law.voidMl(run.grams())))
                .sorted()
                .toArray();
        double most = StrictMath.max(0, places[(int) (COMMON * (places.length - 1))]);
        ColumnLaw.Width frame = new ColumnLaw.Width(0, 0, loads[0], loads[loads.length - 1], 0, 0, most, 0, 1);
        double[][] x = new double[runs.size()][];
        double[] y = new double[runs.size()];
        for (int i = 0; i < x.length; i++) {
            ColumnMeasurement run = runs.get(i);
            double place = frame.place(run.middleMl(), law.voidMl(run.grams()));
            double load = StrictMath.log(frame.load(run.loadMl(), run.grams()));
            x[i] = new double[] {place, place * place, load};
            y[i] = StrictMath.log(run.width());
        }
        Squares squares = squares(x, y, allowed);
        double[] parts = parts(runs, squares.residuals());
        return new ColumnLaw.Width(
                squares.found()[0],
                squares.found().length > LOAD ? squares.found()[LOAD] : 0,
                frame.leastLoad(),
                frame.mostLoad(),
                squares.found()[1],
                squares.found()[2],
                most,
                StrictMath.sqrt(parts[0]),
                StrictMath.sqrt(parts[1]));
    }

    private record Squares(double[] found, double[] residuals) {
        double sum() {
            return Arrays.stream(residuals).map(each -> each * each).sum();
        }
    }

    /** The least squares, with the load where it is allowed and leaves so much less that chance would seldom do it. */
    private static Squares squares(double[][] x, double[] y, Set<ColumnTerm> allowed) {
        Squares without = squares(
                Arrays.stream(x).map(row -> Arrays.copyOf(row, LOAD - 1)).toArray(double[][]::new), y);
        if (!allowed.contains(ColumnTerm.LOAD)) {
            return without;
        }
        Squares with = squares(x, y);
        return 0.5 * y.length * StrictMath.log(without.sum() / with.sum()) > ColumnFit.ENOUGH ? with : without;
    }

    private static Squares squares(double[][] x, double[] y) {
        OLSMultipleLinearRegression squares = new OLSMultipleLinearRegression();
        squares.newSampleData(y, x);
        return new Squares(squares.estimateRegressionParameters(), squares.estimateResiduals());
    }

    /** The variance between compounds, and that between runs of one. */
    private static double[] parts(List<ColumnMeasurement> runs, double[] residuals) {
        Map<String, List<Double>> byCompound = new TreeMap<>();
        for (int i = 0; i < residuals.length; i++) {
            byCompound
                    .computeIfAbsent(runs.get(i).smiles(), key -> new ArrayList<>())
                    .add(residuals[i]);
        }
        double mean = Arrays.stream(residuals).sum() / residuals.length;
        double within = 0;
        double between = 0;
        double squares = 0;
        for (List<Double> each : byCompound.values()) {
            double own = each.stream().mapToDouble(Double::doubleValue).sum() / each.size();
            for (double residual : each) {
                within += (residual - own) * (residual - own);
            }
            between += each.size() * (own - mean) * (own - mean);
            squares += (double) each.size() * each.size();
        }
        int compounds = byCompound.size();
        double runVariance = within / (residuals.length - compounds);
        double usual = (residuals.length - squares / residuals.length) / (compounds - 1);
        return new double[] {StrictMath.max(0, (between / (compounds - 1) - runVariance) / usual), runVariance};
    }
}
