package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import midplate.wire.Schemas;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Who may keep a study, in which form, and under which address. */
class StudyGuardIT extends StudiesServed {
    static Stream<String> idsFromHell() {
        return Stream.of(
                "20261126-AAAA2222BB",
                "20261126-aaaa2222bb.json",
                "20261126-aaaa2222bb/",
                "20261126-aaaa2222bb/x",
                "20261126-aaaa2222bb%00",
                "20261126-aaaa2222bb%2Fruns",
                "20261126-aaaa2222bb;x=1",
                "20261126-aaaa2222b",
                "20261126-aaaa2222b0",
                "20261126-aaaa2222b%C3%A9",
                "%2e%2e%2f%2e%2e%2fetc%2fpasswd",
                "..%2fmidplate.lock",
                "..%5c..%5cboot",
                "../../midplate.lock",
                "%252e%252e",
                "con",
                "nul.json",
                ".",
                "..",
                "...",
                "~",
                "-",
                "*",
                "%20",
                "a".repeat(3000));
    }

    @ParameterizedTest
    @MethodSource("idsFromHell")
    void whatIsNoIdIsNoAddress(String id) throws IOException {
        for (String method : List.of("GET", "PUT", "DELETE")) {
            byte[] body =
                    method.equals("PUT") ? titled("one").toString().getBytes(StandardCharsets.UTF_8) : new byte[0];
            Sent sent = Sent.of(
                    server.address(),
                    method + " /api/studies/" + id + " HTTP/1.1",
                    host() + (method.equals("PUT") ? JSON_TYPE : "") + StudiesAsked.NEW,
                    body);
            assertTrue(
                    sent.status() == 404 || sent.status() == 400 || (sent.status() == 405 && id.startsWith("..")),
                    sent.toString());
            assertEquals(List.of(), Schemas.broken("errors", sent.body()), sent.body());
        }
        assertEquals(List.of(), files());
    }

    @Test
    void theIdOfTheStudyIsThatOfItsAddress() throws IOException, InterruptedException {
        HttpResponse<String> answer = asked.send(
                "PUT",
                PATH,
                JSON_TYPE + StudiesAsked.NEW,
                StudiesAsked.study("20261126-cccc3333dd").toString());
        assertTold(422, "id", "other-study-id", answer);
        assertEquals(List.of(), files());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Host: evil.example                                              | 403 | Host",
                "HOST;Origin: http://evil.example                                | 403 | Origin",
                "HOST;Origin: null                                               | 403 | Origin",
                "HOST;Sec-Fetch-Site: cross-site                                 | 403 | Sec-Fetch-Site",
                "HOST;Sec-Fetch-Site: same-site                                  | 403 | Sec-Fetch-Site",
            })
    void aWriteFromElsewhereIsRefused(String headers, int status, String field) throws IOException {
        byte[] body = titled("one").toString().getBytes(StandardCharsets.UTF_8);
        String lines = headers.replace("HOST", host().strip()).replace(";", "\n") + "\n" + StudiesAsked.NEW + "\n";
        for (String method : List.of("PUT", "DELETE")) {
            Sent sent = Sent.of(
                    server.address(),
                    method + " " + PATH + " HTTP/1.1",
                    lines + (method.equals("PUT") ? JSON_TYPE : ""),
                    method.equals("PUT") ? body : new byte[0]);
            assertEquals(status, sent.status(), sent.body());
            assertTrue(sent.body().contains("\"field\":\"" + field + "\""), sent.body());
        }
    }

    @Test
    void aStudyComesAsJsonAndPuttingAwayNeedsNone() throws IOException, InterruptedException {
        String study = titled("one").toString();
        for (String type : List.of("", "Content-Type: text/plain\n", "Content-Type: application/merge-patch+json\n")) {
            HttpResponse<String> answer = asked.send("PUT", PATH, type + StudiesAsked.NEW, study);
            assertTold(415, "Content-Type", "not-json-type", answer);
        }
        HttpResponse<String> made = asked.put(titled("one"), StudiesAsked.NEW);
        HttpResponse<String> withBody = asked.send("DELETE", PATH, StudiesAsked.matching(made), "{}");
        assertTold(400, "request", "body-not-wanted", withBody);
        HttpResponse<String> putAway = asked.send("DELETE", PATH, StudiesAsked.matching(made), "");
        assertEquals(200, putAway.statusCode(), putAway.body());
        assertTrue(StudiesAsked.JSON.readTree(putAway.body()).get("archived").asBoolean());
    }

    @Test
    void otherWaysToAskAreToldTheWaysThereAre() throws IOException, InterruptedException {
        for (String method : List.of("POST", "PATCH", "OPTIONS")) {
            HttpResponse<String> answer = asked.send(method, PATH, JSON_TYPE, "{}");
            assertTold(405, "method", "method-not-allowed", answer);
            assertEquals(
                    "DELETE, GET, HEAD, PUT",
                    answer.headers().firstValue("Allow").orElse(""));
        }
        for (String method : List.of("POST", "PUT", "DELETE")) {
            HttpResponse<String> answer = asked.send(method, "/api/studies", JSON_TYPE, "{}");
            assertTold(405, "method", "method-not-allowed", answer);
            assertEquals("GET, HEAD", answer.headers().firstValue("Allow").orElse(""));
        }
        asked.put(titled("one"), StudiesAsked.NEW);
        HttpResponse<String> head = asked.send("HEAD", PATH, "", "");
        assertEquals(200, head.statusCode());
        assertEquals(StudiesAsked.matching(asked.get(PATH)), StudiesAsked.matching(head));
        assertEquals("", head.body());
        assertEquals(
                404,
                asked.send("HEAD", "/api/studies/20261126-zzzz9999zz", "", "").statusCode());
    }

    @Test
    void aBodyLargerThanTheLimitIsRefusedWithAWayOut() throws IOException, InterruptedException {
        ObjectNode large = titled("one").put("notes", "n".repeat(1_000_000));
        HttpResponse<String> answer = asked.put(large, StudiesAsked.NEW);
        assertTold(413, "request", "too-large", answer);
        assertTrue(answer.body().contains("new study"), answer.body());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"title\": NaN}                      | 400 | request | no-json",
                "{                                     | 400 | request | no-json",
                "{} {}                                 | 400 | request | trailing-text",
                "[]                                    | 422 | request | wrong-type",
                "{\"format\": \"a\", \"format\": \"b\"} | 422 | format  | duplicate-field",
                "{\"format\": \"midplate-study\", \"version\": 99} | 422 | version | newer-study",
            })
    void whatIsNoStudyIsToldAndNotKept(String body, int status, String field, String code)
            throws IOException, InterruptedException {
        HttpResponse<String> answer = asked.send("PUT", PATH, JSON_TYPE + StudiesAsked.NEW, body);
        assertTold(status, field, code, answer);
        assertEquals(List.of(), files());
    }

    @Test
    void everyFieldThatIsSentTwiceIsTold() throws IOException, InterruptedException {
        String twice = titled("one").toString().replace("\"notes\":", "\"notes\":\"first\",\"notes\":");
        HttpResponse<String> answer = asked.send("PUT", PATH, JSON_TYPE + StudiesAsked.NEW, twice);
        assertTold(422, "notes", "duplicate-field", answer);
    }
}
