package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BadCurveNumbersTest {
    private static final String ACETATE = "silica-hexane-ethyl-acetate.json";

    @TempDir
    Path folder;

    // Read without a word today; the adviser then throws IllegalArgumentException, or its chances are NaN.
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\\[ 0, 1.96, 4.76 | [ 0, 1.96, 1.96 | percentStrong[2]",
                "\"middle\" : \\[[^\\]]* | \"middle\" : [ 40, 1, 0 | traits.bells[0].middle",
                "\"middle\" : \\[[^\\]]* | \"middle\" : [ 0, 2.5, 0 | traits.bells[0].middle",
                "\"middle\" : \\[[^\\]]* | \"middle\" : [ 0, 1, 7 | traits.bells[0].middle",
                "\"covariance\" : \\[[^\\]]* | \"covariance\" : [ 1e-9, 0, 0, 1, 0, 1 | traits.bells[0].covariance",
                "\"covariance\" : \\[[^\\]]* | \"covariance\" : [ 1, 0, 0, 1e-9, 0, 1 | traits.bells[0].covariance",
                "\"covariance\" : \\[[^\\]]* | \"covariance\" : [ 1, 1, 0, 1, 0, 1 | traits.bells[0].covariance",
                "\"from\" : 0,\\s*\"to\" : 100 | \"from\" : 60, \"to\" : 50 | trusted.to",
            })
    void aNumberThatCannotBeUsedIsNamed(String pattern, String replacement, String field) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("solvent-data", "curves"))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        Path file = folder.resolve(ACETATE);
        Files.writeString(file, Files.readString(file).replaceFirst(pattern, replacement));
        String message = assertThrows(
                        BadSolventData.class, () -> MeasuredPairs.read(folder, SolventCatalogue.builtIn()))
                .getMessage();
        assertTrue(message.startsWith(ACETATE + ", row " + field), message);
    }
}
