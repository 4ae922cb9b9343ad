package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.advice.Forecast;
import midplate.advice.PourableRatios;
import midplate.advice.Ratio;
import midplate.advice.SpotForecast;
import midplate.advice.Window;

/**
 * A plate of a series, as the model foretells it.
 *
 * @param percentStrong share of the strong solvent [% v/v]
 * @param ratio the same in small whole parts; empty where it is poured by nobody
 * @param strength ε [1] by the published table; empty where the solvents are not in it
 * @param spots each compound with its Rf to expect and its 90 % band [1], in the order of the lesson
 */
public record SeriesPlate(
        double percentStrong, Optional<Ratio> ratio, OptionalDouble strength, List<SpotForecast> spots) {
    /** Keeps its own copy. */
    public SeriesPlate {
        spots = List.copyOf(spots);
    }

    /** Two spots that are neighbours, the lower one first. */
    public record Neighbours(SpotForecast lower, SpotForecast upper) {
        /** How far they lie apart in Rf [1]. */
        public double gap() {
            return upper.rf() - lower.rf();
        }
    }

    static SeriesPlate of(Forecast forecast, Optional<PublishedStrength> strength) {
        double percent = forecast.percentStrong();
        return new SeriesPlate(
                percent,
                PourableRatios.between(percent, percent).stream().findFirst(),
                strength.map(each -> OptionalDouble.of(each.at(percent))).orElse(OptionalDouble.empty()),
                forecast.spots());
    }

    /** The spots from the start line to the front. */
    public List<SpotForecast> upwards() {
        List<SpotForecast> sorted = new ArrayList<>(spots);
        sorted.sort(Comparator.comparingDouble(SpotForecast::rf));
        return sorted;
    }

    /** The two that lie closest; empty for one spot. */
    public Optional<Neighbours> closest() {
        List<SpotForecast> sorted = upwards();
        List<Neighbours> all = new ArrayList<>();
        for (int i = 1; i < sorted.size(); i++) {
            all.add(new Neighbours(sorted.get(i - 1), sorted.get(i)));
        }
        return all.stream().min(Comparator.comparingDouble(Neighbours::gap));
    }

    /** How many spots are expected inside the window. */
    public int inWindow() {
        return (int) spots.stream()
                .filter(spot -> spot.rf() >= Window.USUAL.low() && spot.rf() <= Window.USUAL.high())
                .count();
    }
}
