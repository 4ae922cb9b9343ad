package midplate.plate;

import java.util.Optional;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * What ran up the plate and on what: a mixture of two solvents on a sorbent.
 *
 * @param sorbent the layer
 * @param weak the weaker solvent
 * @param strong the stronger solvent
 * @param percentStrong share of the stronger solvent [% v/v, measured before mixing], in [0, 100]
 * @param additive what else is in it, as written, such as {@code acetic acid 1 %}; such a system stands for itself and
 *     is never pooled with plain runs
 */
public record Eluent(Sorbent sorbent, Solvent weak, Solvent strong, double percentStrong, Optional<String> additive) {
    /** Refuses a percentage outside [0, 100] and an additive without a word. */
    public Eluent {
        if (!(percentStrong >= 0 && percentStrong <= 100)) {
            throw new Refusal(
                    "percentStrong",
                    Message.of("plate.percent-out-of-range", "percent", percentStrong),
                    Double.toString(percentStrong),
                    Allowed.closed(0, 100),
                    Message.of("todo.give-percent-of-volumes"));
        }
        if (additive.isPresent() && additive.get().isBlank()) {
            throw new Refusal(
                    "additive",
                    Message.of("plate.additive-blank"),
                    "\"" + additive.get() + "\"",
                    Message.of("allowed.name-with-amount"),
                    Message.of("todo.name-additive"));
        }
    }

    /** A mixture without additive. */
    public static Eluent of(Sorbent sorbent, Solvent weak, Solvent strong, double percentStrong) {
        return new Eluent(sorbent, weak, strong, percentStrong, Optional.empty());
    }
}
