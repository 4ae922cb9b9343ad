package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.advice.Glassware;
import midplate.advice.Question;
import midplate.advice.Window;
import midplate.chemistry.Sorbent;
import midplate.plate.Limit;
import midplate.plate.Reading;
import midplate.plate.Setting;
import org.junit.jupiter.api.Test;

/** What goes in as JSON and what comes out, with invented advice behind it. */
class ExchangeTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    /** The request of the batch contract, digit by digit. */
    private static final String CONTRACT = """
            {"id": "r1", "sorbent": "silica", "weak": "hexane", "strong": "ethyl acetate",
             "spots": [{"name": "A"}, {"name": "B", "smiles": "CCOC(=O)c1ccccc1"}, {"name": "C", "groups": {"ester": 1}}],
             "runs": [{"weak": "hexane", "strong": "ethyl acetate", "percentStrong": 10.0, "rf": {"A": 0.05, "B": 0.31}}],
             "predictAt": [2, 5, 20], "window": [0.2, 0.8], "setting": "automated"}""";

    private final FakeAdviser adviser = new FakeAdviser();
    private final Exchange exchange = adviser.withSolvents();

    private JsonNode answer(String json, Setting ifUnsaid) throws IOException {
        return MAPPER.readTree(exchange.advice(json, ifUnsaid).json());
    }

    private static String asked(String runs, String setting) {
        return "{\"weak\": \"hexane\", \"strong\": \"EtOAc\", \"spots\": [{\"name\": \"A\"}, {\"name\": \"B\"}], \"setting\": \""
                + setting + "\", \"runs\": [" + runs + "]}";
    }

    private Reading reading(int run, String spot) {
        return adviser.lastAsked().runs().get(run).readings().get(spot);
    }

    @Test
    void understandsTheRequestOfTheContract() throws IOException {
        answer(CONTRACT, Setting.BENCH);
        Question question = adviser.lastAsked();
        assertEquals(Sorbent.SILICA, question.sorbent());
        assertEquals("hexane", question.weak().id());
        assertEquals("ethyl-acetate", question.strong().id());
        assertEquals(List.of("A", "B", "C"), question.spots());
        assertEquals(10.0, question.runs().get(0).eluent().percentStrong());
        assertEquals(new Window(0.2, 0.8), question.window());
        assertEquals(Setting.AUTOMATED, question.setting());
        assertEquals(Reading.of(0.05), reading(0, "A"));
        assertFalse(question.runs().get(0).readings().containsKey("C"));
    }

    @Test
    void answersWithTheFieldsOfTheContractFirst() throws IOException {
        JsonNode answer = answer(CONTRACT, Setting.BENCH);
        assertEquals(List.of("id", "advice", "predictions", "notes", "structures"), names(answer));
        assertEquals("r1", answer.get("id").asText());
        assertEquals(
                List.of("percentStrong", "ratio", "probabilityAllInWindow", "bestPercentStrong"),
                names(answer.get("advice")).subList(0, 4));
        assertEquals("7:2", answer.at("/advice/ratio").asText());
        assertEquals(22.2222, answer.at("/advice/percentStrong").asDouble()); // 200/9, four decimals
        assertEquals(0.87, answer.at("/advice/probabilityAllInWindow").asDouble());
        assertEquals(21.5, answer.at("/advice/bestPercentStrong").asDouble());
        assertEquals(3, answer.get("predictions").size());
        assertEquals(List.of("percentStrong", "spots", "probabilityAllInWindow"), names(answer.at("/predictions/0")));
        assertEquals("2", answer.at("/predictions/0/percentStrong").toString());
        assertEquals(List.of("rf", "low", "high"), names(answer.at("/predictions/0/spots/A")));
        assertEquals(0.0123, answer.at("/advice/probabilityNoRatioWorks").asDouble());
    }

    private static List<String> names(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void echoesThePercentagesOfPredictionsExactly() throws IOException {
        String json = asked("", "bench").replace("\"runs\"", "\"predictAt\": [33.333333333, 0.1, 100], \"runs\"");
        JsonNode answer = answer(json, Setting.BENCH);
        assertEquals(33.333333333, answer.at("/predictions/0/percentStrong").asDouble());
        assertEquals(0.1, answer.at("/predictions/1/percentStrong").asDouble());
        assertEquals("100", answer.at("/predictions/2/percentStrong").toString());
    }

    @Test
    void takesTheUsualWhereNothingIsSaid() throws IOException {
        answer("{\"weak\": \"PE\", \"strong\": \"ether\", \"spots\": [{\"name\": \" A \"}]}", Setting.CLASS);
        Question question = adviser.lastAsked();
        assertEquals(Setting.CLASS, question.setting());
        assertEquals(Window.USUAL, question.window());
        assertEquals(Glassware.USUAL, question.glassware());
        assertEquals(List.of("A"), question.spots());
        assertEquals(List.of(), question.runs());
        assertEquals(Optional.empty(), question.additive());
        assertEquals("petroleum-ether-40-60", question.weak().id());
    }

    @Test
    void takesSmallAmountsWithoutAskingForTheGraduation() throws IOException {
        answer(
                "{\"weak\": \"hexane\", \"strong\": \"ether\", \"spots\": [{\"name\": \"A\"}], \"amountMl\": 0.1}",
                Setting.BENCH);
        assertEquals(new Glassware(0.1, 0.01), adviser.lastAsked().glassware());
    }

    @Test
    void keepsAnAdditiveApart() throws IOException {
        answer("""
                {"weak": "hexane", "strong": "EtOAc", "additive": "acetic acid 1 %", "spots": [{"name": "A"}],
                 "runs": [{"percentStrong": 10, "rf": {"A": 0.2}},
                          {"percentStrong": 10, "additive": "acetic acid 1 %", "rf": {"A": 0.3}}]}""", Setting.BENCH);
        Question question = adviser.lastAsked();
        assertEquals(Optional.of("acetic acid 1 %"), question.additive());
        assertEquals(Optional.empty(), question.runs().get(0).eluent().additive());
        assertEquals(
                Optional.of("acetic acid 1 %"), question.runs().get(1).eluent().additive());
    }

    @Test
    void takesExactlyZeroAndOneAsBoundsWhereAPersonReadThem() throws IOException {
        String run = "{\"percentStrong\": 10, \"rf\": {\"A\": 0, \"B\": 1.0}}";
        JsonNode bench = answer(asked(run, "bench"), Setting.AUTOMATED);
        // at most 0.03, at least 0.97: common practice, no source
        assertEquals(Reading.atStart(0.03), reading(0, "A"));
        assertEquals(Reading.atFront(0.97), reading(0, "B"));
        assertEquals("note.taken-as-start", bench.at("/notes/1/key").asText());
        assertEquals("runs[0]", bench.at("/notes/1/about").asText());
        answer(asked(run, "class"), Setting.AUTOMATED);
        assertEquals(Limit.AT_FRONT, reading(0, "B").limit());
        answer(asked(run, "automated"), Setting.BENCH);
        assertEquals(Reading.of(0), reading(0, "A"));
        assertEquals(Reading.of(1), reading(0, "B"));
        answer(asked("{\"percentStrong\": 10, \"rf\": {\"A\": 0.02, \"B\": 0.98}}", "bench"), Setting.BENCH);
        assertEquals(Reading.of(0.02), reading(0, "A"));
        assertEquals(Reading.of(0.98), reading(0, "B"));
    }

    @Test
    void worksOutRfFromThePlateOfARun() throws IOException {
        JsonNode answer = answer(asked("""
                {"percentStrong": 10, "plate": {"heightMm": 72, "startMm": 10, "frontMm": 70,
                 "spots": [{"spot": "A", "centreMm": 28, "sizeMm": 3}, {"spot": "B", "centreMm": 10}]}}""", "bench"), Setting.BENCH);
        assertEquals(0.3, reading(0, "A").rf(), 1e-12); // (28 - 10)/(70 - 10)
        assertTrue(reading(0, "A").standardError().isPresent());
        assertEquals(Limit.AT_START, reading(0, "B").limit());
        assertEquals("plate.front-near-top", answer.at("/notes/1/key").asText());
        assertEquals("runs[0]", answer.at("/notes/1/about").asText());
    }

    @Test
    void tellsEveryRatioOnlyWhenAsked() throws IOException {
        assertNull(answer(asked("", "bench"), Setting.BENCH).get("curves"));
        JsonNode answer = answer(asked("", "bench").replace("\"runs\"", "\"curves\": true, \"runs\""), Setting.BENCH);
        assertEquals(
                List.of("percentStrong", "spots", "chance", "smallestGap", "smallestResolution"),
                names(answer.get("curves")));
        assertEquals(List.of("A", "B"), names(answer.at("/curves/spots")));
    }

    @Test
    void putsAChanceIntoPlatesOfAHundred() {
        ChanceWords words = new ChanceWords(exchange.texts());
        assertEquals("about 87 of 100", words.plates(0.87));
        assertEquals("more than 99 of 100", words.plates(0.996));
        assertEquals("fewer than 1 of 100", words.plates(0.004));
        assertEquals("about 1 of 100", words.plates(0.005));
    }

    @Test
    void echoesIdsOfTextAndNumberEvenOfBadLines() throws IOException {
        String good = "{\"id\": ID, \"weak\": \"hexane\", \"strong\": \"ether\", \"spots\": [{\"name\": \"A\"}]}";
        for (String id : List.of("\"r\\u00e9 1\"", "7", "7.5", "\"\"")) {
            assertEquals(MAPPER.readTree(id), line(good.replace("ID", id)).get("id"));
            assertEquals(
                    MAPPER.readTree(id), line("{\"id\": " + id + ", \"no\": 1}").get("id"));
        }
        assertTrue(line("{\"no\": 1}").get("id").isNull());
        assertTrue(line("{\"id\": NaN}").get("id").isNull());
    }

    @Test
    void answersABadLineInTheFormOfTheContract() throws IOException {
        JsonNode line =
                line("{\"id\": \"x\", \"weak\": \"hexane\", \"strong\": \"ether\", \"spots\": [{\"name\": \"A\"}],"
                        + " \"runs\": [{\"percentStrong\": 200, \"rf\": {\"A\": 2}}]}");
        assertEquals(List.of("id", "error", "errors"), names(line));
        assertEquals(List.of("field", "message"), names(line.get("error")));
        assertEquals("runs[0].percentStrong", line.at("/error/field").asText());
        assertEquals(2, line.get("errors").size());
        assertEquals(List.of("field", "code", "came", "allowed", "todo", "message"), names(line.at("/errors/1")));
        assertEquals("[0, 1]", line.at("/errors/1/allowed").asText());
    }

    @Test
    void answersALineOnWhichTheProgramFails() throws IOException {
        List<Throwable> slips = new ArrayList<>();
        String json = "{\"id\": \"x\", \"weak\": \"hexane\", \"strong\": \"ether\", \"spots\": [{\"name\": \""
                + FakeAdviser.SLIP + "\"}]}";
        JsonNode line = MAPPER.readTree(exchange.line(json.getBytes(StandardCharsets.UTF_8), slips::add));
        assertEquals("x", line.get("id").asText());
        assertEquals("own-fault", line.at("/errors/0/code").asText());
        assertEquals(1, slips.size());
    }

    private JsonNode line(String json) throws IOException {
        return MAPPER.readTree(exchange.line(json.getBytes(StandardCharsets.UTF_8), slip -> {
            throw new AssertionError(slip);
        }));
    }

    @Test
    void knowsItsVersionFromOnePlace() throws IOException {
        String pom = Files.readString(Path.of("pom.xml"));
        assertTrue(pom.contains("<artifactId>midplate</artifactId>\n  <version>" + Exchange.VERSION + "</version>"));
        assertEquals(
                Exchange.VERSION,
                MAPPER.readTree(exchange.version()).get("version").asText());
    }
}
