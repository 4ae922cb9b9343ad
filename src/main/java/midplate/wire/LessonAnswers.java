package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.BiFunction;
import midplate.catalogue.TeachingCompound;
import midplate.catalogue.TeachingCompounds;
import midplate.lesson.Development;
import midplate.lesson.LessonCode;
import midplate.lesson.LessonCompound;
import midplate.lesson.LessonModel;
import midplate.lesson.LessonSample;
import midplate.lesson.PlateSeries;
import midplate.lesson.SeriesQuestion;
import midplate.lesson.SlipLesson;
import midplate.lesson.SurfacePicture;
import midplate.lesson.Worksheet;

/**
 * Lessons as they are asked for and answered, in one language.
 *
 * <p>Each method throws {@link BadInput} with all faults of an input it cannot take.
 */
public final class LessonAnswers {
    private final LessonModel model;
    private final Compounds compounds;
    private final Foretelling foretelling;
    private final Speech speech;

    LessonAnswers(LessonModel model, Compounds compounds, Foretelling foretelling, Speech speech) {
        this.model = model;
        this.compounds = compounds;
        this.foretelling = foretelling;
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
        tables.set("exercisePairs", ExerciseWriter.pairs());
        return JsonWriting.text(tables);
    }

    /** Exercises as they are asked for and answered. */
    public ExerciseAnswers exercises() {
        return new ExerciseAnswers(model, compounds, speech);
    }

    /** What the readings of a class show. */
    public String classReadings(byte[] json) {
        return answered(
                json,
                ClassAnswers.FIELDS,
                (fields, faults) -> new ClassAnswers(model, compounds, faults).readings(fields));
    }

    /** An invented class. */
    public String classExample(byte[] json) {
        return answered(
                json,
                ClassAnswers.EXAMPLE,
                (fields, faults) -> new ClassAnswers(model, compounds, faults).example(fields));
    }

    /** A sample on plates from weak to strong. */
    public String series(byte[] json) {
        return answered(json, SeriesReader.FIELDS, (fields, faults) -> {
            SeriesQuestion question = new SeriesReader(model.catalogue(), compounds, faults).read(fields);
            return new SeriesWriter(model.catalogue(), speech).write(PlateSeries.of(model, question));
        });
    }

    /** A plate while it develops. */
    public String climb(byte[] json) {
        return answered(json, ClimbReader.FIELDS, (fields, faults) -> {
            ClimbReader.Asked asked = new ClimbReader(model.catalogue(), compounds, faults).read(fields);
            return new ClimbWriter(speech.texts())
                    .write(Development.of(model, asked.sample(), asked.percentStrong(), asked.plate()));
        });
    }

    /** Solvent and compounds on the surface. */
    public String why(byte[] json) {
        return answered(json, WhyReader.FIELDS, (fields, faults) -> {
            WhyReader.Asked asked = new WhyReader(model.catalogue(), compounds, faults).read(fields);
            LessonSample sample = asked.sample();
            return new WhyWriter(speech)
                    .write(SurfacePicture.of(
                            model,
                            sample,
                            asked.percentStrong(),
                            asked.percents(),
                            counts -> foretelling.of(sample.sorbent(), sample.weak(), sample.strong(), counts)));
        });
    }

    /** What a slip does to the numbers and to the advice. */
    public String slips(byte[] json) {
        return answered(
                json,
                SlipReader.FIELDS,
                (fields, faults) -> new SlipWriter(speech.texts())
                        .write(SlipLesson.of(
                                new SlipReader(model.catalogue(), compounds, faults).read(fields), model)));
    }

    /** The same from a text. */
    public String slips(String json) {
        return slips(json.getBytes(StandardCharsets.UTF_8));
    }

    /** Questions on paper and their answers, by a code or by what is chosen. */
    public String worksheet(byte[] json) {
        return answered(json, WorksheetReader.FIELDS, (fields, faults) -> {
            LessonCode code = new WorksheetReader(faults).read(fields);
            Worksheet worksheet = Worksheet.of(model, teachingCompounds(), code);
            return new WorksheetWriter(model.catalogue(), speech).text(worksheet);
        });
    }

    /** The table of lessons, each compound by its id. */
    private List<LessonCompound> teachingCompounds() {
        return TeachingCompounds.builtIn().all().stream()
                .map(each -> new LessonCompound(
                        each.id(),
                        compounds.molecule("compounds", each.smiles()).counts()))
                .toList();
    }

    /** Reads what came as JSON fields of these names, lets it be answered, and refuses with all faults. */
    private String answered(byte[] json, List<String> known, BiFunction<JsonFields, FaultList, String> answer) {
        return answered(json, known, speech, answer);
    }

    /** The same for what answers lessons beside this. */
    static String answered(
            byte[] json, List<String> known, Speech speech, BiFunction<JsonFields, FaultList, String> answer) {
        FaultList faults = new FaultList(speech.texts());
        Json value = JsonText.read(JsonText.decoded(json, faults), faults);
        JsonFields fields = JsonFields.of("", value, faults, known)
                .orElseThrow(() -> new BadInput(BadInput.Kind.FIELDS, faults.faults()));
        return Exchange.told(faults, () -> answer.apply(fields, faults));
    }
}
