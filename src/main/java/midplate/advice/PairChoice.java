package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.EluentRules;
import midplate.catalogue.MeasuredPair;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
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

    /** The same, refusing a pair without open measurements. */
    MeasuredPair require(Sorbent sorbent, Solvent weak, Solvent strong) {
        if (sorbent != Sorbent.SILICA) {
            throw new Refusal(
                    "sorbent",
                    Message.of("advice.sorbent-not-measured", "sorbent", sorbent.id()),
                    sorbent.id(),
                    Sorbent.SILICA.id(),
                    "Ask for the eluent's strength instead, which is theory, or run on silica.");
        }
        return find(sorbent, weak, strong)
                .orElseThrow(() -> new Refusal(
                        "strong",
                        Message.of("advice.pair-not-measured", "weak", weak.name(), "strong", strong.name()),
                        weak.id() + " with " + strong.id(),
                        String.join("; ", pairNames()),
                        "Choose one of these pairs, or ask for the strength of the mixture, which is theory."));
    }

    private List<String> pairNames() {
        return measured.stream()
                .map(pair -> pair.weak().id() + " with " + pair.strong().id())
                .toList();
    }

    /** What must be said about a pair for which another one stands. */
    List<Message> standInNotes(Solvent weak, Solvent strong) {
        List<Message> notes = new ArrayList<>();
        for (Solvent solvent : List.of(weak, strong)) {
            catalogue
                    .standIn(solvent)
                    .ifPresent(stand -> notes.add(Message.of(
                            "advice.stand-in",
                            "solvent",
                            stand.solvent().name(),
                            "measured",
                            stand.standsInFor().name())));
        }
        return notes;
    }

    /** The solvent that was measured in place of this one, or this one. */
    Solvent standard(Solvent solvent) {
        return rules.standard(solvent);
    }
}
