package midplate.benchmark;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** All samples of a benchmark: by part, then by name, both in the order in which they came first. */
final class Results {
    /** The parts that results fall into. */
    enum Part {
        CONTENDERS,
        CEILINGS,
        IF_TRUE,
        SHARED_SCATTER,
        NEIGHBOURS_LEFT_OUT,
        PLATE_ERROR,
        STRUCTURES,
        SCOUTING,
        THEORY,
        COLUMNS
    }

    private final Map<Part, Map<String, Samples>> parts = new EnumMap<>(Part.class);

    /** The samples of a name in a part; new ones when there are none yet. */
    Samples samples(Part part, String name) {
        return parts.computeIfAbsent(part, key -> new LinkedHashMap<>()).computeIfAbsent(name, key -> new Samples());
    }

    void addAll(Results other) {
        other.parts.forEach((part, names) ->
                names.forEach((name, samples) -> samples(part, name).addAll(samples)));
    }

    Map<String, Samples> part(Part part) {
        return Collections.unmodifiableMap(parts.getOrDefault(part, Map.of()));
    }
}
