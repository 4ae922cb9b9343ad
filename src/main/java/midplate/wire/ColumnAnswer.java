package midplate.wire;

import java.util.List;
import midplate.column.ColumnPlan;
import midplate.column.ColumnQuestion;

/**
 * The plan of a column, for a door that says it in words.
 *
 * @param question as it was understood
 * @param plan the answer
 * @param notes what the reading of the plates has to say
 * @param json the answer in JSON
 */
public record ColumnAnswer(ColumnQuestion question, ColumnPlan plan, List<Note> notes, String json) {
    /** Keeps its own copy. */
    public ColumnAnswer {
        notes = List.copyOf(notes);
    }
}
