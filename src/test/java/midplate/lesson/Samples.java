package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import midplate.advice.Adviser;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;
import midplate.plate.Setting;
import midplate.structure.Structures;

/** Samples of lessons by their structures, and the packed model. */
final class Samples {
    static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    static final LessonModel MODEL = new LessonModel(CATALOGUE, Adviser.builtIn(CATALOGUE)::consult);
    private static final Structures STRUCTURES = Structures.of(FunctionalGroups.builtIn());

    private Samples() {}

    /** A class reads compounds on silica: names and SMILES in turn. */
    static LessonSample of(String weak, String strong, String... nameThenSmiles) {
        List<LessonCompound> compounds = new ArrayList<>();
        for (int i = 0; i < nameThenSmiles.length; i += 2) {
            compounds.add(new LessonCompound(nameThenSmiles[i], STRUCTURES.counts(nameThenSmiles[i + 1])));
        }
        return new LessonSample(
                compounds, Sorbent.SILICA, CATALOGUE.solvent(weak), CATALOGUE.solvent(strong), Setting.CLASS);
    }
}
