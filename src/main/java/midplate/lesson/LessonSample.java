package midplate.lesson;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.advice.Glassware;
import midplate.advice.Question;
import midplate.advice.Window;
import midplate.advice.Wishes;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.plate.Run;
import midplate.plate.Setting;

/**
 * Compounds of which only the structure is known, and the two solvents they run in.
 *
 * @param compounds one to {@value #MOST_COMPOUNDS}
 * @param sorbent the layer
 * @param weak the weaker solvent
 * @param strong the stronger solvent
 * @param setting how much plates scatter
 */
public record LessonSample(
        List<LessonCompound> compounds, Sorbent sorbent, Solvent weak, Solvent strong, Setting setting) {
    /** The most compounds of a lesson: more spots are not told apart on a plate. */
    public static final int MOST_COMPOUNDS = 6;

    /** Keeps its own copy. */
    public LessonSample {
        compounds = List.copyOf(compounds);
    }

    /** The question that the adviser takes: no plate was run yet. */
    public Question question() {
        return question(List.of());
    }

    /** The same once plates were run, as somebody notes them. */
    public Question question(List<Run> runs) {
        Map<String, GroupCounts> structures = new LinkedHashMap<>();
        compounds.forEach(compound -> structures.put(compound.name(), compound.counts()));
        return new Question(
                sorbent,
                weak,
                strong,
                Optional.empty(),
                compounds.stream().map(LessonCompound::name).toList(),
                runs,
                Window.USUAL,
                setting,
                Glassware.usual(setting),
                Wishes.NONE,
                structures);
    }
}
