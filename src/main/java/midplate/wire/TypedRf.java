package midplate.wire;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * Reads an Rf that was typed as such.
 *
 * <p>An Rf of exactly 0 or 1, written down by a person who saw the spot on a line, is a bound in {@code bench} and {@code
 * class}: at most {@value #AT_START_RF}, at least {@value #AT_FRONT_RF}. In {@code automated} it stays the number that it
 * is.
 */
final class TypedRf {
    /** A spot on the start line is told from one that moved above this Rf [1]; common practice, no source. */
    static final double AT_START_RF = 0.03;
    /** And one at the front below this Rf [1]; common practice, no source. */
    static final double AT_FRONT_RF = 0.97;

    private final FaultList faults;
    private final Setting setting;

    TypedRf(FaultList faults, Setting setting) {
        this.faults = faults;
        this.setting = setting;
    }

    /**
     * The reading at a place of the input; empty when it is none.
     *
     * @param spot what to call the spot: its name, or a message where it has none
     * @param notes is told where the number is taken for a bound
     */
    Optional<Reading> read(String path, Json came, Object spot, List<Message> notes) {
        OptionalDouble rf = JsonFields.number(path, came, faults);
        if (rf.isEmpty()) {
            return Optional.empty();
        }
        boolean byEye = setting != Setting.AUTOMATED;
        double value = rf.getAsDouble();
        if (byEye && value == 0) {
            notes.add(Message.of("note.taken-as-start", "spot", spot, "bound", AT_START_RF));
            return Optional.of(Reading.atStart(AT_START_RF));
        }
        if (byEye && value == 1) {
            notes.add(Message.of("note.taken-as-front", "spot", spot, "bound", AT_FRONT_RF));
            return Optional.of(Reading.atFront(AT_FRONT_RF));
        }
        try {
            return Optional.of(Reading.of(value));
        } catch (Refusal refusal) {
            faults.add(path, refusal.reason(), came.shown(), refusal.allowed(), refusal.todo());
            return Optional.empty();
        }
    }
}
