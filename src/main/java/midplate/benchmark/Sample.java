package midplate.benchmark;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import midplate.inference.Series;

/**
 * Values of one figure, each belonging to one compound or to a set of them; kept as sum and count for each set.
 *
 * <p>The figure is the mean of all values. Its error comes from {@link Bootstrap}.
 */
final class Sample {
    private final Map<Members, double[]> sums = new TreeMap<>();

    /** Adds one value of a compound or a set of compounds. */
    void add(List<Series> members, double value) {
        double[] sum = sums.computeIfAbsent(new Members(members), key -> new double[2]);
        sum[0] += value;
        sum[1]++;
    }

    /** Adds all values of another sample. */
    void addAll(Sample other) {
        other.sums.forEach((members, more) -> {
            double[] sum = sums.computeIfAbsent(members, key -> new double[2]);
            sum[0] += more[0];
            sum[1] += more[1];
        });
    }

    /**
     * This one less another one, value by value.
     *
     * @throws IllegalArgumentException when the two do not stand for the same questions
     */
    Sample minus(Sample other) {
        if (!sums.keySet().equals(other.sums.keySet())) {
            throw new IllegalArgumentException("Two samples of different compounds cannot be paired.");
        }
        Sample difference = new Sample();
        sums.forEach((members, sum) -> {
            double[] less = other.sums.getOrDefault(members, sum);
            if (less[1] != sum[1]) {
                throw new IllegalArgumentException("Came " + less[1] + " values against " + sum[1] + " of " + members
                        + "; paired samples have the same questions.");
            }
            difference.sums.put(members, new double[] {sum[0] - less[0], sum[1]});
        });
        return difference;
    }

    /** The mean; NaN when there is no value. */
    double mean() {
        double sum = 0;
        double count = 0;
        for (double[] part : sums.values()) {
            sum += part[0];
            count += part[1];
        }
        return sum / count;
    }

    /** How many values. */
    long size() {
        double count = 0;
        for (double[] part : sums.values()) {
            count += part[1];
        }
        return Math.round(count);
    }

    /** Sum and count of each set of compounds, in a fixed order. */
    Map<Members, double[]> sums() {
        return sums;
    }

    /** One compound or a set of them, in the order of their series. */
    record Members(List<Series> series) implements Comparable<Members> {
        Members {
            series = List.copyOf(series);
        }

        @Override
        public int compareTo(Members other) {
            for (int i = 0; i < Math.min(series.size(), other.series.size()); i++) {
                int order = series.get(i).compareTo(other.series.get(i));
                if (order != 0) {
                    return order;
                }
            }
            return Integer.compare(series.size(), other.series.size());
        }
    }
}
