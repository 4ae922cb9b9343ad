package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The accuracy told in the README")
class ReadmeAccuracyTest {
    private static final Path FILE = Path.of("solvent-data", "accuracy.json");

    @Test
    void isThatOfTheResults() throws IOException {
        Accuracy accuracy = AccuracyFile.read(Files.readString(FILE));
        String told = MarkedPlace.found(Files.readString(Path.of("README.md")));
        assertEquals(AccuracyTable.of(accuracy), told, "write it anew with the command benchmark and --readme");
    }

    @Test
    void comesFromAFullRun() throws IOException {
        Accuracy accuracy = AccuracyFile.read(Files.readString(FILE));
        assertEquals((long) Plan.FULL.folds(), accuracy.setting().get("folds"));
        assertEquals((long) Plan.FULL.setsPerFold(), accuracy.setting().get("setsPerFold"));
        assertEquals((long) Plan.FULL.unlabelledPerFold(), accuracy.setting().get("unlabelledPerFold"));
        assertEquals((long) Plan.FULL.resamples(), accuracy.setting().get("resamples"));
        accuracy.contenders()
                .forEach((name, figures) -> assertTrue(
                        figures.containsKey("plates.possible.hit") && figures.containsKey("one-trial.error"), name));
    }

    @Test
    void chartsAreDrawnFromTheResults() throws IOException {
        Accuracy accuracy = AccuracyFile.read(Files.readString(FILE));
        assertEquals(TrialChart.of(accuracy), Files.readString(FILE.resolveSibling(TrialChart.FILE)));
        assertEquals(ChanceChart.of(accuracy), Files.readString(FILE.resolveSibling(ChanceChart.FILE)));
        String readme = Files.readString(Path.of("README.md"));
        assertTrue(readme.contains("(solvent-data/" + TrialChart.FILE + ")"), "the README shows it");
        assertTrue(readme.contains("(solvent-data/" + ChanceChart.FILE + ")"), "the README shows it");
    }

    @Test
    void theProgramIsHeldAgainstItsCeilings() throws IOException {
        Accuracy accuracy = AccuracyFile.read(Files.readString(FILE));
        Figure best =
                accuracy.ceilings().getOrDefault(Contenders.PROGRAM, Map.of()).get("one-trial-informative.error");
        Figure repeat =
                accuracy.ceilings().getOrDefault(Accuracy.REPEAT, Map.of()).get("repeat.error");
        assertTrue(best != null && best.value() > 0 && best.standardError() > 0, "" + best);
        assertTrue(repeat != null && repeat.value() > 0 && repeat.standardError() > 0, "" + repeat);
        assertEquals(
                Setting.values().length * PlateErrorTask.SIZES.length,
                accuracy.plateError().size());
        String readme = Files.readString(Path.of("README.md"));
        assertTrue(readme.contains("enough ratios: " + accuracy.setting().get("structuresWithTwoCurves") + ")"));
        assertTrue(accuracy.neighboursLeftOut().containsKey(Contenders.PROGRAM));
    }

    // the page reads the figures of the first contender
    @Test
    void ofUnlabelledSpotsIsThatOfTheProgram() throws IOException {
        Accuracy accuracy = AccuracyFile.read(Files.readString(FILE));
        Figure right = accuracy.contenders().values().iterator().next().get("unlabelled.guess.right");
        assertTrue(right != null && right.value() > 0 && right.value() < 1 && right.standardError() > 0, "" + right);
        assertTrue(Files.readString(Path.of("README.md")).contains("| second plate without labels |"));
    }
}
