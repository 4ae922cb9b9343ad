package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Rounds of plates")
class ScoutingMarksTest {
    @TempDir
    Path folder;

    /** Plans these plates, says 0.8, and advises one ratio after them. */
    private static Contender planning(List<Double> round, double next) {
        return new Invented.Stubborn(new Guess(0.5, 0.4, 0.6), new Choice(next, 0.5)) {
            @Override
            public Optional<Scouted> scout(int spots, Scouted.Way way) {
                return way == Scouted.Way.TWO ? Optional.of(new Scouted(round, 0.8)) : Optional.empty();
            }
        };
    }

    private Map<String, Sample> marks(List<Double> round, double next) throws IOException {
        Results results = new Results();
        ScoutingMarks.mark(new ScoutingTask(CrossingCurves.all(folder)), planning(round, next), results);
        Map<String, Samples> marks = results.part(Results.Part.SCOUTING);
        assertEquals(List.of("two jars"), List.copyOf(marks.keySet()));
        return marks.getOrDefault("two jars", new Samples()).byName();
    }

    private static double mean(Map<String, Sample> marks, String figure) {
        return marks.get(figure).mean();
    }

    // From the curves of CrossingCurves: at 50 % all three lie in the window, at 0 % all sit at 0, at 100 % two lie
    // above 0.8.
    @Test
    void aHitOnAPlateOfTheRoundNeedsNoNextOne() throws IOException {
        Map<String, Sample> marks = marks(List.of(0.0, 50.0), 100);
        assertEquals(1, mean(marks, "rounds.possible.came"));
        assertEquals(1, mean(marks, "rounds.all.now"));
        assertEquals(2, mean(marks, "rounds.all.plates"));
        assertEquals(0.8 - 1, mean(marks, "rounds.all.said-less-came"), 1e-12);
    }

    @Test
    void whereNoneHitsTheNextPlateCounts() throws IOException {
        Map<String, Sample> marks = marks(List.of(0.0, 100.0), 50);
        assertEquals(1, mean(marks, "rounds.all.came"));
        assertEquals(0, mean(marks, "rounds.all.now"));
        assertEquals(3, mean(marks, "rounds.all.plates"));
        Map<String, Sample> missed = marks(List.of(0.0, 100.0), 100);
        assertEquals(0, mean(missed, "rounds.possible.came"));
        assertEquals(0.8, mean(missed, "rounds.all.said-less-came"), 1e-12);
    }

    // The curves at 4.76 %: 0.2, 0.1, 0.3; at 50 %: 0.5, 0.7, 0.73.
    @Test
    void aSpotKeepsItsReadingsTogether() throws IOException {
        List<List<TrialReading>> shown = new ScoutingTask(CrossingCurves.all(folder)).shown(List.of(50.0, 4.76));
        List<List<Double>> read = shown.stream()
                .map(spot -> spot.stream().map(TrialReading::rf).toList())
                .toList();
        assertEquals(List.of(List.of(0.1, 0.7), List.of(0.2, 0.5), List.of(0.3, 0.73)), read);
        assertEquals(4.76, shown.get(0).get(0).percent());
    }

    @Test
    void whoPlansNoRoundsIsLeftOut() throws IOException {
        Results results = new Results();
        ScoutingMarks.mark(new ScoutingTask(CrossingCurves.all(folder)), new Invented.Knowing(), results);
        assertTrue(results.part(Results.Part.SCOUTING).isEmpty());
    }

    @Test
    void theTableSetsEachBesideGoingStraight() {
        Map<String, Map<String, Figure>> scouting = new LinkedHashMap<>();
        scouting.put(
                "going straight",
                Map.of(
                        "rounds.possible.came", new Figure(0.9, 0.02, 10),
                        "rounds.all.plates", new Figure(1.6, 0.1, 10)));
        scouting.put(
                "two jars",
                Map.of(
                        "rounds.possible.came", new Figure(0.94, 0.02, 10),
                        "rounds.all.said", new Figure(0.7, 0.01, 10),
                        "rounds.all.came", new Figure(0.72, 0.02, 10)));
        Map<String, Map<String, Figure>> differences =
                Map.of("two jars − going straight", Map.of("rounds.possible.came", new Figure(0.04, 0.01, 10)));
        List<String> lines = ScoutingTable.of(new Accuracy(
                        Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), scouting, Map.of(), differences))
                .lines()
                .toList();
        assertEquals("| going straight | 90.0 ± 2.0 % |  | – | – → – | 1.6 |", lines.get(2));
        assertEquals("| two jars | 94.0 ± 2.0 % | +4.0 ± 1.0 % | – | 0.70 → 0.72 ± 0.02 | – |", lines.get(3));
    }
}
