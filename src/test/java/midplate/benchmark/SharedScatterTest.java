package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.function.IntUnaryOperator;
import java.util.stream.DoubleStream;
import midplate.chemistry.RetentionFactor;
import midplate.inference.PairName;
import midplate.inference.Series;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Invented readings whose errors belong to the plates, to the compounds, or to nothing; the seed is fixed. */
@DisplayName("What compounds measured together share")
class SharedScatterTest {
    private static final int COMPOUNDS = 156;
    private static final double[] PERCENTS = Invented.ACETATE;

    /** Compounds of 26 kinds, each kind alike, one after the other; in each eluent a deviation [ln units] on top of the law. */
    private static Map<String, Figure> found(List<IntToDoubleFunction> deviations) {
        List<RatioTask> wholes = new ArrayList<>();
        for (int i = 0; i < COMPOUNDS; i++) {
            Series series = Invented.series(i);
            List<Double> percents = new ArrayList<>();
            List<Double> truths = new ArrayList<>();
            double c = -4 + 2.5 * (i * 7 % 11) / 10;
            for (int j = 0; j < PERCENTS.length; j++) {
                percents.add(PERCENTS[j]);
                truths.add(RetentionFactor.fromLogit(
                        c + Invented.strength(PERCENTS[j]) + deviations.get(j).applyAsDouble(i)));
            }
            wholes.add(new RatioTask(RatioKind.ONE_TRIAL, series, List.of(), percents, truths));
        }
        Samples samples = new Samples();
        SharedScatter.note(wholes, new Averaging(), samples);
        return SharedScatter.figures(samples);
    }

    /** Takes for c what all readings told say on average. */
    private static final class Averaging extends Invented.Knowing {
        @Override
        public List<Guess> guesses(PairName pair, List<TrialReading> trials, double[] percents) {
            double c = trials.stream()
                    .mapToDouble(trial -> RetentionFactor.logit(trial.rf()) - Invented.strength(trial.percent()))
                    .average()
                    .orElseThrow();
            List<Guess> guesses = new ArrayList<>();
            for (double percent : percents) {
                double rf = Invented.rf(c, percent);
                guesses.add(new Guess(rf, rf, rf));
            }
            return guesses;
        }
    }

    private static double[] normal(Random random, int count) {
        return DoubleStream.generate(random::nextGaussian).limit(count).toArray();
    }

    private static List<IntToDoubleFunction> deviations(int kinds, IntUnaryOperator kind, double own) {
        Random random = new Random(11);
        IntToDoubleFunction[] all = new IntToDoubleFunction[PERCENTS.length];
        for (int j = 0; j < all.length; j++) {
            double[] shared = normal(random, kinds);
            double[] alone = normal(random, COMPOUNDS);
            all[j] = i -> (kinds > 0 ? 0.3 * shared[kind.applyAsInt(i)] : 0) + own * alone[i];
        }
        return List.of(all);
    }

    private static void assertNear(double expected, Map<String, Figure> figures, String name, double near) {
        Figure figure = figures.get("hexane/ethyl-acetate.above-10." + name);
        assertEquals(expected, figure.value(), near, name + " " + figure);
    }

    // own arithmetic: errors of 0.3 shared by a plate of 12 and 0.2 alone correlate by 0.09/0.13 = 0.69 on one plate;
    // of two
    // compounds at most 5 apart four in five stand on one plate. 0.3 ln units are 0.075 in Rf midway, 0.067 for four in
    // five
    @Test
    void errorsOfPlatesAreFoundAmongThoseMeasuredTogether() {
        Map<String, Figure> figures = found(deviations(COMPOUNDS / 12, i -> i / 12, 0.2));
        assertNear(0.55, figures, "neighbours", 0.15);
        assertNear(0, figures, "alike", 0.15);
        assertNear(0, figures, "others", 0.1);
        assertNear(0.067, figures, "shared", 0.015);
    }

    // the same errors shared by compounds of one kind, which never stand next to each other
    @Test
    void errorsOfKindsAreFoundAmongThoseAlike() {
        Map<String, Figure> figures = found(deviations(26, i -> i % 26, 0.2));
        assertNear(0.69, figures, "alike", 0.15);
        assertNear(0, figures, "neighbours", 0.15);
    }

    @Test
    void whereErrorsAreNobodysNothingIsFound() {
        Map<String, Figure> figures = found(deviations(0, i -> 0, 0.3));
        assertNear(0, figures, "neighbours", 0.12);
        assertNear(0, figures, "alike", 0.12);
        Figure pairs = figures.get("hexane/ethyl-acetate.above-10.neighbours-pairs");
        assertTrue(pairs.value() > 1000, "" + pairs);
    }
}
