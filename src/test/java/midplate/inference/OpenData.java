package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;

/** The folder of open measurements that a test run is given: {@code -Dmidplate.openData=FOLDER}. */
public final class OpenData {
    private static final String PROPERTY = "midplate.openData";

    private OpenData() {}

    /** The folder. Without the property the test is skipped; a folder that is not there is a failure. */
    public static Path folder() {
        String given = System.getProperty(PROPERTY, "");
        assumeTrue(
                !given.isEmpty(),
                "Skipped: no open measurements. Run with -D" + PROPERTY + "=FOLDER, a folder that holds tlc.csv.");
        Path folder = Path.of(given);
        assertTrue(Files.isDirectory(folder), PROPERTY + " names no folder: " + folder.toAbsolutePath());
        return folder;
    }

    /** The measurements read. */
    public static OpenMeasurements read() {
        return OpenMeasurements.read(folder());
    }
}
