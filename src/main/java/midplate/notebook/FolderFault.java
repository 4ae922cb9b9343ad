package midplate.notebook;

import midplate.words.Message;
import midplate.words.Refusal;

/** The folder cannot be opened, or something in it cannot be read or written; what was there before is as it was. */
public final class FolderFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What stands in the way. */
    public enum Kind {
        /** Another process keeps the folder. */
        IN_USE,
        /** A file stands where a folder should, or a link leads elsewhere. */
        NO_FOLDER,
        /** The system does not allow it. */
        NO_PERMISSION,
        /** The disk has no room. */
        FULL,
        /** The disk cannot lock files, so two processes could keep one folder. */
        NO_LOCK,
        /** The file was written by a newer program, and is left as it is. */
        NEWER,
        /** The file of the study cannot be taken for another reason, and is left as it is. */
        UNREADABLE,
        /** The folder was there and is no more. */
        GONE,
        /** The program is ending. */
        CLOSED,
        /** Anything else that the system said. */
        OTHER
    }

    private final Kind kind;
    private final Refusal refusal;

    FolderFault(Kind kind, Refusal refusal) {
        super(kind + ": " + refusal.getMessage(), refusal);
        this.kind = kind;
        this.refusal = refusal;
    }

    /** A fault of something at a place: what is wrong and what to do. */
    static FolderFault of(Kind kind, String came, Message reason, Message todo) {
        return new FolderFault(kind, new Refusal("data", reason, came, Message.of("allowed.data-folder"), todo));
    }

    /** What stands in the way. */
    public Kind kind() {
        return kind;
    }

    /** The same in words: what came is the folder or the file. */
    public Refusal refusal() {
        return refusal;
    }
}
