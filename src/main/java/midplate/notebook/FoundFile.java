package midplate.notebook;

import midplate.notebook.FolderFault.Kind;
import midplate.words.Message;

/** What was found under a name in the folder of studies. */
sealed interface FoundFile {
    /**
     * A study.
     *
     * @param study what the file says
     * @param tag of the file
     * @param seal whether the file is as this program wrote it
     * @param content its bytes
     */
    record Good(Study study, StudyTag tag, FileSeal.State seal, byte[] content) implements FoundFile {}

    /** Nothing. */
    record Nothing() implements FoundFile {}

    /**
     * A file that is no study, or no longer.
     *
     * @param id what its name says
     * @param reason what is wrong
     * @param content its bytes
     */
    record Damaged(StudyId id, Message reason, byte[] content) implements FoundFile {}

    /**
     * Something that is left as it is.
     *
     * @param trouble what is the matter
     */
    record Left(FolderTrouble trouble) implements FoundFile {
        static Left of(String file, FolderTrouble.Kind kind, Message text) {
            return new Left(new FolderTrouble(file, kind, text));
        }

        /** The same for somebody who asks for this very study. */
        FolderFault fault() {
            Kind kind = trouble.kind() == FolderTrouble.Kind.NEWER ? Kind.NEWER : Kind.UNREADABLE;
            return FolderFault.of(
                    kind,
                    trouble.file(),
                    trouble.text(),
                    kind == Kind.NEWER ? Message.of("todo.start-newer-program") : Message.of("todo.look-after-file"));
        }
    }
}
