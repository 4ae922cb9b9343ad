package midplate.benchmark;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import midplate.chemistry.RetentionFactor;
import midplate.inference.PairName;
import midplate.inference.Series;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Whether what a model misses belongs to a compound or to its plate. Each reading is foretold from all others of its compound; what is left is
 * compared between compounds at the same eluent. Compounds that were measured one after the other (ids that lie near each other) shared
 * eluent, layer and room; compounds of like structure that were measured far apart share their chemistry.
 *
 * <ul>
 *   <li>{@code PAIR.GROUP.neighbours}: correlation of what is left of two compounds of unlike structure with ids at most
 *       {@value #NEAR} apart, over ratios of a group; {@code .alike}: of two of like structure, ids more than {@value #FAR} apart;
 *       {@code .others}: of any two others so far apart.
 *   <li>{@code .neighbours-pairs} and so on: how many pairs of readings stand behind it.
 *   <li>{@code .shared}: the standard deviation that neighbours share, in Rf midway up the plate: root of their covariance [ln units]
 *       over 4.
 * </ul>
 *
 * <p>Standard errors by leaving out each tenth of the series in turn, in the order of their ids (jackknife).
 */
final class SharedScatter {
    private static final String DEVIATION = "deviation.";
    /** Ids at most so far apart were measured together; own choice. */
    private static final int NEAR = 5;
    /** Those farther apart were not; own choice. */
    private static final int FAR = 40;

    /** From this similarity on two structures count as alike [1]; common practice, no source. */
    private static final double ALIKE = 0.4;

    /** So many other readings tell where the curve of a compound runs; own choice. */
    private static final int FEWEST_OTHERS = 3;
    /** Only where both lie inside, what is left can be told in ln units; own choice. */
    private static final double LOW = 0.05;

    private static final double HIGH = 0.95;
    /** A reading farther off than so many standard deviations counts as one that far; own choice. */
    private static final double MOST = 3;

    /** Where the strong solvent covers the surface only in part [% v/v]; own choice. */
    private static final double SMALL_SHARES = 10;

    private static final int BLOCKS = 10;
    private static final double LOGITS_FOR_ONE_RF = 4;

    private final List<Left> all;
    private final List<Series> series;
    private final boolean[][] alike;

    /** What is left of one reading, in standard deviations at its ratio. */
    private record Left(String place, Series series, double standard, double deviation) {}

    private SharedScatter(List<Left> all) {
        this.all = all;
        this.series = all.stream().map(Left::series).distinct().sorted().toList();
        List<Lingo> structures =
                series.stream().map(each -> Lingo.of(each.smiles())).toList();
        this.alike = new boolean[series.size()][series.size()];
        for (int i = 0; i < alike.length; i++) {
            for (int j = 0; j < i; j++) {
                alike[i][j] = structures.get(i).similarity(structures.get(j)) >= ALIKE;
                alike[j][i] = alike[i][j];
            }
        }
    }

    /** Asks a contender for each reading of some compounds, told all others of the compound, and notes what is left. */
    static void note(List<RatioTask> wholes, Contender contender, Samples samples) {
        for (RatioTask whole : wholes) {
            PairName pair = whole.kind().pair();
            for (int i = 0; i < whole.percents().size(); i++) {
                List<TrialReading> others = whole.allElse(i);
                double truth = whole.truths().get(i);
                if (others.size() >= FEWEST_OTHERS && isInside(truth)) {
                    double percent = whole.percents().get(i);
                    double rf = contender.guess(pair, others, percent).rf();
                    if (isInside(rf)) {
                        samples.add(
                                DEVIATION + pair.id() + group(pair, percent) + "@" + percent,
                                List.of(whole.series()),
                                RetentionFactor.logit(truth) - RetentionFactor.logit(rf));
                    }
                }
            }
        }
    }

    private static boolean isInside(double rf) {
        return rf > LOW && rf < HIGH;
    }

    private static String group(PairName pair, double percent) {
        if (pair != PairName.HEXANE_ETHYL_ACETATE) {
            return ".all";
        }
        return percent == 0 ? ".pure" : percent < SMALL_SHARES ? ".below-10" : ".above-10";
    }

    /** The figures of what was noted. */
    static Map<String, Figure> figures(Samples noted) {
        Map<String, List<Left>> groups = new TreeMap<>();
        noted.byName().forEach((name, sample) -> {
            String place = name.substring(DEVIATION.length());
            groups.computeIfAbsent(place.substring(0, place.indexOf('@')), key -> new ArrayList<>())
                    .addAll(lefts(place, sample));
        });
        Map<String, Figure> figures = new TreeMap<>();
        groups.forEach((group, lefts) -> new SharedScatter(lefts).add(group, figures));
        return figures;
    }

    private static List<Left> lefts(String place, Sample sample) {
        double mean = sample.mean();
        double squares = 0;
        for (double[] sum : sample.sums().values()) {
            squares += (sum[0] / sum[1] - mean) * (sum[0] / sum[1] - mean);
        }
        double deviation = Math.sqrt(squares / sample.sums().size());
        List<Left> lefts = new ArrayList<>();
        sample.sums()
                .forEach((members, sum) -> lefts.add(new Left(
                        place,
                        members.series().get(0),
                        Math.max(-MOST, Math.min(MOST, (sum[0] / sum[1] - mean) / deviation)),
                        deviation)));
        return lefts;
    }

    private void add(String group, Map<String, Figure> figures) {
        Counts neighbours = (apart, alike) -> apart <= NEAR && !alike;
        add(group + ".neighbours", neighbours, figures);
        add(group + ".alike", (apart, alike) -> apart > FAR && alike, figures);
        add(group + ".others", (apart, alike) -> apart > FAR && !alike, figures);
        figures.put(
                group + ".shared",
                jackknifed(
                        neighbours, sums -> Math.sqrt(Math.max(0, sums.covariance / sums.count)) / LOGITS_FOR_ONE_RF));
    }

    private void add(String name, Counts counts, Map<String, Figure> figures) {
        Figure correlation = jackknifed(counts, sums -> sums.product / sums.count);
        figures.put(name, correlation);
        figures.put(name + "-pairs", new Figure(correlation.count(), Double.NaN, correlation.count()));
    }

    /** Which pairs count: by how far their ids lie apart, and whether their structures are alike. */
    @FunctionalInterface
    private interface Counts {
        boolean has(int apart, boolean alike);
    }

    /** Sums over pairs of readings at one eluent. */
    private static final class PairSums {
        private double product;
        private double covariance;
        private long count;

        void add(Left one, Left other) {
            double both = one.standard() * other.standard();
            product += both;
            covariance += both * one.deviation() * other.deviation();
            count++;
        }
    }

    @FunctionalInterface
    private interface OfSums {
        double of(PairSums sums);
    }

    private Figure jackknifed(Counts counts, OfSums figure) {
        PairSums whole = new PairSums();
        List<PairSums> without = new ArrayList<>();
        for (int block = 0; block < BLOCKS; block++) {
            without.add(new PairSums());
        }
        Map<String, List<Left>> places =
                all.stream().collect(Collectors.groupingBy(Left::place, TreeMap::new, Collectors.toList()));
        for (List<Left> at : places.values()) {
            int[] number = at.stream()
                    .mapToInt(left -> Collections.binarySearch(series, left.series()))
                    .toArray();
            for (int i = 0; i < number.length; i++) {
                for (int j = 0; j < i; j++) {
                    int apart = Math.abs(
                            at.get(i).series().compound() - at.get(j).series().compound());
                    if (counts.has(apart, alike[number[i]][number[j]])) {
                        whole.add(at.get(i), at.get(j));
                        for (int block = 0; block < BLOCKS; block++) {
                            if (block != block(number[i]) && block != block(number[j])) {
                                without.get(block).add(at.get(i), at.get(j));
                            }
                        }
                    }
                }
            }
        }
        double[] each = without.stream().mapToDouble(figure::of).toArray();
        double error = Math.sqrt(StatUtils.populationVariance(each) * (BLOCKS - 1));
        return new Figure(figure.of(whole), error, whole.count);
    }

    private int block(int number) {
        return number * BLOCKS / series.size();
    }
}
