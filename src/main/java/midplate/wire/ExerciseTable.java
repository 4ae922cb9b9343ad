package midplate.wire;

import java.util.List;
import midplate.catalogue.TeachingCompounds;
import midplate.lesson.ExerciseCompound;

/** The compounds of lessons with what they are made of, as exercises are drawn from them. */
final class ExerciseTable {
    private ExerciseTable() {}

    /** All of the table packed with the program. */
    static List<ExerciseCompound> of(Compounds compounds) {
        return TeachingCompounds.builtIn().all().stream()
                .map(each -> new ExerciseCompound(
                        each, compounds.molecule("compound", each.smiles()).counts()))
                .toList();
    }
}
