package midplate.lesson;

import java.util.List;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * What is asked about a slip.
 *
 * @param sample the compounds and solvents
 * @param percentStrong share of the strong solvent on the plate [% v/v], 0 to 100
 * @param plate as it should be
 * @param slip what goes wrong
 * @param size how large it is, in the unit of {@link Slip#field}
 */
public record SlipQuestion(LessonSample sample, double percentStrong, SlipPlate plate, Slip slip, double size) {
    /** Faults of the plate, and a size that cannot be on it; the fields are those of a request. */
    public static List<Refusal> faults(SlipPlate plate, Slip slip, double size) {
        List<Refusal> faults = plate.faults();
        Slip.Size range = slip.size(plate);
        if (!faults.isEmpty() || range.holds(size)) {
            return faults;
        }
        return List.of(new Refusal(
                range.field(),
                Message.of("lesson.slip-size-out-of-range", "name", range.field()),
                Double.toString(size),
                Allowed.closed(range.low(), range.high()),
                Message.of("todo.give-slip-size")));
    }
}
