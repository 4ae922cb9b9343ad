package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Sources that the code names")
class SourceKeysTest {
    private static final Pattern SEE = Pattern.compile("@see \"([^\"]+)\"");

    @Test
    void everySourceKeyInTheCodeIsAKnownPublication() throws IOException {
        Set<String> known = SolventCatalogue.builtIn().sources().keySet();
        int seen = 0;
        for (Path file : sources()) {
            Matcher matcher = SEE.matcher(Files.readString(file));
            while (matcher.find()) {
                assertTrue(known.contains(matcher.group(1)), file + ": " + matcher.group(1));
                seen++;
            }
        }
        assertTrue(seen >= 10, "seen " + seen);
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
    }
}
