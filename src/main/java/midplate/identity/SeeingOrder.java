package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import midplate.catalogue.WayOfSeeing;
import midplate.catalogue.WayOfSeeing.Leaves;
import midplate.words.Message;

/** Says in which order to look, for compounds of which something is known. */
final class SeeingOrder {
    private final List<SeeingAnswer.Way> looked;
    private final List<WayOfSeeing> enough;
    private final List<SeeingAnswer.Seen> compounds;

    SeeingOrder(List<SeeingAnswer.Way> looked, List<WayOfSeeing> enough) {
        this.looked = looked;
        this.enough = enough;
        this.compounds = looked.get(0).answers();
    }

    /**
     * One or a few sentences.
     *
     * @param general what to do where nothing is known
     */
    Message said(Message general) {
        List<Message> parts = new ArrayList<>();
        if (!enough.isEmpty()) {
            parts.add(shown());
        }
        if (stains(enough) > 1) {
            parts.add(Message.of("seeing.order-plates"));
        }
        List<Integer> hard = places(at -> best(at) == Sight.MAY_SHOW && !isUnknown(at));
        if (!hard.isEmpty()) {
            parts.add(Message.of("seeing.order-may", "names", names(hard), "ways", WayNames.listed(mayShow(hard))));
        }
        List<Integer> blind = places(at -> best(at) == Sight.BLIND);
        if (!blind.isEmpty()) {
            parts.add(Message.of("seeing.order-blind", "names", names(blind)));
        }
        List<Integer> unknown = places(this::isUnknown);
        if (!unknown.isEmpty()) {
            parts.add(Message.of("seeing.order-unknown", "names", names(unknown)));
            parts.add(general);
        }
        return Sentences.joined(parts);
    }

    /** Whether no way shows it for sure and at least one cannot tell. */
    private boolean isUnknown(int compound) {
        return best(compound) != Sight.SHOWS
                && looked.stream().anyMatch(way -> way.answers().get(compound).sight() == Sight.NOT_KNOWN);
    }

    /** The ways that may show all of some compounds, else those that may show one of them. */
    private List<WayOfSeeing> mayShow(List<Integer> some) {
        List<WayOfSeeing> all =
                ways(way -> some.stream().allMatch(at -> way.answers().get(at).sight() == Sight.MAY_SHOW));
        return all.isEmpty()
                ? ways(way -> some.stream().anyMatch(at -> way.answers().get(at).sight() == Sight.MAY_SHOW))
                : all;
    }

    private List<WayOfSeeing> ways(Predicate<SeeingAnswer.Way> which) {
        return looked.stream().filter(which).map(SeeingAnswer.Way::way).toList();
    }

    private List<Integer> places(IntPredicate which) {
        return IntStream.range(0, compounds.size()).filter(which).boxed().toList();
    }

    private Sight best(int compound) {
        return looked.stream()
                .map(way -> way.answers().get(compound).sight())
                .min(Sight::compareTo)
                .orElse(Sight.NOT_KNOWN);
    }

    private Message names(List<Integer> places) {
        return WayNames.given(
                places.stream().map(at -> compounds.get(at).name()).toList());
    }

    private Message shown() {
        List<Integer> shown = places(at -> best(at) == Sight.SHOWS);
        return Message.of("seeing.order-shown", "ways", WayNames.listed(enough), "names", names(shown));
    }

    private static long stains(List<WayOfSeeing> ways) {
        return ways.stream().filter(way -> way.leaves() == Leaves.DESTROYED).count();
    }
}
