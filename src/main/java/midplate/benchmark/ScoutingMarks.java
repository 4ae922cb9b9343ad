package midplate.benchmark;

import java.util.List;
import midplate.inference.Series;

/**
 * Marks rounds of plates, by the way they were come by: {@code rounds.possible.came}, the share of the samples that some ratio
 * suits in which all spots lie at Rf 0.2 to 0.8 on a plate of the round or on the one advised after it; over all samples {@code
 * rounds.all.said}, {@code rounds.all.came} and {@code rounds.all.said-less-came}, {@code rounds.all.now} for the plates of the
 * round alone, and {@code rounds.all.plates}, how many plates that takes. The samples are the same for every way.
 */
final class ScoutingMarks {
    private ScoutingMarks() {}

    /** Asks a contender for every kind of round; one that plans none is left out. */
    static void mark(ScoutingTask task, Contender contender, Results results) {
        for (Scouted.Way way : Scouted.Way.values()) {
            contender
                    .scout(task.spots().size(), way)
                    .ifPresent(
                            round -> mark(task, contender, round, results.samples(Results.Part.SCOUTING, way.told())));
        }
    }

    private static void mark(ScoutingTask task, Contender contender, Scouted round, Samples samples) {
        List<Series> members = task.members();
        double now = round.percents().stream().anyMatch(task::hitAt) ? 1 : 0;
        double came = now;
        if (now == 0) {
            Choice next = contender.choose(task.shown(round.percents()));
            came = task.hitAt(next.percent()) ? 1 : 0;
        }
        samples.add("rounds.all.said", members, round.chance());
        samples.add("rounds.all.came", members, came);
        samples.add("rounds.all.said-less-came", members, round.chance() - came);
        samples.add("rounds.all.now", members, now);
        samples.add("rounds.all.plates", members, round.percents().size() + 1 - now);
        if (task.possible()) {
            samples.add("rounds.possible.came", members, came);
            samples.add("rounds.possible.now", members, now);
        }
    }
}
