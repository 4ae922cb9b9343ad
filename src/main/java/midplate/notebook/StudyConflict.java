package midplate.notebook;

import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** A study was to take the place of another state of it than the one that is there; nothing was written. */
public final class StudyConflict extends RuntimeException {
    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // told where it is caught, never stored
    private final KeptStudy now;

    StudyConflict(KeptStudy now) {
        super(now.study().id().value() + " is now " + now.tag().value());
        this.now = now;
    }

    /** What is there. */
    public KeptStudy now() {
        return now;
    }

    /** The same in words. */
    public Refusal refusal() {
        return new Refusal(
                "study",
                Message.of("study.changed-meanwhile"),
                now.study().id().value(),
                Allowed.words(now.tag().value()),
                Message.of("todo.keep-both-versions"));
    }
}
