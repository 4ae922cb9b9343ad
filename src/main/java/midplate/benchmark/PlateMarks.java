package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import midplate.inference.Series;

/**
 * Marks advice: a hit is all spots at Rf 0.2 to 0.8 at the ratio advised.
 *
 * <p>Chances are judged on all samples, possible or not: among the possible ones an honest chance looks too small. {@code
 * plates.all.fifth-N.said} and {@code .came} are the mean chance said and the share of hits by fifth of the chance said,
 * {@code plates.all.tenth-N} the same by tenth.
 */
final class PlateMarks {
    private static final String[] COUNTS = {"", "one-spot", "two-spots", "three-spots"};
    private static final int FIFTHS = 5;
    /** Parts that the chart of chances sorts stated chances into. */
    static final int TENTHS = 10;

    private final Samples samples;
    private final Told told;

    PlateMarks(Samples samples, Told told) {
        this.samples = samples;
        this.told = told;
    }

    /** Asks a contender and marks its answer. */
    void mark(PlateTask task, Contender contender) {
        mark("plates", task, tags(task), contender.choose(told == Told.TRIALS ? task.trials() : task.allReadings()));
    }

    /** Marks what was advised after the trial plate. */
    void mark(PlateTask task, Choice choice) {
        mark("plates", task, tags(task), choice);
    }

    /** Marks what was advised before any plate, as {@code first} in place of {@code plates}. */
    void markFirst(PlateTask task, Choice choice) {
        mark("first", task, counts(task), choice);
    }

    private void mark(String kind, PlateTask task, List<String> tags, Choice choice) {
        List<Series> members = task.members();
        double hit = task.hitAt(choice.percent()) ? 1 : 0;
        double chance = choice.chance();
        samples.add(kind + ".all.said", members, chance);
        samples.add(kind + ".all.said-less-came", members, chance - hit);
        samples.add(kind + ".all.squared-slip", members, (chance - hit) * (chance - hit));
        said(kind + ".all.fifth-" + part(chance, FIFTHS), members, chance, hit);
        said(kind + ".all.tenth-" + part(chance, TENTHS), members, chance, hit);
        for (String tag : tags) {
            samples.add(kind + ".all" + tag + ".hit", members, hit);
            if (task.possible()) {
                samples.add(kind + ".possible" + tag + ".hit", members, hit);
            }
        }
    }

    private static int part(double chance, int parts) {
        return 1 + Math.min(parts - 1, (int) (chance * parts));
    }

    private void said(String figure, List<Series> members, double chance, double hit) {
        samples.add(figure + ".said", members, chance);
        samples.add(figure + ".came", members, hit);
    }

    private static List<String> counts(PlateTask task) {
        return List.of("", "." + COUNTS[task.spots().size()]);
    }

    private static List<String> tags(PlateTask task) {
        List<String> tags = new ArrayList<>(counts(task));
        if (task.failedTrial()) {
            tags.add(".failed-trial");
        }
        if (task.baseline()) {
            tags.add(".baseline");
        }
        if (task.front()) {
            tags.add(".front");
        }
        return tags;
    }
}
