package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import midplate.wire.Schemas;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Under which condition a study is kept: nothing is written over that its sender has not seen. */
class StudyConditionIT extends StudiesServed {
    @Test
    void theTagOfAStudyIsThatOfItsFileUntilItChanges() throws IOException, InterruptedException {
        HttpResponse<String> made = asked.put(titled("one"), StudiesAsked.NEW);
        assertEquals(201, made.statusCode(), made.body());
        assertEquals(List.of(), Schemas.broken("study-kept", made.body()), made.body());
        HttpResponse<String> read = asked.get(PATH);
        assertEquals(StudiesAsked.matching(made), StudiesAsked.matching(read));
        JsonNode told = StudiesAsked.JSON.readTree(made.body());
        assertEquals("If-Match: \"" + told.get("tag").asText() + '"', StudiesAsked.matching(made));
        HttpResponse<String> changed = asked.put(titled("two"), StudiesAsked.matching(made));
        assertEquals(200, changed.statusCode(), changed.body());
        assertNotEquals(StudiesAsked.matching(made), StudiesAsked.matching(changed));
        assertEquals("two", titleThere());
        assertEquals(
                told.get("created"), StudiesAsked.JSON.readTree(changed.body()).get("created"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''                                                   | 428 | If-Match      | no-condition",
                "If-Match: *                                          | 400 | If-Match      | condition-not-taken",
                "If-Match: TAG                                        | 400 | If-Match      | condition-not-taken",
                "If-Match: W/\"TAG\"                                  | 400 | If-Match      | condition-not-taken",
                "If-Match: \"TAG\", \"TAG\"                           | 400 | If-Match      | condition-not-taken",
                "If-Match: \"TAG\";If-Match: \"TAG\"                  | 400 | If-Match      | condition-not-taken",
                "If-Match: \"\"                                       | 400 | If-Match      | condition-not-taken",
                "If-Match: \"0123456789ABCDEF0123456789ABCDEF\"       | 400 | If-Match      | condition-not-taken",
                "If-None-Match: \"TAG\"                               | 400 | If-None-Match | condition-not-taken",
                "If-None-Match: *, *                                  | 400 | If-None-Match | condition-not-taken",
                "If-None-Match: *;If-Match: \"TAG\"                   | 400 | If-None-Match | condition-not-taken",
                "If-Match: \"0123456789abcdef0123456789abcdef\"       | 412 | study         | changed-meanwhile",
                "If-None-Match: *                                     | 412 | study         | changed-meanwhile",
            })
    void nothingIsKeptUnlessTheStateItReplacesIsNamed(String headers, int status, String field, String code)
            throws IOException, InterruptedException {
        HttpResponse<String> made = asked.put(titled("one"), StudiesAsked.NEW);
        String tag = StudiesAsked.JSON.readTree(made.body()).get("tag").asText();
        String lines = headers.replace("TAG", tag).replace(";", "\n");
        HttpResponse<String> answer = asked.put(titled("two"), lines);
        assertTold(status, field, code, answer);
        assertEquals(
                status == 412 ? List.of('"' + tag + '"') : List.of(),
                answer.headers().allValues("ETag"),
                "what is there now");
        HttpResponse<String> putAway = asked.send("DELETE", PATH, lines, "");
        if (headers.contains(Condition.NONE_MATCH)) {
            assertTold(400, Condition.NONE_MATCH, "condition-not-taken", putAway);
        } else {
            assertTold(status, field, code, putAway);
        }
        assertEquals("one", titleThere());
        assertEquals(List.of("studies/" + ID + ".json"), files());
    }

    @Test
    void aStudyThatIsNotThereCanBeNeitherReadNorReplacedNorPutAway() throws IOException, InterruptedException {
        String tag = "If-Match: \"0123456789abcdef0123456789abcdef\"";
        assertTold(404, "id", "not-there", asked.get(PATH));
        assertTold(404, "id", "not-there", asked.put(titled("one"), tag));
        assertTold(404, "id", "not-there", asked.send("DELETE", PATH, tag, ""));
        assertEquals(List.of(), files());
    }

    @Test
    void aStudySentAgainBecauseItsAnswerWasLostIsToldAsKept() throws IOException, InterruptedException {
        HttpResponse<String> made = asked.put(titled("one"), StudiesAsked.NEW);
        HttpResponse<String> again = asked.put(titled("one"), StudiesAsked.NEW);
        assertEquals(200, again.statusCode(), again.body());
        assertEquals(made.body(), again.body());
        HttpResponse<String> changed = asked.put(titled("two"), StudiesAsked.matching(made));
        HttpResponse<String> changedAgain = asked.put(titled("two"), StudiesAsked.matching(made));
        assertEquals(200, changedAgain.statusCode(), changedAgain.body());
        assertEquals(changed.body(), changedAgain.body());
        assertTold(412, "study", "changed-meanwhile", asked.put(titled("three"), StudiesAsked.matching(made)));
        asked.put(titled("four"), StudiesAsked.matching(changed));
        assertTold(412, "study", "changed-meanwhile", asked.put(titled("two"), StudiesAsked.matching(made)));
        assertEquals("four", titleThere());
    }

    // every writer expects the same state; whoever comes first changes it for the others
    @Test
    void ofSeveralWritersAtTheSameMomentExactlyOneWins() throws Exception {
        int writers = 4;
        HttpResponse<String> there = asked.put(titled("begun"), StudiesAsked.NEW);
        ExecutorService pool = Executors.newFixedThreadPool(writers);
        try {
            for (int round = 0; round < 25; round++) {
                CyclicBarrier together = new CyclicBarrier(writers);
                String expected = StudiesAsked.matching(there);
                List<Future<HttpResponse<String>>> sent = new ArrayList<>();
                for (int writer = 0; writer < writers; writer++) {
                    ObjectNode mine = titled("round " + round + " writer " + writer);
                    sent.add(pool.submit(() -> {
                        together.await();
                        return asked.put(mine, expected);
                    }));
                }
                List<Integer> won = new ArrayList<>();
                for (int writer = 0; writer < writers; writer++) {
                    HttpResponse<String> answer = sent.get(writer).get();
                    if (answer.statusCode() == 200) {
                        won.add(writer);
                        there = answer;
                    } else {
                        assertTold(412, "study", "changed-meanwhile", answer);
                    }
                }
                assertEquals(1, won.size(), "round " + round);
                assertEquals("round " + round + " writer " + won.get(0), titleThere());
                assertEquals(StudiesAsked.matching(there), StudiesAsked.matching(asked.get(PATH)));
            }
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void ofSeveralThatMakeAStudyAtTheSameMomentExactlyOneWins() throws Exception {
        int writers = 3;
        ExecutorService pool = Executors.newFixedThreadPool(writers);
        try {
            for (int round = 0; round < 10; round++) {
                String id = "20261126-aaaaaaaa" + (char) ('a' + round) + "b";
                CyclicBarrier together = new CyclicBarrier(writers);
                List<Future<Integer>> sent = new ArrayList<>();
                for (int writer = 0; writer < writers; writer++) {
                    ObjectNode mine = StudiesAsked.study(id).put("title", "writer " + writer);
                    sent.add(pool.submit(() -> {
                        together.await();
                        return asked.put(mine, StudiesAsked.NEW).statusCode();
                    }));
                }
                List<Integer> statuses = new ArrayList<>();
                for (Future<Integer> each : sent) {
                    statuses.add(each.get());
                }
                assertEquals(List.of(201, 412, 412), statuses.stream().sorted().toList());
            }
        } finally {
            pool.shutdownNow();
        }
    }
}
