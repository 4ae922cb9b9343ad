package midplate.identity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import midplate.catalogue.WayOfSeeing;
import midplate.catalogue.WayOfSeeing.Leaves;
import midplate.catalogue.WaysOfSeeing;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.GroupCounts.Detail;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * Which everyday compounds some ways of seeing miss, and which further ways would show them. A kind of compound is one with a single
 * group on saturated carbons, so a compound that has more is seen at least as well.
 */
final class Blindness {
    /** Carbons of a compound with one group: a common size; the table does not depend on it. */
    private static final int CARBONS = 8;

    private static final int RING = 6;
    /** So many further ways are named. */
    private static final int MOST_MORE = 3;

    /** The groups of everyday by-products and leftovers; own choice. */
    private static final List<String> EVERYDAY = List.of(
            "alkene",
            "alkyl-halide",
            "alkyl-ether",
            "ester",
            "ketone",
            "aldehyde",
            "alcohol",
            "carboxylic-acid",
            "primary-amine",
            "tertiary-amine",
            "secondary-amide",
            "alkyl-nitrile",
            "sulfone");

    private final WaysOfSeeing ways;
    private final List<WayOfSeeing> used;
    private final Map<Message, GroupCounts> kinds = new LinkedHashMap<>();

    Blindness(WaysOfSeeing ways, List<WayOfSeeing> used) {
        this.ways = ways;
        this.used = used;
        kinds.put(Message.of("class.hydrocarbon"), whole(Map.of("alkyl-carbon", CARBONS)));
        kinds.put(WayNames.group("aromatic-carbon"), whole(Map.of("aromatic-carbon", RING)));
        for (String group : EVERYDAY) {
            kinds.put(WayNames.group(group), whole(Map.of("alkyl-carbon", CARBONS, group, 1)));
        }
    }

    private static GroupCounts whole(Map<String, Integer> counts) {
        return new GroupCounts(counts, Detail.WHOLE);
    }

    private static Sight best(List<WayOfSeeing> some, GroupCounts kind) {
        return some.stream()
                .map(way -> Eye.at(way, Optional.of(kind)).sight())
                .min(Sight::compareTo)
                .orElse(Sight.BLIND);
    }

    private List<Message> kinds(Predicate<GroupCounts> which) {
        return kinds.entrySet().stream()
                .filter(kind -> which.test(kind.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** What the ways used miss, or show badly. */
    Message said() {
        if (used.isEmpty()) {
            return Message.of("pure.hide-no-ways");
        }
        Message by = WayNames.listed(used);
        List<Message> blind = kinds(kind -> best(used, kind) == Sight.BLIND);
        List<Message> weak = kinds(kind -> best(used, kind) == Sight.MAY_SHOW);
        List<Message> parts = new ArrayList<>();
        if (!blind.isEmpty()) {
            parts.add(Message.of("pure.hide-blind", "ways", by, "groups", Allowed.list(blind)));
        }
        if (!weak.isEmpty()) {
            parts.add(Message.of("pure.hide-weak", "ways", by, "groups", Allowed.list(weak)));
        }
        return parts.isEmpty() ? Message.of("pure.hide-none-blind", "ways", by) : Sentences.joined(parts);
    }

    /** Ways that would show more, those that spare the plate first. */
    List<WayOfSeeing> more() {
        List<WayOfSeeing> taken = new ArrayList<>(used);
        List<WayOfSeeing> more = new ArrayList<>();
        while (more.size() < MOST_MORE) {
            Optional<WayOfSeeing> next = next(taken);
            if (next.isEmpty()) {
                break;
            }
            more.add(next.get());
            taken.add(next.get());
        }
        return more;
    }

    /** The first that spares the plate and shows anything more, else the one that shows most more. */
    private Optional<WayOfSeeing> next(List<WayOfSeeing> taken) {
        WayOfSeeing widest = null;
        int most = 0;
        for (WayOfSeeing way : ways.all()) {
            int gain = shownMore(way, taken).size();
            if (gain > 0 && way.leaves() != Leaves.DESTROYED) {
                return Optional.of(way);
            }
            if (gain > most) {
                widest = way;
                most = gain;
            }
        }
        return Optional.ofNullable(widest);
    }

    private List<Message> shownMore(WayOfSeeing way, List<WayOfSeeing> taken) {
        return kinds(kind -> best(taken, kind) != Sight.SHOWS
                && Eye.at(way, Optional.of(kind)).sight() == Sight.SHOWS);
    }

    /** What each further way would show that those used do not. */
    List<Message> advised() {
        return more().stream()
                .map(way ->
                        Message.of("pure.way-more", "way", way.said(), "groups", Allowed.list(shownMore(way, used))))
                .toList();
    }
}
