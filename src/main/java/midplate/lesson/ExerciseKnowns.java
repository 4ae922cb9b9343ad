package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import midplate.advice.Consultation;
import midplate.advice.Forecast;
import midplate.advice.PourableRatios;
import midplate.advice.Ratio;
import midplate.advice.SpotForecast;
import midplate.inference.Knowledge;
import midplate.inference.PossiblePlates;

/**
 * Named compounds of an exercise, whose places are foretold before the unknowns are run: three that are none of the unknowns, that
 * differ so much that their bands hardly lie over each other, and the mixture in which the model has them widest apart.
 */
public final class ExerciseKnowns {
    private static final int COUNT = 3;
    private static final double LOWEST_RF = 0.1;
    private static final double HIGHEST_RF = 0.9;
    /** Wide enough apart for an order to be asked for [1 in Rf]. */
    private static final double WIDE = 0.12;
    /** So many of the possible samples must have an order for it to count [1]. */
    private static final double SURE = 0.9;
    /** For what is drawn: knowns. */
    private static final int KNOWNS = 3;

    /** So often it is drawn for bands that do not lie over each other; then the best is taken. */
    private static final int ATTEMPTS = 20;

    private static final int MOST_ATTEMPTS = 500;

    private final List<ExerciseCompound> compounds;
    private final Ratio ratio;
    private final Forecast forecast;
    private final PossiblePlates plates;

    private ExerciseKnowns(List<ExerciseCompound> compounds, Ratio ratio, Forecast forecast, PossiblePlates plates) {
        this.compounds = compounds;
        this.ratio = ratio;
        this.forecast = forecast;
        this.plates = plates;
    }

    /**
     * Those of an exercise.
     *
     * @param exercise which
     * @param model what lessons compute with
     * @param table the compounds it may be about
     */
    public static ExerciseKnowns of(Exercise exercise, LessonModel model, List<ExerciseCompound> table) {
        List<ExerciseCompound> others = Exercise.usable(table).stream()
                .filter(each -> !exercise.compounds().contains(each))
                .toList();
        Optional<ExerciseKnowns> best = Optional.empty();
        for (int attempt = 0; attempt < MOST_ATTEMPTS; attempt++) {
            ExerciseKnowns widest = drawn(exercise, model, others, attempt);
            if (gap(widest.forecast) >= WIDE && (best.isEmpty() || between(widest) > between(best.get()))) {
                best = Optional.of(widest);
            }
            if (best.isPresent() && (between(best.get()) >= 0 || attempt >= ATTEMPTS)) {
                return best.get();
            }
        }
        throw new IllegalStateException("No knowns for " + exercise.code());
    }

    private static ExerciseKnowns drawn(
            Exercise exercise, LessonModel model, List<ExerciseCompound> others, int attempt) {
        List<ExerciseCompound> drawn =
                Exercise.draws(exercise.code(), KNOWNS, attempt).some(others, COUNT);
        List<LessonCompound> named = IntStream.range(0, COUNT)
                .mapToObj(i -> new LessonCompound(
                        drawn.get(i).compound().id(), drawn.get(i).counts()))
                .toList();
        return widest(drawn, model.consult(Exercise.sample(exercise.code().pair(), model.catalogue(), named)));
    }

    /** What is left between the bands of neighbours, to a thousandth [1 in Rf]; below 0 where two lie over each other. */
    private static double between(ExerciseKnowns knowns) {
        List<SpotForecast> rising = knowns.forecast.spots().stream()
                .sorted(Comparator.comparingDouble(SpotForecast::rf))
                .toList();
        return IntStream.range(1, COUNT)
                .mapToDouble(i -> thousandth(rising.get(i).low())
                        - thousandth(rising.get(i - 1).high()))
                .min()
                .orElseThrow();
    }

    private static ExerciseKnowns widest(List<ExerciseCompound> drawn, Consultation consultation) {
        Knowledge knowledge = consultation.knowledge();
        List<Ratio> ratios =
                PourableRatios.between(
                                knowledge.model().lowestPercent(),
                                knowledge.model().highestPercent())
                        .stream()
                        .filter(ratio -> ratio.weak() > 0 && ratio.strong() > 0)
                        .toList();
        List<Forecast> all =
                consultation.at(ratios.stream().map(Ratio::percentStrong).toList());
        int best = 0;
        for (int i = 1; i < all.size(); i++) {
            if (gap(all.get(i)) > gap(all.get(best))) {
                best = i;
            }
        }
        return new ExerciseKnowns(drawn, ratios.get(best), all.get(best), PossiblePlates.of(knowledge));
    }

    /** The smallest gap, to a thousandth [1]; none where a spot is too near to a line. */
    private static double gap(Forecast forecast) {
        List<Double> rf =
                forecast.spots().stream().map(spot -> thousandth(spot.rf())).toList();
        return TrueCourse.within(rf, LOWEST_RF, HIGHEST_RF) ? TrueCourse.smallestGap(rf) : -1;
    }

    /** What they are. */
    public List<ExerciseCompound> compounds() {
        return compounds;
    }

    /** What they run in. */
    public Ratio ratio() {
        return ratio;
    }

    /**
     * A spot where somebody expected it, beside the model.
     *
     * @param compound which
     * @param placed the Rf expected [1]
     * @param model what the model expects, and between which Rf nine plates in ten read it
     * @param away how far the expected Rf lies from the model's, to a hundredth [1]
     * @param inside whether it lies in that band
     */
    public record Placed(ExerciseCompound compound, double placed, SpotForecast model, double away, Inside inside) {}

    /** Whether a spot was expected within the model's band. */
    public enum Inside {
        /** It was. */
        YES,
        /** It was not. */
        NO
    }

    /**
     * Two spots of which the model is sure which runs higher.
     *
     * @param higher the one that does
     * @param lower the other one
     * @param share of the possible samples in which it does [1]
     * @param said what was expected of the two
     */
    public record Order(ExerciseCompound higher, ExerciseCompound lower, double share, Said said) {}

    /** What was expected of two spots. */
    public enum Said {
        /** The order of the model. */
        RIGHT,
        /** The other one. */
        TURNED,
        /** Both at the same height. */
        SAME
    }

    /** Each spot as it was expected [1, in the order of the compounds] beside the model. */
    public List<Placed> beside(List<Double> placed) {
        return IntStream.range(0, COUNT)
                .mapToObj(i -> {
                    SpotForecast model = rounded(forecast.spots().get(i));
                    double rf = placed.get(i);
                    Inside inside = rf >= model.low() && rf <= model.high() ? Inside.YES : Inside.NO;
                    double away = Math.round((rf - Math.round(model.rf() * 100) / 100.0) * 100) / 100.0;
                    return new Placed(compounds.get(i), rf, model, away, inside);
                })
                .toList();
    }

    /** To a thousandth, so that no last bit of a machine is told. */
    private static SpotForecast rounded(SpotForecast spot) {
        return new SpotForecast(
                spot.spot(),
                thousandth(spot.rf()),
                thousandth(spot.low()),
                thousandth(spot.high()),
                spot.below(),
                spot.above());
    }

    private static double thousandth(double value) {
        return Math.round(value * 1000) / 1000.0;
    }

    /** Every order of two spots of which the model is sure, beside what was expected. */
    public List<Order> orders(List<Double> placed) {
        List<Order> orders = new ArrayList<>();
        for (int i = 0; i < COUNT; i++) {
            for (int j = 0; j < COUNT; j++) {
                double share = i == j ? 0 : shareAbove(i, j);
                if (share >= SURE) {
                    int compared = Double.compare(placed.get(i), placed.get(j));
                    Said said = compared > 0 ? Said.RIGHT : compared < 0 ? Said.TURNED : Said.SAME;
                    orders.add(new Order(compounds.get(i), compounds.get(j), share, said));
                }
            }
        }
        return orders;
    }

    private double shareAbove(int one, int other) {
        int above = 0;
        for (int sample = 0; sample < plates.samples(); sample++) {
            if (plates.rf(sample, one, ratio.percentStrong()) > plates.rf(sample, other, ratio.percentStrong())) {
                above++;
            }
        }
        return (double) above / plates.samples();
    }
}
