package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import midplate.benchmark.Accuracy;
import midplate.benchmark.Benchmark;
import midplate.benchmark.Choice;
import midplate.benchmark.Contender;
import midplate.benchmark.ContenderFactory;
import midplate.benchmark.Figure;
import midplate.benchmark.Guess;
import midplate.benchmark.Peers;
import midplate.benchmark.Plan;
import midplate.benchmark.TrialReading;
import midplate.inference.Form;
import midplate.inference.OpenData;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairCalibration;
import midplate.inference.PairName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A short form of the benchmark: half of the structures foretold from the other half, and a few plates. */
@DisplayName("On the open measurements")
class OpenDataBenchmarkTest {
    private static final String PROGRAM = "the program";

    /** The program asked as a user asks it. */
    private record Asked(Adviser adviser) implements Contender {
        @Override
        public String name() {
            return PROGRAM;
        }

        private static Asking about(PairName pair, String[] spots, List<List<TrialReading>> trials) {
            Asking asking = Asking.about(pair.weak(), pair.strong()).spots(spots);
            Map<List<Object>, Map<String, Double>> plates = new HashMap<>();
            for (int i = 0; i < spots.length; i++) {
                for (TrialReading trial : trials.get(i)) {
                    plates.computeIfAbsent(List.of(trial.pair(), trial.percent()), key -> new HashMap<>())
                            .put(spots[i], trial.rf());
                }
            }
            plates.forEach((plate, rf) -> {
                PairName run = (PairName) plate.get(0);
                asking.run(Asking.silica(run.weak(), run.strong(), (double) plate.get(1)), rf);
            });
            return asking;
        }

        @Override
        public List<Guess> guesses(PairName pair, List<TrialReading> trials, double[] percents) {
            Asking asking = about(pair, new String[] {"1"}, List.of(trials));
            return adviser
                    .predict(asking.question(), Arrays.stream(percents).boxed().toList())
                    .stream()
                    .map(forecast -> forecast.spots().get(0))
                    .map(spot -> new Guess(spot.rf(), spot.low(), spot.high()))
                    .toList();
        }

        @Override
        public Choice choose(List<List<TrialReading>> spots) {
            String[] names = new String[spots.size()];
            Arrays.setAll(names, Integer::toString);
            Advice advice = adviser.advise(
                    about(PairName.HEXANE_ETHYL_ACETATE, names, spots).question());
            return new Choice(advice.ratio().percentStrong(), advice.forecast().chance());
        }
    }

    private static final class Program implements ContenderFactory {
        @Override
        public String name() {
            return PROGRAM;
        }

        @Override
        public Contender trainedOn(OpenMeasurements training) {
            return new Asked(Adviser.of(
                    Asking.CATALOGUE, PairCalibration.fit(training, Asking.CATALOGUE, "test", Form.THREE_TRAITS)));
        }
    }

    // Read off the same questions: a difference less than 0 by more than two of its standard errors.
    @Test
    void theProgramIsCloserThanEveryPublishedPeer() {
        List<ContenderFactory> all = new ArrayList<>();
        all.add(new Program());
        all.addAll(Peers.uncalibrated(Asking.CATALOGUE));
        Accuracy accuracy = Benchmark.run(OpenData.read(), all, new Plan(2, 150, 60, 7, 1));
        assertEquals(4, accuracy.contenders().size());
        for (String peer : accuracy.contenders().keySet()) {
            if (!peer.equals(PROGRAM)) {
                Map<String, Figure> less = accuracy.differences().get(PROGRAM + " − " + peer);
                for (String figure : List.of("one-trial.error", "two-trials.error", "one-trial.interval-score")) {
                    Figure gain = less.get(figure);
                    assertTrue(gain.value() < -2 * gain.standardError(), peer + ", " + figure + ": " + gain);
                }
                Figure hits = less.get("plates.possible.hit");
                assertTrue(hits.value() > 0, peer + ", plates hit: " + hits);
                Figure slip = less.get("plates.all.squared-slip");
                assertTrue(slip.value() < 0, peer + ", chance against what came: " + slip);
            }
        }
    }
}
