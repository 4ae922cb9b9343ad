package midplate.wire;

import java.util.OptionalDouble;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads an Rf that stands by itself. */
final class RfReader {
    private RfReader() {}

    /** The Rf [1], in [0, 1]; empty when absent or faulty. */
    static OptionalDouble read(JsonFields fields, String name, FaultList faults) {
        OptionalDouble rf = fields.number(name);
        if (rf.isEmpty() || (rf.getAsDouble() >= 0 && rf.getAsDouble() <= 1)) {
            return rf;
        }
        faults.add(
                fields.path(name),
                Message.of("plate.rf-out-of-range", "rf", rf.getAsDouble()),
                fields.any(name).map(Json::shown).orElse(""),
                Allowed.closed(0, 1),
                Message.of("todo.divide-distances"));
        return OptionalDouble.empty();
    }
}
