package midplate.column;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import midplate.advice.Question;
import midplate.catalogue.ColumnLaw;
import midplate.inference.Climb;
import midplate.inference.Knowledge;
import midplate.inference.PairModel;
import midplate.inference.TraitDraws;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.jspecify.annotations.Nullable;

/**
 * The bands of a sample by the law fitted to cartridges, or by the published bed and the ideal law in glass ({@link BedLaw}), for
 * {@value #CASES} cases of the same weight. In each case every spot has traits that agree with its plates and earlier columns, a
 * deviation of its own on columns, and for the run to come a scatter of middle and width; what was not measured of a bed or pair
 * shifts all spots of a case alike, but for those of which earlier columns tell the whole shift. The cases are the same for every bed and
 * program, so that programs can be compared by small differences. Immutable but for what it keeps, and safe to share between threads.
 *
 * <p>Start and end move as points of their own: {@code start = 2V/(1 + e^u)}, {@code end = 2V·e^u/(1 + e^u)} in one eluent, and in a
 * program each with its own share of void and hold, so that a stronger step pulls the tail in. A load larger than any that was
 * measured comes on top as a plug.
 */
public final class ColumnForecast implements BandLaw {
    /** Cases. */
    static final int CASES = 512;

    private static final double TAIL = 0.05;
    /** Below this Rf the ideal law says no more than that a spot stays [1]. */
    private static final double LEAST_RF = 0.005;

    /** The same whoever works it out, so it does not matter if two threads do. */
    private static volatile @Nullable Students latest;

    private final BedLaw law;
    private final TraitDraws draws;
    private final EarlierBands earlier;
    /** How far what is common to all spots lies beside the law [standard deviations], by case. */
    private final double[] common;
    /** Scatter of ln V [scales], by spot and case. */
    private final double[][] middles;
    /** What ln u has beyond the law [ln units]. */
    private final double[][] widths;

    private final Map<Double, double[][]> etas = new ConcurrentHashMap<>();

    private ColumnForecast(
            BedLaw law,
            TraitDraws draws,
            EarlierBands earlier,
            double[] common,
            double[][] middles,
            double[][] widths) {
        this.law = law;
        this.draws = draws;
        this.earlier = earlier;
        this.common = common;
        this.middles = middles;
        this.widths = widths;
    }

    /**
     * A forecast.
     *
     * @param law fitted to cartridges
     * @param sample the spots and their pair of solvents
     * @param knowledge what the plates of that sample say
     * @param earlier where its compounds left earlier columns in that pair, in any order
     */
    public static ColumnForecast of(ColumnLaw law, Question sample, Knowledge knowledge, List<ObservedBand> earlier) {
        boolean isMeasured =
                knowledge.model().id().equals(law.pair()) && sample.additive().isEmpty();
        return of(law, knowledge, sample.spots(), isMeasured ? Conditions.MEASURED : Conditions.OTHER, earlier);
    }

    static ColumnForecast of(
            ColumnLaw law, Knowledge knowledge, List<String> spots, Conditions conditions, List<ObservedBand> earlier) {
        BedLaw beds = new BedLaw(law, knowledge.model(), conditions == Conditions.MEASURED);
        EarlierBands seen = new EarlierBands(beds, spots, earlier);
        TraitDraws draws = TraitDraws.of(knowledge, CASES, seen);
        double[][] middles = new double[spots.size()][];
        double[][] widths = new double[spots.size()][];
        double[] student = student(law.runFreedom());
        for (int spot = 0; spot < spots.size(); spot++) {
            middles[spot] = Arrays.stream(TraitDraws.fresh(knowledge, spot, CASES, 0))
                    .map(place -> student[(int) (place * CASES)])
                    .toArray();
            NormalDistribution width = seen.width(spot);
            widths[spot] = Arrays.stream(TraitDraws.fresh(knowledge, spot, CASES, 1))
                    .map(width::inverseCumulativeProbability)
                    .toArray();
        }
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        double[] common = Arrays.stream(TraitDraws.common(CASES))
                .map(normal::inverseCumulativeProbability)
                .toArray();
        return new ColumnForecast(beds, draws, seen, common, middles, widths);
    }

    /** So many values of Student's t with the same weight, rising; those asked for last are kept. */
    private static double[] student(double freedom) {
        Students known = latest;
        if (known == null || known.freedom != freedom) {
            TDistribution law = new TDistribution(null, freedom);
            double[] values = new double[CASES];
            for (int k = 0; k < CASES; k++) {
                values[k] = law.inverseCumulativeProbability((k + 0.5) / CASES);
            }
            known = new Students(freedom, values);
            latest = known;
        }
        return known.values;
    }

    private record Students(double freedom, double[] values) {}

    @Override
    public int spots() {
        return draws.spots();
    }

    @Override
    public Bands bands(Bed bed, Program program, double loadMl) {
        DrawnBands bands = new DrawnBands(spots(), draws.cases());
        Migration migration = Migration.of(program);
        double[] percents = migration.percents();
        double[] held = new double[percents.length];
        double[][][] eta = Arrays.stream(percents).mapToObj(this::etas).toArray(double[][][]::new);
        double plug = law.plugMl(bed, loadMl);
        for (int spot = 0; spot < spots(); spot++) {
            for (int k = 0; k < draws.cases(); k++) {
                double own = Math.exp(deviation(bed, spot, k));
                for (int i = 0; i < held.length; i++) {
                    held[i] = own * law.heldMl(bed, eta[i][spot][k], percents[i]);
                }
                double scatter = Math.exp(law.law().runScatter() * middles[spot][k]);
                double first = scatter * law.unretainedMl(bed);
                double middle = first + migration.run(held, scatter);
                double width = Math.exp(law.logWidth(bed, middle / scatter, loadMl) + widths[spot][k]);
                double early = 2 / (1 + Math.exp(width));
                double late = 2 - early;
                double start = early * first + migration.run(held, early * scatter);
                double end = late * first + migration.run(held, late * scatter);
                bands.put(spot, k, start, middle + plug / 2, end + plug);
            }
        }
        return bands;
    }

    /** By how much more than the law says a compound is held [ln units]. */
    private double deviation(Bed bed, int spot, int oneCase) {
        double own = draws.deviation(oneCase, spot);
        return earlier.known(spot) == TraitDraws.Known.SOMETHING
                ? law.spread(bed) * own
                : law.ownSpread() * own + law.commonSpread(bed) * common[oneCase];
    }

    private double[][] etas(double percent) {
        return etas.computeIfAbsent(percent, this::worked);
    }

    private double[][] worked(double percent) {
        PairModel pair = law.pair();
        Climb climb = pair.climb(percent);
        double[][] eta = new double[spots()][draws.cases()];
        for (int spot = 0; spot < spots(); spot++) {
            for (int k = 0; k < draws.cases(); k++) {
                eta[spot][k] = draws.eta(k, spot, climb);
            }
        }
        return eta;
    }

    @Override
    public Range90 rf(int spot, double percentStrong) {
        return range(
                Arrays.stream(etas(percentStrong)[spot]).map(law.pair()::rf).toArray());
    }

    private static Range90 range(double[] values) {
        Arrays.sort(values);
        return new Range90(quantile(values, 0.5), quantile(values, TAIL), quantile(values, 1 - TAIL));
    }

    private static double quantile(double[] sorted, double share) {
        double place = share * sorted.length - 0.5;
        int below = Math.max(0, Math.min(sorted.length - 2, (int) Math.floor(place)));
        return sorted[below] + (place - below) * (sorted[below + 1] - sorted[below]);
    }

    @Override
    public double idealMl(int spot, Bed bed, Program program) {
        return law.unretainedMl(bed)
                + Migration.of(program).run(percent -> {
                    double rf = Math.max(LEAST_RF, rf(spot, percent).value());
                    return law.voidMl(bed) * (BedLaw.columnVolumes(rf) - 1);
                });
    }

    @Override
    public double unretainedMl(Bed bed) {
        return law.unretainedMl(bed);
    }

    @Override
    public Conditions conditions() {
        return law.isMeasured() ? Conditions.MEASURED : Conditions.OTHER;
    }

    @Override
    public double lowestPercent() {
        return law.pair().lowestPercent();
    }

    @Override
    public double highestPercent() {
        return law.pair().highestPercent();
    }

    @Override
    public double voidMl(Bed bed) {
        return law.voidMl(bed);
    }
}
