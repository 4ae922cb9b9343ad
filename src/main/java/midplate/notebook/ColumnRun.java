package midplate.notebook;

import java.util.List;
import midplate.column.Loading;

/**
 * A column that was run.
 *
 * @param id its name in the study
 * @param weak id of the weaker solvent
 * @param strong id of the stronger solvent
 * @param additive what was added to the eluent
 * @param bed the silica
 * @param steps what was poured, in this order
 * @param loading how the sample came onto the silica
 * @param massMg mass of the sample [mg]
 * @param fractionMl volume of a fraction [ml]
 * @param collectedFromMl eluent that had run before the first tube [ml]
 * @param tubes from the first on
 * @param flasks into which tubes were put together, weighed before and after
 */
public record ColumnRun(
        String id,
        String weak,
        String strong,
        JarAdditive additive,
        StudyBed bed,
        List<ColumnStep> steps,
        Loading loading,
        Entered massMg,
        Entered fractionMl,
        Entered collectedFromMl,
        List<ColumnTube> tubes,
        List<ColumnFlask> flasks) {
    /** Keeps its own copies. */
    public ColumnRun {
        steps = List.copyOf(steps);
        tubes = List.copyOf(tubes);
        flasks = List.copyOf(flasks);
    }
}
