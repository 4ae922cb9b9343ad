package midplate.benchmark;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The results of a benchmark.
 *
 * @param setting what was asked of what, in words and numbers, by name
 * @param contenders the figures of each contender, by its name and theirs; contenders in the order they ran
 * @param ceilings what could be reached at best: a contender told all else ({@link Told}), by its name; what a second series says of the
 *     first, under {@value #REPEAT}; the first contender asked about compounds as it expects them, under {@value #IF_TRUE} ({@link
 *     ExpectedCompounds}); and what compounds measured together share, under {@value #SHARED_SCATTER}
 * @param neighboursLeftOut contenders trained without the neighbours of what they were asked about, by their names
 * @param plateError contenders on plates that an error of their own moves; see {@link PlateErrorMarks}
 * @param structures contenders that are told structures; see {@link StructureMarks}
 * @param scouting rounds of plates before anything was read, by the way they were come by; see {@link ScoutingMarks}
 * @param theory contenders for which the pair asked about was not measured
 * @param columns columns foretold from plates, by the law; see {@link ColumnMarks}
 * @param differences paired differences on the same questions, by figure, under {@code A − B}: the first contender less each
 *     other one, and those named by {@link #toCeiling}, {@link #toUsual} and {@link #withoutNeighbours}
 * @param identity verdicts on drawn plates, by their errors; see {@link IdentityBenchmark}
 */
public record Accuracy(
        Map<String, Object> setting,
        Map<String, Map<String, Figure>> contenders,
        Map<String, Map<String, Figure>> ceilings,
        Map<String, Map<String, Figure>> neighboursLeftOut,
        Map<String, Map<String, Figure>> plateError,
        Map<String, Map<String, Figure>> structures,
        Map<String, Map<String, Figure>> scouting,
        Map<String, Map<String, Figure>> theory,
        Map<String, Map<String, Figure>> columns,
        Map<String, Map<String, Figure>> differences,
        Map<String, Map<String, Figure>> identity) {
    /** The name of the ceiling that needs no model. */
    static final String REPEAT = "A second series";
    /** The name of what a model could do if it were true. */
    static final String IF_TRUE = "If the model were true";
    /** The name of what is found by {@link SharedScatter}. */
    static final String SHARED_SCATTER = "Measured together";

    private static final String COLUMNS = "columns: ";

    /** Keeps its own copies. */
    public Accuracy {
        setting = Collections.unmodifiableMap(new LinkedHashMap<>(setting));
        contenders = Collections.unmodifiableMap(new LinkedHashMap<>(contenders));
        ceilings = Collections.unmodifiableMap(new LinkedHashMap<>(ceilings));
        neighboursLeftOut = Collections.unmodifiableMap(new LinkedHashMap<>(neighboursLeftOut));
        plateError = Collections.unmodifiableMap(new LinkedHashMap<>(plateError));
        structures = Collections.unmodifiableMap(new LinkedHashMap<>(structures));
        scouting = Collections.unmodifiableMap(new LinkedHashMap<>(scouting));
        theory = Collections.unmodifiableMap(new LinkedHashMap<>(theory));
        columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
        differences = Collections.unmodifiableMap(new LinkedHashMap<>(differences));
        identity = Collections.unmodifiableMap(new LinkedHashMap<>(identity));
    }

    /** Results without columns and verdicts. */
    public Accuracy(
            Map<String, Object> setting,
            Map<String, Map<String, Figure>> contenders,
            Map<String, Map<String, Figure>> ceilings,
            Map<String, Map<String, Figure>> neighboursLeftOut,
            Map<String, Map<String, Figure>> plateError,
            Map<String, Map<String, Figure>> structures,
            Map<String, Map<String, Figure>> scouting,
            Map<String, Map<String, Figure>> theory,
            Map<String, Map<String, Figure>> differences) {
        this(
                setting,
                contenders,
                ceilings,
                neighboursLeftOut,
                plateError,
                structures,
                scouting,
                theory,
                Map.of(),
                differences,
                Map.of());
    }

    /** Works out figures and errors from samples. */
    static Accuracy of(Map<String, Object> setting, Results results, Bootstrap bootstrap) {
        Map<String, Samples> contenders = results.part(Results.Part.CONTENDERS);
        Map<String, Samples> ceilings = results.part(Results.Part.CEILINGS);
        Map<String, Samples> strangers = results.part(Results.Part.NEIGHBOURS_LEFT_OUT);
        Map<String, Samples> structures = results.part(Results.Part.STRUCTURES);
        Map<String, Map<String, Figure>> differences = new LinkedHashMap<>();
        againstTheFirst(structures)
                .forEach(pair -> differences.put(
                        less(pair.one, pair.other),
                        paired(structures.get(pair.one), structures.get(pair.other), bootstrap)));
        Map<String, Samples> scouting = results.part(Results.Part.SCOUTING);
        againstTheFirst(scouting)
                .forEach(pair -> differences.put(
                        less(pair.other, pair.one),
                        paired(scouting.get(pair.other), scouting.get(pair.one), bootstrap)));
        Map<String, Samples> theory = results.part(Results.Part.THEORY);
        theory.forEach((name, unmeasured) ->
                differences.put(notMeasured(name), paired(unmeasured, contenders.get(name), bootstrap)));
        againstTheFirst(contenders)
                .forEach(pair -> differences.put(
                        less(pair.one, pair.other),
                        paired(contenders.get(pair.one), contenders.get(pair.other), bootstrap)));
        ceilings.forEach(
                (name, ceiling) -> differences.put(toCeiling(name), paired(contenders.get(name), ceiling, bootstrap)));
        strangers.forEach(
                (name, stranger) -> differences.put(toUsual(name), paired(stranger, contenders.get(name), bootstrap)));
        againstTheFirst(strangers)
                .forEach(pair -> differences.put(
                        withoutNeighbours(pair.one, pair.other),
                        paired(strangers.get(pair.one), strangers.get(pair.other), bootstrap)));
        return new Accuracy(
                setting,
                figures(contenders, bootstrap),
                figures(ceilings, bootstrap),
                figures(strangers, bootstrap),
                figures(results.part(Results.Part.PLATE_ERROR), bootstrap),
                figures(structures, bootstrap),
                figures(scouting, bootstrap),
                figures(theory, bootstrap),
                differences);
    }

    /** These results with one more ceiling. */
    Accuracy withCeiling(String name, Map<String, Figure> figures) {
        Map<String, Map<String, Figure>> more = new LinkedHashMap<>(ceilings);
        more.put(name, figures);
        return new Accuracy(
                setting,
                contenders,
                more,
                neighboursLeftOut,
                plateError,
                structures,
                scouting,
                theory,
                columns,
                differences,
                identity);
    }

    /**
     * These results with verdicts in place of any that they had.
     *
     * @param told what was asked
     */
    Accuracy withIdentity(Map<String, Object> told, Map<String, Map<String, Figure>> verdicts) {
        Map<String, Object> all = new LinkedHashMap<>(setting);
        all.putAll(told);
        return new Accuracy(
                all,
                contenders,
                ceilings,
                neighboursLeftOut,
                plateError,
                structures,
                scouting,
                theory,
                columns,
                differences,
                verdicts);
    }

    /**
     * These results with columns in place of any that they had.
     *
     * @param told what was asked of what
     */
    Accuracy withColumns(Map<String, Object> told, Results results, Bootstrap bootstrap) {
        Map<String, Object> all = new LinkedHashMap<>(setting);
        all.putAll(told);
        Map<String, Samples> samples = results.part(Results.Part.COLUMNS);
        Map<String, Map<String, Figure>> less = new LinkedHashMap<>(differences);
        less.keySet().removeIf(name -> name.startsWith(COLUMNS));
        againstTheFirst(samples).stream()
                .filter(pair -> !pair.other.equals(ColumnBenchmark.REPEAT))
                .forEach(pair -> less.put(
                        columns(pair.one, pair.other),
                        paired(samples.get(pair.one), samples.get(pair.other), bootstrap)));
        less.values().removeIf(Map::isEmpty);
        return new Accuracy(
                all,
                contenders,
                ceilings,
                neighboursLeftOut,
                plateError,
                structures,
                scouting,
                theory,
                figures(samples, bootstrap),
                less,
                identity);
    }

    /** The difference of two laws of columns. */
    static String columns(String one, String other) {
        return COLUMNS + less(one, other);
    }

    /** The difference of two contenders. */
    static String less(String one, String other) {
        return one + " − " + other;
    }

    /** A contender less the same with all else told. */
    static String toCeiling(String contender) {
        return less(contender, contender + ", all else told");
    }

    /** A contender trained without neighbours less the same with all of its training. */
    static String toUsual(String contender) {
        return less(contender + ", neighbours left out", contender);
    }

    /** A contender for which a pair was not measured less the same for which it was. */
    static String notMeasured(String contender) {
        return less(contender + ", not measured", contender);
    }

    /** The difference of two contenders that were both trained without neighbours. */
    static String withoutNeighbours(String one, String other) {
        return less(one, other) + ", neighbours left out";
    }

    /** The name of the contender that the others are compared with. */
    Optional<String> first() {
        return contenders.keySet().stream().findFirst();
    }

    /** Mean and error of each sample. */
    static Map<String, Figure> figures(Samples samples, Bootstrap bootstrap) {
        Map<String, Figure> figures = new TreeMap<>();
        samples.byName().forEach((figure, sample) -> figures.put(figure, bootstrap.figure(sample)));
        return figures;
    }

    private static Map<String, Map<String, Figure>> figures(Map<String, Samples> samples, Bootstrap bootstrap) {
        Map<String, Map<String, Figure>> all = new LinkedHashMap<>();
        samples.forEach((name, its) -> all.put(name, figures(its, bootstrap)));
        return all;
    }

    private record Pair(String one, String other) {}

    private static List<Pair> againstTheFirst(Map<String, Samples> samples) {
        List<String> names = new ArrayList<>(samples.keySet());
        return names.stream()
                .skip(1)
                .map(other -> new Pair(names.get(0), other))
                .toList();
    }

    private static Map<String, Figure> paired(@Nullable Samples one, @Nullable Samples other, Bootstrap bootstrap) {
        Map<String, Figure> figures = new TreeMap<>();
        if (one == null || other == null) {
            return figures;
        }
        one.byName().forEach((name, sample) -> {
            Sample less = other.byName().get(name);
            if (less != null && pairable(name)) {
                figures.put(name, bootstrap.figure(sample.minus(less)));
            }
        });
        return figures;
    }

    /** What the questions alone sort, and not the answers. */
    private static boolean pairable(String figure) {
        return !figure.contains("-third")
                && !figure.contains(".rare.")
                && !figure.contains(".common.")
                && !figure.contains(".fifth-")
                && !figure.contains(".tenth-");
    }
}
