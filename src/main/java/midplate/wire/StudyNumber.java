package midplate.wire;

import midplate.notebook.Entered;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads the numbers of a study. */
final class StudyNumber {
    private StudyNumber() {}

    /** A number, or what was typed in its place. */
    static Entered entered(String path, Json value, FaultList faults) {
        if (value instanceof Json.Numeral number) {
            return Entered.number(number.written(), number.value());
        }
        if (!(value instanceof Json.Text)) {
            JsonFields.wrongType(path, value, Message.of("kind.number-or-typed"), faults);
            return Entered.NOTHING;
        }
        return StudyText.line(path, value, StudyFields.LONGEST_LINE, faults)
                .map(Entered::text)
                .orElse(Entered.NOTHING);
    }

    /** A number between two others, both allowed; 0 where it is faulty. */
    static double between(String path, Json value, double low, double high, FaultList faults) {
        double number = JsonFields.number(path, value, faults).orElse(low);
        if (number >= low && number <= high) {
            return number + 0.0; // -0 becomes 0
        }
        Message allowed = Allowed.closed(low, high);
        faults.add(
                path,
                Message.of("fault.number-out-of-range", "allowed", allowed),
                value.shown(),
                allowed,
                Message.of("todo.give-number-inside"));
        return 0;
    }
}
