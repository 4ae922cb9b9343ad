package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import midplate.catalogue.WayOfSeeing;
import midplate.catalogue.WayOfSeeing.Leaves;
import midplate.catalogue.WaysOfSeeing;
import midplate.words.Message;

/**
 * How to see compounds that have no colour: which way shows which of them, and in which order to use the ways.
 *
 * <p>What a way answers to is a table ({@link WaysOfSeeing}), most of it from memory; a way is no proof that a compound is not there.
 */
public final class Seeing {
    private final WaysOfSeeing ways;

    private Seeing(WaysOfSeeing ways) {
        this.ways = ways;
    }

    /** With these ways. */
    public static Seeing of(WaysOfSeeing ways) {
        return new Seeing(ways);
    }

    /**
     * How to see some compounds.
     *
     * @param compounds any number; none means that none is known
     */
    public SeeingAnswer look(List<Compound> compounds) {
        List<SeeingAnswer.Way> looked =
                ways.all().stream().map(way -> look(way, compounds)).toList();
        List<WaySearch.Step> steps = WaySearch.steps(looked);
        return new SeeingAnswer(
                looked,
                steps.stream().map(WaySearch.Step::way).toList(),
                compounds.isEmpty() ? general() : new SeeingOrder(looked, steps, leaving(compounds)).said(general()),
                cautions(ways.all()));
    }

    /** The compounds that may leave the plate on warming. */
    private static List<String> leaving(List<Compound> compounds) {
        return compounds.stream()
                .filter(each -> Volatility.of(each.structure()) == Volatility.Volatile.MAY_LEAVE)
                .map(Compound::name)
                .toList();
    }

    private static SeeingAnswer.Way look(WayOfSeeing way, List<Compound> compounds) {
        List<SeeingAnswer.Seen> answers = new ArrayList<>();
        for (Compound compound : compounds) {
            Eye.Look look = Eye.at(way, compound.structure());
            answers.add(new SeeingAnswer.Seen(compound.name(), look.sight(), look.because()));
        }
        return new SeeingAnswer.Way(way, answers);
    }

    /** The order where nothing is known: what leaves the plate as it is, what mostly does, then one stain for nearly everything. */
    private Message general() {
        return Message.of(
                "seeing.order-general",
                "first",
                WayNames.listed(leaving(Leaves.UNCHANGED)),
                "then",
                WayNames.listed(leaving(Leaves.REVERSIBLE)),
                "last",
                WayNames.either(generalStains()));
    }

    private List<WayOfSeeing> leaving(Leaves leaves) {
        return ways.all().stream().filter(way -> way.leaves() == leaves).toList();
    }

    /** The stains that answer to most groups, at most three: those that the most rows speak of. */
    private List<WayOfSeeing> generalStains() {
        int widest = 3;
        Set<String> most = leaving(Leaves.DESTROYED).stream()
                .sorted((one, other) ->
                        Integer.compare(other.groups().size(), one.groups().size()))
                .limit(widest)
                .map(WayOfSeeing::id)
                .collect(Collectors.toSet());
        return ways.all().stream().filter(way -> most.contains(way.id())).toList();
    }

    /** What to mind with some ways: the safety data sheet first, then each thing once. */
    static List<Message> cautions(List<WayOfSeeing> used) {
        List<Message> cautions = new ArrayList<>();
        cautions.add(Message.of("seeing.caution-sheet-first"));
        if (used.stream().anyMatch(way -> way.leaves() == Leaves.DESTROYED)) {
            cautions.add(Message.of("seeing.caution-wear"));
        }
        for (String key : WayOfSeeing.CAUTIONS) {
            if (used.stream().anyMatch(way -> way.cautions().contains(key))) {
                cautions.add(said(key));
            }
        }
        if (used.stream().anyMatch(way -> way.leaves() == Leaves.DESTROYED)) {
            cautions.add(Message.of("seeing.caution-waste"));
        }
        return List.copyOf(cautions);
    }

    /** What to mind with one way; that the plate is to be dry holds for nearly all and is said once, among the general cautions. */
    public static List<Message> cautions(WayOfSeeing way) {
        return way.cautions().stream()
                .filter(key -> !key.equals(WayOfSeeing.DRY))
                .map(Seeing::said)
                .toList();
    }

    /** What to mind, by its key. */
    static Message said(String caution) {
        return Message.of("seeing.caution-" + caution);
    }
}
