package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import midplate.advice.PourableRatios;
import midplate.advice.Ratio;
import midplate.inference.PairModel;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * The shares of the strong solvent at which a series is shown: from the least to the largest that the model of the pair holds, even in
 * ln(% + 1), since the first drops do the most, and each the nearest that is poured in practice.
 */
final class SeriesShares {
    /** Plates of a series that is chosen here. */
    private static final int USUAL = 6;
    /** Steps of the grid that is coarser than that of the curves. */
    private static final int COARSE = 40;
    /** Steps of the curves: a straight line between two misses an Rf by less than is seen. */
    private static final int FINE = 160;
    /** Shares are told to four decimals. */
    private static final double WRITTEN = 1e4;

    private SeriesShares() {}

    /** Those asked for, held to the model, or those chosen. */
    static List<Double> of(List<Double> asked, PairModel model) {
        if (asked.isEmpty()) {
            return chosen(model);
        }
        for (int i = 0; i < asked.size(); i++) {
            double percent = asked.get(i);
            if (!(percent >= model.lowestPercent() && percent <= model.highestPercent())) {
                Message allowed = Allowed.closed(model.lowestPercent(), model.highestPercent());
                throw new Refusal(
                        "percents[" + i + "]",
                        Message.of("lesson.series-percent-beyond", "percent", percent),
                        Double.toString(percent),
                        allowed,
                        Message.of("todo.give-series-percent"));
            }
        }
        return asked;
    }

    private static List<Double> chosen(PairModel model) {
        List<Double> pourable = PourableRatios.between(model.lowestPercent(), model.highestPercent()).stream()
                .map(Ratio::percentStrong)
                .toList();
        List<Double> shares = new ArrayList<>();
        for (double percent : even(model, USUAL - 1)) {
            double nearest = pourable.stream()
                    .min(Comparator.comparingDouble(each -> Math.abs(Math.log1p(each) - Math.log1p(percent))))
                    .orElse(percent);
            double held = Math.max(model.lowestPercent(), Math.min(model.highestPercent(), nearest));
            if (shares.isEmpty() || held > shares.get(shares.size() - 1)) {
                shares.add(held);
            }
        }
        return List.copyOf(shares);
    }

    /** The coarser grid [% v/v], between whose shares a straight line in ln(% + 1) is drawn. */
    static List<Double> coarse(PairModel model) {
        return even(model, COARSE);
    }

    /** The grid of the curves [% v/v]. */
    static List<Double> fine(PairModel model) {
        return even(model, FINE);
    }

    private static List<Double> even(PairModel model, int steps) {
        double low = Math.log1p(model.lowestPercent());
        double high = Math.log1p(model.highestPercent());
        List<Double> shares = new ArrayList<>();
        for (int step = 0; step <= steps; step++) {
            double percent = Math.expm1(low + (high - low) * step / steps);
            double written = Math.round(percent * WRITTEN) / WRITTEN;
            shares.add(Math.max(model.lowestPercent(), Math.min(model.highestPercent(), written)));
        }
        return List.copyOf(shares);
    }
}
