package midplate.words;

import java.util.Locale;

/**
 * Input that the program cannot take, told so that the person can mend it: where, what came, what is allowed, what to
 * do next.
 *
 * <p>Any room may throw it; a door catches it and renders {@link #reason()}, {@link #allowed()} and {@link
 * #todo()} with its texts.
 */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String field;

    @SuppressWarnings("serial") // a refusal is answered where it is caught, never stored
    private final Message reason;

    private final String came;

    @SuppressWarnings("serial") // likewise
    private final Message allowed;

    @SuppressWarnings("serial") // likewise
    private final Message todo;

    /**
     * A refusal of one field.
     *
     * @param field the place in the input, such as {@code plate.frontMm} or {@code runs[0].rf.A}
     * @param reason what is wrong, to be rendered
     * @param came the value as it came
     * @param allowed what is allowed, an interval where it is a number: {@link Allowed#closed(double, double)}
     * @param todo what to do next, one sentence
     */
    public Refusal(String field, Message reason, String came, Message allowed, Message todo) {
        super(String.format(
                Locale.ROOT,
                "%s: %s (came: %s; allowed: %s) %s",
                field,
                reason.key(),
                came,
                allowed.key() + allowed.args().values(),
                todo.key()));
        this.field = field;
        this.reason = reason;
        this.came = came;
        this.allowed = allowed;
        this.todo = todo;
    }

    /** The place in the input, such as {@code plate.frontMm}. */
    public String field() {
        return field;
    }

    /** What is wrong. */
    public Message reason() {
        return reason;
    }

    /** The value as it came. */
    public String came() {
        return came;
    }

    /** What is allowed, an interval where it is a number. */
    public Message allowed() {
        return allowed;
    }

    /** What to do next. */
    public Message todo() {
        return todo;
    }

    /** The short name of the fault for programs: the last part of the reason's key. */
    public String code() {
        return reason.code();
    }
}
