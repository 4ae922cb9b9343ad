package midplate.wire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.chemistry.Sorbent;
import midplate.plate.Eluent;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.plate.Setting;
import midplate.plate.UnlabelledLane;
import midplate.plate.UnlabelledSpot;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Nearest;

/** Reads one plate that was run: its eluent, and its readings as Rf or as lengths, some perhaps without a label. */
final class RunReader {
    static final List<String> FIELDS =
            List.of("weak", "strong", "percentStrong", "additive", "rf", "unlabelled", "plate", "notSeen");

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
            fields.missing("percentStrong", Allowed.closed(0, 100), Message.of("todo.give-percent-of-plate"));
        }
        OptionalDouble percent = fields.percent("percentStrong");
        Optional<String> additive = fields.text("additive", QuestionReader.LONGEST_NAME);
        int before = faults.count();
        Seen seen = readings(path, fields, frame);
        Set<String> notSeen = notSeen(fields, seen.readings().keySet(), frame);
        if (pair.isEmpty() || percent.isEmpty() || faults.count() > before) {
            return Optional.empty();
        }
        Eluent eluent =
                new Eluent(frame.sorbent(), pair.get().weak(), pair.get().strong(), percent.getAsDouble(), additive);
        return Optional.of(new Run(eluent, seen.readings(), seen.unlabelled(), notSeen));
    }

    /** What was read on one plate. */
    private record Seen(Map<String, Reading> readings, List<UnlabelledLane> unlabelled) {
        static final Seen NOTHING = new Seen(Map.of(), List.of());
    }

    private Seen readings(String path, JsonFields fields, Frame frame) {
        Optional<Json> plate = fields.any("plate");
        Optional<Json> rf = fields.any("rf");
        if (plate.isPresent() && rf.isPresent()) {
            faults.add(
                    fields.path("plate"),
                    Message.of("fault.two-readings"),
                    Message.of("came.rf-and-plate"),
                    Message.of("allowed.rf-or-plate"),
                    Message.of("todo.keep-one-reading"));
        } else if (plate.isPresent() && fields.has("unlabelled")) {
            faults.add(
                    fields.path("unlabelled"),
                    Message.of("fault.unlabelled-and-lengths"),
                    Message.of("came.unlabelled-and-plate"),
                    Message.of("allowed.unlabelled-or-plate"),
                    Message.of("todo.put-into-plate", "example", "{\"rf\": 0.31}"));
        } else if (plate.isPresent()) {
            return fromLengths(path, fields.path("plate"), plate.get(), frame);
        } else if (rf.isPresent() || fields.has("unlabelled")) {
            return fromRf(path, fields, frame);
        } else {
            fields.missing("rf", Message.of("allowed.rf-by-spot"), Message.of("todo.give-one-rf"));
        }
        return Seen.NOTHING;
    }

    private Seen fromLengths(String run, String path, Json value, Frame frame) {
        Optional<ReadPlate> plate = new PlateReader(faults, frame.setting()).read(path, value);
        if (plate.isEmpty()) {
            return Seen.NOTHING;
        }
        for (String spot : plate.get().readings().keySet()) {
            known(path + ".spots", spot, frame);
        }
        plate.get().warnings().forEach(message -> note(run, message));
        plate.get().notes().forEach(message -> note(run, message));
        return new Seen(plate.get().readings(), plate.get().unlabelled());
    }

    private Seen fromRf(String run, JsonFields fields, Frame frame) {
        List<UnlabelledSpot> unlabelled = unlabelled(run, fields, frame);
        Map<String, Reading> readings = new LinkedHashMap<>();
        Optional<JsonFields> object =
                fields.any("rf").flatMap(value -> JsonFields.open(fields.path("rf"), value, faults));
        boolean empty = object.map(each -> each.size() == 0).orElse(!fields.has("rf"));
        boolean noneListed = fields.any("unlabelled")
                .map(value -> value instanceof Json.Items list && list.items().isEmpty())
                .orElse(true);
        if (empty && noneListed) {
            String name = fields.has("rf") ? "rf" : "unlabelled";
            faults.add(
                    fields.path(name),
                    Message.of("fault.no-reading"),
                    fields.has("rf") ? "{}" : "[]",
                    Message.of("allowed.one-rf"),
                    Message.of("todo.give-one-rf"));
        }
        if (object.isPresent()) {
            for (String spot : object.get().names()) {
                String name = spot.strip();
                if (known(object.get().path(spot), name, frame)) {
                    typed(run, object.get().path(spot), object.get().any(spot), spot, frame)
                            .ifPresent(read -> readings.put(name, read));
                }
            }
        }
        return new Seen(
                readings,
                unlabelled.isEmpty() ? List.of() : List.of(new UnlabelledLane(1, readings.keySet(), unlabelled)));
    }

    private List<UnlabelledSpot> unlabelled(String run, JsonFields fields, Frame frame) {
        List<UnlabelledSpot> spots = new ArrayList<>();
        fields.items("unlabelled", QuestionReader.MOST_SPOTS).ifPresent(list -> {
            if (list.size() > PlateSpots.MOST_UNLABELLED) {
                PlateReader.tooManyUnlabelled(fields.path("unlabelled"), list.size(), faults);
            }
            for (int i = 0; i < list.size(); i++) {
                int index = i;
                String path = fields.path("unlabelled[" + i + "]");
                typed(run, path, Optional.of(list.get(i)), PlateSpots.called(i), frame)
                        .ifPresent(reading -> spots.add(new UnlabelledSpot(index, reading)));
            }
        });
        return spots;
    }

    private Optional<Reading> typed(String run, String path, Optional<Json> came, Object spot, Frame frame) {
        List<Message> told = new ArrayList<>();
        Optional<Reading> reading =
                came.flatMap(value -> new TypedRf(faults, frame.setting()).read(path, value, spot, told));
        told.forEach(message -> note(run, message));
        return reading;
    }

    private Set<String> notSeen(JsonFields fields, Set<String> read, Frame frame) {
        Set<String> names = new LinkedHashSet<>();
        fields.items("notSeen", QuestionReader.MOST_SPOTS).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                String path = fields.path("notSeen[" + i + "]");
                JsonFields.text(path, list.get(i), QuestionReader.LONGEST_NAME, faults)
                        .filter(name -> known(path, name, frame) && notRead(path, name, read))
                        .ifPresent(names::add);
            }
        });
        return names;
    }

    private boolean notRead(String path, String name, Set<String> read) {
        if (read.contains(name)) {
            faults.add(
                    path,
                    Message.of("fault.not-seen-but-read", "spot", name),
                    new Json.Text(name).shown(),
                    Message.of("allowed.unread-spot"),
                    Message.of("todo.read-or-not-seen"));
            return false;
        }
        return true;
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
                Allowed.words(frame.spots()),
                Nearest.to(spot, frame.spots())
                        .map(near -> Message.of("todo.did-you-mean", "name", near))
                        .orElse(Message.of("todo.add-to-spots")));
        return false;
    }
}
