package midplate.notebook;

import midplate.words.Message;
import midplate.words.Refusal;

/** The folder holds no such picture for that study. */
public final class NoSuchPhoto extends RuntimeException {
    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // told where it is caught, never stored
    private final PhotoName name;

    NoSuchPhoto(PhotoName name) {
        super(name.sha256());
        this.name = name;
    }

    /** The same in words. */
    public Refusal refusal() {
        return new Refusal(
                "photo",
                Message.of("study.no-photo"),
                name.sha256(),
                Message.of("allowed.photo-in-folder"),
                Message.of("todo.take-photo-again"));
    }
}
