package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.lesson.LessonSample;
import midplate.plate.Setting;
import midplate.words.Language;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What runs in a lesson, as it is asked for; all samples are invented. */
class LessonSampleTest {
    private static final String PAIR = "\"weak\": \"hexane\", \"strong\": \"ethyl acetate\"";
    private static final String VANILLIN = "{\"name\": \"A\", \"compound\": \"vanillin\"}";

    private final FaultList faults = new FaultList(Texts.of(Language.ENGLISH));

    private Optional<LessonSample> read(String json) {
        Json value = JsonText.read(json, faults);
        return JsonFields.of("", value, faults, LessonSampleReader.FIELDS)
                .flatMap(new LessonSampleReader(
                        SolventCatalogue.builtIn(), new Compounds(FunctionalGroups.builtIn()), faults)::read);
    }

    private static String asked(String compounds, String further) {
        return "{\"compounds\": [" + compounds + "], " + further + "}";
    }

    private List<String> told() {
        for (Fault fault : faults.faults()) {
            assertFalse(fault.message().isBlank() || fault.allowed().isBlank(), fault.toString());
            assertTrue(fault.todo().matches("(?s).*[.?}]"), fault.toString());
        }
        return faults.faults().stream()
                .map(fault -> fault.field() + " " + fault.code())
                .toList();
    }

    @Test
    void aCompoundIsSaidInFourWays() {
        LessonSample sample = read(asked(
                        VANILLIN + ", {\"name\": \"B\", \"smiles\": \"COc1cc(C=O)ccc1O\"}, "
                                + "{\"name\": \"C\", \"class\": \"ester\"}, "
                                + "{\"name\": \"D\", \"groups\": {\"alcohol\": 1, \"aromatic-carbon\": 6}}",
                        PAIR))
                .orElseThrow();
        assertEquals(
                sample.compounds().get(0).counts(),
                sample.compounds().get(1).counts(),
                "the table's structure and the same one written out");
        assertEquals(1, sample.compounds().get(2).counts().of("ester"));
        assertEquals(6, sample.compounds().get(3).counts().of("aromatic-carbon"));
        assertEquals(Setting.CLASS, sample.setting());
        assertEquals(List.of(), told());
    }

    @Test
    void allFaultsAreToldAtOnce() {
        assertEquals(
                Optional.empty(),
                read(
                        asked(
                                "{\"name\": \"A\", \"compound\": \"vanilin\"}, {\"name\": \"A\", \"smiles\": \"C1CC\"}, "
                                        + "{\"name\": \"C\"}, {\"compound\": \"thymol\"}, {\"name\": \"E\", \"class\": \"esther\"}, "
                                        + "{\"name\": \"F\", \"groups\": {\"alcohol\": -1}, \"colour\": 3}",
                                "\"weak\": \"hexane\", \"strong\": \"watter\", \"sorbent\": \"sand\", \"setting\": \"school\"")));
        assertEquals(
                List.of(
                        "sorbent unknown-choice",
                        "setting unknown-choice",
                        "strong unknown-solvent",
                        "compounds[0].compound unknown-lesson-compound",
                        "compounds[1].name duplicate-compound",
                        "compounds[1].smiles open-ring",
                        "compounds[2] lesson-compound-unsaid",
                        "compounds[3].name missing-field",
                        "compounds[4].class unknown-class",
                        "compounds[5].colour unknown-field",
                        "compounds[5].groups.alcohol group-count"),
                told());
    }

    @Test
    void whatIsNearAMistypedCompoundIsOffered() {
        read(asked("{\"name\": \"A\", \"compound\": \"vanilin\"}", PAIR));
        assertTrue(
                faults.faults().get(0).allowed().contains("vanillin"),
                faults.faults().toString());
        assertFalse(
                faults.faults().get(0).allowed().contains("caffeine"),
                faults.faults().toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{} | compounds missing-field, weak missing-field, strong missing-field",
                "{\"compounds\": [], \"weak\": \"hexane\", \"strong\": \"ethyl acetate\"} | compounds no-lesson-compounds",
                "{\"compounds\": \"vanillin\", \"weak\": \"hexane\", \"strong\": \"ethyl acetate\"} | compounds wrong-type",
                "{\"compounds\": [3], \"weak\": \"hexane\", \"strong\": \"ethyl acetate\"} | compounds[0] wrong-type",
            })
    void whatIsMissingOrOfAnotherKindIsTold(String json, String expected) {
        assertEquals(Optional.empty(), read(json));
        List<String> told = told();
        assertEquals(
                List.of(expected.split(", ")).stream().sorted().toList(),
                told.stream().sorted().toList());
    }

    @Test
    void anEmptyNameIsToldInFewWords() {
        read(asked("{\"name\": \" \", \"compound\": \"thymol\"}, {\"name\": \"\", \"smiles\": \"CCO\"}", PAIR));
        assertEquals(
                List.of("compounds[0].name lesson-compound-unnamed", "compounds[1].name lesson-compound-unnamed"),
                told());
        assertTrue(
                faults.faults().get(0).message().length() < 40, faults.faults().toString());
    }

    @Test
    void twoWaysForOneCompoundAreRefused() {
        assertEquals(
                Optional.empty(),
                read(asked("{\"name\": \"A\", \"compound\": \"thymol\", \"smiles\": \"CCO\"}", PAIR)));
        assertEquals(List.of("compounds[0].smiles two-structures"), told());
    }

    @Test
    void thePairMustBeAnEluent() {
        assertEquals(Optional.empty(), read(asked(VANILLIN, "\"weak\": \"ethyl acetate\", \"strong\": \"hexane\"")));
        assertEquals(List.of("strong pair-reversed"), told());
    }

    @Test
    void sevenCompoundsAreTooMany() {
        String seven = IntStream.range(0, 7)
                .mapToObj(i -> "{\"name\": \"" + i + "\", \"compound\": \"thymol\"}")
                .collect(Collectors.joining(", "));
        assertEquals(Optional.empty(), read(asked(seven, PAIR)));
        assertEquals(1, told().size(), told().toString());
        assertTrue(told().get(0).startsWith("compounds "), told().toString());
    }

    @Test
    void theTablesKeepTheirSchemaInEachLanguage() throws IOException {
        for (Language language : Language.values()) {
            String tables = Exchange.builtIn().in(language).lessons().tables();
            assertEquals(List.of(), Schemas.broken("lesson-tables", tables));
        }
        assertFalse(Schemas.broken("lesson-tables", "{\"compounds\": []}").isEmpty());
        assertFalse(Schemas.broken("lesson-tables", "{\"compounds\": [{\"id\": \"a\"}]}")
                .isEmpty());
    }
}
