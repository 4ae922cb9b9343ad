package midplate.wire;

import java.util.List;
import midplate.advice.Advice;
import midplate.advice.Question;

/**
 * A request for advice with its answer, for a door that says it in words.
 *
 * @param question as it was understood
 * @param advice the answer
 * @param notes everything to know beside it
 * @param json the answer in JSON
 */
public record Answered(Question question, Advice advice, List<Note> notes, String json) {
    /** Keeps its own copy. */
    public Answered {
        notes = List.copyOf(notes);
    }
}
