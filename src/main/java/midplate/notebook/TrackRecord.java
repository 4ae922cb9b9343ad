package midplate.notebook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import midplate.notebook.ScoredAdvice.Outcome;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.IntervalUtils;

/**
 * How often advice came true in a laboratory, beside the chances said.
 *
 * @param all over all advices that were scored; empty where none was
 * @param groups the same by groups of rising chance said, as equal in size as can be where one chance stands in one group; none before {@value #LEAST_FOR_GROUPS} were
 *     scored, as fewer show nothing but luck
 */
public record TrackRecord(Optional<Rate> all, List<Rate> groups) {
    /** From so many scored advices on there are groups. */
    public static final int LEAST_FOR_GROUPS = 10;

    private static final int LEAST_IN_GROUP = 5;
    private static final int MOST_GROUPS = 5;
    private static final double CONFIDENCE = 0.95;

    /** Keeps its own copy. */
    public TrackRecord {
        groups = List.copyOf(groups);
    }

    /**
     * How often advice came true.
     *
     * @param said the mean chance said [1]
     * @param cameTrue how many came true
     * @param of how many there are, above 0
     * @param low lower end of the interval in which the true rate lies with 95 % [1]
     * @param high its upper end [1]
     */
    public record Rate(double said, int cameTrue, int of, double low, double high) {
        /**
         * Of advices that were scored, by Wilson's interval: with x = cameTrue, n = of, p = x/n, z = 1.96 the ends are
         * [p + z²/2n ± z√(p(1 − p)/n + z²/4n²)]/(1 + z²/n). It holds for few and for rates near 0 and 1, too.
         *
         * @see "Wilson1927"
         */
        private static Rate of(List<ScoredAdvice> scored) {
            int n = scored.size();
            int came = (int) scored.stream()
                    .filter(each -> each.outcome() == Outcome.CAME_TRUE)
                    .count();
            double said = scored.stream()
                    .mapToDouble(each -> each.advice().probability())
                    .average()
                    .orElseThrow();
            ConfidenceInterval interval = IntervalUtils.getWilsonScoreInterval(n, came, CONFIDENCE);
            return new Rate(
                    said, came, n, Math.max(0, interval.getLowerBound()), Math.min(1, interval.getUpperBound()));
        }
    }

    /** What makes two advices one: a study that was copied or read in twice is no second piece of evidence. */
    private record Once(Instant given, String weak, String strong, double percentStrong, double probability) {
        static Once of(ScoredAdvice scored) {
            GivenAdvice advice = scored.advice();
            return new Once(
                    advice.given(), advice.weak(), advice.strong(), advice.percentStrong(), advice.probability());
        }
    }

    /**
     * The record of a laboratory: of all its studies but those that began as the invented example. Of copies of an advice that
     * were scored, that in the study made first counts, whatever was typed into the others since.
     */
    public static TrackRecord ofStudies(List<StudySummary> studies) {
        return of(studies.stream()
                .filter(study -> study.origin() == Study.Origin.OWN)
                .sorted(Comparator.comparing(StudySummary::created)
                        .thenComparing(study -> study.id().value()))
                .flatMap(study -> study.scored().stream())
                .toList());
    }

    /** The record of all advices, those that no plate scored left out, each once: the first of its copies. */
    public static TrackRecord of(List<ScoredAdvice> advices) {
        Set<Once> known = new HashSet<>();
        List<ScoredAdvice> scored = advices.stream()
                .filter(ScoredAdvice::counts)
                .filter(each -> known.add(Once.of(each)))
                .sorted(Comparator.comparingDouble(each -> each.advice().probability()))
                .toList();
        return scored.isEmpty()
                ? new TrackRecord(Optional.empty(), List.of())
                : new TrackRecord(Optional.of(Rate.of(scored)), groups(scored));
    }

    private static List<Rate> groups(List<ScoredAdvice> rising) {
        int n = rising.size();
        List<Rate> groups = new ArrayList<>();
        if (n >= LEAST_FOR_GROUPS) {
            int count = Math.min(MOST_GROUPS, n / LEAST_IN_GROUP);
            int from = 0;
            for (int i = 1; i < count; i++) {
                int cut = cut(rising, from, n * i / count);
                if (cut > from) {
                    groups.add(Rate.of(rising.subList(from, cut)));
                    from = cut;
                }
            }
            groups.add(Rate.of(rising.subList(from, n)));
        }
        return groups;
    }

    /** Where a group may end, nearest to where it should: between two chances that differ as they are said; else where it begins. */
    private static int cut(List<ScoredAdvice> rising, int from, int wanted) {
        return IntStream.rangeClosed(from + LEAST_IN_GROUP, rising.size() - LEAST_IN_GROUP)
                .filter(at -> inHundred(rising.get(at - 1)) != inHundred(rising.get(at)))
                .boxed()
                .min(Comparator.comparingInt(at -> Math.abs(at - wanted)))
                .orElse(from);
    }

    private static long inHundred(ScoredAdvice scored) {
        return Math.round(100 * scored.advice().probability());
    }
}
