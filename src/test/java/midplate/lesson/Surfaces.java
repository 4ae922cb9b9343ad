package midplate.lesson;

import java.util.List;
import java.util.Map;
import midplate.advice.Adviser;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Sorbent;
import midplate.plate.Setting;

/** Samples for tests of lessons, invented. */
final class Surfaces {
    static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    static final Adviser ADVISER = Adviser.builtIn(CATALOGUE);
    static final LessonModel MODEL = new LessonModel(CATALOGUE, ADVISER::consult);

    private Surfaces() {}

    static LessonSample sample(String weak, String strong) {
        return new LessonSample(
                List.of(
                        new LessonCompound("A", whole(Map.of("aromatic-carbon", 12))),
                        new LessonCompound("B", whole(Map.of("aromatic-carbon", 12, "diaryl-ketone", 1))),
                        new LessonCompound("C", whole(Map.of("aromatic-carbon", 12, "alkyl-carbon", 1, "alcohol", 1)))),
                Sorbent.SILICA,
                CATALOGUE.solvent(weak),
                CATALOGUE.solvent(strong),
                Setting.CLASS);
    }

    static GroupCounts whole(Map<String, Integer> counts) {
        return new GroupCounts(counts, GroupCounts.Detail.WHOLE);
    }
}
