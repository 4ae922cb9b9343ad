package midplate.wire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.chemistry.Sorbent;
import midplate.plate.Eluent;
import midplate.plate.PlateReading;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.plate.Setting;
import midplate.words.Message;
import midplate.words.Nearest;
import midplate.words.Refusal;

/**
 * Reads one plate that was run: its eluent, and its readings as Rf or as lengths.
 *
 * <p>An Rf of exactly 0 or 1, written down by a person who saw the spot on a line, is a bound in {@code bench} and {@code
 * class}: at most {@value #AT_START_RF}, at least {@value #AT_FRONT_RF}. In {@code automated} it stays the number that it
 * is.
 */
final class RunReader {
    static final List<String> FIELDS = List.of("weak", "strong", "percentStrong", "additive", "rf", "plate");

    /** A spot on the start line is told from one that moved above this Rf [1]; common practice, no source. */
    static final double AT_START_RF = 0.03;
    /** And one at the front below this Rf [1]; common practice, no source. */
    static final double AT_FRONT_RF = 0.97;

    private final PairReader pairs;
    private final FaultList faults;
    private final List<Note> notes = new ArrayList<>();

    RunReader(PairReader pairs, FaultList faults) {
        this.pairs = pairs;
        this.faults = faults;
    }

    /** What the runs have in common. */
    record Frame(Sorbent sorbent, Setting setting, Optional<PairReader.Pair> pair, Set<String> spots) {}

    /** What was found worth telling so far. */
    List<Note> notes() {
        return notes;
    }

    /** The run at a place of the input; empty when anything is wrong. */
    Optional<Run> read(String path, Json value, Frame frame) {
        Optional<JsonFields> object = JsonFields.of(path, value, faults, FIELDS);
        if (object.isEmpty()) {
            return Optional.empty();
        }
        JsonFields fields = object.get();
        boolean ownPair = fields.has("weak") || fields.has("strong");
        Optional<PairReader.Pair> pair = ownPair ? pairs.read(fields, frame.sorbent()) : frame.pair();
        if (!fields.has("percentStrong")) {
            fields.missing("percentStrong", "[0, 100]", "Give the percentage of the stronger solvent on this plate.");
        }
        OptionalDouble percent = fields.percent("percentStrong");
        Optional<String> additive = fields.text("additive", QuestionReader.LONGEST_NAME);
        int before = faults.count();
        Map<String, Reading> readings = readings(path, fields, frame);
        if (pair.isEmpty() || percent.isEmpty() || faults.count() > before) {
            return Optional.empty();
        }
        Eluent eluent =
                new Eluent(frame.sorbent(), pair.get().weak(), pair.get().strong(), percent.getAsDouble(), additive);
        return Optional.of(new Run(eluent, readings));
    }

    private Map<String, Reading> readings(String path, JsonFields fields, Frame frame) {
        Optional<Json> plate = fields.any("plate");
        Optional<Json> rf = fields.any("rf");
        if (plate.isPresent() && rf.isPresent()) {
            faults.add(
                    fields.path("plate"),
                    Message.of("fault.two-readings"),
                    "rf and plate",
                    "either rf or plate",
                    "Keep the lengths and leave out rf, or the other way round.");
        } else if (plate.isPresent()) {
            return fromLengths(path, fields.path("plate"), plate.get(), frame);
        } else if (rf.isPresent()) {
            return fromRf(path, fields.path("rf"), rf.get(), frame);
        } else {
            fields.missing(
                    "rf", "an object from spot to Rf", "Give the Rf of at least one spot, or leave out the run.");
        }
        return Map.of();
    }

    private Map<String, Reading> fromLengths(String run, String path, Json value, Frame frame) {
        Optional<PlateReading> reading = new PlateReader(faults).read(path, value);
        if (reading.isEmpty()) {
            return Map.of();
        }
        for (String spot : reading.get().readings().keySet()) {
            known(path + ".spots", spot, frame);
        }
        for (Message warning : reading.get().warnings()) {
            notes.add(new Note(warning, Optional.of(run)));
        }
        return reading.get().readings();
    }

    private Map<String, Reading> fromRf(String run, String path, Json value, Frame frame) {
        Map<String, Reading> readings = new LinkedHashMap<>();
        Optional<JsonFields> object = JsonFields.open(path, value, faults);
        if (object.isEmpty()) {
            return readings;
        }
        if (object.get().size() == 0) {
            faults.add(
                    path,
                    Message.of("fault.no-reading"),
                    "{}",
                    "at least one spot with its Rf",
                    "Give the Rf of at least one spot, or leave out the run.");
        }
        for (String spot : object.get().names()) {
            String name = spot.strip();
            if (known(object.get().path(spot), name, frame)) {
                reading(run, object.get(), spot, frame).ifPresent(read -> readings.put(name, read));
            }
        }
        return readings;
    }

    private Optional<Reading> reading(String run, JsonFields object, String spot, Frame frame) {
        OptionalDouble rf = object.number(spot);
        if (rf.isEmpty()) {
            return Optional.empty();
        }
        boolean byEye = frame.setting() != Setting.AUTOMATED;
        double value = rf.getAsDouble();
        if (byEye && value == 0) {
            note(run, Message.of("note.taken-as-start", "spot", spot, "bound", AT_START_RF));
            return Optional.of(Reading.atStart(AT_START_RF));
        }
        if (byEye && value == 1) {
            note(run, Message.of("note.taken-as-front", "spot", spot, "bound", AT_FRONT_RF));
            return Optional.of(Reading.atFront(AT_FRONT_RF));
        }
        try {
            return Optional.of(Reading.of(value));
        } catch (Refusal refusal) {
            String came = object.any(spot).map(Json::shown).orElse(refusal.came());
            faults.add(object.path(spot), refusal.reason(), came, refusal.allowed(), refusal.todo());
            return Optional.empty();
        }
    }

    private void note(String run, Message message) {
        notes.add(new Note(message, Optional.of(run)));
    }

    private boolean known(String path, String spot, Frame frame) {
        if (frame.spots().isEmpty() || frame.spots().contains(spot)) { // no spots: told already
            return true;
        }
        String came = new Json.Text(spot).shown();
        faults.add(
                path,
                Message.of("fault.unknown-spot", "spot", came),
                came,
                String.join(", ", frame.spots()),
                Nearest.to(spot, frame.spots())
                        .map(near -> "Did you mean " + near + "?")
                        .orElse("Add it to spots, or leave it out here."));
        return false;
    }
}
