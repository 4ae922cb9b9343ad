package midplate.notebook;

import midplate.words.Message;

/** The bytes of a file hold no study that this program can read. */
public final class UnreadableStudy extends Exception {
    private static final long serialVersionUID = 1L;

    /** Why not. */
    public enum Kind {
        /** It is broken, or none of ours. */
        DAMAGED,
        /** A newer program wrote it; it may be in best order. */
        NEWER
    }

    private final Kind kind;

    @SuppressWarnings("serial") // told where it is caught, never stored
    private final Message reason;

    /** For a reason, to be rendered. */
    public UnreadableStudy(Kind kind, Message reason) {
        super(kind + ": " + reason.key() + reason.args().values());
        this.kind = kind;
        this.reason = reason;
    }

    /** Why it cannot be read. */
    public Kind kind() {
        return kind;
    }

    /** What is wrong with it. */
    public Message reason() {
        return reason;
    }
}
