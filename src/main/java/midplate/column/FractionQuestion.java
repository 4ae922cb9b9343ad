package midplate.column;

import java.util.List;

/**
 * What was found in the tubes of a run.
 *
 * @param spots names of the compounds, at least one, all different
 * @param target the one that is wanted
 * @param massMg mass of the sample put on [mg]
 * @param fractionMl volume of a tube [ml]
 * @param collectedFromMl eluent run before the first tube [ml]
 * @param tubes the tubes, the first one first
 * @param flasks what was weighed; may be empty
 */
public record FractionQuestion(
        List<String> spots,
        String target,
        double massMg,
        double fractionMl,
        double collectedFromMl,
        List<Tube> tubes,
        List<Flask> flasks) {
    /** Keeps its own copies. */
    public FractionQuestion {
        spots = List.copyOf(spots);
        tubes = List.copyOf(tubes);
        flasks = List.copyOf(flasks);
    }
}
