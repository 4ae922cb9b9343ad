package midplate.terminal;

import java.util.List;
import java.util.stream.Collectors;

/** An option whose text cannot be read, or several. */
final class Nonsense extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> lines;
    private final transient List<Nonsense> parts;

    Nonsense(String option, String came, String allowed, String todo) {
        super(option + " came as \"" + came.replaceAll("\\p{Cntrl}", "?") + "\"; allowed is " + allowed + ". " + todo);
        this.lines = List.of(
                option + (came.isBlank() ? " is missing or empty." : " came as \"" + came + "\"."),
                "Allowed: " + allowed + ".",
                todo);
        this.parts = List.of();
    }

    private Nonsense(List<Nonsense> parts) {
        super(parts.stream().map(Nonsense::getMessage).collect(Collectors.joining(" ")));
        this.lines = List.of();
        this.parts = List.copyOf(parts);
    }

    /** Several at once. */
    static Nonsense all(List<Nonsense> parts) {
        return new Nonsense(parts);
    }

    /** Each by itself. */
    List<Nonsense> each() {
        return parts.isEmpty() ? List.of(this) : parts;
    }

    /** What came; what is allowed; what to do; of several together nothing. */
    List<String> lines() {
        return lines;
    }
}
