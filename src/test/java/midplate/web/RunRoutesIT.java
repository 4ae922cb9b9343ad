package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import midplate.notebook.StudyFolder;
import midplate.wire.FakeAdviser;
import midplate.wire.Schemas;
import midplate.wire.StudyFiles;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs in and out over HTTP, and what came of what was advised. */
class RunRoutesIT {
    private static final String ID = "20261126-aaaa2222bb";
    private static final String JSON_TYPE = "Content-Type: application/json";

    @TempDir
    private Path place;

    private Path data;
    private StudyFolder folder;
    private PageServer server;
    private StudiesAsked asked;

    @BeforeEach
    void start() {
        data = place.resolve("one").resolve("two").resolve("data");
        folder = StudyFolder.open(data, StudyFiles.builtIn(), Clock.systemUTC());
        server = PageServer.of(FakeAdviser.exchange(), folder, 0).start();
        asked = new StudiesAsked(server);
    }

    @AfterEach
    void stop() {
        server.stop();
        folder.close();
    }

    private HttpResponse<String> bring(String name, byte[] file) throws IOException, InterruptedException {
        ObjectNode request = StudiesAsked.JSON
                .createObjectNode()
                .put("file", name)
                .put("base64", Base64.getEncoder().encodeToString(file));
        return asked.send("POST", "/api/import", JSON_TYPE, request.toString());
    }

    private static JsonNode json(HttpResponse<String> answer) throws IOException {
        return StudiesAsked.JSON.readTree(answer.body());
    }

    private static List<String> tree(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            return files.map(file -> root.relativize(file).toString()).sorted().toList();
        }
    }

    private void keep(ObjectNode study) throws IOException, InterruptedException {
        HttpResponse<String> kept = asked.put(study, StudiesAsked.NEW);
        assertEquals(201, kept.statusCode(), kept.body());
    }

    @Test
    void aStudyGoesOutAsATableAndTheTableComesBackAsTheSamePlates() throws IOException, InterruptedException {
        keep(StudiesAsked.study(ID));
        HttpResponse<String> csv = asked.get("/api/studies/" + ID + "/runs.csv");
        assertEquals(200, csv.statusCode());
        assertEquals(
                "text/csv; charset=utf-8",
                csv.headers().firstValue("Content-Type").orElse("").toLowerCase(java.util.Locale.ROOT));
        assertEquals(
                "attachment; filename=\"midplate-" + ID + ".csv\"",
                csv.headers().firstValue("Content-Disposition").orElse(""));
        HttpResponse<String> back = bring("runs.csv", csv.body().getBytes(StandardCharsets.UTF_8));
        assertEquals(200, back.statusCode(), back.body());
        assertEquals(List.of(), Schemas.broken("import-answer", back.body()));
        JsonNode plate = json(back).at("/plates/0");
        assertEquals("9 : 1", plate.path("eluent").asText());
        assertEquals(27.5, plate.at("/lanes/0/readings/0/centreMm").asDouble());
        assertEquals(0.35, plate.at("/lanes/1/readings/0/rf").asDouble());
        assertEquals("1x", json(back).at("/rejected/0/came").asText());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/studies/20261126-zzzz2222zz/runs.csv",
                "/api/studies/..%2f..%2fx/runs.csv",
                "/api/studies/x/runs.csv"
            })
    void aTableOfNoStudyIsNotFound(String path) throws IOException, InterruptedException {
        HttpResponse<String> answer = asked.get(path);
        assertTrue(answer.statusCode() == 404 || answer.statusCode() == 400, path + " " + answer.statusCode());
        assertFalse(answer.body().contains("Exception"), answer.body());
    }

    @ParameterizedTest
    @CsvSource({
        "POST, /api/outcomes, 405",
        "GET, /api/import, 405",
        "PUT, /api/studies/20261126-aaaa2222bb/runs.csv, 405",
        "GET, /api/studies/20261126-aaaa2222bb/runs.json, 404"
    })
    void eachRouteIsAskedInItsOwnWay(String method, String path, int status) throws IOException, InterruptedException {
        assertEquals(
                status,
                asked.send(method, path, method.equals("GET") ? "" : JSON_TYPE, method.equals("GET") ? "" : "{}")
                        .statusCode());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../x.json", "..\\..\\x.json", "/tmp/x.json", "x.json\u0000.csv"})
    void nothingThatIsBroughtIsUnpackedOrWrittenAnywhere(String name) throws IOException, InterruptedException {
        ByteArrayOutputStream bomb = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bomb)) {
            zip.putNextEntry(new ZipEntry(name.replace('\u0000', '_')));
            zip.write(new byte[100_000_000]);
        }
        List<String> before = tree(place);
        Path work = Path.of("").toAbsolutePath();
        List<String> beside;
        try (Stream<Path> files = Files.list(work)) {
            beside = files.map(Path::toString).sorted().toList();
        }
        byte[] study = Files.readAllBytes(Path.of("shared", "studies", "version-5.json"));
        HttpResponse<String> refused = bring(name, bomb.toByteArray());
        assertEquals(422, refused.statusCode());
        assertEquals("other-kind", json(refused).at("/errors/0/code").asText());
        assertEquals(List.of(), Schemas.broken("errors", refused.body()));
        assertEquals(200, bring(name, study).statusCode());
        assertEquals(
                200,
                bring(name, "plate,spot,Rf\n../../x,../../y,0.3\n".getBytes(StandardCharsets.UTF_8))
                        .statusCode());
        assertEquals(before, tree(place), "the folder of studies and those above it");
        assertFalse(Files.exists(Path.of("/tmp", "x.json")));
        try (Stream<Path> files = Files.list(work)) {
            assertEquals(beside, files.map(Path::toString).sorted().toList());
        }
        assertEquals(0, json(asked.get("/api/studies")).path("total").asInt());
    }

    @Test
    void aFileBeyondTheLimitIsRefusedAsTooLarge() throws IOException, InterruptedException {
        assertEquals(413, bring("x.csv", new byte[800_000]).statusCode());
    }

    private static ObjectNode withAdvices(String id, int trueOnes, int missed) throws IOException {
        ObjectNode study = StudiesAsked.study(id);
        ArrayNode plates = study.putArray("plates");
        ArrayNode advices = study.putArray("advices");
        for (int i = 0; i < trueOnes + missed; i++) {
            plates.add(StudiesAsked.JSON.readTree(
                    ("{'id': 'p%d', 'heightMm': 70, 'widthMm': 40, 'startMm': 10, 'frontMm': 60, 'weak': 'hexane',"
                                    + " 'strong': 'ethyl-acetate', 'eluent': '%d', 'percentStrong': %d, 'additive': {'kind': 'none', 'text': ''},"
                                    + " 'lanes': [{'id': 'l%d', 'readings': [{'id': 'r%d', 'spots': ['s1'], 'centreMm': %d}]}], 'notSeen': []}")
                            .formatted(i, i + 1, i + 1, i, i, i < trueOnes ? 30 : 55)
                            .replace('\'', '"')));
            advices.add(StudiesAsked.JSON.readTree(
                    ("{'given': '2026-10-26T13:%02d:05Z', 'program': '0.1.0', 'after': [], 'weak': 'hexane',"
                                    + " 'strong': 'ethyl-acetate', 'percentStrong': %d, 'additive': '', 'window': [0.2, 0.8], 'apart': [],"
                                    + " 'spots': [{'spot': 's1', 'rf': 0.5, 'low': 0.4, 'high': 0.6}], 'probability': 0.75, 'basis': 'measured'}")
                            .formatted(i, i + 1)
                            .replace('\'', '"')));
        }
        ((ObjectNode) study.path("next")).putArray("apart");
        return study;
    }

    @Test
    void whatWasAdvisedAndWhatHappenedStandSideBySide() throws IOException, InterruptedException {
        keep(withAdvices(ID, 2, 1));
        HttpResponse<String> answer = asked.get("/api/outcomes?study=" + ID);
        assertEquals(200, answer.statusCode(), answer.body());
        assertEquals(List.of(), Schemas.broken("outcomes", answer.body()), answer.body());
        JsonNode body = json(answer);
        assertEquals(3, body.at("/laboratory/scored").asInt());
        assertEquals(2, body.at("/laboratory/cameTrue").asInt());
        assertEquals(0.75, body.at("/laboratory/said").asDouble());
        assertTrue(body.at("/laboratory/groups").isMissingNode(), "no groups under ten");
        String text = body.at("/laboratory/text/text").asText();
        assertTrue(text.startsWith("2 of 3 ") && !text.contains("%"), text);
        assertEquals("came-true", body.at("/study/0/outcome").asText());
        assertEquals("p0", body.at("/study/0/plate").asText());
        assertEquals(0.4, body.at("/study/0/spots/0/read").asDouble());
        assertEquals("missed", body.at("/study/2/outcome").asText());
        assertTrue(json(asked.get("/api/outcomes")).path("study").isMissingNode());
        JsonNode german = json(asked.send("GET", "/api/outcomes?study=" + ID, "Accept-Language: de", ""));
        assertTrue(german.at("/laboratory/text/text").asText().startsWith("2 von 3 "), german.toString());
    }

    @Test
    void fromTenOnThereAreGroupsAndAnIntervalAndTheExampleIsLeftOut() throws IOException, InterruptedException {
        keep(withAdvices(ID, 9, 3));
        ObjectNode example = withAdvices("20261126-cccc2222cc", 5, 0);
        example.put("origin", "example");
        keep(example);
        ObjectNode begun = withAdvices("20261126-dddd2222dd", 5, 0);
        begun.put("origin", "from-example");
        keep(begun);
        ObjectNode archived = StudiesAsked.study("20261126-eeee2222ee").put("archived", true);
        keep(archived);
        HttpResponse<String> answer = asked.get("/api/outcomes");
        assertEquals(List.of(), Schemas.broken("outcomes", answer.body()), answer.body());
        JsonNode laboratory = json(answer).path("laboratory");
        assertEquals(12, laboratory.path("scored").asInt());
        assertEquals(9, laboratory.path("cameTrue").asInt());
        // Wilson for 9 of 12 by the formula with z = 1.96: (0.75 + 0.16 ± 0.2378)/1.3201, own algebra
        assertEquals(0.4677, laboratory.path("low").asDouble(), 5e-4);
        assertEquals(0.9111, laboratory.path("high").asDouble(), 5e-4);
        assertEquals(1, laboratory.path("groups").size(), "all were said with one chance");
        assertTrue(laboratory.at("/text/text").asText().contains("between 47 and 91 in 100"), laboratory.toString());
    }

    @ParameterizedTest
    @CsvSource({
        "study=x, 422",
        "study=20261126-zzzz2222zz, 404",
        "studie=x, 422",
        "study=20261126-aaaa2222bb&study=x, 422",
        "study=../../x, 422"
    })
    void aQuestionAboutNoStudyIsToldPlainly(String query, int status) throws IOException, InterruptedException {
        HttpResponse<String> answer = asked.get("/api/outcomes?" + query);
        assertEquals(status, answer.statusCode(), answer.body());
        assertEquals(List.of(), Schemas.broken("errors", answer.body()), answer.body());
    }
}
