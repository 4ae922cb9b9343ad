package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** Where studies lie when nothing is said; the homes are invented, absolute by the rules of the system the test runs on. */
class UsualFolderTest {
    private static final Path HOME = Path.of("home", "chemist").toAbsolutePath();
    private static final Path OTHER = Path.of("other").toAbsolutePath();

    private static Optional<Path> on(String system, Map<String, String> environment) {
        return UsualFolder.of(system, HOME.toString(), environment);
    }

    @Test
    void eachSystemHasItsPlace() {
        assertEquals(Optional.of(OTHER.resolve("Midplate")), on("Windows 11", Map.of("APPDATA", OTHER.toString())));
        assertEquals(Optional.of(HOME.resolve("AppData/Roaming/Midplate")), on("Windows 11", Map.of()));
        assertEquals(Optional.of(HOME.resolve("Library/Application Support/Midplate")), on("Mac OS X", Map.of()));
        assertEquals(Optional.of(HOME.resolve(".local/share/midplate")), on("Linux", Map.of()));
        assertEquals(Optional.of(OTHER.resolve("midplate")), on("Linux", Map.of("XDG_DATA_HOME", OTHER.toString())));
    }

    @Test
    void aRelativePlaceCountsForNothing() {
        assertEquals(Optional.of(HOME.resolve(".local/share/midplate")), on("Linux", Map.of("XDG_DATA_HOME", "share")));
        assertEquals(Optional.empty(), UsualFolder.of("Linux", "?", Map.of()));
        assertEquals(Optional.empty(), UsualFolder.of("Linux", "", Map.of("XDG_DATA_HOME", "")));
    }

    @Test
    @DisabledOnOs(value = OS.MAC, disabledReason = "its place is not told by the environment, which the build sets")
    void theBuildSetsAnotherPlaceForTests() {
        assertTrue(UsualFolder.here().orElseThrow().startsWith(Path.of("target").toAbsolutePath()));
    }

    /** What runs a test must not find anything of it in its home folder. */
    @Test
    void noTestServesWithoutAFolderOfItsOwn() throws IOException {
        List<String> bare = new ArrayList<>();
        Pattern started = Pattern.compile("\\w+\\(\\s*\"serve\",[^;]*;");
        int seen = 0;
        try (Stream<Path> files = Files.walk(Path.of("src", "test"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                Matcher call = started.matcher(Files.readString(file));
                while (call.find()) {
                    seen++;
                    if (!call.group().contains("\"--data\"")) {
                        bare.add(file + ": " + call.group());
                    }
                }
            }
        }
        assertEquals(List.of(), bare);
        assertTrue(seen > 3, "starts seen: " + seen);
    }
}
