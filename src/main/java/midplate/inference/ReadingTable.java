package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The readings of one pair as a table: a series a row, a percentage a column, NaN where nothing was measured. Rows stand in
 * the order of {@link Series}, columns rise.
 */
public final class ReadingTable {
    private final PairName pair;
    private final List<Series> series;
    private final double[] percents;
    private final double[][] rf;

    private ReadingTable(PairName pair, List<Series> series, double[] percents, double[][] rf) {
        this.pair = pair;
        this.series = series;
        this.percents = percents;
        this.rf = rf;
    }

    /** The table of a pair; a series that stands twice at one percentage gets the mean. */
    static ReadingTable of(PairName pair, Collection<Measurement> measurements) {
        SortedMap<Series, SortedMap<Double, double[]>> sums = new TreeMap<>();
        for (Measurement measurement : measurements) {
            pair.percentIn(measurement.fractions()).ifPresent(percent -> {
                double[] sum = sums.computeIfAbsent(measurement.series(), key -> new TreeMap<>())
                        .computeIfAbsent(percent, key -> new double[2]);
                sum[0] += measurement.rf();
                sum[1]++;
            });
        }
        return of(pair, sums);
    }

    private static ReadingTable of(PairName pair, SortedMap<Series, SortedMap<Double, double[]>> sums) {
        TreeSet<Double> all = new TreeSet<>();
        sums.values().forEach(row -> all.addAll(row.keySet()));
        double[] percents = all.stream().mapToDouble(Double::doubleValue).toArray();
        double[][] rf = new double[sums.size()][percents.length];
        int i = 0;
        for (Map<Double, double[]> row : sums.values()) {
            Arrays.fill(rf[i], Double.NaN);
            for (Map.Entry<Double, double[]> entry : row.entrySet()) {
                int j = Arrays.binarySearch(percents, entry.getKey());
                rf[i][j] = entry.getValue()[0] / entry.getValue()[1];
            }
            i++;
        }
        return new ReadingTable(pair, List.copyOf(sums.keySet()), percents, rf);
    }

    /**
     * The columns above a percentage, with the rows that have a reading there.
     *
     * @param percent [% v/v]; 0 leaves out the pure weak solvent
     */
    public ReadingTable above(double percent) {
        return columns(Arrays.stream(percents).filter(p -> p > percent).toArray());
    }

    /**
     * The columns below a percentage, with the rows that have a reading there.
     *
     * @param percent [% v/v]; 99 leaves out the pure strong solvent
     */
    public ReadingTable below(double percent) {
        return columns(Arrays.stream(percents).filter(p -> p < percent).toArray());
    }

    private ReadingTable columns(double[] kept) {
        List<Series> keptSeries = new ArrayList<>();
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < series.size(); i++) {
            double[] row = new double[kept.length];
            for (int j = 0; j < kept.length; j++) {
                row[j] = rf[i][Arrays.binarySearch(percents, kept[j])];
            }
            if (Arrays.stream(row).anyMatch(value -> !Double.isNaN(value))) {
                keptSeries.add(series.get(i));
                rows.add(row);
            }
        }
        return new ReadingTable(pair, List.copyOf(keptSeries), kept, rows.toArray(double[][]::new));
    }

    /** Whose readings these are. */
    public PairName pair() {
        return pair;
    }

    /** The rows. */
    public List<Series> series() {
        return series;
    }

    /** The columns [% v/v of the stronger solvent, two decimals], rising. */
    public double[] percents() {
        return percents.clone();
    }

    /** The Rf [1] in a cell; NaN where nothing was measured. */
    public double rf(int row, int column) {
        return rf[row][column];
    }

    /** The Rf [1] of a row, NaN where nothing was measured. */
    public double[] row(int row) {
        return rf[row].clone();
    }

    /** The mean Rf [1] of all series of a structure at each percentage, NaN where nothing was measured. */
    double[] meanRow(String smiles) {
        double[] mean = new double[percents.length];
        for (int j = 0; j < mean.length; j++) {
            double sum = 0;
            int count = 0;
            for (int i = 0; i < rf.length; i++) {
                if (series.get(i).smiles().equals(smiles) && !Double.isNaN(rf[i][j])) {
                    sum += rf[i][j];
                    count++;
                }
            }
            mean[j] = count == 0 ? Double.NaN : sum / count;
        }
        return mean;
    }

    /** Where a series stands; empty when it was not measured in this pair. */
    public OptionalInt rowOf(Series wanted) {
        int found = Collections.binarySearch(series, wanted);
        return found >= 0 ? OptionalInt.of(found) : OptionalInt.empty();
    }
}
