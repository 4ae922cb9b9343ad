package midplate.terminal;

import java.util.List;

/** An option whose text cannot be read. */
final class Nonsense extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> lines;

    Nonsense(String option, String came, String allowed, String todo) {
        super(option + " came as \"" + came.replaceAll("\\p{Cntrl}", "?") + "\"; allowed is " + allowed + ". " + todo);
        this.lines = List.of(
                option + (came.isBlank() ? " is missing or empty." : " came as \"" + came + "\"."),
                "Allowed: " + allowed + ".",
                todo);
    }

    /** What came; what is allowed; what to do. */
    List<String> lines() {
        return lines;
    }
}
