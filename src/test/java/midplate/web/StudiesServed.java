package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import midplate.notebook.StudyFolder;
import midplate.wire.FakeAdviser;
import midplate.wire.Schemas;
import midplate.wire.StudyFiles;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A server with an empty folder of studies, for each test its own. */
abstract class StudiesServed {
    static final String ID = "20261126-aaaa2222bb";
    static final String PATH = "/api/studies/" + ID;
    static final String JSON_TYPE = "Content-Type: application/json\n";

    @TempDir
    Path place;

    StudyFolder folder;
    PageServer server;
    StudiesAsked asked;

    @BeforeEach
    void start() {
        folder = StudyFolder.open(place, StudyFiles.builtIn(), Clock.systemUTC());
        server = PageServer.of(FakeAdviser.exchange(), folder, 0).start();
        asked = new StudiesAsked(server);
    }

    @AfterEach
    void stop() {
        server.stop();
        folder.close();
    }

    static ObjectNode titled(String title) throws IOException {
        return StudiesAsked.study(ID).put("title", title);
    }

    static void assertTold(int status, String field, String code, HttpResponse<String> answer) throws IOException {
        assertEquals(status, answer.statusCode(), answer.body());
        assertEquals(List.of(), Schemas.broken("errors", answer.body()), answer.body());
        JsonNode first = StudiesAsked.JSON.readTree(answer.body()).at("/errors/0");
        assertEquals(
                field + " " + code,
                first.get("field").asText() + " " + first.get("code").asText());
    }

    List<String> files() throws IOException {
        try (Stream<Path> files = Files.walk(place)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> place.relativize(file).toString())
                    .filter(file -> !file.equals("midplate.lock"))
                    .sorted()
                    .toList();
        }
    }

    String titleThere() throws IOException, InterruptedException {
        return StudiesAsked.JSON
                .readTree(asked.get(PATH).body())
                .at("/study/title")
                .asText();
    }

    String host() {
        return "Host: 127.0.0.1:" + URI.create(server.address()).getPort() + "\n";
    }
}
