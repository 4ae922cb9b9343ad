package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Readers, writers and schemas know the same fields. */
class SchemaTest {
    private static final Exchange EXCHANGE = FakeAdviser.exchange();

    private static Set<String> properties(JsonNode schema) {
        Set<String> names = new TreeSet<>();
        schema.get("properties").fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void schemaAndReaderKnowTheSameFields() throws IOException {
        JsonNode request = Schemas.read("advice-request");
        assertEquals(new TreeSet<>(QuestionReader.FIELDS), properties(request));
        assertEquals(new TreeSet<>(SpotReader.FIELDS), properties(request.at("/properties/spots/items")));
        assertEquals(new TreeSet<>(StructureQuestion.FIELDS), properties(Schemas.read("structure-request")));
        assertEquals(new TreeSet<>(RunReader.FIELDS), properties(request.at("/properties/runs/items")));
        assertEquals(new TreeSet<>(PlateReader.FIELDS), properties(request.at("/$defs/plate")));
        assertEquals(
                new TreeSet<>(PlateReader.SPOT_FIELDS), properties(request.at("/$defs/plate/properties/spots/items")));
        assertEquals(new TreeSet<>(PlateReader.FIELDS), properties(Schemas.read("reading-request")));
        assertTrue(properties(Schemas.read("scouting-request")).contains(ScoutingQuestion.JARS));
        assertTrue(properties(Schemas.read("other-eluents-request"))
                .containsAll(List.of(OthersQuestion.PERCENT, OthersQuestion.RANK)));
        JsonNode column = Schemas.read("column-plan-request");
        assertEquals(new TreeSet<>(ColumnQuestionReader.FIELDS), properties(column.at("/properties/column")));
        assertEquals(new TreeSet<>(ColumnQuestionReader.EARLIER), properties(column.at("/$defs/earlier")));
        JsonNode fractions = Schemas.read("fractions-request");
        assertEquals(new TreeSet<>(FractionsReader.FIELDS), properties(fractions));
        assertEquals(new TreeSet<>(FractionsReader.TUBE), properties(fractions.at("/properties/tubes/items")));
        JsonNode marks = fractions.at("/properties/tubes/items/properties/marks");
        assertEquals(new TreeSet<>(FractionsReader.MARK), properties(marks.at("/items")));
        assertEquals(new TreeSet<>(FractionsReader.FLASK), properties(fractions.at("/properties/flasks/items")));
        for (JsonNode schema : List.of(column, fractions)) {
            assertEquals(new TreeSet<>(ColumnParts.STEP), properties(schema.at("/$defs/step")));
            Set<String> beds = properties(schema.at("/$defs/bed/oneOf/0"));
            beds.addAll(properties(schema.at("/$defs/bed/oneOf/1")));
            assertEquals(new TreeSet<>(ColumnParts.BED), beds);
        }
        JsonNode seeing = Schemas.read("seeing-request");
        assertEquals(new TreeSet<>(SeeingReader.FIELDS), properties(seeing));
        assertEquals(
                new TreeSet<>(ComparedCompoundReader.FIELDS), properties(seeing.at("/properties/compounds/items")));
        JsonNode purity = Schemas.read("purity-request");
        assertEquals(new TreeSet<>(PurityReader.FIELDS), properties(purity));
        assertEquals(new TreeSet<>(EluentReader.FIELDS), properties(purity.at("/properties/eluent")));
        JsonNode reaction = Schemas.read("reaction-request");
        assertEquals(new TreeSet<>(ReactionReader.FIELDS), properties(reaction));
        assertEquals(new TreeSet<>(ReactionReader.SPECIES), properties(reaction.at("/properties/species/items")));
        JsonNode reactionPlate = reaction.at("/properties/plates/items");
        assertEquals(new TreeSet<>(ReactionReader.PLATE), properties(reactionPlate));
        assertEquals(new TreeSet<>(ReactionReader.MARK), properties(reactionPlate.at("/properties/marks/items")));
        assertEquals(new TreeSet<>(EluentReader.FIELDS), properties(reaction.at("/properties/eluent")));
        JsonNode brought = Schemas.read("import-request");
        assertEquals(new TreeSet<>(ImportQuestion.FIELDS), properties(brought));
        assertEquals(new TreeSet<>(RunColumn.ids()), properties(brought.at("/properties/columns")));
        assertEquals(new TreeSet<>(WorksheetReader.FIELDS), properties(Schemas.read("lesson-worksheet-request")));
        JsonNode strength = Schemas.read("equal-strength-request");
        assertEquals(new TreeSet<>(StrengthQuestion.FIELDS), properties(strength));
        assertEquals(new TreeSet<>(StrengthQuestion.TO_FIELDS), properties(strength.at("/properties/to")));
    }

    @Test
    void schemaAndReaderOfStudiesKnowTheSameFields() throws IOException {
        JsonNode study = Schemas.read("study");
        assertFields(study, StudyReader.REQUIRED, StudyReader.OPTIONAL);
        assertFields(study.at("/$defs/spot"), StudySpotReader.REQUIRED, StudySpotReader.OPTIONAL);
        assertFields(study.at("/$defs/plate"), StudyPlateReader.REQUIRED, StudyPlateReader.OPTIONAL);
        assertFields(study.at("/$defs/plate/properties/conditions"), List.of(), StudyPlateReader.CONDITIONS);
        assertFields(study.at("/$defs/plate/properties/lanes/items"), StudyPlateReader.LANE, List.of());
        assertFields(study.at("/$defs/reading"), StudyPlateReader.READING, StudyPlateReader.READING_OPTIONAL);
        assertFields(study.at("/$defs/additive"), StudyJars.ADDITIVE, List.of());
        assertFields(study.at("/$defs/next"), StudyJars.NEXT, List.of());
        assertFields(study.at("/$defs/advice"), StudyAdviceReader.FIELDS, List.of());
        assertFields(study.at("/$defs/advice/properties/spots/items"), StudyAdviceReader.SPOT, List.of());
        assertFields(study.at("/$defs/column"), StudyColumnReader.COLUMN, StudyColumnReader.COLUMN_OPTIONAL);
        assertFields(study.at("/$defs/run"), StudyColumnReader.RUN, List.of());
        assertFields(study.at("/$defs/bed"), StudyColumnReader.BED, StudyColumnReader.BED_OPTIONAL);
        assertFields(study.at("/$defs/step"), StudyColumnReader.STEP, StudyColumnReader.STEP_OPTIONAL);
        assertFields(study.at("/$defs/tube"), StudyColumnReader.TUBE, StudyColumnReader.TUBE_OPTIONAL);
        assertFields(study.at("/$defs/mark"), StudyColumnReader.MARK, List.of());
        assertFields(study.at("/$defs/flask"), StudyColumnReader.FLASK, List.of());
        JsonNode run = study.at("/$defs/run/properties");
        assertEquals(
                List.of(
                        StudyColumnReader.MOST_RUNS,
                        StudyColumnReader.MOST_STEPS,
                        StudyColumnReader.MOST_TUBES,
                        StudyColumnReader.MOST_FLASKS,
                        StudyColumnReader.MOST_MARKS),
                List.of(
                        study.at("/$defs/column/properties/runs/maxItems").asInt(),
                        run.at("/steps/maxItems").asInt(),
                        run.at("/tubes/maxItems").asInt(),
                        run.at("/flasks/maxItems").asInt(),
                        study.at("/$defs/tube/properties/marks/maxItems").asInt()));
        assertEquals(StudyUpgrades.NEWEST, study.at("/properties/version/const").asInt());
        assertEquals(
                StudyReader.LONGEST_TITLE,
                study.at("/properties/title/maxLength").asInt());
        assertEquals(
                StudyReader.LONGEST_NOTES,
                study.at("/properties/notes/maxLength").asInt());
        assertEquals(StudyFields.LONGEST_LINE, study.at("/$defs/line/maxLength").asInt());
    }

    private static void assertFields(JsonNode object, List<String> required, List<String> optional) {
        Set<String> all = new TreeSet<>(required);
        all.addAll(optional);
        assertEquals(all, properties(object), object.toString());
        Set<String> demanded = new TreeSet<>();
        object.get("required").forEach(name -> demanded.add(name.asText()));
        assertEquals(new TreeSet<>(required), demanded, object.toString());
        assertFalse(object.get("additionalProperties").asBoolean(true), object.toString());
    }

    @Test
    void aBrokenStudyBreaksTheSchemaAlsoInsideAnAnswer() throws IOException {
        assertFalse(Schemas.broken("study", "{}").isEmpty());
        assertFalse(Schemas.broken("study-answer", "{\"study\": {}, \"notices\": []}")
                .isEmpty());
    }

    @Test
    void listsOfPublicationsAndSolventsKeepTheirSchemas() throws IOException {
        assertEquals(List.of(), Schemas.broken("library", EXCHANGE.library()));
        assertEquals(List.of(), Schemas.broken("sources", EXCHANGE.sources()));
        assertEquals(List.of(), Schemas.broken("version", EXCHANGE.version()));
        assertEquals(List.of(), Schemas.broken("groups", EXCHANGE.groups()));
        assertEquals(List.of(), Schemas.broken("groups", Exchange.builtIn().groups()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "{\"id\": 3}", "{\"id\": \"a\", \"weak\": 5}"})
    void badLinesKeepTheirSchema(String line) throws IOException {
        String answer = EXCHANGE.line(line.getBytes(StandardCharsets.UTF_8), slip -> {
            throw new AssertionError(slip);
        });
        assertEquals(List.of(), Schemas.broken("batch-error", answer));
        assertEquals(List.of(), Schemas.broken("batch-error", EXCHANGE.tooLongLine()));
    }

    @Test
    void aSchemaFindsWhatIsMissing() throws IOException {
        assertFalse(Schemas.broken("version", "{}").isEmpty());
        assertFalse(Schemas.broken("version", "{\"name\": \"Midplate\", \"version\": \"0.1.0\", \"x\": 1}")
                .isEmpty());
    }
}
