package midplate.notebook;

import midplate.words.Message;

/**
 * A file in the folder that is no study at hand, and why.
 *
 * @param file its place in the folder, such as {@code studies/20261126-k7m2q9x4tb.json}
 * @param kind what is the matter
 * @param text the same in words, with what to do
 */
public record FolderTrouble(String file, Kind kind, Message text) {
    /** What is the matter with a file. */
    public enum Kind {
        /** A newer program wrote it; it is left as it is. */
        NEWER,
        /** Its name is not the id of the study in it, or no id at all; it is left as it is. */
        MISNAMED,
        /** The system does not let it be read; it is left as it is. */
        UNREADABLE,
        /** It is a folder or a link; it is left as it is. */
        NO_PLAIN_FILE,
        /** It is larger than any study; it is left as it is. */
        TOO_LARGE,
        /** It was damaged, and lies in the folder of files set aside. */
        SET_ASIDE
    }
}
