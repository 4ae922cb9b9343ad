package midplate.lesson;

import java.util.List;
import midplate.advice.Adviser;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.TeachingCompounds;
import midplate.chemistry.Sorbent;
import midplate.inference.PossiblePlates;
import midplate.plate.Setting;
import midplate.structure.Structures;
import midplate.words.Message;

/** What tests of worksheets share: the model, the compounds, and what stands in a question. */
final class OnWorksheets {
    static final List<LessonCompound> COMPOUNDS = compounds();

    private OnWorksheets() {}

    static LessonModel model() {
        SolventCatalogue catalogue = SolventCatalogue.builtIn();
        return new LessonModel(catalogue, Adviser.builtIn(catalogue)::consult);
    }

    private static List<LessonCompound> compounds() {
        Structures structures = Structures.of(FunctionalGroups.builtIn());
        return TeachingCompounds.builtIn().all().stream()
                .map(each -> new LessonCompound(each.id(), structures.counts(each.smiles())))
                .toList();
    }

    static Worksheet worksheet(LessonModel model, WorksheetPair pair, int seed, int variants, WorksheetKind... kinds) {
        return Worksheet.of(
                model, COMPOUNDS, Worksheet.code(new WorksheetChoices(List.of(kinds), variants, pair), seed));
    }

    /** Possible plates of these compounds alone, by no code of worksheets. */
    static PossiblePlates plates(LessonModel model, WorksheetPair pair, List<LessonCompound> compounds) {
        LessonSample sample = new LessonSample(
                compounds, Sorbent.SILICA, pair.weak(model.catalogue()), pair.strong(model.catalogue()), Setting.CLASS);
        return PossiblePlates.of(model.consult(sample).knowledge());
    }

    static LessonCompound compound(Message named) {
        String id = named.key().substring("compound.".length());
        return COMPOUNDS.stream()
                .filter(each -> each.name().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The compounds in a column of a table. */
    static List<LessonCompound> column(WorksheetTable table, int column) {
        return table.rows().stream()
                .map(row -> compound(row.get(column).orElseThrow()))
                .toList();
    }

    /** The share of the strong solvent in the eluent that a question names [% v/v]. */
    static double percent(WorksheetQuestion question) {
        Message eluent = (Message) question.asked().get(0).args().get("eluent");
        String[] parts = String.valueOf(eluent.args().get("ratio")).split(" : ");
        double weak = Double.parseDouble(parts[0]);
        double strong = Double.parseDouble(parts[1]);
        return 100 * strong / (weak + strong);
    }
}
