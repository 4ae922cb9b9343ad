package midplate.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.PairBasis;
import midplate.words.Message;

/**
 * What else can be run in place of a mixture, and how sure that is.
 *
 * @param of the mixture to be replaced
 * @param rank by what the others are put in order
 * @param others the other eluents, the first one the best by that
 * @param ladder the middle of the sample at steps of the pair asked about
 * @param notes what to know of all of them
 */
public record Replacements(Of of, OtherRank rank, List<OtherEluent> others, List<Rung> ladder, List<Message> notes) {
    /** Keeps its own copies. */
    public Replacements {
        others = List.copyOf(others);
        ladder = List.copyOf(ladder);
        notes = List.copyOf(notes);
    }

    /**
     * The mixture to be replaced.
     *
     * @param percentStrong its share of the strong solvent [% v/v]
     * @param ratio as simple parts; empty where it is no simple ratio
     * @param basis what the model of its pair rests on
     * @param rf the middle of the sample there: the mean over its spots of the Rf foretold [1]
     * @param aim where the middle of the sample is to come instead, as it sits at a line in that mixture [1]; empty where it does not
     * @param closest the two spots that lie closest there; empty for one spot
     * @param chance that every spot reads inside the window there [1]
     * @param goal that it does and the two closest lie apart [1]; the same for one spot
     */
    public record Of(
            double percentStrong,
            Optional<Ratio> ratio,
            PairBasis basis,
            double rf,
            OptionalDouble aim,
            Optional<ClosestSpots> closest,
            double chance,
            double goal) {}
}
