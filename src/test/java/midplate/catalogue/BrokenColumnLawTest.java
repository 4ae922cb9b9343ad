package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A law of columns with a mistake")
class BrokenColumnLawTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "voidMlPerGram, 0",
        "holdMlPerGram, -1",
        "outsideMl, -1",
        "steepness, 0",
        "runScatter, 0",
        "runFreedom, 0.5",
        "spotSpread, -0.1",
        "lowestPercent, 101",
        "leastLoad, 0",
        "spread, 0",
        "compounds, 0",
        "pair, 7"
    })
    void isRefusedWithFileAndField(String field, String value) throws IOException {
        String text = Files.readString(Path.of("solvent-data/curves/column.json"));
        String broken = text.replaceFirst("\"" + field + "\" : [^,\\n]+", "\"" + field + "\" : " + value);
        assertTrue(!broken.equals(text), "the field is there");
        Files.writeString(folder.resolve("column.json"), broken);
        String message = String.valueOf(
                assertThrows(BadSolventData.class, () -> ColumnLaw.read(folder, SolventCatalogue.builtIn()))
                        .getMessage());
        assertTrue(message.contains("column.json") && message.contains(field), message);
    }

    @ParameterizedTest
    @CsvSource({"steepness", "width", "provenance", "idealSpread"})
    void aMissingFieldIsNamed(String field) throws IOException {
        String text = Files.readString(Path.of("solvent-data/curves/column.json"));
        Files.writeString(folder.resolve("column.json"), text.replace("\"" + field + "\"", "\"other\""));
        String message = String.valueOf(
                assertThrows(BadSolventData.class, () -> ColumnLaw.read(folder, SolventCatalogue.builtIn()))
                        .getMessage());
        assertTrue(message.contains(field), message);
    }
}
