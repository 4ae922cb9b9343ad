package midplate.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk without room: here a limit on the size of files, which the system tells in the same way. */
class LittleRoomTest {
    private static final Path BASH = Path.of("/bin/bash");

    @TempDir
    private Path place;

    @Test
    void aSaveForWhichThereIsNoRoomIsToldAndTheVersionBeforeStaysWhole() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(BASH), "skipped: no bash here, which sets the limit");
        String java = SavingChild.command(LittleRoomChild.class, place.toString()).stream()
                .map(word -> "'" + word.replace("'", "'\\''") + "'")
                .collect(Collectors.joining(" "));
        Process child = new ProcessBuilder(BASH.toString(), "-c", "ulimit -f 64 && exec " + java)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<String> said = SavingChild.said(child);
        assertEquals(0, child.waitFor(), said.toString());
        assertEquals("FULL", said.get(0), said.toString());
        assertTrue(said.get(1).contains("has no room") && said.get(1).contains("What was saved before is as it was."));
        assertTrue(Integer.parseInt(said.get(2)) > 20, said.toString());
        assertEquals("as it was", said.get(3));
        assertEquals(
                Integer.parseInt(said.get(2)) - 1,
                Integer.parseInt(said.get(4)),
                "the version before is the one before");
        assertEquals("small", said.get(5));
        try (StudyFolder folder = RealStudies.open(place)) {
            assertEquals("small", folder.read(RealStudies.A).study().notes());
            assertEquals(List.of(), folder.list(StudySearch.everything()).troubles());
        }
        assertEquals(
                List.of(),
                RealStudies.files(place).stream()
                        .filter(file -> file.toString().endsWith(".part"))
                        .toList());
    }
}
