package midplate.benchmark;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
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

    /** All compounds that values belong to. */
    Set<Series> members() {
        Set<Series> members = new TreeSet<>();
        byName.values().forEach(sample -> sample.sums().keySet().forEach(each -> members.addAll(each.series())));
        return members;
    }

    Map<String, Sample> byName() {
        return byName;
    }
}
