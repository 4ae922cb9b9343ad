package midplate.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import midplate.identity.ComparedLane;
import midplate.identity.ComparedPlate;
import midplate.identity.LaneRole;
import midplate.identity.LaneSpot;
import midplate.identity.SpotShape;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads plates of lanes that are compared. Where something cannot be read a stand-in keeps the places of the rest. */
final class LaneReader {
    static final List<String> PLATE = List.of("startMm", "frontMm", "lanes");
    static final List<String> LANE = List.of("role", "reference", "spots");
    static final List<String> SPOT = List.of("centreMm", "rf", "sizeMm", "shape");

    static final int MOST_PLATES = 20;
    static final int MOST_LANES = 30;
    static final int MOST_SPOTS = 50;

    private static final List<String> ROLES =
            Arrays.stream(LaneRole.values()).map(LaneRole::id).toList();
    private static final List<String> SHAPES =
            Arrays.stream(SpotShape.values()).map(SpotShape::id).toList();
    private static final String EXAMPLE = "{\"role\": \"unknown\", \"spots\": [{\"centreMm\": 35.5, \"sizeMm\": 3}]}";

    private final ColumnParts parts;
    private final FaultList faults;

    LaneReader(ColumnParts parts, FaultList faults) {
        this.parts = parts;
        this.faults = faults;
    }

    /** The plates of a request. */
    List<ComparedPlate> plates(JsonFields request) {
        if (!request.has("plates")) {
            request.missing(
                    "plates",
                    Message.of("allowed.entries", "interval", Allowed.closed(1, MOST_PLATES)),
                    Message.of("todo.give-lanes", "example", EXAMPLE));
        }
        List<ComparedPlate> plates = new ArrayList<>();
        request.items("plates", MOST_PLATES).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                plates.add(plate(request.path("plates[" + i + "]"), list.get(i)));
            }
        });
        return plates;
    }

    private ComparedPlate plate(String path, Json value) {
        Optional<JsonFields> came = JsonFields.of(path, value, faults, PLATE);
        if (came.isEmpty()) {
            parts.passOver(path);
            return ComparedPlate.ofRf();
        }
        JsonFields fields = came.get();
        if (!fields.has("lanes")) {
            fields.missing(
                    "lanes",
                    Message.of("allowed.entries", "interval", Allowed.closed(1, MOST_LANES)),
                    Message.of("todo.give-lanes", "example", EXAMPLE));
        }
        int before = faults.count();
        var start = fields.number("startMm");
        var front = fields.number("frontMm");
        if (faults.count() > before) { // without its lines nothing is said of its spots
            parts.passOver(path);
        }
        List<ComparedLane> lanes = new ArrayList<>();
        fields.items("lanes", MOST_LANES).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                lanes.add(lane(fields.path("lanes[" + i + "]"), list.get(i)));
            }
        });
        return new ComparedPlate(start, front, lanes);
    }

    private ComparedLane lane(String path, Json value) {
        Optional<JsonFields> came = JsonFields.of(path, value, faults, LANE);
        if (came.isEmpty()) {
            parts.passOver(path);
            return ComparedLane.unknown();
        }
        JsonFields fields = came.get();
        if (!fields.has("role")) {
            fields.missing("role", Allowed.words(ROLES), Message.of("todo.say-role"));
        }
        Optional<LaneRole> role = fields.choice("role", ROLES).flatMap(LaneRole::byId);
        int before = faults.count();
        Optional<String> reference = fields.text("reference", QuestionReader.LONGEST_NAME);
        if (faults.count() > before) {
            parts.passOver(fields.path("reference"));
        }
        List<LaneSpot> spots = new ArrayList<>();
        Optional<List<Json>> list = fields.items("spots", MOST_SPOTS);
        if (fields.has("spots") && list.isEmpty()) {
            parts.passOver(fields.path("spots"));
        }
        for (int i = 0; i < list.map(List::size).orElse(0); i++) {
            spots.add(spot(fields.path("spots[" + i + "]"), list.orElseThrow().get(i)));
        }
        return new ComparedLane(role.orElse(LaneRole.UNKNOWN), reference, spots);
    }

    private LaneSpot spot(String path, Json value) {
        int before = faults.count();
        Optional<LaneSpot> spot = JsonFields.of(path, value, faults, SPOT)
                .map(fields -> new LaneSpot(
                        fields.number("centreMm"),
                        fields.number("rf"),
                        fields.number("sizeMm"),
                        fields.choice("shape", SHAPES).flatMap(SpotShape::byId).orElse(SpotShape.ROUND)));
        if (faults.count() > before) {
            parts.passOver(path);
        }
        return spot.orElseGet(() -> LaneSpot.atRf(0));
    }
}
