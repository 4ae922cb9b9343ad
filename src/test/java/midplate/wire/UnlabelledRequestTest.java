package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import midplate.plate.Limit;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.plate.Setting;
import midplate.plate.UnlabelledLane;
import midplate.words.Language;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spots without a label as they come in requests, and what no request may say of them. */
@DisplayName("Requests with spots that nobody named")
class UnlabelledRequestTest {
    private static final FakeAdviser ADVISER = new FakeAdviser();
    private static final Exchange EXCHANGE = ADVISER.withSolvents();
    private static final Exchange REAL = Exchange.builtIn();
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String LINES = "\"heightMm\": 70, \"startMm\": 10, \"frontMm\": 60, ";

    private static String request(String... runs) {
        return "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"spots\": [{\"name\": \"A\"}, {\"name\": \"B\"}],"
                + " \"runs\": [" + String.join(", ", runs) + "]}";
    }

    private static String plate(String... spots) {
        return "{\"percentStrong\": 10, \"plate\": {" + LINES + "\"spots\": [" + String.join(", ", spots) + "]}}";
    }

    private static Run asked(String run) {
        EXCHANGE.advice(request(run), Setting.BENCH);
        return ADVISER.lastAsked().runs().get(0);
    }

    private static Reading reading(UnlabelledLane lane, int spot) {
        return lane.spots().get(spot).reading();
    }

    @Test
    void aPlateSaysWhichLaneHoldsWhat() {
        Run run = asked(plate(
                "{\"spot\": \"A\", \"centreMm\": 20}",
                "{\"centreMm\": 30, \"lane\": 2}",
                "{\"spot\": \"B\", \"rf\": 0.61, \"lane\": 2}",
                "{\"rf\": 0.31, \"lane\": 2}",
                "{\"centreMm\": 10, \"lane\": 1}"));
        assertEquals(Set.of("A", "B"), run.readings().keySet());
        assertEquals(Reading.of(0.61), run.readings().get("B"));
        assertEquals(0.2, Objects.requireNonNull(run.readings().get("A")).rf(), 1e-12);
        UnlabelledLane first = run.unlabelled().get(0);
        assertEquals(1, first.lane());
        assertEquals(Set.of("A"), first.labelled());
        assertEquals(4, first.spots().get(0).index());
        assertEquals(Limit.AT_START, reading(first, 0).limit());
        UnlabelledLane second = run.unlabelled().get(1);
        assertEquals(Set.of("B"), second.labelled());
        assertEquals(0.4, reading(second, 0).rf(), 1e-12);
        assertTrue(reading(second, 0).standardError().isPresent(), "the ruler's error");
        assertEquals(Reading.of(0.31), reading(second, 1));
        assertEquals(3, second.spots().get(1).index());
    }

    @Test
    void aSpotGivenByRfInSeveralLanesGetsTheirMean() {
        Run run = asked(plate(
                "{\"spot\": \"A\", \"centreMm\": 20}",
                "{\"spot\": \"A\", \"rf\": 0.24, \"lane\": 2}",
                "{\"spot\": \"B\", \"rf\": 0}",
                "{\"spot\": \"B\", \"rf\": 0, \"lane\": 2}"));
        assertEquals(0.22, Objects.requireNonNull(run.readings().get("A")).rf(), 1e-12);
        assertEquals(Reading.atStart(Reading.AT_START_RF), run.readings().get("B"));
        assertEquals(List.of(), run.unlabelled());
    }

    @Test
    void twoNamesMayShareOneSpot() {
        Run run = asked(plate("{\"spot\": \"A\", \"centreMm\": 30}", "{\"spot\": \"B\", \"centreMm\": 30}"));
        assertEquals(run.readings().get("A"), run.readings().get("B"));
    }

    @Test
    void aListOfRfIsOneLane() {
        Run run = asked(
                "{\"percentStrong\": 10, \"rf\": {\"A\": 0.2}, \"unlabelled\": [0.31, 0, 1], \"notSeen\": [\"B\"]}");
        assertEquals(Set.of("B"), run.notSeen());
        UnlabelledLane lane = run.unlabelled().get(0);
        assertEquals(Set.of("A"), lane.labelled());
        assertEquals(Reading.of(0.31), reading(lane, 0));
        assertEquals(Reading.atStart(Reading.AT_START_RF), reading(lane, 1));
        assertEquals(Reading.atFront(Reading.AT_FRONT_RF), reading(lane, 2));
        assertEquals(
                3,
                asked("{\"percentStrong\": 10, \"rf\": {}, \"unlabelled\": [0.1, 0.2, 0.3]}")
                        .unlabelled()
                        .get(0)
                        .spots()
                        .size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"unlabelled\": []                                     | runs[0].unlabelled    | no-reading",
                "\"rf\": {}, \"unlabelled\": []                         | runs[0].rf            | no-reading",
                "\"unlabelled\": 0.3                                    | runs[0].unlabelled    | wrong-type",
                "\"unlabelled\": [\"A\"]                                | runs[0].unlabelled[0] | wrong-type",
                "\"unlabelled\": [0.3, null]                            | runs[0].unlabelled[1] | wrong-type",
                "\"unlabelled\": [0.3, 1.01]                            | runs[0].unlabelled[1] | rf-out-of-range",
                "\"unlabelled\": [-0.01]                                | runs[0].unlabelled[0] | rf-out-of-range",
                "\"rf\": {\"A\": 0.3}, \"notSeen\": [\"A\"]             | runs[0].notSeen[0]    | not-seen-but-read",
                "\"unlabelled\": [0.3], \"notSeen\": [\"Q\"]            | runs[0].notSeen[0]    | unknown-spot",
                "\"unlabelled\": [0.3], \"notSeen\": [5]                | runs[0].notSeen[0]    | wrong-type",
                "\"unlabelled\": [0.3], \"notSeen\": \"B\"              | runs[0].notSeen       | wrong-type",
                "\"unlabelled\": [0.3], \"notSeen\": [\" \"]            | runs[0].notSeen[0]    | text-not-taken",
                "\"unlabeled\": [0.3], \"rf\": {\"A\": 0.2}             | runs[0].unlabeled     | unknown-field",
                "\"notSeen\": [\"B\"]                                   | runs[0].rf            | missing-field",
            })
    void refusesInARun(String fields, String field, String code) {
        assertFault(request("{\"percentStrong\": 10, " + fields + "}"), field, code);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "{\"rf\": 1.2}                                   | rf       | rf-out-of-range",
                "{\"rf\": \"0.3\"}                               | rf       | wrong-type",
                "{\"rf\": 0.3, \"centreMm\": 30}                 | rf       | two-places",
                "{\"lane\": 2}                                   | centreMm | missing-field",
                "{\"rf\": 0.3, \"lane\": 0}                      | lane     | number-out-of-range",
                "{\"rf\": 0.3, \"lane\": 51}                     | lane     | number-out-of-range",
                "{\"rf\": 0.3, \"lane\": 1.5}                    | lane     | number-out-of-range",
                "{\"rf\": 0.3, \"lane\": \"left\"}               | lane     | wrong-type",
                "{\"spot\": \"\", \"rf\": 0.3}                   | spot     | text-not-taken",
                "{\"centreMm\": 90}                              | centreMm | spot-beyond-front",
            })
    void refusesInASpot(String spot, String field, String code) {
        assertFault(request(plate(spot)), "runs[0].plate.spots[0]." + field, code);
    }

    @Test
    void refusesAListBesideLengthsAndMoreThanCanBeToldApart() {
        assertFault(
                request("{\"percentStrong\": 10, \"unlabelled\": [0.3], \"plate\": {" + LINES
                        + "\"spots\": [{\"centreMm\": 30}]}}"),
                "runs[0].unlabelled",
                "unlabelled-and-lengths");
        String thirteen = String.join(", ", Collections.nCopies(13, "0.3"));
        assertFault(
                request("{\"percentStrong\": 10, \"unlabelled\": [" + thirteen + "]}"),
                "runs[0].unlabelled",
                "unlabelled-too-many");
        String[] spots = Collections.nCopies(13, "{\"rf\": 0.3, \"lane\": 7}").toArray(String[]::new);
        assertFault(request(plate(spots)), "runs[0].plate.spots", "unlabelled-too-many");
        String twelve =
                "{\"percentStrong\": 10, \"unlabelled\": [" + String.join(", ", Collections.nCopies(12, "0.3")) + "]}";
        EXCHANGE.advice(request(Collections.nCopies(8, twelve).toArray(String[]::new)), Setting.BENCH);
        assertFault(request(Collections.nCopies(9, twelve).toArray(String[]::new)), "runs", "unlabelled-too-many");
    }

    private static void assertFault(String json, String field, String code) {
        BadInput bad = assertThrows(BadInput.class, () -> EXCHANGE.advice(json, Setting.BENCH));
        assertEquals(1, bad.faults().size(), bad.faults().toString());
        Fault fault = bad.faults().get(0);
        assertEquals(List.of(field, code), List.of(fault.field(), fault.code()));
        assertFalse(fault.came().isBlank()
                || fault.allowed().isBlank()
                || fault.message().isBlank());
        assertTrue(fault.todo().endsWith(".") || fault.todo().endsWith("?"), fault.todo());
    }

    @Test
    void aReadingGivesSpotsWithoutANameBackByPlace() throws IOException {
        String plate = "{" + LINES
                + "\"spots\": [{\"spot\": \"A\", \"centreMm\": 20}, {\"centreMm\": 30, \"lane\": 3}, {\"rf\": 1}]}";
        String answer = EXCHANGE.reading(plate);
        assertEquals(List.of(), Schemas.broken("reading-request", plate));
        assertEquals(List.of(), Schemas.broken("reading-answer", answer));
        JsonNode unlabelled = MAPPER.readTree(answer).get("unlabelled");
        assertEquals(2, unlabelled.size());
        assertEquals(2, unlabelled.at("/0/index").asInt());
        assertEquals("at-front", unlabelled.at("/0/limit").asText());
        assertEquals(3, unlabelled.at("/1/lane").asInt());
        assertEquals(0.4, unlabelled.at("/1/rf").asDouble());
        assertFalse(MAPPER.readTree(EXCHANGE.reading("{" + LINES + "\"spots\": [{\"spot\": \"A\", \"centreMm\": 20}]}"))
                .has("unlabelled"));
    }

    // A spot that is called "1" by its owner keeps that name.
    @ParameterizedTest
    @CsvSource({"ENGLISH, no. 2, no. 3", "GERMAN, Nr. 2, Nr. 3"})
    void aSpotWithoutANameIsCalledByItsPlaceInEachLanguage(Language language, String second, String third)
            throws IOException {
        Exchange exchange = EXCHANGE.in(language);
        JsonNode read = MAPPER.readTree(exchange.reading(
                "{" + LINES + "\"spots\": [{\"spot\": \"1\", \"centreMm\": 60.5}, {\"centreMm\": 60.5}]}"));
        assertEquals(
                List.of("plate.spot-past-front 1", "plate.spot-past-front " + second),
                told(read.get("warnings")).toList());
        assertTrue(read.at("/warnings/1/text").asText().contains(second), read.toString());
        JsonNode run = MAPPER.readTree(
                exchange.advice(request("{\"percentStrong\": 10, \"unlabelled\": [0.3, 0]}"), Setting.BENCH)
                        .json());
        assertTrue(told(run.get("notes")).toList().contains("note.taken-as-start " + second), run.toString());
        JsonNode plate = MAPPER.readTree(exchange.advice(
                        request(plate("{\"spot\": \"A\", \"rf\": 0.2}", "{\"centreMm\": 60.5}", "{\"rf\": 1}")),
                        Setting.BENCH)
                .json());
        assertTrue(told(plate.get("notes")).toList().contains("plate.spot-past-front " + second), plate.toString());
        assertTrue(told(plate.get("notes")).toList().contains("note.taken-as-front " + third), plate.toString());
        BadInput bad = assertThrows(
                BadInput.class,
                () -> exchange.reading("{" + LINES + "\"spots\": [{\"rf\": 0.2}, {\"centreMm\": 69}]}"));
        assertTrue(bad.faults().get(0).message().contains(second), bad.faults().toString());
    }

    /** The key of each message and the spot that it names. */
    private static Stream<String> told(JsonNode messages) {
        return StreamSupport.stream(messages.spliterator(), false)
                .map(each ->
                        each.get("key").asText() + " " + each.at("/args/spot").asText());
    }

    @Test
    void anAnswerSaysWhichIsWhichOnlyWhereSomethingIsUnlabelled() throws IOException {
        String first = "{\"percentStrong\": 10, \"rf\": {\"A\": 0.1, \"B\": 0.3}}";
        String second = "{\"percentStrong\": 25, \"unlabelled\": [0.55, 0.36], \"notSeen\": [\"A\"]}";
        assertEquals(List.of(), Schemas.broken("advice-request", request(first, second)));
        String json = REAL.advice(request(first, second), Setting.BENCH).json();
        assertEquals(List.of(), Schemas.broken("advice-answer", json));
        JsonNode which = MAPPER.readTree(json).get("whichIsWhich");
        assertEquals(2, which.size());
        assertEquals(1, which.at("/0/run").asInt());
        assertEquals("B", which.at("/0/guess/0").asText());
        assertEquals(0, which.at("/1/guess").size());
        assertTrue(which.at("/0/probability").asDouble() > 0.5);
        assertFalse(REAL.advice(request(first), Setting.BENCH).json().contains("whichIsWhich"));
    }

    @Test
    void inAnotherPairTheyAreLeftOutAndItIsSaid() {
        String json = REAL.advice(
                        request(
                                "{\"percentStrong\": 10, \"rf\": {\"A\": 0.1, \"B\": 0.3}}",
                                "{\"weak\": \"dichloromethane\", \"strong\": \"methanol\", \"percentStrong\": 2,"
                                        + " \"unlabelled\": [0.4, 0.6]}"),
                        Setting.BENCH)
                .json();
        assertTrue(json.contains("advice.unlabelled-other-pair"), json);
        assertFalse(json.contains("whichIsWhich"), json);
    }
}
