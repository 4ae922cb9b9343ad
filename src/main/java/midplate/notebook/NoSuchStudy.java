package midplate.notebook;

import midplate.words.Message;
import midplate.words.Refusal;

/** The folder holds no study of that id. */
public final class NoSuchStudy extends RuntimeException {
    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // told where it is caught, never stored
    private final StudyId id;

    NoSuchStudy(StudyId id) {
        super(id.value());
        this.id = id;
    }

    /** The id asked for. */
    public StudyId id() {
        return id;
    }

    /** The same in words. */
    public Refusal refusal() {
        return new Refusal(
                "id",
                Message.of("study.not-there"),
                id.value(),
                Message.of("allowed.study-in-folder"),
                Message.of("todo.look-in-list"));
    }
}
