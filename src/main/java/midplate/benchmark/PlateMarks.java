package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import midplate.inference.Series;

/**
 * Marks advice: a hit is all spots at Rf 0.2 to 0.8 at the ratio advised.
 *
 * <p>Chances are judged on all samples, possible or not: among the possible ones an honest chance looks too small.
 */
final class PlateMarks {
    private static final String[] COUNTS = {"", "one-spot", "two-spots", "three-spots"};
    private static final int FIFTHS = 5;

    private final Samples samples;

    PlateMarks(Samples samples) {
        this.samples = samples;
    }

    /** Asks a contender and marks its answer. */
    void mark(PlateTask task, Contender contender) {
        Choice choice = contender.choose(task.trials());
        List<Series> members = task.spots().stream().map(TrueCurve::series).toList();
        double hit = task.hitAt(choice.percent()) ? 1 : 0;
        double chance = choice.chance();
        samples.add("plates.all.said", members, chance);
        samples.add("plates.all.said-less-came", members, chance - hit);
        samples.add("plates.all.squared-slip", members, (chance - hit) * (chance - hit));
        String fifth = "plates.all.fifth-" + (1 + Math.min(FIFTHS - 1, (int) (chance * FIFTHS)));
        samples.add(fifth + ".said", members, chance);
        samples.add(fifth + ".came", members, hit);
        for (String tag : tags(task)) {
            samples.add("plates.all" + tag + ".hit", members, hit);
            if (task.possible()) {
                samples.add("plates.possible" + tag + ".hit", members, hit);
            }
        }
    }

    private static List<String> tags(PlateTask task) {
        List<String> tags =
                new ArrayList<>(List.of("", "." + COUNTS[task.spots().size()]));
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
