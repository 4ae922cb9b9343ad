package midplate.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.plate.PlateMeasurement;
import midplate.plate.PlateReading;
import midplate.plate.SpotMeasurement;
import midplate.words.Refusal;

/** Reads a plate given by its lengths in millimetres. */
final class PlateReader {
    static final List<String> FIELDS = List.of("heightMm", "startMm", "frontMm", "widthMm", "solventLevelMm", "spots");
    static final List<String> SPOT_FIELDS = List.of("spot", "centreMm", "sizeMm", "fromLeftMm");

    /** How a room below calls the plate in its refusals. */
    private static final String BELOW = "plate";

    private static final int MOST_SPOTS = 4 * QuestionReader.MOST_SPOTS;

    private final FaultList faults;

    PlateReader(FaultList faults) {
        this.faults = faults;
    }

    /** The plate at a place of the input, worked out; empty when anything is wrong. */
    Optional<PlateReading> read(String path, Json value) {
        Optional<JsonFields> object = JsonFields.of(path, value, faults, FIELDS);
        if (object.isEmpty()) {
            return Optional.empty();
        }
        int before = faults.count();
        Optional<PlateMeasurement> plate = measurement(object.get());
        if (plate.isEmpty() || faults.count() > before) {
            return Optional.empty();
        }
        List<Refusal> impossible = PlateReading.faults(plate.get());
        for (Refusal refusal : impossible) {
            faults.add(placed(path, refusal.field()), refusal);
        }
        return impossible.isEmpty() ? Optional.of(PlateReading.of(plate.get())) : Optional.empty();
    }

    private Optional<PlateMeasurement> measurement(JsonFields fields) {
        OptionalDouble height = length(fields, "heightMm", "the plate's height");
        OptionalDouble start = length(fields, "startMm", "the height of the start line above the plate's lower edge");
        OptionalDouble front = length(fields, "frontMm", "the height of the front above the plate's lower edge");
        OptionalDouble width = fields.number("widthMm");
        OptionalDouble level = fields.number("solventLevelMm");
        if (!fields.has("spots")) {
            fields.missing("spots", "a list of spots", "Give each spot with its name and the height of its middle.");
        }
        Optional<List<SpotMeasurement>> spots =
                fields.items("spots", MOST_SPOTS).map(list -> spots(fields, list));
        if (height.isEmpty() || start.isEmpty() || front.isEmpty() || spots.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new PlateMeasurement(
                height.getAsDouble(), start.getAsDouble(), front.getAsDouble(), width, level, spots.get()));
    }

    private List<SpotMeasurement> spots(JsonFields plate, List<Json> list) {
        if (list.isEmpty()) {
            plate.missing(
                    "spots[0]", "at least one spot", "Give each spot with its name and the height of its middle.");
        }
        List<SpotMeasurement> spots = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            JsonFields.of(plate.path("spots[" + i + "]"), list.get(i), faults, SPOT_FIELDS)
                    .flatMap(this::spot)
                    .ifPresent(spots::add);
        }
        return spots;
    }

    private Optional<SpotMeasurement> spot(JsonFields fields) {
        if (!fields.has("spot")) {
            fields.missing("spot", "the name of a spot", "Name the spot, for example A.");
        }
        Optional<String> name = fields.text("spot", QuestionReader.LONGEST_NAME);
        OptionalDouble centre = length(fields, "centreMm", "the height of the spot's middle");
        OptionalDouble size = fields.number("sizeMm");
        OptionalDouble left = fields.number("fromLeftMm");
        return name.isEmpty() || centre.isEmpty()
                ? Optional.empty()
                : Optional.of(new SpotMeasurement(name.get(), centre.getAsDouble(), size, left));
    }

    private static OptionalDouble length(JsonFields fields, String name, String what) {
        if (!fields.has(name)) {
            fields.missing(name, "a length in millimetres", "Give " + what + " in millimetres.");
        }
        return fields.number(name);
    }

    /** {@code plate.frontMm} as it is called in this input: {@code runs[0].plate.frontMm}, or {@code frontMm}. */
    private static String placed(String path, String field) {
        String rest = field.startsWith(BELOW + ".") ? field.substring(BELOW.length() + 1) : field;
        return JsonText.joined(path, rest);
    }
}
