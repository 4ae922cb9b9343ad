package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import midplate.advice.Consultation;
import midplate.advice.Question;
import midplate.catalogue.WayOfSeeing;
import midplate.catalogue.WayOfSeeing.Leaves;
import midplate.catalogue.WaysOfSeeing;
import midplate.chemistry.Sorbent;
import midplate.identity.PurityQuestion.StartSpot;
import midplate.words.Message;
import midplate.words.Refusal;

/** Says what a plate saw of a sample, by which means, and what could hide from it. */
public final class Purity {
    private static final int MOST_NEXT = 3;
    /** Cautions of single reagents that no general sentence covers. */
    private static final List<String> OF_ITS_OWN = List.of("dnph", "char");

    private final WaysOfSeeing ways;
    private final Function<Question, Consultation> adviser;
    private final PartingEluents parting;

    private Purity(WaysOfSeeing ways, Function<Question, Consultation> adviser, PartingEluents parting) {
        this.ways = ways;
        this.adviser = adviser;
        this.parting = parting;
    }

    /** With these ways of seeing, a model to be asked about eluents, and what finds eluents that part two compounds. */
    public static Purity of(WaysOfSeeing ways, Function<Question, Consultation> adviser, PartingEluents parting) {
        return new Purity(ways, adviser, parting);
    }

    /**
     * What was seen and what could hide.
     *
     * @throws Refusal when the question cannot be; the first of {@link PurityFaults#in}
     */
    public PurityAnswer judge(PurityQuestion question) {
        List<Refusal> faults = PurityFaults.in(question);
        if (!faults.isEmpty()) {
            throw faults.get(0);
        }
        Optional<PlateEluent> asked = question.eluent().filter(eluent -> eluent.sorbent() == Sorbent.SILICA);
        Optional<HiddenCompound> hidden = asked.flatMap(this::hidden);
        Blindness blindness = new Blindness(ways, question.seenBy());
        List<NextEluent> next = asked.filter(eluent -> !question.isAtLine())
                .map(eluent -> next(question, eluent))
                .orElse(List.of());
        return new PurityAnswer(
                seen(question),
                new HidingPlaces(question, hidden, blindness).all(),
                question.appliedUg().isPresent()
                        ? Optional.of(SpotAmounts.of(question.appliedUg().getAsDouble(), question.seenBy()))
                        : Optional.empty(),
                next,
                secondWays(question, blindness),
                PurityWarnings.of(question, hidden),
                cautions(question.seenBy(), blindness.more(), next));
    }

    private Optional<HiddenCompound> hidden(PlateEluent eluent) {
        try {
            return Optional.of(HiddenCompound.in(eluent, adviser));
        } catch (Refusal noModel) {
            // two solvents of which not even theory exists: the plate still shows what it shows
            return Optional.empty();
        }
    }

    /** What to mind, short: how to see tells the rest of each way. What a reagent has of its own is said where it was used. */
    private static List<Message> cautions(List<WayOfSeeing> used, List<WayOfSeeing> advised, List<NextEluent> next) {
        List<WayOfSeeing> all = new ArrayList<>(used);
        all.addAll(advised);
        List<Message> cautions = new ArrayList<>();
        cautions.add(Message.of("seeing.caution-sheet-first"));
        if (all.stream().anyMatch(way -> way.cautions().contains("cabinet"))) {
            cautions.add(Seeing.said("cabinet"));
        }
        if (all.stream().anyMatch(way -> way.leaves() != Leaves.UNCHANGED)) {
            cautions.add(Message.of("pure.caution-stains"));
        }
        for (String key : OF_ITS_OWN) {
            if (used.stream().anyMatch(way -> way.cautions().contains(key))) {
                cautions.add(Seeing.said(key));
            }
        }
        if (!next.isEmpty()) {
            cautions.add(Message.of("pure.caution-eluent"));
        }
        return cautions;
    }

    private static Message seen(PurityQuestion question) {
        Message by = question.seenBy().isEmpty()
                ? Message.of("pure.by-unsaid")
                : Message.of("pure.by", "ways", WayNames.listed(question.seenBy()));
        return question.spotsSeen() == 1
                ? Message.of("pure.seen-one", "by", by)
                : Message.of("pure.seen-more", "count", question.spotsSeen(), "by", by);
    }

    /** Eluents in which a compound that lies under the spot here is most likely to show. */
    private List<NextEluent> next(PurityQuestion question, PlateEluent eluent) {
        Compound under = new Compound("?", question.spot().rf(), Optional.empty());
        return parting.apart(eluent, question.spot(), under, MOST_NEXT).stream()
                .map(each -> new NextEluent(
                        each.weak(),
                        each.strong(),
                        each.ratio(),
                        each.basis(),
                        each.chanceApart(),
                        each.expectedGap(),
                        said(each)))
                .toList();
    }

    private static Message said(NextEluent next) {
        return Message.of(
                "pure.next",
                "eluent",
                eluent(next),
                "percent",
                HidingPlaces.percent(next.chanceApart()),
                "basis",
                PurityWarnings.basis(next.basis()));
    }

    /** Two solvents and their ratio; one by itself where nothing of the other is poured. */
    private static Message eluent(NextEluent next) {
        if (next.ratio().strong() == 0 || next.ratio().weak() == 0) {
            return Message.of(
                    "pure.next-alone",
                    "solvent",
                    next.ratio().strong() == 0
                            ? next.weak().said()
                            : next.strong().said());
        }
        return Message.of(
                "pure.next-mixture",
                "weak",
                next.weak().said(),
                "strong",
                next.strong().said(),
                "ratio",
                next.ratio().toString());
    }

    private static List<Message> secondWays(PurityQuestion question, Blindness blindness) {
        List<Message> all = new ArrayList<>(blindness.advised());
        if (question.spotsSeen() > 1) {
            all.add(Message.of("pure.way-square"));
        }
        if (question.startSpot().map(start -> start != StartSpot.NONE).orElse(false)) {
            all.add(Message.of("pure.way-stronger"));
        }
        all.add(Message.of("pure.way-other"));
        return all;
    }
}
