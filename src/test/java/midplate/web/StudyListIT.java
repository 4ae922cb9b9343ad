package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import midplate.wire.Schemas;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The list of studies, and what is told of their folder. */
class StudyListIT extends StudiesServed {
    @Test
    void theListIsSearchedByItsWordsAndToldItsFolder() throws IOException, InterruptedException {
        HttpResponse<String> made = asked.put(titled("Menthyl ester"), StudiesAsked.NEW);
        asked.put(StudiesAsked.study("20261126-cccc3333dd").put("title", "Other"), StudiesAsked.NEW);
        HttpResponse<String> all = asked.get("/api/studies");
        assertEquals(List.of(), Schemas.broken("studies", all.body()), all.body());
        JsonNode list = StudiesAsked.JSON.readTree(all.body());
        assertEquals(place.toRealPath().toString(), list.get("folder").asText());
        assertEquals(2, list.get("total").asInt());
        String words = URLEncoder.encode("ester menthyl", StandardCharsets.UTF_8);
        JsonNode found = StudiesAsked.JSON.readTree(
                asked.get("/api/studies?find=" + words).body());
        assertEquals(1, found.get("total").asInt());
        assertEquals(ID, found.at("/studies/0/id").asText());
        assertEquals(StudiesAsked.JSON.readTree(made.body()).get("tag"), found.at("/studies/0/tag"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "which=mine           | which | unknown-choice",
                "from=-1              | from  | number-out-of-range",
                "from=1.5             | from  | number-out-of-range",
                "from=99999999999999  | from  | number-out-of-range",
                "from=NaN             | from  | number-out-of-range",
                "from=0&from=1        | from  | duplicate-field",
                "sort=title           | sort  | unknown-field",
            })
    void whatTheListDoesNotKnowIsTold(String query, String field, String code)
            throws IOException, InterruptedException {
        assertTold(422, field, code, asked.get("/api/studies?" + query));
    }

    @Test
    void aBrokenQueryIsToldInTheSameForm() throws IOException {
        Sent sent = Sent.of(server.address(), "GET /api/studies?find=%zz HTTP/1.1", host(), new byte[0]);
        assertTrue(sent.status() == 400 || sent.status() == 200, sent.toString());
        if (sent.status() == 400) {
            assertEquals(List.of(), Schemas.broken("errors", sent.body()), sent.body());
        }
    }

    @Test
    void aFileOfANewerProgramIsLeftAndToldInTheLanguageAskedFor() throws IOException, InterruptedException {
        HttpResponse<String> made = asked.put(titled("one"), StudiesAsked.NEW);
        Path file = place.resolve("studies").resolve(ID + ".json");
        String newer = Files.readString(file).replace("\"version\": 5", "\"version\": 99");
        Files.writeString(file, newer);
        HttpResponse<String> read = asked.send("GET", PATH, "Accept-Language: de", "");
        assertTold(409, "data", "file-newer", read);
        assertTrue(read.body().contains("neueren Midplate"), read.body());
        assertTold(409, "data", "file-newer", asked.put(titled("two"), StudiesAsked.matching(made)));
        assertTold(409, "data", "file-newer", asked.send("DELETE", PATH, StudiesAsked.matching(made), ""));
        assertEquals(newer, Files.readString(file));
        HttpResponse<String> list = asked.get("/api/studies");
        assertEquals(List.of(), Schemas.broken("studies", list.body()), list.body());
        assertEquals(
                "newer",
                StudiesAsked.JSON.readTree(list.body()).at("/troubles/0/kind").asText());
    }

    @Test
    void aFileThatWasChangedOutsideIsToldWithTheStudyAndInTheList() throws IOException, InterruptedException {
        asked.put(titled("one"), StudiesAsked.NEW);
        Path file = place.resolve("studies").resolve(ID + ".json");
        Files.writeString(file, Files.readString(file).replace("\"title\": \"one\"", "\"title\": \"two\""));
        HttpResponse<String> read = asked.get(PATH);
        assertEquals(List.of(), Schemas.broken("study-answer", read.body()), read.body());
        JsonNode notices = StudiesAsked.JSON.readTree(read.body()).get("notices");
        assertEquals("study.seal-wrong", notices.at("/0/key").asText());
        assertEquals("two", titleThere());
        HttpResponse<String> list = asked.get("/api/studies");
        assertEquals(List.of(), Schemas.broken("studies", list.body()), list.body());
        assertEquals(
                "study.seal-wrong",
                StudiesAsked.JSON
                        .readTree(list.body())
                        .at("/studies/0/notices/0/key")
                        .asText());
        HttpResponse<String> over = asked.put(titled("three"), StudiesAsked.matching(read));
        assertEquals(200, over.statusCode(), over.body());
        assertEquals(
                "study.outside-version-kept",
                StudiesAsked.JSON.readTree(over.body()).at("/notices/0/key").asText());
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldWithWhatToDo() throws IOException, InterruptedException {
        HttpResponse<String> made = asked.put(titled("one"), StudiesAsked.NEW);
        Path earlier = place.resolve("earlier");
        Files.delete(earlier);
        Files.writeString(earlier, "a file where the folder should be");
        HttpResponse<String> answer = asked.put(titled("two"), StudiesAsked.matching(made));
        assertTold(507, "data", "is-file", answer);
        assertEquals("one", titleThere());
        Files.delete(earlier);
        HttpResponse<String> later = asked.put(titled("two"), StudiesAsked.matching(made));
        assertEquals(200, later.statusCode(), later.body());
    }

    @Test
    void aFolderThatWasLetGoIsToldAsThat() throws IOException, InterruptedException {
        asked.put(titled("one"), StudiesAsked.NEW);
        folder.close();
        assertTold(503, "data", "closed", asked.get(PATH));
        assertFalse(files().isEmpty());
    }
}
