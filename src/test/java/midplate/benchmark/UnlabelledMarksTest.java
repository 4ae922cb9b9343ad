package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import midplate.benchmark.Matched.Which;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.Form;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Marks of guesses of which spot is which")
class UnlabelledMarksTest {
    @TempDir
    Path folder;

    /** Says these guesses, and everywhere Rf 0.6 after one plate, 0.5 after two with labels, 0.4 after one with and one without. */
    private record Saying(List<Which> guesses, double chance) implements Contender {
        @Override
        public String name() {
            return "saying";
        }

        @Override
        public List<Guess> guesses(PairName pair, List<TrialReading> trials, double[] percents) {
            double rf = trials.size() == 1 ? 0.6 : 0.5;
            return Collections.nCopies(percents.length, new Guess(rf, 0.1, 0.9));
        }

        @Override
        public Choice choose(List<List<TrialReading>> spots) {
            throw new UnsupportedOperationException("asked about plates without labels only");
        }

        @Override
        public Optional<Matched> match(HalfLabelled plates, double[] percents) {
            List<Double> rfs = Collections.nCopies(percents.length, 0.4);
            return Optional.of(
                    new Matched(guesses, Collections.nCopies(plates.labelled().size(), rfs), new Choice(50, chance)));
        }
    }

    /** Two compounds of {@link CrossingCurves} that change places between the plates. */
    private UnlabelledTask crossing() throws IOException {
        return new UnlabelledTask(CrossingCurves.all(folder).subList(0, 2), 4.76, 50);
    }

    private static Map<String, Sample> marked(UnlabelledTask task, Contender contender) {
        Samples samples = new Samples();
        new UnlabelledMarks(samples).mark(task, contender);
        return samples.byName();
    }

    @Test
    void whoKnowsThatTwoSpotsChangedPlacesIsRight() throws IOException {
        List<Which> guesses = List.of(new Which(Set.of(1), 0.9), new Which(Set.of(0), 0.7));
        Map<String, Sample> samples = marked(crossing(), new Saying(guesses, 0.5));
        assertEquals(1, samples.get("unlabelled.guess.right").mean(), 0);
        assertEquals(2, samples.get("unlabelled.guess.right").size());
        assertEquals(0.8, samples.get("unlabelled.guess.said").mean(), 1e-12);
        assertEquals(-0.2, samples.get("unlabelled.guess.said-less-came").mean(), 1e-12);
        assertEquals(0.5, samples.get("unlabelled.guess.sure").mean(), 1e-12);
        assertEquals(1, samples.get("unlabelled.guess.apart.right").mean(), 0);
        assertEquals(0.8, samples.get("unlabelled.guess.apart.said").mean(), 1e-12);
        assertEquals(0.9, samples.get("unlabelled.guess.fifth-5.said").mean(), 1e-12);
        assertEquals(0.7, samples.get("unlabelled.guess.fifth-4.said").mean(), 1e-12);
    }

    @Test
    void whoKeepsTheOrderOfTheFirstPlateIsWrongWhereItChanges() throws IOException {
        List<Which> guesses = List.of(new Which(Set.of(0), 0.9), new Which(Set.of(1), 0.7));
        Map<String, Sample> samples = marked(crossing(), new Saying(guesses, 0.5));
        assertEquals(0, samples.get("unlabelled.guess.right").mean(), 0);
        assertEquals(0.8, samples.get("unlabelled.guess.said-less-came").mean(), 1e-12);
        assertEquals(0, samples.get("unlabelled.guess.fifth-5.came").mean(), 0);
    }

    @Test
    void ofASpotThatHoldsTwoBothMustBeSaidAndNoMore() throws IOException {
        UnlabelledTask task = new UnlabelledTask(CrossingCurves.all(folder), 4.76, 50);
        for (Set<Integer> said : List.of(Set.of(0), Set.of(2), Set.of(0, 1, 2), Set.<Integer>of())) {
            List<Which> guesses = List.of(new Which(Set.of(1), 0.9), new Which(said, 0.5));
            Map<String, Sample> samples = marked(task, new Saying(guesses, 0.5));
            assertEquals(0.5, samples.get("unlabelled.guess.right").mean(), 0, said.toString());
            assertFalse(samples.containsKey("unlabelled.guess.apart.right"));
        }
        List<Which> guesses = List.of(new Which(Set.of(1), 0.9), new Which(Set.of(0, 2), 0.5));
        assertEquals(
                1,
                marked(task, new Saying(guesses, 0.5))
                        .get("unlabelled.guess.right")
                        .mean(),
                0);
    }

    // Own arithmetic: both lie in the window at 50 % (0.5 and 0.7), so a chance of 0.3 was said 0.7 too low.
    @Test
    void theChanceIsHeldAgainstTheRatioAdvised() throws IOException {
        List<Which> guesses = List.of(new Which(Set.of(0), 0.9), new Which(Set.of(1), 0.7));
        Map<String, Sample> samples = marked(crossing(), new Saying(guesses, 0.3));
        assertEquals(1, samples.get("unlabelled.plates.hit").mean(), 0);
        assertEquals(0.3, samples.get("unlabelled.plates.said").mean(), 1e-12);
        assertEquals(-0.7, samples.get("unlabelled.plates.said-less-came").mean(), 1e-12);
    }

    // Own algebra: forecasts are 0.4 without labels, 0.5 with, 0.6 after the first plate alone, whatever the ratio.
    @Test
    void errorsAreThoseOfEachCompoundAtEachOtherRatio() throws IOException {
        UnlabelledTask task = crossing();
        List<Which> guesses = List.of(new Which(Set.of(0), 0.9), new Which(Set.of(1), 0.7));
        Map<String, Sample> samples = marked(task, new Saying(guesses, 0.3));
        Map<String, Double> says = Map.of("second-unlabelled", 0.4, "second-labelled", 0.5, "first-alone", 0.6);
        says.forEach((name, rf) -> {
            double sum = 0;
            for (TrueCurve spot : task.spots()) {
                for (double percent : task.others()) {
                    sum += Math.abs(rf - spot.rf(percent));
                }
            }
            Sample sample = samples.get("unlabelled.error." + name);
            int judged = 2 * task.others().length;
            assertEquals(judged, sample.size(), name);
            assertEquals(sum / sample.size(), sample.mean(), 1e-12, name);
        });
        double without = samples.get("unlabelled.error.second-unlabelled").mean();
        double lost = without - samples.get("unlabelled.error.second-labelled").mean();
        double won = samples.get("unlabelled.error.first-alone").mean() - without;
        assertEquals(lost, samples.get("unlabelled.error.lost-without-labels").mean(), 1e-12);
        assertEquals(won, samples.get("unlabelled.error.won-by-second").mean(), 1e-12);
    }

    @Test
    void tooFewGuessesAreNotedAgainstTheContender() {
        Contender lazy = new Saying(List.of(new Which(Set.of(0), 0.9)), 0.3);
        Exception refusal = assertThrows(IllegalStateException.class, () -> marked(crossing(), lazy));
        assertTrue(refusal.getMessage().contains("named 1 spots; seen were 2"), refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.01, 1.01})
    void aProbabilityThatIsNoneIsRefused(double probability) {
        assertThrows(IllegalArgumentException.class, () -> new Which(Set.of(), probability));
    }

    // Invented compounds with one slope keep their order: on well parted plates the program finds it, and foretells
    // each
    // compound where it belongs.
    @Test
    void theProgramTellsPartedSpotsByTheirNames() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 20);
        Contender program = AdviserContender.factory(
                        "program", SolventCatalogue.builtIn(), Form.THREE_TRAITS, Further.UNLABELLED)
                .trainedOn(all);
        List<TrueCurve> curves = TrueCurve.of(all.table(PairName.HEXANE_ETHYL_ACETATE));
        UnlabelledTask task = new UnlabelledTask(List.of(curves.get(14), curves.get(2), curves.get(8)), 16.67, 25);
        Matched matched = program.match(task.told(), new double[] {20}).orElseThrow();
        assertEquals(
                List.of(Set.of(0), Set.of(1), Set.of(2)),
                matched.guesses().stream().map(Which::spots).toList());
        assertTrue(matched.guesses().stream().allMatch(guess -> guess.probability() > 0.8), matched.toString());
        for (int spot = 0; spot < 3; spot++) {
            assertEquals(task.spots().get(spot).rf(20), matched.rfs().get(spot).get(0), 0.03, "spot " + spot);
        }
    }

    @Test
    void onlyTheProgramItselfIsAsked() throws IOException {
        OpenMeasurements all = Invented.measurements(folder, 25);
        Accuracy accuracy = Benchmark.run(all, Contenders.all(), new Plan(5, 20, 4, 7, 2));
        Set<String> asked = accuracy.contenders().entrySet().stream()
                .filter(contender ->
                        contender.getValue().keySet().stream().anyMatch(name -> name.contains("unlabelled")))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        assertEquals(Set.of("Midplate"), asked);
        assertEquals(2, accuracy.setting().get("unlabelledPerFold"));
        assertEquals(
                10L,
                accuracy.contenders()
                        .get("Midplate")
                        .get("unlabelled.plates.said")
                        .count());
    }
}
