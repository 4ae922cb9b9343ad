package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.SolventCatalogue;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The files of a calibration")
class CalibrationFilesTest {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?([eE]-?[0-9]+)?");

    @TempDir
    Path folder;

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    // Regression only: the same fit gives the same bytes, and what was read back is written as it was.
    @Test
    void areTheSameWhenWrittenAgain() throws IOException {
        CalibrationFiles.write(Plates.CURVES, folder.resolve("one"));
        MeasuredPairs back = MeasuredPairs.read(folder.resolve("one"), SolventCatalogue.builtIn());
        assertEquals(Plates.CURVES, back);
        CalibrationFiles.write(back, folder.resolve("new/other"));
        List<Path> one = files(folder.resolve("one"));
        List<Path> other = files(folder.resolve("new/other"));
        assertEquals(Plates.CURVES.pairs().size() + Plates.CURVES.structures().size() + 3, one.size());
        assertEquals(one.size(), other.size());
        for (int i = 0; i < one.size(); i++) {
            assertEquals(one.get(i).getFileName(), other.get(i).getFileName());
            assertArrayEquals(Files.readAllBytes(one.get(i)), Files.readAllBytes(other.get(i)));
            assertArrayEquals(
                    Files.readAllBytes(Path.of("solvent-data/curves")
                            .resolve(one.get(i).getFileName().toString())),
                    Files.readAllBytes(one.get(i)),
                    "as packed");
        }
    }

    // Decided once: six significant digits, LF, and neither a path nor a date.
    @Test
    void haveSixSignificantDigitsAndNothingOfTheMachine() throws IOException {
        CalibrationFiles.write(Plates.CURVES, folder);
        for (Path file : files(folder)) {
            String text = Files.readString(file);
            assertTrue(text.endsWith("}\n") && !text.contains("\r"), file.toString());
            assertFalse(text.contains(folder.toString()) || text.contains("/"), "no path: " + file);
            assertFalse(Pattern.compile("20[0-9]{2}-[0-9]{2}").matcher(text).find(), "no date: " + file);
            NUMBER.matcher(text.replaceAll("\"[^\"]*\"", "")).results().forEach(number -> {
                String digits = number.group().replaceAll("[eE].*", "").replaceAll("[-.]", "");
                assertTrue(digits.replaceFirst("^0+", "").length() <= 6, file + ": " + number.group());
            });
        }
    }
}
