package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The accuracy told in the README")
class ReadmeAccuracyTest {
    private static final Path FILE = Path.of("solvent-data", "accuracy.json");

    @Test
    void isThatOfTheResults() throws IOException {
        Accuracy accuracy = AccuracyFile.read(Files.readString(FILE));
        String told = AccuracyTable.found(Files.readString(Path.of("README.md")));
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

    // the page reads the figures of the first contender
    @Test
    void ofUnlabelledSpotsIsThatOfTheProgram() throws IOException {
        Accuracy accuracy = AccuracyFile.read(Files.readString(FILE));
        Figure right = accuracy.contenders().values().iterator().next().get("unlabelled.guess.right");
        assertTrue(right != null && right.value() > 0 && right.value() < 1 && right.standardError() > 0, "" + right);
        assertTrue(Files.readString(Path.of("README.md")).contains("| model: second plate without labels |"));
    }
}
