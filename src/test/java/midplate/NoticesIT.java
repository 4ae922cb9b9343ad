package midplate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The packed jar: what stands on its class path, and that each of those libraries is named in the notices. */
class NoticesIT {
    private static final Path TARGET = Path.of("target");

    private static List<String> librariesOnTheClassPath() throws IOException {
        try (JarFile jar = new JarFile(TARGET.resolve("midplate.jar").toFile())) {
            String classPath = jar.getManifest().getMainAttributes().getValue("Class-Path");
            return List.of(classPath.split(" "));
        }
    }

    @Test
    void everyLibraryOnTheClassPathLiesInLib() throws IOException {
        List<String> libraries = librariesOnTheClassPath();
        assertFalse(libraries.isEmpty());
        for (String library : libraries) {
            assertEquals(true, Files.isRegularFile(TARGET.resolve(library)), library);
        }
    }

    @Test
    void theNoticesNameEveryLibraryAndNoOther() throws IOException {
        Set<String> packed = new TreeSet<>();
        for (String library : librariesOnTheClassPath()) {
            packed.add(library.substring("lib/".length()));
        }
        Set<String> named = new TreeSet<>();
        String notices = Files.readString(Path.of("src", "main", "resources", "META-INF", "THIRD-PARTY-NOTICES.md"));
        Matcher jar = Pattern.compile("`([^`/ ]+-[0-9][^`/ ]*\\.jar)`").matcher(notices);
        while (jar.find()) {
            named.add(jar.group(1));
        }
        assertEquals(packed, named);
    }
}
