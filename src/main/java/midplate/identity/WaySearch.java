package midplate.identity;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import midplate.catalogue.WayOfSeeing;
import midplate.catalogue.WayOfSeeing.Leaves;

/**
 * Ways of seeing that together show every compound that any of them shows, each compound first by one that spares the plate where
 * there is such a one: the lamp for what it shows, then for the rest the fewest ways that leave the plate as it is, then the fewest
 * after which it comes back, then the fewest stains. Among equally few those used earliest.
 */
final class WaySearch {
    /** So many ways are tried in every combination; more would take too long. */
    private static final int MOST_WAYS = 20;
    /** What is looked at first by common practice: it costs nothing and harms nothing. */
    private static final String LAMP = "uv-254";

    private final List<SeeingAnswer.Way> looked;
    private final List<Step> steps = new ArrayList<>();
    /** Places of the compounds that the steps so far show. */
    private final BitSet seen = new BitSet();

    private WaySearch(List<SeeingAnswer.Way> looked) {
        this.looked = looked;
    }

    /**
     * One way of those taken.
     *
     * @param way which
     * @param shows the places of the compounds that it shows and none before it did, at least one
     */
    record Step(WayOfSeeing way, List<Integer> shows) {
        /** Keeps its own copy. */
        Step {
            shows = List.copyOf(shows);
        }
    }

    /** The ways, in the order of use; empty where none shows anything for sure. */
    static List<Step> steps(List<SeeingAnswer.Way> looked) {
        WaySearch search = new WaySearch(looked);
        looked.stream().filter(way -> way.way().id().equals(LAMP)).forEach(search::take);
        for (Leaves leaves : Leaves.values()) {
            List<SeeingAnswer.Way> tried = looked.stream()
                    .filter(way -> way.way().leaves() == leaves)
                    .limit(MOST_WAYS)
                    .toList();
            search.fewest(tried).forEach(search::take);
        }
        return search.steps;
    }

    private void take(SeeingAnswer.Way way) {
        BitSet further = shown(way);
        further.andNot(seen);
        if (!further.isEmpty()) {
            steps.add(new Step(way.way(), further.stream().boxed().toList()));
            seen.or(further);
        }
    }

    /** The fewest of some ways that show all that they can show together beyond what is seen already. */
    private List<SeeingAnswer.Way> fewest(List<SeeingAnswer.Way> tried) {
        int all = further(tried);
        List<SeeingAnswer.Way> best = tried;
        for (int set = 0; set < 1 << tried.size(); set++) {
            List<SeeingAnswer.Way> some = chosen(tried, set);
            // sets come so that of two as large the one of earlier ways is met first
            if ((some.size() < best.size() || best == tried) && further(some) == all) {
                best = some;
            }
        }
        return best;
    }

    private static List<SeeingAnswer.Way> chosen(List<SeeingAnswer.Way> tried, int set) {
        List<SeeingAnswer.Way> some = new ArrayList<>();
        for (int i = 0; i < tried.size(); i++) {
            if ((set >> i & 1) == 1) {
                some.add(tried.get(i));
            }
        }
        return some;
    }

    private int further(List<SeeingAnswer.Way> some) {
        BitSet all = new BitSet();
        some.forEach(way -> all.or(shown(way)));
        all.andNot(seen);
        return all.cardinality();
    }

    private static BitSet shown(SeeingAnswer.Way way) {
        BitSet places = new BitSet();
        for (int i = 0; i < way.answers().size(); i++) {
            if (way.answers().get(i).sight() == Sight.SHOWS) {
                places.set(i);
            }
        }
        return places;
    }
}
