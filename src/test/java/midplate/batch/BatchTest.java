package midplate.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import midplate.wire.Exchange;
import midplate.wire.FakeAdviser;
import org.junit.jupiter.api.Test;

class BatchTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Exchange EXCHANGE = FakeAdviser.exchange();

    private final StringWriter errors = new StringWriter();
    private final Batch batch = new Batch(EXCHANGE, new PrintWriter(errors));

    private static String request(int id) {
        return String.format(
                Locale.ROOT,
                "{\"id\": %d, \"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"spots\": [{\"name\": \"A\"}]}\n",
                id);
    }

    private List<JsonNode> run(String input) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int status = batch.run(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)), out);
        assertEquals(0, status);
        String text = out.toString(StandardCharsets.UTF_8);
        assertTrue(text.isEmpty() || text.endsWith("\n"), "each answer ends its line");
        List<JsonNode> answers = new ArrayList<>();
        for (String line : text.lines().toList()) {
            answers.add(MAPPER.readTree(line));
        }
        return answers;
    }

    @Test
    void keepsTheOrder() throws IOException {
        StringBuilder input = new StringBuilder();
        for (int i = 0; i < 1000; i++) {
            input.append(request(i));
        }
        List<JsonNode> answers = run(input.toString());
        assertEquals(1000, answers.size());
        for (int i = 0; i < 1000; i++) {
            assertEquals(i, answers.get(i).get("id").asInt());
            assertTrue(answers.get(i).has("advice"));
        }
    }

    @Test
    void answersABadLineInItsPlaceAndGoesOn() throws IOException {
        List<JsonNode> answers = run(request(1) + "{\"id\": 2, \"rf\": NaN}\n\nnonsense\n{\"id\": 5, \"no\": 1}\n"
                + "x".repeat(1_100_000) + "\n" + request(7).strip());
        assertEquals(7, answers.size());
        assertEquals(1, answers.get(0).get("id").asInt());
        for (int noJson : List.of(1, 2, 3, 5)) {
            assertTrue(
                    answers.get(noJson).get("id").isNull(), answers.get(noJson).toString());
            assertTrue(answers.get(noJson).has("error"));
        }
        assertEquals(5, answers.get(4).get("id").asInt());
        assertEquals("no", answers.get(4).at("/error/field").asText());
        assertEquals("too-large", answers.get(5).at("/errors/0/code").asText());
        assertTrue(answers.get(6).has("advice"));
        assertEquals("", errors.toString());
    }

    @Test
    void anEmptyInputGivesNothing() throws IOException {
        assertEquals(List.of(), run(""));
    }

    @Test
    void aSlipOfTheProgramIsAnsweredAndTold() throws IOException {
        String slip = request(1).replace("\"A\"", "\"" + FakeAdviser.SLIP + "\"");
        List<JsonNode> answers = run(slip + request(2));
        assertEquals("own-fault", answers.get(0).at("/errors/0/code").asText());
        assertTrue(answers.get(1).has("advice"));
        assertTrue(errors.toString().contains("invented slip"), errors.toString());
    }

    @Test
    void answersALineBeforeTheInputEnds() {
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            PipedOutputStream typed = new PipedOutputStream();
            PipedInputStream in = new PipedInputStream(typed, 1 << 16);
            PipedInputStream shown = new PipedInputStream(1 << 16);
            PipedOutputStream out = new PipedOutputStream(shown);
            CompletableFuture<Integer> status = CompletableFuture.supplyAsync(() -> batch.run(in, out));
            BufferedReader answers = new BufferedReader(new InputStreamReader(shown, StandardCharsets.UTF_8));
            for (int i = 0; i < 3; i++) {
                typed.write(request(i).getBytes(StandardCharsets.UTF_8));
                typed.flush();
                assertEquals(i, MAPPER.readTree(answers.readLine()).get("id").asInt());
            }
            typed.close();
            assertEquals(0, status.get());
        });
    }

    @Test
    void failsWhenOutputOrInputFails() {
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            OutputStream full = new OutputStream() {
                @Override
                public void write(int b) throws IOException {
                    throw new IOException("invented: the disk is full");
                }
            };
            InputStream some = new ByteArrayInputStream(request(1).repeat(500).getBytes(StandardCharsets.UTF_8));
            assertEquals(1, batch.run(some, full));
            assertTrue(errors.toString().contains("disk is full"), errors.toString());
            InputStream torn = new InputStream() {
                @Override
                public int read() throws IOException {
                    throw new IOException("invented: torn");
                }

                @Override
                public int read(byte[] into, int from, int length) throws IOException {
                    return read();
                }
            };
            assertEquals(1, batch.run(torn, OutputStream.nullOutputStream()));
        });
    }
}
