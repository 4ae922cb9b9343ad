package midplate.wire;

import java.util.List;
import midplate.words.Message;

/**
 * How strong a mixture is by the published tables, for a door that says it in words.
 *
 * @param lines the strength, and the equally strong mixture where one was asked for, table by table
 * @param notes what to know beside it
 * @param json the answer in JSON
 */
public record StrengthAnswer(List<Message> lines, List<Message> notes, String json) {
    /** Keeps its own copies. */
    public StrengthAnswer {
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
    }
}
