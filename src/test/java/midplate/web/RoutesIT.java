package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import midplate.notebook.StudyFolder;
import midplate.wire.Exchange;
import midplate.wire.FakeAdviser;
import midplate.wire.Recorded;
import midplate.wire.Schemas;
import midplate.wire.StudyFiles;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is answered. */
class RoutesIT {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @TempDir
    private static Path place;

    private static StudyFolder kept;
    private static PageServer server;
    private static PageServer real;

    @BeforeAll
    static void start() {
        kept = StudyFolder.open(place, StudyFiles.builtIn(), Clock.systemUTC());
        server = PageServer.of(FakeAdviser.exchange(), kept, 0).start();
        real = PageServer.of(Exchange.builtIn(), kept, 0).start();
    }

    @AfterAll
    static void stop() {
        server.stop();
        real.stop();
        kept.close();
    }

    private static HttpResponse<String> get(PageServer from, String path) throws IOException, InterruptedException {
        URI uri = URI.create(from.address()).resolve(path);
        return CLIENT.send(HttpRequest.newBuilder(uri).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static HttpResponse<String> post(PageServer to, String path, String json)
            throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(to.address()).resolve(path))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json))
                .build();
        return CLIENT.send(request, HttpResponse.BodyHandlers.ofString());
    }

    static Stream<Recorded> pairs() throws IOException {
        return Recorded.all();
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void recordedRequestsAreAnsweredAsRecorded(Recorded recorded) throws IOException, InterruptedException {
        HttpResponse<String> answer = post(real, recorded.route(), recorded.request());
        assertEquals(recorded.status(), answer.statusCode(), answer.body());
        recorded.hold(answer.body());
    }

    @ParameterizedTest
    @CsvSource({"library", "sources", "version", "groups"})
    void listsKeepTheirSchema(String route) throws IOException, InterruptedException {
        HttpResponse<String> answer = get(server, "/api/" + route);
        assertEquals(200, answer.statusCode());
        assertEquals(List.of(), Schemas.broken(route, answer.body()));
    }

    @Test
    void theTextsAreThoseOfTheFileWithoutThoseOfTheTerminal() throws IOException, InterruptedException {
        ObjectMapper mapper = new ObjectMapper();
        JsonNode file = mapper.readTree(Files.readString(Path.of("shared", "texts", "en.json")));
        assertEquals(
                Sent.ofPage(file), mapper.readTree(get(server, "/api/texts").body()));
    }

    @Test
    void theSettingOfThePageIsTheBench() throws IOException, InterruptedException {
        // Rf 0 is a bound at the bench, and told; it stays a number in an automated laboratory
        String json = "{\"weak\": \"hexane\", \"strong\": \"EtOAc\", \"spots\": [{\"name\": \"A\"}],"
                + " \"runs\": [{\"percentStrong\": 5, \"rf\": {\"A\": 0}}]}";
        assertTrue(post(server, "/api/advice", json).body().contains("note.taken-as-start"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/api/advice         | {          | 400",
                "/api/advice         | {} {}      | 400",
                "/api/advice         | {}         | 422",
                "/api/advice         | []         | 422",
                "/api/structure      | {          | 400",
                "/api/structure      | {}         | 422",
                "/api/reading        | nonsense   | 400",
                "/api/reading        | {}         | 422",
                "/api/scouting       | {          | 400",
                "/api/scouting       | {}         | 422",
                "/api/other-eluents  | {          | 400",
                "/api/other-eluents  | {}         | 422",
                "/api/column/plan    | {          | 400",
                "/api/column/plan    | {}         | 422",
                "/api/column/plan    | 7          | 422",
                "/api/column/fractions | 'NaN'    | 400",
                "/api/column/fractions | []       | 422",
                "/api/checks/purity  | 'NaN'      | 400",
                "/api/checks/purity  | {}         | 422",
                "/api/checks/seeing  | {          | 400",
                "/api/checks/seeing  | []         | 422",
                "/api/lesson/series  | {          | 400",
                "/api/lesson/series  | {}         | 422",
                "/api/lesson/worksheet | {        | 400",
                "/api/lesson/worksheet | {}       | 422",
                "/api/equal-strength | 'NaN'      | 400",
                "/api/equal-strength | {\"a\": 1} | 422",
            })
    void badBodiesHaveTheirStatus(String path, String body, int status) throws IOException, InterruptedException {
        HttpResponse<String> answer = post(server, path, body);
        assertEquals(status, answer.statusCode(), answer.body());
        assertEquals(List.of(), Schemas.broken("errors", answer.body()));
    }

    @Test
    void aSlipOfTheProgramIsToldByNumberOnly() throws IOException, InterruptedException {
        HttpResponse<String> answer = post(
                server,
                "/api/advice",
                "{\"weak\": \"hexane\", \"strong\": \"EtOAc\", \"spots\": [{\"name\": \"" + FakeAdviser.SLIP + "\"}]}");
        assertEquals(500, answer.statusCode());
        assertEquals(List.of(), Schemas.broken("errors", answer.body()));
        assertFalse(answer.body().contains("invented slip"), answer.body());
        assertFalse(answer.body().contains("Exception"), answer.body());
        assertTrue(answer.body().matches(".*failure [0-9a-f]{8}.*"), answer.body());
    }

    @Test
    void servesThePageFromAFolder(@TempDir Path folder) throws IOException, InterruptedException {
        Files.writeString(folder.resolve("index.html"), "invented page");
        PageServer other =
                PageServer.of(FakeAdviser.exchange(), kept, 0, folder).start();
        try {
            assertEquals("invented page", get(other, "/").body());
            assertEquals(404, get(other, "/main.js").statusCode());
        } finally {
            other.stop();
        }
    }

    @Test
    void theScriptOfTheChartsComesFromItsLibraryAlsoWhereThePageIsAFolder(@TempDir Path folder)
            throws IOException, InterruptedException {
        PageServer other =
                PageServer.of(FakeAdviser.exchange(), kept, 0, folder).start();
        try {
            HttpResponse<String> script = get(other, "/d3.min.js");
            assertEquals(200, script.statusCode());
            assertTrue(script.headers().firstValue("Content-Type").orElse("").startsWith("text/javascript"));
            String named = Files.readString(Path.of("pom.xml"))
                    .replaceAll("(?s).*<artifactId>d3</artifactId><version>([0-9.]+)</version>.*", "$1");
            assertTrue(
                    script.body().startsWith("// https://d3js.org v" + named),
                    script.body().substring(0, 60));
        } finally {
            other.stop();
        }
    }

    @Test
    void answersToHead() throws IOException, InterruptedException {
        for (String path : List.of("/", "/api/version")) {
            HttpRequest head = HttpRequest.newBuilder(
                            URI.create(server.address()).resolve(path))
                    .method("HEAD", HttpRequest.BodyPublishers.noBody())
                    .build();
            assertEquals(
                    200, CLIENT.send(head, HttpResponse.BodyHandlers.ofString()).statusCode(), path);
        }
    }
}
