package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import midplate.wire.RandomStudies;
import midplate.wire.Schemas;
import midplate.wire.StudyFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A study comes back over HTTP as it went. */
class StudyTextsIT extends StudiesServed {
    static Stream<String> oddTexts() {
        return Stream.of(
                "\"quoted\" 'so' \u201eund so\u201c",
                "\u202egnp.etalp\u202c \u200f\u05d0",
                "\ud83e\uddea \ud83d\udc69\u200d\ud83d\udd2c",
                "</script><script>alert(1)</script><!--",
                "a".repeat(200),
                "\ud83e\uddea".repeat(200),
                "../../x",
                "con",
                "",
                " blanks ",
                "\u2028\u2029\ufeff\uffff",
                "${jndi:ldap://x} %s {0}");
    }

    @ParameterizedTest
    @MethodSource("oddTexts")
    void aTextComesBackAsItWent(String text) throws IOException, InterruptedException {
        String notes =
                (text + "\n\tline\r\n").repeat(20_000 / (text.length() + 8) + 1).substring(0, 20_000);
        String whole = Character.isHighSurrogate(notes.charAt(19_999)) ? notes.substring(0, 19_999) : notes;
        ObjectNode study = titled(text).put("notes", whole);
        ((ObjectNode) study.at("/spots/0")).put("name", text);
        HttpResponse<String> made = asked.put(study, StudiesAsked.NEW);
        assertEquals(201, made.statusCode(), made.body());
        assertSameStudy(study, asked.get(PATH));
        JsonNode list = StudiesAsked.JSON.readTree(asked.get("/api/studies").body());
        assertEquals(text, list.at("/studies/0/title").asText());
        assertEquals(text, list.at("/studies/0/spots/0").asText());
        assertEquals(List.of("studies/" + ID + ".json"), files());
    }

    private static void assertSameStudy(ObjectNode sent, HttpResponse<String> read) throws IOException {
        assertEquals(List.of(), Schemas.broken("study-answer", read.body()));
        ObjectNode back = (ObjectNode) StudiesAsked.JSON.readTree(read.body()).get("study");
        back.set("created", sent.get("created"));
        back.set("modified", sent.get("modified"));
        assertEquals(sent, back);
    }

    @Test
    void anyStudyComesBackAsItWent() throws IOException, InterruptedException {
        RandomStudies studies = new RandomStudies(20261126);
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < 60; i++) {
            ObjectNode study =
                    (ObjectNode) StudiesAsked.JSON.readTree(StudyFiles.builtIn().write(studies.next()));
            ids.add(study.get("id").asText());
            HttpResponse<String> made = asked.put(study, StudiesAsked.NEW);
            assertEquals(201, made.statusCode(), made.body());
            assertSameStudy(study, asked.get("/api/studies/" + study.get("id").asText()));
        }
        JsonNode list =
                StudiesAsked.JSON.readTree(asked.get("/api/studies?which=all").body());
        assertEquals(ids.size(), list.get("total").asInt());
        assertEquals(50, list.get("studies").size());
        assertEquals(
                ids.size() - 50,
                StudiesAsked.JSON
                        .readTree(asked.get("/api/studies?which=all&from=50").body())
                        .get("studies")
                        .size());
    }

    @Test
    void aStudyOfVersion1IsKeptAsOneOfTheNewestVersion() throws IOException, InterruptedException {
        String first = Files.readString(Path.of("shared", "studies", "version-1.json"));
        String path = "/api/studies/20260914-k7m2q9x4tb";
        HttpResponse<String> made = asked.send("PUT", path, JSON_TYPE + StudiesAsked.NEW, first);
        assertEquals(201, made.statusCode(), made.body());
        JsonNode study = StudiesAsked.JSON.readTree(asked.get(path).body()).get("study");
        assertEquals(5, study.get("version").asInt());
        assertEquals("l1", study.at("/plates/0/lanes/0/id").asText());
    }
}
