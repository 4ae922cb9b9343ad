package midplate.notebook;

import java.util.List;
import java.util.Optional;
import midplate.column.Loading;

/**
 * What is thought of a column for a sample, and the columns that were run.
 *
 * @param target id of the compound that is wanted, once one was chosen
 * @param massMg mass of the sample [mg]
 * @param bed the silica
 * @param loading how the sample comes onto the silica
 * @param loadMl volume it is dissolved in for a wet load [ml]; nothing where the program is to say it
 * @param flowMlMin flow [ml/min]; nothing where the program is to say it
 * @param fractionMl volume of a fraction [ml]; nothing where the program is to say it
 * @param elution who chooses what is poured
 * @param steps what is to be poured, where a person chose it; kept while the program chooses
 * @param runs in the order they were run
 */
public record StudyColumn(
        Optional<String> target,
        Entered massMg,
        StudyBed bed,
        Loading loading,
        Entered loadMl,
        Entered flowMlMin,
        Entered fractionMl,
        Elution elution,
        List<ColumnStep> steps,
        List<ColumnRun> runs) {
    /** Keeps its own copies. */
    public StudyColumn {
        steps = List.copyOf(steps);
        runs = List.copyOf(runs);
    }

    /** Who chooses what is poured. */
    public enum Elution {
        /** The program, whatever is best. */
        BEST,
        /** The program, one eluent. */
        ISOCRATIC,
        /** The program, as few steps as do it. */
        STEPS,
        /** A person. */
        OWN
    }
}
