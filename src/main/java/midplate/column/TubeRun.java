package midplate.column;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import midplate.column.FractionAnswer.Kind;

/**
 * Neighbouring tubes that hold the same.
 *
 * @param kind what is in them
 * @param spots the compounds seen in them
 * @param from place of the first tube, counted from 0
 * @param to place of the last
 * @param joined places of tubes that belong here by what their neighbours hold
 */
record TubeRun(Kind kind, Set<String> spots, int from, int to, List<Integer> joined) {
    /** So many tubes in a row that nobody looked at are taken for what stands on both sides of them. */
    private static final int MOST_UNLOOKED = 2;
    /** So many empty ones inside a band are taken for a slip. */
    private static final int MOST_EMPTY = 1;

    TubeRun {
        spots = Set.copyOf(spots);
        joined = List.copyOf(joined);
    }

    int length() {
        return to - from + 1;
    }

    private static TubeRun of(Tube tube, int at) {
        List<String> spots = tube.spots();
        Kind kind = !tube.isLookedAt()
                ? Kind.UNKNOWN
                : spots.isEmpty() ? Kind.EMPTY : spots.size() == 1 ? Kind.PURE : Kind.MIXED;
        return new TubeRun(kind, Set.copyOf(spots), at, at, List.of());
    }

    /** All tubes in runs, in order: first what is alike, then what lies between two alike. */
    static List<TubeRun> all(List<Tube> tubes) {
        List<TubeRun> runs = new ArrayList<>();
        for (int i = 0; i < tubes.size(); i++) {
            append(runs, of(tubes.get(i), i));
        }
        return bridged(runs);
    }

    private static void append(List<TubeRun> runs, TubeRun next) {
        int last = runs.size() - 1;
        if (last >= 0 && runs.get(last).isLike(next)) {
            runs.set(last, runs.get(last).with(next, List.of()));
        } else {
            runs.add(next);
        }
    }

    /** Whether both hold one and the same compound, or both several, or both nothing. */
    private boolean isLike(TubeRun other) {
        return kind == other.kind && (kind != Kind.PURE || spots.equals(other.spots));
    }

    private TubeRun with(TubeRun next, List<Integer> between) {
        Set<String> union = new LinkedHashSet<>(spots);
        union.addAll(next.spots);
        List<Integer> all = new ArrayList<>(joined);
        all.addAll(between);
        all.addAll(next.joined);
        return new TubeRun(kind, union, from, next.to, all);
    }

    private static List<TubeRun> bridged(List<TubeRun> runs) {
        List<TubeRun> all = new ArrayList<>(runs);
        for (int i = 1; i < all.size() - 1; i++) {
            TubeRun before = all.get(i - 1);
            TubeRun gap = all.get(i);
            TubeRun after = all.get(i + 1);
            if (before.isLike(after) && gap.isBridged(before.kind)) {
                List<Integer> places = new ArrayList<>();
                for (int at = gap.from; at <= gap.to; at++) {
                    places.add(at);
                }
                all.set(i - 1, before.with(after, places));
                all.remove(i + 1);
                all.remove(i);
                i--;
            }
        }
        return all;
    }

    /** Whether tubes between two that hold the same are taken for the same: it costs nothing, for both sides say what they hold. */
    private boolean isBridged(Kind sides) {
        return (kind == Kind.UNKNOWN && length() <= MOST_UNLOOKED)
                || (kind == Kind.EMPTY && sides != Kind.UNKNOWN && length() <= MOST_EMPTY);
    }
}
