package midplate.benchmark;

import java.util.List;
import java.util.Optional;
import midplate.inference.PairName;

/** A model under test that is told the structures of the compounds. The same question gets the same answer. */
interface StructureContender {
    /** The ratio of hexane and ethyl acetate for a first plate, before anything was read. */
    Choice first(List<ToldSpot> spots);

    /** The ratio for the plate after a trial plate; nothing from a model that cannot join the two. */
    default Optional<Choice> choose(List<ToldSpot> spots) {
        return Optional.empty();
    }

    /**
     * What a spot will read, one guess for each percentage; nothing from a model that foretells no spots.
     *
     * @param pair the solvents of the plates to foretell
     * @param spot its structure and what was read of it in this pair, if anything
     * @param percents shares of the stronger solvent [% v/v]
     */
    default Optional<List<Guess>> guesses(PairName pair, ToldSpot spot, double[] percents) {
        return Optional.empty();
    }

    /** Whether a structure has a group that few of the compounds learned from have. */
    default boolean isRare(PairName pair, String smiles) {
        return false;
    }
}
