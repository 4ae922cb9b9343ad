package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.EluentRules;
import midplate.catalogue.PairBasis;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Whether two solvents make an eluent, and which pair of which there is a model stands for them: a measured one before theory. */
final class PairChoice {
    /** So many pairs by theory are named in a refusal. */
    private static final int MOST_NAMED = 6;

    private final SolventCatalogue catalogue;
    private final EluentRules rules;
    private final List<PlatePair> measured;
    private final PairFinder theory;

    /** @param theory asked for pairs that were not measured */
    PairChoice(SolventCatalogue catalogue, List<PlatePair> measured, PairFinder theory) {
        this.catalogue = catalogue;
        this.theory = theory;
        this.rules = EluentRules.of(catalogue);
        this.measured = List.copyOf(measured);
    }

    /**
     * Refuses two solvents that are no eluent: the same twice, not miscible, or in the wrong order.
     *
     * @param at where the pair stands in the input, such as {@code runs[0].}; empty for the question itself
     */
    void check(String at, Sorbent sorbent, Solvent weak, Solvent strong) {
        rules.against(at + "strong", sorbent, weak, strong).ifPresent(refusal -> {
            throw refusal;
        });
    }

    /** The pair that stands for two solvents; empty when there is none, or both are calculated as one solvent. */
    Optional<PlatePair> find(Sorbent sorbent, Solvent weak, Solvent strong) {
        Solvent weaker = standard(weak);
        Solvent stronger = standard(strong);
        if (weaker.equals(stronger)) {
            return Optional.empty();
        }
        String id = PlatePair.id(sorbent, weaker, stronger);
        return measured.stream()
                .filter(pair -> pair.id().equals(id))
                .findFirst()
                .or(() -> theory.find(sorbent, weaker, stronger));
    }

    /** The pairs that were measured. */
    List<PlatePair> measured() {
        return measured;
    }

    /** Whether two solvents are an eluent in this order. */
    boolean allows(Sorbent sorbent, Solvent weak, Solvent strong) {
        return rules.against("strong", sorbent, weak, strong).isEmpty();
    }

    /** The same, refusing a pair of which not even theory exists; it names what is possible, with a shelf what that allows. */
    PlatePair require(Sorbent sorbent, Solvent weak, Solvent strong, Shelf shelf) {
        if (sorbent != Sorbent.SILICA) {
            throw new Refusal(
                    "sorbent",
                    Message.of("advice.sorbent-not-measured", "sorbent", sorbent.said()),
                    sorbent.id(),
                    Allowed.words(Sorbent.SILICA.id()),
                    Message.of("todo.ask-strength-or-silica"));
        }
        return find(sorbent, weak, strong).orElseThrow(() -> notMeasured(sorbent, weak, strong, shelf));
    }

    /** The pairs of two solvents, in the order of the catalogue, of which there is theory only; none that another solvent stands for. */
    List<PlatePair> byTheory(Sorbent sorbent) {
        List<PlatePair> pairs = new ArrayList<>();
        for (Solvent weak : catalogue.solvents()) {
            for (Solvent strong : catalogue.solvents()) {
                if (standard(weak).equals(weak) && standard(strong).equals(strong) && allows(sorbent, weak, strong)) {
                    find(sorbent, weak, strong)
                            .filter(pair -> pair.basis() != PairBasis.MEASURED)
                            .ifPresent(pairs::add);
                }
            }
        }
        return pairs;
    }

    private Refusal notMeasured(Sorbent sorbent, Solvent weak, Solvent strong, Shelf shelf) {
        List<Message> names = pairNames(sorbent, weak, shelf);
        return new Refusal(
                "strong",
                Message.of("advice.pair-not-measured", "weak", weak.said(), "strong", strong.said()),
                weak.id() + " with " + strong.id(),
                names.isEmpty() ? Message.of("allowed.no-pair-on-shelf") : Allowed.pairs(names),
                Message.of("todo.choose-pair"));
    }

    /** The measured pairs, then some with the same weak solvent by theory. */
    private List<Message> pairNames(Sorbent sorbent, Solvent asked, Shelf shelf) {
        List<PlatePair> possible = new ArrayList<>(measured);
        for (Solvent strong : catalogue.solvents()) {
            if (possible.size() < measured.size() + MOST_NAMED && allows(sorbent, asked, strong)) {
                find(sorbent, asked, strong)
                        .filter(pair -> !possible.contains(pair))
                        .ifPresent(possible::add);
            }
        }
        List<Message> names = new ArrayList<>();
        for (PlatePair pair : possible) {
            Optional<Solvent> weak = shelf.inPlaceOf(pair.weak(), this::standard);
            Optional<Solvent> strong = shelf.inPlaceOf(pair.strong(), this::standard);
            if (weak.isPresent() && strong.isPresent()) {
                names.add(Message.of(
                        "allowed.pair",
                        "weak",
                        weak.get().id(),
                        "strong",
                        strong.get().id()));
            }
        }
        return names;
    }

    /** What must be said about a pair for which another one stands. */
    List<Message> standInNotes(Solvent weak, Solvent strong, Shelf shelf) {
        List<Message> notes = new ArrayList<>();
        for (Solvent solvent : List.of(weak, strong)) {
            catalogue.standIn(solvent).ifPresent(stand -> {
                Message name = stand.solvent().said();
                boolean named = !shelf.isTold() || shelf.solvents().contains(stand.standsInFor());
                notes.add(
                        named
                                ? Message.of(
                                        "advice.stand-in",
                                        "solvent",
                                        name,
                                        "measured",
                                        stand.standsInFor().said())
                                : Message.of("advice.stand-in-shelf", "solvent", name));
            });
        }
        return notes;
    }

    /** The solvent that was measured in place of this one, or this one. */
    Solvent standard(Solvent solvent) {
        return rules.standard(solvent);
    }
}
