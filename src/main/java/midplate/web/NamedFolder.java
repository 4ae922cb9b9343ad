package midplate.web;

import java.nio.file.Path;
import java.util.Optional;

/** The folder that a person named: {@code ~} at its beginning is the home folder, also where the shell left it as it is. */
final class NamedFolder {
    private static final String HOME = "~";

    private NamedFolder() {}

    /** The folder; empty where the home folder is meant and there is none. */
    static Optional<Path> of(Path named, String home) {
        if (!named.startsWith(HOME)) {
            return Optional.of(named);
        }
        return home.isBlank()
                ? Optional.empty()
                : Optional.of(Path.of(home).resolve(Path.of(HOME).relativize(named)));
    }
}
