package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import midplate.inference.PairName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Contenders that are told structures")
class StructureMarksTest {
    @TempDir
    Path folder;

    /** Gives one answer to everything, remembers what it was told, and calls the first compound rare. */
    private static final class Stubborn implements StructureContender {
        private final List<ToldSpot> told = new ArrayList<>();

        @Override
        public Choice first(List<ToldSpot> spots) {
            told.addAll(spots);
            return new Choice(50, 0.7);
        }

        @Override
        public Optional<Choice> choose(List<ToldSpot> spots) {
            told.addAll(spots);
            return Optional.of(new Choice(0, 0.1));
        }

        @Override
        public Optional<List<Guess>> guesses(PairName pair, ToldSpot spot, double[] percents) {
            told.add(spot);
            return Optional.of(Arrays.stream(percents)
                    .mapToObj(percent -> new Guess(0.5, 0.4, 0.6))
                    .toList());
        }

        @Override
        public boolean isRare(PairName pair, String smiles) {
            return smiles.equals(Invented.series(0).smiles());
        }
    }

    private static Map<String, Double> means(Samples samples) {
        Map<String, Double> means = new TreeMap<>();
        samples.byName().forEach((name, sample) -> means.put(name, sample.mean()));
        return means;
    }

    // Own algebra: at 50 % the curves read 0.5, 0.7 and 0.73, at 0 % all read 0.
    @Test
    void theFirstPlateAndTheOneAfterATrialAreMarkedApart() throws IOException {
        PlateTask task = new PlateTask(CrossingCurves.all(folder), 4.76);
        Samples samples = new Samples();
        Stubborn contender = new Stubborn();
        new StructureMarks(contender, samples).mark(task);
        Map<String, Double> means = means(samples);
        assertEquals(1, means.get("first.possible.hit"));
        assertEquals(1, means.get("first.possible.three-spots.hit"));
        assertEquals(-0.3, means.get("first.all.said-less-came"), 1e-12);
        assertEquals(0, means.get("plates.possible.hit"));
        assertEquals(0.1, means.get("plates.all.said"), 1e-12);
        assertFalse(means.keySet().stream().anyMatch(name -> name.startsWith("first") && name.contains("baseline")));
        assertEquals(
                List.of("C", "CC", "CCC"),
                contender.told.stream().limit(3).map(ToldSpot::smiles).toList());
        assertTrue(
                contender.told.stream().limit(3).allMatch(spot -> spot.trials().isEmpty()), "nothing read");
        assertEquals(
                List.of(0.1, 0.2, 0.3),
                contender.told.stream()
                        .skip(3)
                        .map(spot -> spot.trials().get(0).rf())
                        .toList(),
                "sorted by what was read, each beside its own structure");
        assertEquals(
                List.of("CC", "C", "CCC"),
                contender.told.stream().skip(3).map(ToldSpot::smiles).toList());
    }

    // Own algebra: |0.5 − 0.45| and |0.5 − 0.9|; the band holds the first only.
    @Test
    void forecastsWithNothingReadAreMarkedByHowRareTheGroupsAre() {
        for (int compound = 0; compound < 2; compound++) {
            Samples samples = new Samples();
            Stubborn contender = new Stubborn();
            RatioTask whole = new RatioTask(
                    RatioKind.METHANOL_ONE_TRIAL,
                    Invented.series(compound),
                    List.of(),
                    List.of(2.0, 9.0),
                    List.of(0.45, 0.9));
            new StructureMarks(contender, samples).markFromStructure(whole);
            Map<String, Double> means = means(samples);
            assertEquals(0.225, means.get("methanol-from-structure.error"), 1e-12);
            assertEquals(0.5, means.get("methanol-from-structure.cover90"), 1e-12);
            assertEquals(compound == 0, means.containsKey("methanol-from-structure.rare.cover90"));
            assertEquals(compound != 0, means.containsKey("methanol-from-structure.common.cover90"));
            assertTrue(contender.told.stream().allMatch(spot -> spot.trials().isEmpty()));
        }
    }

    @Test
    void trialsThatTellNothingAreLeftOut() {
        Samples samples = new Samples();
        Stubborn contender = new Stubborn();
        StructureMarks marks = new StructureMarks(contender, samples);
        for (double trial : new double[] {0.01, 0.5}) {
            marks.mark(new RatioTask(
                    RatioKind.ONE_TRIAL,
                    Invented.series(3),
                    List.of(new TrialReading(PairName.HEXANE_ETHYL_ACETATE, 10, trial)),
                    List.of(20.0),
                    List.of(0.8)));
        }
        assertEquals(1, contender.told.size());
        assertEquals(0.3, means(samples).get("one-trial-informative.error"), 1e-12);
    }

    // Own algebra: the curve of the neighbour CCC lies at 0.5 at 16.67 %, the middle of the window; that of CCCC is its
    // own.
    @Test
    void theNearestNeighbourIsTakenForTheSpot() throws IOException {
        List<TrueCurve> curves = CrossingCurves.all(folder);
        NearestNeighbour neighbour = NearestNeighbour.of(curves);
        Choice alone = neighbour.first(List.of(new ToldSpot("CCC", List.of())));
        assertEquals(0.5, curves.get(2).rf(alone.percent()), 0.01);
        Choice both = neighbour.first(List.of(new ToldSpot("CCC", List.of()), new ToldSpot("C", List.of())));
        assertTrue(both.chance() < alone.chance());
        assertTrue(alone.chance() > 0 && alone.chance() < 1);
        double least = Math.min(curves.get(0).rf(both.percent()), curves.get(2).rf(both.percent()));
        double most = Math.max(curves.get(0).rf(both.percent()), curves.get(2).rf(both.percent()));
        assertTrue(least > 0.2 && most < 0.8, least + " to " + most);
    }
}
