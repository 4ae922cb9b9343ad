package midplate.identity;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Is the sample one of these?
 *
 * @param plates the plates on which it ran beside references; each is compared within itself only
 * @param references what ran beside it, by name
 * @param candidates what else it might be
 * @param unknown what is known of the sample, if anything
 * @param unknownHrf its hRf as corrected with reference spots [1], 0 to 100, for candidates given by their hRf
 * @param eluent what the plates ran in; without it nothing is asked of the model
 */
public record IdentityQuestion(
        List<ComparedPlate> plates,
        List<Compound> references,
        List<Candidate> candidates,
        Optional<Compound> unknown,
        OptionalDouble unknownHrf,
        Optional<PlateEluent> eluent) {
    /** Keeps its own copies. */
    public IdentityQuestion {
        plates = List.copyOf(plates);
        references = List.copyOf(references);
        candidates = List.copyOf(candidates);
    }

    /** A question about plates and references only. */
    public static IdentityQuestion of(List<ComparedPlate> plates, List<Compound> references) {
        return new IdentityQuestion(
                plates, references, List.of(), Optional.empty(), OptionalDouble.empty(), Optional.empty());
    }
}
