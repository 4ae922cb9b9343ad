package midplate.catalogue;

import java.util.Optional;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.Message;
import midplate.words.Refusal;

/** What makes two solvents no eluent: one named twice, two that do not mix, the stronger one named weak. */
public final class EluentRules {
    private final SolventCatalogue catalogue;

    private EluentRules(SolventCatalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The rules for the solvents of a catalogue. */
    public static EluentRules of(SolventCatalogue catalogue) {
        return new EluentRules(catalogue);
    }

    /**
     * Why two solvents are no eluent; empty when they are one.
     *
     * @param field where the stronger solvent stands in the input
     */
    public Optional<Refusal> against(String field, Sorbent sorbent, Solvent weak, Solvent strong) {
        if (weak.equals(strong)) {
            return Optional.of(new Refusal(
                    field,
                    Message.of("catalogue.same-solvent", "solvent", weak.said()),
                    strong.name(),
                    Message.of("allowed.other-solvent", "solvent", weak.said()),
                    Message.of("todo.name-two-solvents")));
        }
        Optional<Immiscibility> apart = catalogue.immiscible(weak, strong);
        if (apart.isPresent()) {
            boolean partly = apart.get().verdict() == Immiscibility.Verdict.PARTLY_MISCIBLE;
            return Optional.of(new Refusal(
                    field,
                    partly
                            ? Message.of("catalogue.pair-partly-miscible", "weak", weak.said(), "strong", strong.said())
                            : Message.of("catalogue.pair-immiscible", "weak", weak.said(), "strong", strong.said()),
                    strong.name(),
                    Message.of("allowed.miscible-solvent", "solvent", weak.said()),
                    Message.of("todo.take-miscible")));
        }
        return reversed(field, sorbent, weak, strong);
    }

    /** Refused when every table that knows both solvents calls the weak one stronger. */
    private Optional<Refusal> reversed(String field, Sorbent sorbent, Solvent weak, Solvent strong) {
        double weakShown = 0;
        double strongShown = 0;
        int tables = 0;
        for (StrengthSeries series : StrengthSeries.values()) {
            Optional<Double> weakStrength = catalogue.strength(standard(weak), sorbent, series);
            Optional<Double> strongStrength = catalogue.strength(standard(strong), sorbent, series);
            if (weakStrength.isPresent() && strongStrength.isPresent()) {
                if (!(weakStrength.get() > strongStrength.get())) {
                    return Optional.empty();
                }
                weakShown = weakStrength.get();
                strongShown = strongStrength.get();
                tables++;
            }
        }
        if (tables == 0) {
            return Optional.empty();
        }
        return Optional.of(new Refusal(
                field,
                Message.of(
                        "catalogue.pair-reversed",
                        "weak",
                        weak.said(),
                        "weakStrength",
                        weakShown,
                        "strong",
                        strong.said(),
                        "strongStrength",
                        strongShown,
                        "sorbent",
                        sorbent.said()),
                strong.name(),
                Message.of("allowed.stronger-solvent", "solvent", weak.said()),
                Message.of("todo.swap-and-subtract")));
    }

    /** The solvent that was measured in place of this one, or this one. */
    public Solvent standard(Solvent solvent) {
        return catalogue.standIn(solvent).map(StandIn::standsInFor).orElse(solvent);
    }
}
