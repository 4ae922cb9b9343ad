package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.BiFunction;
import midplate.catalogue.TeachingCompound;
import midplate.catalogue.TeachingCompounds;
import midplate.lesson.LessonModel;

/**
 * Lessons as they are asked for and answered, in one language.
 *
 * <p>Each method throws {@link BadInput} with all faults of an input it cannot take.
 */
public final class LessonAnswers {
    private final LessonModel model;
    private final Compounds compounds;
    private final Speech speech;

    LessonAnswers(LessonModel model, Compounds compounds, Speech speech) {
        this.model = model;
        this.compounds = compounds;
        this.speech = speech;
    }

    /** What lessons choose from: their compounds. */
    public String tables() {
        ObjectNode tables = JsonWriting.object();
        ArrayNode all = tables.putArray("compounds");
        for (TeachingCompound compound : TeachingCompounds.builtIn().all()) {
            ObjectNode node = all.addObject().put("id", compound.id());
            node.set("name", JsonWriting.message(compound.said(), speech.texts()));
            node.put("smiles", compound.smiles()).put("seen", compound.seen().id());
            node.put("note", speech.said(compound.note()));
        }
        return JsonWriting.text(tables);
    }

    /** Reads what came as JSON fields of these names, lets it be answered, and refuses with all faults. */
    private String answered(byte[] json, List<String> known, BiFunction<JsonFields, FaultList, String> answer) {
        FaultList faults = new FaultList(speech.texts());
        Json value = JsonText.read(JsonText.decoded(json, faults), faults);
        JsonFields fields = JsonFields.of("", value, faults, known)
                .orElseThrow(() -> new BadInput(BadInput.Kind.FIELDS, faults.faults()));
        return Exchange.told(faults, () -> answer.apply(fields, faults));
    }
}
