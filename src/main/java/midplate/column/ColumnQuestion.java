package midplate.column;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.advice.Question;

/**
 * What is asked about a column.
 *
 * @param sample the spots, their plates and structures, and the pair of solvents
 * @param target the spot that is wanted
 * @param massMg mass of the sample [mg]
 * @param bed the column, where one was chosen
 * @param loading how the sample comes onto the silica
 * @param loadMl volume it is dissolved in for a wet load [ml], where it was said
 * @param flowMlMin flow [ml/min], where it was said
 * @param fractionMl volume of a fraction [ml], where it was said
 * @param program what is to be poured, where it was said
 * @param elution the kind of program wanted
 * @param earlier where the compounds left earlier columns
 */
public record ColumnQuestion(
        Question sample,
        String target,
        double massMg,
        Optional<Bed> bed,
        Loading loading,
        OptionalDouble loadMl,
        OptionalDouble flowMlMin,
        OptionalDouble fractionMl,
        Optional<Program> program,
        Elution elution,
        List<ObservedBand> earlier) {
    /** Keeps its own copy. */
    public ColumnQuestion {
        earlier = List.copyOf(earlier);
    }

    /** The kind of program wanted. */
    public enum Elution {
        /** Whatever is best. */
        BEST,
        /** One eluent. */
        ISOCRATIC,
        /** As few steps as do it. */
        STEPS
    }
}
