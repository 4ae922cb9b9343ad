package midplate.wire;

import java.util.Optional;
import midplate.catalogue.EluentRules;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.Message;
import midplate.words.Refusal;

/** Reads two solvents and refuses what is no eluent: one solvent twice, two that do not mix, the stronger one named weak. */
final class PairReader {
    private static final int LONGEST_NAME = 100;

    private final SolventCatalogue catalogue;
    private final FaultList faults;

    PairReader(SolventCatalogue catalogue, FaultList faults) {
        this.catalogue = catalogue;
        this.faults = faults;
    }

    /** Two solvents by whatever a chemist calls them. */
    record Pair(Solvent weak, Solvent strong) {}

    /** The pair in the fields {@code weak} and {@code strong}; empty when either is missing or both are no eluent. */
    Optional<Pair> read(JsonFields fields, Sorbent sorbent) {
        Optional<Solvent> weak = solvent(fields, "weak", Message.of("todo.name-weak"));
        Optional<Solvent> strong = solvent(fields, "strong", Message.of("todo.name-strong"));
        if (weak.isEmpty() || strong.isEmpty()) {
            return Optional.empty();
        }
        Pair pair = new Pair(weak.get(), strong.get());
        String field = fields.path("strong");
        Optional<Refusal> refusal = EluentRules.of(catalogue).against(field, sorbent, weak.get(), strong.get());
        refusal.ifPresent(against -> faults.add(field, against));
        return refusal.isPresent() ? Optional.empty() : Optional.of(pair);
    }

    private Optional<Solvent> solvent(JsonFields fields, String name, Message what) {
        if (!fields.has(name)) {
            fields.missing(name, Message.of("allowed.solvent-name"), what);
            return Optional.empty();
        }
        return fields.text(name, LONGEST_NAME).flatMap(text -> {
            try {
                return Optional.of(catalogue.solventIn(fields.path(name), text));
            } catch (Refusal refusal) {
                Optional<Solvent> found = inTheWordsOfTheReader(text);
                if (found.isEmpty()) {
                    faults.add(refusal.field(), refusal);
                }
                return found;
            }
        });
    }

    /** A solvent by the very name that this language gives it. */
    private Optional<Solvent> inTheWordsOfTheReader(String name) {
        return catalogue.solvents().stream()
                .filter(solvent -> faults.texts().render(solvent.said()).equalsIgnoreCase(name))
                .findFirst();
    }
}
