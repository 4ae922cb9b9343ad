package midplate.wire;

import midplate.notebook.TubeMark;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads how strong a spot was, as an eye says it: whole, from 0 (not seen) to {@value TubeMark#STRONGEST}. */
final class StudyStrength {
    private StudyStrength() {}

    /** The strength; what is none is told. */
    static int of(StudyFields fields, String name) {
        double strength = fields.number(name, 0, TubeMark.STRONGEST);
        if (strength != Math.rint(strength)) {
            Message whole = Message.of("allowed.whole-number", "interval", Allowed.closed(0, TubeMark.STRONGEST));
            fields.fault(
                    name,
                    Message.of("fault.number-out-of-range", "allowed", whole),
                    whole,
                    Message.of("todo.give-number-inside"));
        }
        return (int) strength;
    }
}
