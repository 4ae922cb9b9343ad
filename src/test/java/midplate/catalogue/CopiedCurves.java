package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A copy of the curve files to break, one mistake at a time. */
abstract class CopiedCurves {
    static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();

    private static final Path GOOD = Path.of("solvent-data", "curves");

    @TempDir
    Path folder;

    @BeforeEach
    void copyTheGoodFiles() throws IOException {
        try (Stream<Path> files = Files.list(GOOD)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }

    /** Replaces the first match in a file, which must be there. */
    void edit(String file, String pattern, String replacement) throws IOException {
        String before = Files.readString(folder.resolve(file));
        String after = before.replaceFirst(pattern, replacement);
        assertTrue(!before.equals(after), "the test changed nothing in " + file);
        Files.writeString(folder.resolve(file), after);
    }

    /** What is said of the files as they are now, which must be refused. */
    String fault() {
        return String.valueOf(assertThrows(BadSolventData.class, () -> MeasuredPairs.read(folder, CATALOGUE))
                .getMessage());
    }
}
