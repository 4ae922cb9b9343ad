package midplate.wire;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.plate.Limit;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.words.Message;
import midplate.words.Refusal;

/** Reads an Rf that was typed as such, and tells where {@link Reading#asTyped} takes it for a bound. */
final class TypedRf {
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
        try {
            Reading reading = Reading.asTyped(rf.getAsDouble(), setting);
            if (reading.limit() != Limit.NONE) {
                String key = reading.limit() == Limit.AT_START ? "note.taken-as-start" : "note.taken-as-front";
                notes.add(Message.of(key, "spot", spot, "bound", reading.rf()));
            }
            return Optional.of(reading);
        } catch (Refusal refusal) {
            faults.add(path, refusal.reason(), came.shown(), refusal.allowed(), refusal.todo());
            return Optional.empty();
        }
    }
}
