package midplate.inference;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import midplate.plate.Limit;
import midplate.plate.Reading;

/**
 * What was seen of one spot in the lanes of one plate, put together to one trial.
 *
 * <p>Lanes of a plate have the plate's error and the compound's own deviation in common, so a second lane is no second trial:
 * the mean counts as one reading, and how well the lanes agree as {@code (2π·s²)^(−(n−1)/2)·n^(−½)·exp(−Σ(r − r̄)²/(2s²))},
 * which is what n normal readings say beside their mean (own algebra). r [1] the Rf in a lane, n the number of lanes, s [1] the
 * scatter between lanes, {@value #LANE_ERROR}: published, one plate 0.01 to 0.02.
 *
 * @see "Geiss1987"
 */
final class Sightings {
    /** Standard deviation of a spot's Rf between the lanes of one plate [1]. */
    static final double LANE_ERROR = 0.015;

    /** A lane that contradicts another is still possible [1]; common practice, no source. */
    private static final double LEAST_AGREEMENT = 1e-9;

    private final List<Sighting> lanes;

    /**
     * A spot in a lane.
     *
     * @param reading where it was seen
     * @param blur how far off it may lie because it shares what was seen [1 in Rf]; 0 where it does not
     */
    record Sighting(Reading reading, double blur) {}

    private Sightings(List<Sighting> lanes) {
        this.lanes = lanes;
    }

    static final Sightings NONE = new Sightings(List.of());

    Sightings with(Sighting more) {
        List<Sighting> all = new ArrayList<>(lanes);
        all.add(more);
        return new Sightings(all);
    }

    /** The plate as one trial; there is at least one lane. */
    Trial trial(int plate, double percent) {
        List<Sighting> numbers = numbers();
        if (numbers.isEmpty()) {
            return new Trial(plate, percent, tightest());
        }
        double blur = numbers.stream().mapToDouble(Sighting::blur).min().orElse(0);
        return new Trial(plate, percent, new Reading(mean(numbers), Limit.NONE, error(numbers)), blur);
    }

    /** Logarithm of how well the lanes agree [density in Rf to the power of lanes less one]. */
    double logAgreement() {
        List<Sighting> numbers = numbers();
        double log = 0;
        if (!numbers.isEmpty()) {
            double mean = mean(numbers);
            double squares = 0;
            for (Sighting each : numbers) {
                squares += (each.reading().rf() - mean) * (each.reading().rf() - mean);
            }
            double variance = LANE_ERROR * LANE_ERROR;
            int n = numbers.size();
            log = -0.5 * ((n - 1) * Math.log(2 * Math.PI * variance) + Math.log(n) + squares / variance);
            for (Sighting each : lanes) {
                if (each.reading().limit() != Limit.NONE) {
                    log += Math.log(Math.max(LEAST_AGREEMENT, agreement(each.reading(), mean)));
                }
            }
        } else if (lanes.stream().map(each -> each.reading().limit()).distinct().count() > 1) {
            log = Math.log(LEAST_AGREEMENT);
        }
        return log;
    }

    /** The chance that a spot read at an Rf in one lane reads within a bound in another [1]. */
    private static double agreement(Reading bound, double rf) {
        double away = (bound.rf() - rf) / (Math.sqrt(2) * LANE_ERROR);
        return Noise.below(bound.limit() == Limit.AT_START ? away : -away);
    }

    private List<Sighting> numbers() {
        return lanes.stream()
                .filter(each -> each.reading().limit() == Limit.NONE)
                .toList();
    }

    private static double mean(List<Sighting> numbers) {
        return numbers.stream().mapToDouble(each -> each.reading().rf()).sum() / numbers.size();
    }

    /** The ruler's error of the mean, where it is known of every lane. */
    private static OptionalDouble error(List<Sighting> numbers) {
        double squares = 0;
        for (Sighting each : numbers) {
            if (each.reading().standardError().isEmpty()) {
                return OptionalDouble.empty();
            }
            double error = each.reading().standardError().getAsDouble();
            squares += error * error;
        }
        return OptionalDouble.of(Math.sqrt(squares) / numbers.size());
    }

    private Reading tightest() {
        Reading best = lanes.get(0).reading();
        for (Sighting each : lanes) {
            boolean tighter = best.limit() == Limit.AT_START
                    ? each.reading().rf() < best.rf()
                    : each.reading().rf() > best.rf();
            if (each.reading().limit() == best.limit() && tighter) {
                best = each.reading();
            }
        }
        return best;
    }
}
