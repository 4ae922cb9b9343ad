package midplate.terminal;

/** An option whose text cannot be read. */
final class Nonsense extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Nonsense(String option, String came, String allowed, String todo) {
        super(option + " came as \"" + came.replaceAll("\\p{Cntrl}", "?") + "\"; allowed is " + allowed + ". " + todo);
    }
}
