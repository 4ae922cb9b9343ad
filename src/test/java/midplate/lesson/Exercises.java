package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import midplate.advice.Adviser;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.TeachingCompounds;
import midplate.structure.Structures;

/** Exercises for tests, with the model packed with the program. */
final class Exercises {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    static final LessonModel MODEL = new LessonModel(CATALOGUE, Adviser.builtIn(CATALOGUE)::consult);
    private static final Structures STRUCTURES = Structures.of(FunctionalGroups.builtIn());
    static final List<ExerciseCompound> TABLE = TeachingCompounds.builtIn().all().stream()
            .map(each -> new ExerciseCompound(
                    each, STRUCTURES.read("smiles", each.smiles()).counts()))
            .toList();

    private Exercises() {}

    static Exercise of(ExerciseCode code) {
        return Exercise.of(code, MODEL, TABLE);
    }

    /** Codes of every level and pair, so many seeds of each. */
    static List<ExerciseCode> codes(int seeds) {
        List<ExerciseCode> codes = new ArrayList<>();
        for (ExerciseLevel level : ExerciseLevel.values()) {
            for (ExercisePair pair : ExercisePair.values()) {
                for (int seed = 0; seed < seeds; seed++) {
                    codes.add(new ExerciseCode(level, pair, 7919 * seed));
                }
            }
        }
        return codes;
    }
}
