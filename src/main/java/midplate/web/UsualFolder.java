package midplate.web;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where studies are kept when nothing else is said: where each system keeps what programs keep for a person.
 *
 * <p>Windows {@code %APPDATA%\Midplate}; macOS {@code ~/Library/Application Support/Midplate}; elsewhere {@code
 * $XDG_DATA_HOME/midplate}, or {@code ~/.local/share/midplate} without it.
 */
final class UsualFolder {
    private UsualFolder() {}

    /** On this machine; empty where the person has no home folder. */
    static Optional<Path> here() {
        return of(System.getProperty("os.name", ""), System.getProperty("user.home", ""), System.getenv());
    }

    static Optional<Path> of(String system, String home, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        Optional<Path> own = absolute(home);
        if (name.startsWith("windows")) {
            return absolute(environment.get("APPDATA"))
                    .or(() -> own.map(folder -> folder.resolve("AppData").resolve("Roaming")))
                    .map(folder -> folder.resolve("Midplate"));
        }
        if (name.startsWith("mac")) {
            return own.map(folder ->
                    folder.resolve("Library").resolve("Application Support").resolve("Midplate"));
        }
        return absolute(environment.get("XDG_DATA_HOME"))
                .or(() -> own.map(folder -> folder.resolve(".local").resolve("share")))
                .map(folder -> folder.resolve("midplate"));
    }

    /** A relative one would mean another folder at each start; the standard of XDG has it ignored, too. */
    private static Optional<Path> absolute(@Nullable String folder) {
        try {
            return Optional.ofNullable(folder).map(Path::of).filter(Path::isAbsolute);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
