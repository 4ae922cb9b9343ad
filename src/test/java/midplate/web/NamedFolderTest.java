package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The folder named with {@code --data}. */
class NamedFolderTest {
    private static final Path HOME = Path.of("home", "ann").toAbsolutePath();

    private static Optional<Path> named(String typed) {
        return NamedFolder.of(Path.of(typed), HOME.toString());
    }

    @Test
    void aTildeThatTheShellLeftIsTheHomeFolder() {
        assertEquals(Optional.of(HOME.resolve("plates")), named("~/plates"));
        assertEquals(HOME, named("~").orElseThrow().normalize());
        assertEquals(Optional.empty(), NamedFolder.of(Path.of("~/plates"), ""));
    }

    @Test
    void anyOtherNameIsTakenAsItIs() {
        for (String typed : new String[] {"plates", "~ann/plates", "a/~/b", "./~"}) {
            assertEquals(Optional.of(Path.of(typed)), named(typed));
        }
    }

    @Test
    void noNameIsRefusedAndNotTakenForTheCurrentFolder() {
        StringWriter said = new StringWriter();
        CommandLine line = new CommandLine(new ServeCommand()).setErr(new PrintWriter(said));
        assertEquals(2, line.execute("--no-browser", "--web", "/none", "--data", ""));
        assertTrue(said.toString().contains("--data came empty"), said.toString());
    }
}
