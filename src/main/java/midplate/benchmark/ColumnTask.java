package midplate.benchmark;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import midplate.inference.ColumnMeasurement;
import midplate.inference.ColumnMeasurements;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import midplate.inference.ReadingTable;

/**
 * A compound that was run both on plates and on columns.
 *
 * @param smiles its structure
 * @param plates its Rf [1] by the share of ethyl acetate [% v/v], the mean of its series
 * @param runs its columns, in the order of the file
 */
record ColumnTask(String smiles, Map<Double, Double> plates, List<ColumnMeasurement> runs) {
    /** Shares that differ by less are one ratio, written with more or fewer digits [% v/v]. */
    private static final double ONE_RATIO = 0.1;

    /** All of them, sorted. */
    static List<ColumnTask> of(OpenMeasurements plates, ColumnMeasurements columns) {
        ReadingTable table = plates.table(PairName.HEXANE_ETHYL_ACETATE);
        Map<String, Map<Double, double[]>> read = new TreeMap<>();
        double[] percents = table.percents();
        for (int i = 0; i < table.series().size(); i++) {
            for (int j = 0; j < percents.length; j++) {
                if (!Double.isNaN(table.rf(i, j))) {
                    double[] sum = read.computeIfAbsent(table.series().get(i).smiles(), key -> new TreeMap<>())
                            .computeIfAbsent(percents[j], key -> new double[2]);
                    sum[0] += table.rf(i, j);
                    sum[1]++;
                }
            }
        }
        return columns.structures().stream()
                .filter(read::containsKey)
                .map(smiles -> new ColumnTask(smiles, means(read.getOrDefault(smiles, Map.of())), columns.runs(smiles)))
                .toList();
    }

    private static Map<Double, Double> means(Map<Double, double[]> sums) {
        Map<Double, Double> means = new TreeMap<>();
        sums.forEach((percent, sum) -> means.put(percent, sum[0] / sum[1]));
        return means;
    }

    /** The plates with the eluent of a column: one or none. */
    Map<Double, Double> plateAt(double percent) {
        Map<Double, Double> found = new TreeMap<>();
        plates.forEach((share, rf) -> {
            if (isOneRatio(share, percent)) {
                found.put(share, rf);
            }
        });
        return found;
    }

    static boolean isOneRatio(double one, double other) {
        return Math.abs(one - other) < ONE_RATIO;
    }
}
