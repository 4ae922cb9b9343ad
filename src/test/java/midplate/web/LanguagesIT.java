package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import midplate.notebook.StudyFolder;
import midplate.wire.Exchange;
import midplate.wire.Schemas;
import midplate.wire.StudyFiles;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every route that speaks, asked in each language. Readings are invented. */
class LanguagesIT {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String ADVICE =
            "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"spots\": [{\"name\": \"A\"}],"
                    + " \"runs\": [{\"percentStrong\": 10, \"rf\": {\"A\": 0.1}}]}";

    @TempDir
    private static Path place;

    private static StudyFolder folder;
    private static PageServer server;

    @BeforeAll
    static void start() {
        folder = StudyFolder.open(place, StudyFiles.builtIn(), Clock.systemUTC());
        server = PageServer.of(Exchange.builtIn(), folder, 0).start();
    }

    @AfterAll
    static void stop() {
        server.stop();
        folder.close();
    }

    private static Sent ask(String start, String language, String body) throws IOException {
        String host = server.address().replace("http://", "").replace("/", "");
        String headers = "Host: " + host + "\n"
                + (language.isEmpty() ? "" : "Accept-Language: " + language + "\n")
                + (body.isEmpty() ? "" : "Content-Type: application/json\n");
        return Sent.of(server.address(), start + " HTTP/1.1", headers, body.getBytes(StandardCharsets.UTF_8));
    }

    private static void assertSpeaks(String language, Sent sent) {
        assertEquals(language, sent.headers().get("content-language"), sent.toString());
        assertEquals("Accept-Language", sent.headers().get("vary"), sent.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "de-AT,de;q=0.9,en;q=0.8 | de",
                "en-GB,de;q=0.9          | en",
                "fr,it;q=0.5             | en",
                ";;q=,=                  | en",
                "''                      | en",
            })
    void theTextsAreThoseOfTheLanguageAsked(String header, String language) throws IOException {
        Sent sent = ask("GET /api/texts", header, "");
        assertEquals(200, sent.status());
        assertSpeaks(language, sent);
        JsonNode file = MAPPER.readTree(Files.readString(Path.of("shared", "texts", language + ".json")));
        assertEquals(Sent.ofPage(file), MAPPER.readTree(sent.body()));
    }

    @ParameterizedTest
    @CsvSource({"en, hexane", "de, Hexan"})
    void everyRouteThatSpeaksNamesSolventsInTheLanguageAsked(String language, String hexane) throws IOException {
        Sent library = ask("GET /api/library", language, "");
        assertSpeaks(language, library);
        assertEquals(
                hexane, MAPPER.readTree(library.body()).at("/solvents/1/name").asText());
        Sent advice = ask("POST /api/advice", language, ADVICE);
        assertSpeaks(language, advice);
        assertEquals(
                hexane, MAPPER.readTree(advice.body()).at("/advice/weak/name").asText());
        Sent strength = ask(
                "POST /api/equal-strength",
                language,
                "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"percentStrong\": 10}");
        assertSpeaks(language, strength);
        assertEquals(hexane, MAPPER.readTree(strength.body()).at("/weak/name").asText());
    }

    @ParameterizedTest
    @CsvSource({
        "en, The start line was only 1.5 mm above the solvent.",
        "de, 'Die Startlinie lag nur 1,5 mm über dem Laufmittel.'"
    })
    void aPlateIsWarnedOfInTheLanguageAsked(String language, String begins) throws IOException {
        Sent reading = ask(
                "POST /api/reading",
                language,
                "{\"heightMm\": 100, \"startMm\": 3.5, \"frontMm\": 90, \"solventLevelMm\": 2,"
                        + " \"spots\": [{\"spot\": \"A\", \"centreMm\": 30}]}");
        assertSpeaks(language, reading);
        String text = MAPPER.readTree(reading.body()).at("/warnings/0/text").asText();
        assertTrue(text.startsWith(begins), text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "GET /api/nothing         |    | 404 | Unter dieser Adresse ist nichts zu finden.",
                "GET /nothing.js          |    | 404 | Unter dieser Adresse ist nichts zu finden.",
                "GET /api/advice          |    | 405 | /api/advice lässt sich auf diese Weise nicht abfragen.",
                "POST /api/advice         | {} | 422 | Das Feld „weak“ fehlt.",
                "POST /api/reading        | {} | 422 | Das Feld „heightMm“ fehlt.",
                "POST /api/column/plan    | {} | 422 | Das Feld „column“ fehlt.",
                "POST /api/column/fractions | {} | 422 | Das Feld „spots“ fehlt.",
                "POST /api/checks/purity  | {} | 422 | Das Feld „rf“ fehlt.",
                "POST /api/equal-strength | [] | 422 | Das ist eine Liste; erwartet wird ein Objekt.",
                "POST /api/advice         | {  | 400 | Das ist kein JSON (Zeile 1, Spalte 2):",
            })
    void errorsSpeakTheLanguageAsked(String start, String body, int status, String message) throws IOException {
        Sent sent = ask(start, "de", body == null ? "" : body);
        assertEquals(status, sent.status());
        assertSpeaks("de", sent);
        assertEquals(List.of(), Schemas.broken("errors", sent.body()));
        String told = MAPPER.readTree(sent.body()).at("/errors/0/message").asText();
        assertTrue(told.startsWith(message), told);
    }

    @Test
    void citationsAreWhatWasPublishedInWhateverLanguage() throws IOException {
        Sent german = ask("GET /api/sources", "de", "");
        assertEquals(ask("GET /api/sources", "en", "").body(), german.body());
    }

    @Test
    void aRequestThatIsNoHttpIsToldInEnglish() throws IOException {
        Sent sent = ask("GET /a%%b", "", "");
        assertEquals(400, sent.status());
        assertSpeaks("en", sent);
    }
}
