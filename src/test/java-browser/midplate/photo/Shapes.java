package midplate.photo;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Predicate;

/** Whether shapes are told as what they are. */
final class Shapes {
    private Shapes() {}

    private static Predicate<Outcome> told(String shape) {
        return outcome -> outcome.found() != null && outcome.found().shape().equals(shape);
    }

    private static Predicate<Outcome> form(String form) {
        return outcome -> outcome.mark().form().equals(form);
    }

    /** Of those found: streaks that are called so, overload that is, and compact spots that are called either. */
    static void put(ObjectNode told, List<Judged> pictures) {
        Predicate<Outcome> seen = Conditions.AIM.marks();
        Predicate<Outcome> round = outcome -> List.of("gauss", "disc", "ellipse", "flat")
                        .contains(outcome.mark().form())
                && outcome.mark().shape().equals("compact");
        put(told, "streakCalledStreak", pictures, seen.and(form("streak")), told("streak"));
        put(told, "overloadCalledSharpHead", pictures, seen.and(form("sharp_head")), told("sharp-head"));
        put(told, "mergedCalledMerged", pictures, seen.and(form("merged")), told("merged"));
        put(told, "compactCalledStreak", pictures, seen.and(round), told("streak"));
        put(told, "compactCalledSharpHead", pictures, seen.and(round), told("sharp-head"));
        put(told, "compactCalledMerged", pictures, seen.and(round), told("merged"));
    }

    private static void put(
            ObjectNode told, String name, List<Judged> pictures, Predicate<Outcome> of, Predicate<Outcome> such) {
        Tally.Share share = new Tally(pictures, of, proposal -> false).ofFound(such);
        ObjectNode at = told.putObject(name);
        at.put("spots", share.of());
        if (share.of() > 0) {
            at.put("value", Math.round(share.value() * 1e5) / 1e5);
        }
        if (!Double.isNaN(share.error())) {
            at.put("error", Math.round(share.error() * 1e5) / 1e5);
        }
    }
}
