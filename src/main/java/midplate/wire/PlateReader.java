package midplate.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.plate.PlateMeasurement;
import midplate.plate.PlateReading;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.plate.SpotForm;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * Reads a plate given by its lengths in millimetres. A spot without a name is an unlabelled one; a spot may be given by its
 * Rf in place of its height.
 */
final class PlateReader {
    static final List<String> FIELDS = List.of("heightMm", "startMm", "frontMm", "widthMm", "solventLevelMm", "spots");
    static final List<String> SPOT_FIELDS =
            List.of("spot", "lane", "centreMm", "rf", "sizeMm", "fromLeftMm", "errorMm", "shape");

    /** How a room below calls the plate in its refusals. */
    private static final String BELOW = "plate";

    private static final int MOST_SPOTS = 4 * QuestionReader.MOST_SPOTS;
    private static final int MOST_LANES = 50;

    private final FaultList faults;
    private final TypedRf typed;
    private final List<Message> notes = new ArrayList<>();

    /**
     * For one plate.
     *
     * @param faults where faults go
     * @param setting who reads an Rf of 0 or 1
     */
    PlateReader(FaultList faults, Setting setting) {
        this.faults = faults;
        this.typed = new TypedRf(faults, setting);
    }

    /** The plate at a place of the input, worked out; empty when anything is wrong. */
    Optional<ReadPlate> read(String path, Json value) {
        Optional<JsonFields> object = JsonFields.of(path, value, faults, FIELDS);
        if (object.isEmpty()) {
            return Optional.empty();
        }
        int before = faults.count();
        Optional<Lines> lines = lines(object.get());
        Optional<PlateSpots> spots = spots(object.get());
        if (lines.isEmpty() || spots.isEmpty() || faults.count() > before) {
            return Optional.empty();
        }
        PlateMeasurement plate = lines.get().with(spots.get());
        List<Refusal> impossible = PlateReading.faults(plate);
        for (Refusal refusal : impossible) {
            faults.add(
                    placed(path, refusal.field()),
                    spots.get().said(refusal.reason()),
                    refusal.came(),
                    refusal.allowed(),
                    refusal.todo());
        }
        return impossible.isEmpty()
                ? Optional.of(spots.get().on(plate, PlateReading.of(plate), notes))
                : Optional.empty();
    }

    /** A plate without its spots [mm]. */
    private record Lines(double height, double start, double front, OptionalDouble width, OptionalDouble level) {
        PlateMeasurement with(PlateSpots spots) {
            return new PlateMeasurement(height, start, front, width, level, spots.measurements(start, front));
        }
    }

    private Optional<Lines> lines(JsonFields fields) {
        OptionalDouble height = length(fields, "heightMm", Message.of("todo.give-plate-height"));
        OptionalDouble start = length(fields, "startMm", Message.of("todo.give-start"));
        OptionalDouble front = length(fields, "frontMm", Message.of("todo.give-front"));
        OptionalDouble width = fields.number("widthMm");
        OptionalDouble level = fields.number("solventLevelMm");
        return height.isEmpty() || start.isEmpty() || front.isEmpty()
                ? Optional.empty()
                : Optional.of(new Lines(height.getAsDouble(), start.getAsDouble(), front.getAsDouble(), width, level));
    }

    private Optional<PlateSpots> spots(JsonFields plate) {
        if (!plate.has("spots")) {
            plate.missing("spots", Message.of("allowed.list-of-spots"), Message.of("todo.give-each-spot"));
        }
        return plate.items("spots", MOST_SPOTS).map(list -> spots(plate, list));
    }

    private PlateSpots spots(JsonFields plate, List<Json> list) {
        if (list.isEmpty()) {
            plate.missing("spots[0]", Message.of("allowed.one-spot"), Message.of("todo.give-each-spot"));
        }
        List<PlateSpots.Entry> entries = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            int index = i;
            JsonFields.of(plate.path("spots[" + i + "]"), list.get(i), faults, SPOT_FIELDS)
                    .flatMap(fields -> entry(index, fields))
                    .ifPresent(entries::add);
        }
        PlateSpots spots = new PlateSpots(entries);
        if (spots.mostUnlabelled() > PlateSpots.MOST_UNLABELLED) {
            tooManyUnlabelled(plate.path("spots"), spots.mostUnlabelled(), faults);
        }
        return spots;
    }

    /** Tells that a lane has more spots without a label than can be told apart. */
    static void tooManyUnlabelled(String path, int count, FaultList faults) {
        faults.add(
                path,
                Message.of("fault.unlabelled-too-many", "count", count),
                Message.of("came.unlabelled", "count", count),
                Message.of("allowed.in-a-lane", "interval", Allowed.closed(0, PlateSpots.MOST_UNLABELLED)),
                Message.of("todo.label-some"));
    }

    private Optional<PlateSpots.Entry> entry(int index, JsonFields fields) {
        int before = faults.count();
        Optional<String> label = fields.text("spot", QuestionReader.LONGEST_NAME);
        int lane = lane(fields);
        Optional<Json> rf = fields.any("rf");
        OptionalDouble centre = rf.isPresent()
                ? fields.number("centreMm")
                : length(fields, "centreMm", Message.of("todo.give-spot-middle"));
        if (rf.isPresent() && fields.has("centreMm")) {
            faults.add(
                    fields.path("rf"),
                    Message.of("fault.two-places"),
                    Message.of("came.centre-and-rf"),
                    Message.of("allowed.centre-or-rf"),
                    Message.of("todo.keep-one-place"));
        }
        Object called = label.isPresent() ? label.get() : PlateSpots.called(index);
        Optional<Reading> reading = rf.flatMap(came -> typed.read(fields.path("rf"), came, called, notes));
        OptionalDouble size = fields.number("sizeMm");
        OptionalDouble left = fields.number("fromLeftMm");
        OptionalDouble error = fields.number("errorMm");
        Optional<SpotForm> shape = fields.choice("shape", SpotForm.ids()).flatMap(SpotForm::byId);
        return faults.count() > before
                ? Optional.empty()
                : Optional.of(new PlateSpots.Entry(index, label, lane, centre, reading, size, left, error, shape));
    }

    private int lane(JsonFields fields) {
        OptionalDouble lane = fields.number("lane");
        double number = lane.orElse(1);
        if (!(number >= 1 && number <= MOST_LANES && number == Math.rint(number))) {
            Message interval = Allowed.closed(1, MOST_LANES);
            faults.add(
                    fields.path("lane"),
                    Message.of("fault.number-out-of-range", "allowed", interval),
                    fields.any("lane").map(Json::shown).orElse(""),
                    Message.of("allowed.whole-number", "interval", interval),
                    Message.of("todo.count-lanes"));
            return 1;
        }
        return (int) number;
    }

    private static OptionalDouble length(JsonFields fields, String name, Message what) {
        if (!fields.has(name)) {
            fields.missing(name, Message.of("allowed.length"), what);
        }
        return fields.number(name);
    }

    /** {@code plate.frontMm} as it is called in this input: {@code runs[0].plate.frontMm}, or {@code frontMm}. */
    private static String placed(String path, String field) {
        String rest = field.startsWith(BELOW + ".") ? field.substring(BELOW.length() + 1) : field;
        return JsonText.joined(path, rest);
    }
}
