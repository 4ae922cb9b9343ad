package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.EluentRules;
import midplate.catalogue.MeasuredPair;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Whether two solvents make an eluent, and which measured pair stands for them. */
final class PairChoice {
    private final SolventCatalogue catalogue;
    private final EluentRules rules;
    private final List<MeasuredPair> measured;

    PairChoice(SolventCatalogue catalogue, List<MeasuredPair> measured) {
        this.catalogue = catalogue;
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

    /** The measured pair that stands for two solvents; empty when there is none. */
    Optional<MeasuredPair> find(Sorbent sorbent, Solvent weak, Solvent strong) {
        String id = MeasuredPair.id(sorbent, standard(weak), standard(strong));
        return measured.stream().filter(pair -> pair.id().equals(id)).findFirst();
    }

    /** The same, refusing a pair without open measurements; it names those that the shelf allows. */
    MeasuredPair require(Sorbent sorbent, Solvent weak, Solvent strong, Shelf shelf) {
        if (sorbent != Sorbent.SILICA) {
            throw new Refusal(
                    "sorbent",
                    Message.of("advice.sorbent-not-measured", "sorbent", sorbent.said()),
                    sorbent.id(),
                    Allowed.words(Sorbent.SILICA.id()),
                    Message.of("todo.ask-strength-or-silica"));
        }
        return find(sorbent, weak, strong).orElseThrow(() -> notMeasured(weak, strong, shelf));
    }

    private Refusal notMeasured(Solvent weak, Solvent strong, Shelf shelf) {
        List<Message> names = pairNames(shelf);
        return new Refusal(
                "strong",
                Message.of("advice.pair-not-measured", "weak", weak.said(), "strong", strong.said()),
                weak.id() + " with " + strong.id(),
                names.isEmpty() ? Message.of("allowed.no-pair-on-shelf") : Allowed.pairs(names),
                Message.of("todo.choose-pair"));
    }

    private List<Message> pairNames(Shelf shelf) {
        List<Message> names = new ArrayList<>();
        for (MeasuredPair pair : measured) {
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
