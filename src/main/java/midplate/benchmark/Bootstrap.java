package midplate.benchmark;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeSet;
import midplate.inference.Series;

/**
 * Standard errors by resampling compounds: compounds, not readings, are what others will bring along.
 *
 * <p>In each resample as many compounds as there are are drawn with replacement; a value counts as often as its compound was
 * drawn, a value of a set as often as the product of the draws of its members. The standard error is the standard deviation
 * of the resampled means. All figures share the same resamples, so that differences are paired. For sets the product counts
 * the chance of each member in full; the errors so found are a little too wide rather than too narrow.
 */
final class Bootstrap {
    private final Map<Series, Integer> places = new HashMap<>();
    private final int[][] draws;

    /**
     * Draws the resamples.
     *
     * @param compounds all compounds that values belong to
     * @param resamples how many resamples, two or more
     * @param seed of the draw
     */
    Bootstrap(Collection<Series> compounds, int resamples, long seed) {
        for (Series series : new TreeSet<>(compounds)) {
            places.put(series, places.size());
        }
        SplittableRandom random = new SplittableRandom(seed);
        int count = places.size();
        draws = new int[resamples][count];
        for (int[] draw : draws) {
            for (int i = 0; i < count; i++) {
                draw[random.nextInt(count)]++;
            }
        }
    }

    /** The mean of a sample with its standard error. */
    Figure figure(Sample sample) {
        return new Figure(sample.mean(), standardError(sample), sample.size());
    }

    private double standardError(Sample sample) {
        Flat flat = flat(sample);
        double sum = 0;
        double squares = 0;
        int used = 0;
        double centre = sample.mean();
        for (int[] draw : draws) {
            double deviation = flat.mean(draw) - centre;
            // a resample that holds none of the compounds says nothing
            if (!Double.isNaN(deviation)) {
                sum += deviation;
                squares += deviation * deviation;
                used++;
            }
        }
        double mean = sum / used;
        return used < 2 ? Double.NaN : Math.sqrt(Math.max(0, squares / used - mean * mean));
    }

    private Flat flat(Sample sample) {
        int size = sample.sums().size();
        Flat flat = new Flat(new int[size][], new double[size], new double[size]);
        int i = 0;
        for (Map.Entry<Sample.Members, double[]> entry : sample.sums().entrySet()) {
            List<Series> members = entry.getKey().series();
            flat.members[i] = members.stream().mapToInt(this::place).toArray();
            flat.sums[i] = entry.getValue()[0];
            flat.counts[i] = entry.getValue()[1];
            i++;
        }
        return flat;
    }

    private int place(Series series) {
        Integer place = places.get(series);
        if (place == null) {
            throw new IllegalArgumentException(series + " is none of the compounds that are resampled.");
        }
        return place;
    }

    private record Flat(int[][] members, double[] sums, double[] counts) {
        double mean(int[] draw) {
            double sum = 0;
            double count = 0;
            for (int i = 0; i < members.length; i++) {
                double weight = 1;
                for (int member : members[i]) {
                    weight *= draw[member];
                }
                sum += weight * sums[i];
                count += weight * counts[i];
            }
            return sum / count;
        }
    }
}
