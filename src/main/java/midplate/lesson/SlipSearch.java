package midplate.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Finds pairs whose readings look as if one mistake of measuring had moved them all.
 *
 * <p>Of each pair Bayes' rule weighs: nothing wrong, each {@link MeasuringSlip}, or a plate that is odd in some other way (errors three times as
 * large). Where a spot lies is the median of the other pairs; how much plates and readings scatter is that of the others as well ({@link
 * SharedShift}, readings and plates far off left out), with {@code cov = σ_p²·g·gᵀ + σ_r²·1} over the spots of a plate. A mistake is told where its chance
 * reaches 0.7. With one spot a mistake looks like any other, and nothing is told.
 */
final class SlipSearch {
    /** Chance from which a mistake is told [1] (own choice). */
    private static final double TOLD = 0.7;
    /** How likely a plate is odd in some other way [1], and how much wider its errors then are (own choice). */
    private static final double ODD = 0.05;

    private static final double ODD_WIDER = 3;
    /** Fewest other readings of a spot from which its place is known (own choice). */
    private static final int LEAST_OTHERS = 5;
    /** Scatter is never taken for smaller than this: of readings [Rf], of plates [ln units]. */
    private static final double LEAST_OWN = 0.01;

    private static final double LEAST_SHIFT = 0.08;
    /** The variance of a median over that of a mean, of normal errors: π/2. */
    private static final double OF_MEDIAN = Math.PI / 2;

    private final double[] middle;
    private final double own;
    private final double shift;

    private SlipSearch(double[] middle, double own, double shift) {
        this.middle = middle;
        this.own = own;
        this.shift = shift;
    }

    /**
     * A mistake that a pair seems to have made.
     *
     * @param pair which
     * @param slip what
     * @param chance how likely [1]
     * @param rule the likeliest form of it
     */
    record Found(String pair, MeasuringSlip slip, double chance, MeasuringSlip.Rule rule) {}

    /** Those of a class, in the order of the pairs. */
    static List<Found> in(int spots, List<ClassReading> readings) {
        List<ClassReading> far = OutlyingReadings.in(spots, readings);
        List<ClassPlate> farPlates = PlateShifts.of(spots, readings).far();
        Set<String> pairs = new LinkedHashSet<>();
        readings.forEach(each -> pairs.add(each.pair()));
        List<Found> found = new ArrayList<>();
        for (String pair : pairs) {
            List<ClassReading> mine =
                    readings.stream().filter(each -> each.pair().equals(pair)).toList();
            List<ClassReading> others = readings.stream()
                    .filter(each ->
                            !each.pair().equals(pair) && !far.contains(each) && !farPlates.contains(each.plate()))
                    .toList();
            of(spots, others).flatMap(search -> search.judged(pair, mine)).ifPresent(found::add);
        }
        return List.copyOf(found);
    }

    private static Optional<SlipSearch> of(int spots, List<ClassReading> others) {
        return SharedShift.of(ClassTable.of(spots, others)).map(scatter -> {
            double[] middle = new double[spots];
            double least = Double.POSITIVE_INFINITY;
            for (int s = 0; s < spots; s++) {
                double[] read = OutlyingReadings.of(s, others);
                middle[s] = read.length < LEAST_OTHERS ? Double.NaN : OutlyingReadings.middle(read);
                least = Double.isNaN(middle[s]) ? least : Math.min(least, read.length);
            }
            double more = 1 + OF_MEDIAN / least;
            return new SlipSearch(
                    middle,
                    more * Math.max(LEAST_OWN * LEAST_OWN, scatter.own()),
                    more * Math.max(LEAST_SHIFT * LEAST_SHIFT, scatter.shift()));
        });
    }

    private Optional<Found> judged(String pair, List<ClassReading> mine) {
        Map<ClassPlate, List<ClassReading>> plates = new LinkedHashMap<>();
        mine.stream()
                .filter(each -> !Double.isNaN(middle[each.spot()]))
                .forEach(each -> plates.computeIfAbsent(each.plate(), plate -> new ArrayList<>())
                        .add(each));
        boolean severalSpots = plates.values().stream()
                .anyMatch(on ->
                        on.stream().mapToInt(ClassReading::spot).distinct().count() > 1);
        if (!severalSpots) {
            return Optional.empty();
        }
        HowRead how = mine.get(0).how();
        double none = logLikelihood(plates, MeasuringSlip.Rule.NONE, 1);
        double odd = ODD * Math.exp(logLikelihood(plates, MeasuringSlip.Rule.NONE, ODD_WIDER) - none);
        double all = odd + 1 - ODD;
        double best = 0;
        Optional<Found> found = Optional.empty();
        for (MeasuringSlip slip : MeasuringSlip.values()) {
            if (mine.stream().allMatch(each -> slip.isPossible(each.how()))) {
                all -= slip.prior();
                Weighed weighed = weighed(plates, slip.rules(how.startPart()), none);
                double weight = slip.prior() * weighed.mean();
                all += weight;
                if (weight > best) {
                    best = weight;
                    found = Optional.of(new Found(pair, slip, weight, weighed.likeliest()));
                }
            }
        }
        double sum = all;
        return found.map(each -> new Found(pair, each.slip(), each.chance() / sum, each.rule()))
                .filter(each -> each.chance() >= TOLD);
    }

    /** How much likelier a mistake makes the readings, on average over its forms, and the likeliest form. */
    private record Weighed(double mean, MeasuringSlip.Rule likeliest) {}

    private Weighed weighed(Map<ClassPlate, List<ClassReading>> plates, List<MeasuringSlip.Rule> rules, double none) {
        MeasuringSlip.Rule likeliest = rules.get(0);
        double most = 0;
        double sum = 0;
        for (MeasuringSlip.Rule rule : rules) {
            double likely = Math.exp(Math.min(500, logLikelihood(plates, rule, 1) - none));
            sum += likely;
            if (likely > most) {
                most = likely;
                likeliest = rule;
            }
        }
        return new Weighed(sum / rules.size(), likeliest);
    }

    private double logLikelihood(Map<ClassPlate, List<ClassReading>> plates, MeasuringSlip.Rule rule, double wider) {
        return plates.values().stream()
                .mapToDouble(on -> ofPlate(on, rule, wider))
                .sum();
    }

    /** The normal density of a plate, by the formula of Sherman and Morrison; what does not depend on the rule or the width is left out. */
    private double ofPlate(List<ClassReading> on, MeasuringSlip.Rule rule, double wider) {
        double variance = own * rule.b() * rule.b() * wider * wider;
        double common = 0;
        double along = 0;
        double square = 0;
        double log = 0;
        for (int s = 0; s < middle.length; s++) {
            double[] read = OutlyingReadings.of(s, on);
            if (read.length > 0) {
                double off = StatUtils.mean(read) - rule.read(middle[s]);
                double u = SharedShift.slope(middle[s]) * Math.sqrt(shift) * rule.b() * wider;
                common += u * u / variance;
                along += u * off / variance;
                square += off * off / variance;
                log += Math.log(variance);
            }
        }
        return -0.5 * (square - along * along / (1 + common) + log + Math.log1p(common));
    }
}
