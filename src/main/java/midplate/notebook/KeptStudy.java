package midplate.notebook;

import java.util.List;
import midplate.words.Message;

/**
 * A study as it stands in the folder.
 *
 * @param study what is kept
 * @param tag of the file it stands in
 * @param notices what a person should know of that file; usually nothing
 */
public record KeptStudy(Study study, StudyTag tag, List<Message> notices) {
    /** Keeps its own copy. */
    public KeptStudy {
        notices = List.copyOf(notices);
    }
}
