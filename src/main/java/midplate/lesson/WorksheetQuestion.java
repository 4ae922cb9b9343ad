package midplate.lesson;

import java.util.List;
import java.util.Optional;
import midplate.words.Message;

/**
 * A question of a worksheet and its answer, which stands on another page.
 *
 * @param kind what it is about
 * @param asked what is told and asked
 * @param plate the plate, where there is one
 * @param toFill the table to fill in
 * @param lines how many lines to write on come after it
 * @param key the answer
 */
public record WorksheetQuestion(
        WorksheetKind kind,
        List<Message> asked,
        Optional<DrawnPlate> plate,
        Optional<WorksheetTable> toFill,
        int lines,
        Key key) {
    /** Keeps its own copy. */
    public WorksheetQuestion {
        asked = List.copyOf(asked);
    }

    /**
     * The answer.
     *
     * @param says in words
     * @param table its table
     * @param figures the numbers by themselves
     */
    public record Key(List<Message> says, Optional<WorksheetTable> table, List<Figure> figures) {
        /** Keeps its own copies. */
        public Key {
            says = List.copyOf(says);
            figures = List.copyOf(figures);
        }
    }

    /**
     * A number that is to be found, and from where to where it is accepted.
     *
     * @param of the letter of the spot, or {@code percentStrong}
     * @param value the number
     * @param from the least that is accepted
     * @param to the greatest
     */
    public record Figure(String of, double value, double from, double to) {}
}
