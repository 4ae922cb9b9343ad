package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import midplate.notebook.StudyFolder;
import midplate.wire.FakeAdviser;
import midplate.wire.Recorded;
import midplate.wire.StudyFiles;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Recorded conversations about studies, held again. */
class StudyContractIT {
    private static final Path RECORDED = Path.of("shared", "contract", "studies");

    static Stream<Path> conversations() throws IOException {
        try (Stream<Path> files = Files.list(RECORDED)) {
            List<Path> found = files.sorted().toList();
            assertFalse(found.isEmpty(), RECORDED + " is empty");
            return found.stream();
        }
    }

    @ParameterizedTest
    @MethodSource("conversations")
    void aConversationGoesAsRecorded(Path file, @TempDir Path place) throws IOException, InterruptedException {
        try (StudyFolder folder = StudyFolder.open(place, StudyFiles.builtIn(), Clock.systemUTC())) {
            PageServer server = PageServer.of(FakeAdviser.exchange(), folder, 0).start();
            try {
                StudiesAsked asked = new StudiesAsked(server);
                String tag = "";
                for (JsonNode step :
                        StudiesAsked.JSON.readTree(Files.readString(file)).get("exchanges")) {
                    String what = file.getFileName() + ": " + step.get("what").asText();
                    HttpResponse<String> answer = asked.send(
                            step.get("method").asText(),
                            step.get("path").asText(),
                            headers(step).replace("{tag}", tag),
                            step.has("request") ? step.get("request").toString() : "");
                    assertEquals(step.get("status").asInt(), answer.statusCode(), what + " " + answer.body());
                    new Recorded(what, step).hold(answer.body());
                    tag = answer.headers()
                            .firstValue("ETag")
                            .map(etag -> etag.replace("\"", ""))
                            .orElse(tag);
                }
            } finally {
                server.stop();
            }
        }
    }

    private static String headers(JsonNode step) {
        StringBuilder headers = new StringBuilder(step.has("request") ? "Content-Type: application/json\n" : "");
        for (Map.Entry<String, JsonNode> header : step.get("headers").properties()) {
            headers.append(header.getKey())
                    .append(": ")
                    .append(header.getValue().asText())
                    .append('\n');
        }
        return headers.toString();
    }
}
