package midplate.advice;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import midplate.chemistry.Solvent;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * The solvents at hand. Where they were told, no other one is named in an advice.
 *
 * @param solvents those at hand; empty when nothing was told, and then every solvent may be named
 */
public record Shelf(List<Solvent> solvents) {
    /** Nothing was told. */
    public static final Shelf UNTOLD = new Shelf(List.of());

    /** Keeps each solvent once. */
    public Shelf {
        solvents = solvents.stream().distinct().toList();
    }

    /** Whether the solvents at hand were told. */
    public boolean isTold() {
        return !solvents.isEmpty();
    }

    /** The refusal of a solvent asked for in a field that does not stand on the shelf. */
    public Optional<Refusal> lacks(String field, Solvent solvent) {
        if (!isTold() || solvents.contains(solvent)) {
            return Optional.empty();
        }
        return Optional.of(new Refusal(
                field,
                Message.of("advice.not-on-shelf", "solvent", solvent.said()),
                solvent.name(),
                names(solvents),
                Message.of("todo.take-from-shelf")));
    }

    /** Refuses two solvents of which one does not stand on the shelf. */
    void check(Solvent weak, Solvent strong) {
        lacks("weak", weak).or(() -> lacks("strong", strong)).ifPresent(refusal -> {
            throw refusal;
        });
    }

    /**
     * What at hand is a solvent that was measured, or may be calculated as it; that solvent itself where nothing was told.
     *
     * @param measured the solvent that was measured
     * @param standard gives for each solvent the one that was measured in its place, or itself
     */
    Optional<Solvent> inPlaceOf(Solvent measured, UnaryOperator<Solvent> standard) {
        if (!isTold() || solvents.contains(measured)) {
            return Optional.of(measured);
        }
        return solvents.stream()
                .filter(solvent -> standard.apply(solvent).equals(measured))
                .findFirst();
    }

    /** Names for a sentence. */
    static Message names(List<Solvent> solvents) {
        return Allowed.list(solvents.stream().map(Solvent::said).toList());
    }
}
