package midplate.benchmark;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The results of a benchmark.
 *
 * @param setting what was asked of what, in words and numbers, by name
 * @param contenders the figures of each contender, by its name and theirs; contenders in the order they ran
 * @param differences paired differences {@code A − B} on the same questions, by pair of names and figure
 */
public record Accuracy(
        Map<String, Object> setting,
        Map<String, Map<String, Figure>> contenders,
        Map<String, Map<String, Figure>> differences) {
    /** Keeps its own copies. */
    public Accuracy {
        setting = Collections.unmodifiableMap(new LinkedHashMap<>(setting));
        contenders = Collections.unmodifiableMap(new LinkedHashMap<>(contenders));
        differences = Collections.unmodifiableMap(new LinkedHashMap<>(differences));
    }

    /** Works out figures and errors from samples. */
    static Accuracy of(Map<String, Object> setting, Map<String, Samples> samples, Bootstrap bootstrap) {
        Map<String, Map<String, Figure>> contenders = new LinkedHashMap<>();
        samples.forEach((name, its) -> {
            Map<String, Figure> figures = new TreeMap<>();
            its.byName().forEach((figure, sample) -> figures.put(figure, bootstrap.figure(sample)));
            contenders.put(name, figures);
        });
        Map<String, Map<String, Figure>> differences = new LinkedHashMap<>();
        List<String> names = new ArrayList<>(samples.keySet());
        for (int i = 0; i < names.size(); i++) {
            for (int j = i + 1; j < names.size(); j++) {
                differences.put(
                        names.get(i) + " − " + names.get(j),
                        paired(of(samples, names.get(i)), of(samples, names.get(j)), bootstrap));
            }
        }
        return new Accuracy(setting, contenders, differences);
    }

    private static Map<String, Sample> of(Map<String, Samples> samples, String name) {
        return samples.getOrDefault(name, new Samples()).byName();
    }

    private static Map<String, Figure> paired(Map<String, Sample> one, Map<String, Sample> other, Bootstrap bootstrap) {
        Map<String, Figure> figures = new TreeMap<>();
        one.forEach((name, sample) -> {
            Sample less = other.get(name);
            if (less != null && pairable(name)) {
                figures.put(name, bootstrap.figure(sample.minus(less)));
            }
        });
        return figures;
    }

    /** What the questions alone sort, and not the answers. */
    private static boolean pairable(String figure) {
        return !figure.contains("-third") && !figure.contains(".fifth-");
    }
}
