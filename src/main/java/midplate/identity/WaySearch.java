package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import midplate.catalogue.WayOfSeeing;
import midplate.catalogue.WayOfSeeing.Leaves;

/**
 * The fewest ways of seeing that show every compound that any of them shows: of such sets the one that destroys least, then the
 * smallest, then the one used earliest.
 */
final class WaySearch {
    /** So many ways are tried in every combination; more would take too long. */
    private static final int MOST_WAYS = 20;

    private final List<WayOfSeeing> ways;
    /** For each way the compounds that it shows, a bit each. */
    private final List<long[]> shown = new ArrayList<>();

    private final int compounds;

    private WaySearch(List<SeeingAnswer.Way> looked) {
        List<SeeingAnswer.Way> tried = looked.subList(0, Math.min(MOST_WAYS, looked.size()));
        this.ways = tried.stream().map(SeeingAnswer.Way::way).toList();
        this.compounds = tried.isEmpty() ? 0 : tried.get(0).answers().size();
        for (SeeingAnswer.Way way : tried) {
            long[] bits = new long[words()];
            for (int i = 0; i < compounds; i++) {
                if (way.answers().get(i).sight() == Sight.SHOWS) {
                    bits[i / Long.SIZE] |= 1L << (i % Long.SIZE);
                }
            }
            shown.add(bits);
        }
    }

    private int words() {
        return (compounds + Long.SIZE - 1) / Long.SIZE;
    }

    /** The set, in the order of use; empty where none shows anything for sure. */
    static List<WayOfSeeing> enough(List<SeeingAnswer.Way> looked) {
        WaySearch search = new WaySearch(looked);
        int best = search.best();
        List<WayOfSeeing> taken = new ArrayList<>();
        for (int i = 0; i < search.ways.size(); i++) {
            if ((best >> i & 1) == 1) {
                taken.add(search.ways.get(i));
            }
        }
        return taken;
    }

    private int best() {
        int all = covered((1 << ways.size()) - 1);
        int best = 0;
        long least = Long.MAX_VALUE;
        for (int set = 0; set < 1 << ways.size(); set++) {
            long cost = cost(set);
            if (cost < least && covered(set) == all) {
                best = set;
                least = cost;
            }
        }
        return best;
    }

    private int covered(int set) {
        int count = 0;
        for (int word = 0; word < words(); word++) {
            long bits = 0;
            for (int i = 0; i < ways.size(); i++) {
                bits |= (set >> i & 1) == 1 ? shown.get(i)[word] : 0;
            }
            count += Long.bitCount(bits);
        }
        return count;
    }

    /** Destroying ways count most, then the number of ways, then how late they are used. */
    private long cost(int set) {
        long destroying = 0;
        long places = 0;
        for (int i = 0; i < ways.size(); i++) {
            if ((set >> i & 1) == 1) {
                destroying += ways.get(i).leaves() == Leaves.DESTROYED ? 1 : 0;
                places += 1L << i;
            }
        }
        return (destroying << 40) + ((long) Integer.bitCount(set) << 32) + places;
    }
}
