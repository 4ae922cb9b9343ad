package midplate.benchmark;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import midplate.inference.Series;

/** The samples of one contender, by the name of their figure. */
final class Samples {
    private final Map<String, Sample> byName = new TreeMap<>();

    void add(String name, List<Series> members, double value) {
        byName.computeIfAbsent(name, key -> new Sample()).add(members, value);
    }

    void addAll(Samples other) {
        other.byName.forEach((name, sample) ->
                byName.computeIfAbsent(name, key -> new Sample()).addAll(sample));
    }

    Map<String, Sample> byName() {
        return byName;
    }
}
