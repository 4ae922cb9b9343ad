package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import midplate.catalogue.WayOfSeeing;
import midplate.catalogue.WayOfSeeing.Leaves;
import midplate.words.Message;

/** Says in which order to look, for compounds of which something is known. */
final class SeeingOrder {
    private final List<SeeingAnswer.Way> looked;
    private final List<WaySearch.Step> steps;
    private final List<String> leaving;
    private final List<SeeingAnswer.Seen> compounds;

    /**
     * For one answer.
     *
     * @param looked what every way does with every compound
     * @param steps the ways that are enough, in order
     * @param leaving names of the compounds that may leave the plate on warming
     */
    SeeingOrder(List<SeeingAnswer.Way> looked, List<WaySearch.Step> steps, List<String> leaving) {
        this.looked = looked;
        this.steps = steps;
        this.leaving = leaving;
        this.compounds = looked.get(0).answers();
    }

    /**
     * One or a few sentences.
     *
     * @param general what to do where nothing is known
     */
    Message said(Message general) {
        List<Message> parts = new ArrayList<>();
        parts.addAll(shown());
        if (steps.stream().filter(SeeingOrder::isStain).count() > 1) {
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
        if (!leaving.isEmpty()) {
            parts.add(Message.of("seeing.order-leaving", "names", WayNames.given(leaving)));
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

    /** The steps one after the other; before the first stain what may do without it. */
    private List<Message> shown() {
        List<Message> parts = new ArrayList<>();
        for (WaySearch.Step step : steps) {
            if (isStain(step) && parts.size() == sparing()) {
                tried().ifPresent(parts::add);
            }
            String key = parts.isEmpty()
                    ? steps.size() == 1 ? "seeing.order-alone" : "seeing.order-first"
                    : "seeing.order-then";
            parts.add(Message.of(key, "way", step.way().said(), "names", names(step.shows())));
        }
        return parts;
    }

    private int sparing() {
        return (int) steps.stream().filter(step -> !isStain(step)).count();
    }

    /** The ways that spare the plate and may show what else only a stain shows for sure. */
    private Optional<Message> tried() {
        List<Integer> stained = steps.stream()
                .filter(SeeingOrder::isStain)
                .flatMap(step -> step.shows().stream())
                .sorted()
                .toList();
        List<SeeingAnswer.Way> sparing = looked.stream()
                .filter(way -> way.way().leaves() != Leaves.DESTROYED)
                .filter(way -> stained.stream().anyMatch(at -> maySee(way, at)))
                .toList();
        List<Integer> perhaps = stained.stream()
                .filter(at -> sparing.stream().anyMatch(way -> maySee(way, at)))
                .toList();
        return perhaps.isEmpty()
                ? Optional.empty()
                : Optional.of(Message.of(
                        "seeing.order-try",
                        "ways",
                        WayNames.listed(
                                sparing.stream().map(SeeingAnswer.Way::way).toList()),
                        "names",
                        names(perhaps)));
    }

    private static boolean maySee(SeeingAnswer.Way way, int compound) {
        return way.answers().get(compound).sight() == Sight.MAY_SHOW;
    }

    private static boolean isStain(WaySearch.Step step) {
        return step.way().leaves() == Leaves.DESTROYED;
    }
}
