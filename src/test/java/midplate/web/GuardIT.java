package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import midplate.notebook.StudyFolder;
import midplate.wire.FakeAdviser;
import midplate.wire.Schemas;
import midplate.wire.StudyFiles;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who is let in. */
class GuardIT {
    private static final byte[] ASKED =
            "{\"weak\": \"hexane\", \"strong\": \"ethyl acetate\", \"spots\": [{\"name\": \"A\"}]}"
                    .getBytes(StandardCharsets.UTF_8);
    private static final byte[] NOTHING = {};

    @TempDir
    private static Path place;

    private static StudyFolder folder;
    private static PageServer server;
    private static int port;

    @BeforeAll
    static void start() {
        folder = StudyFolder.open(place, StudyFiles.builtIn(), Clock.systemUTC());
        server = PageServer.of(FakeAdviser.exchange(), folder, 0).start();
        port = URI.create(server.address()).getPort();
    }

    @AfterAll
    static void stop() {
        server.stop();
        folder.close();
    }

    private static Sent get(String path, String headers) throws IOException {
        return Sent.of(server.address(), "GET " + path + " HTTP/1.1", headers, NOTHING);
    }

    private static Sent post(String headers, byte[] body) throws IOException {
        return Sent.of(server.address(), "POST /api/advice HTTP/1.1", host() + headers, body);
    }

    private static String host() {
        return "Host: 127.0.0.1:" + port + "\n";
    }

    /** Every refusal has the one form and the headers of every answer. */
    private static void assertRefused(int status, String field, String code, Sent sent) throws IOException {
        assertEquals(status, sent.status(), sent.body());
        assertEquals(List.of(), Schemas.broken("errors", sent.body()), sent.body());
        assertTrue(sent.body().contains("\"field\":\"" + field + "\",\"code\":\"" + code + "\""), sent.body());
        assertTrue(sent.headers().get("content-type").startsWith("application/json"), sent.toString());
        assertGuarded(sent);
    }

    private static void assertGuarded(Sent sent) {
        String policy = sent.headers().get("content-security-policy");
        if (!"default-src 'none'".equals(policy)
                || sent.headers().get("content-type").startsWith("text/html")) {
            assertEquals(
                    "default-src 'self'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none';"
                            + " frame-ancestors 'none'",
                    policy,
                    sent.toString());
        }
        assertEquals("nosniff", sent.headers().get("x-content-type-options"), sent.toString());
        assertEquals("no-referrer", sent.headers().get("referrer-policy"), sent.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/sheet.css", "/main.js", "/favicon.svg", "/api/version", "/api/texts"})
    void everyAnswerCarriesThePolicy(String path) throws IOException {
        Sent sent = get(path, host());
        assertEquals(200, sent.status(), sent.body());
        assertGuarded(sent);
    }

    @Test
    void whatReadsPhotosLoadsItsPartsAndSendsNothing() throws IOException {
        Sent sent = get("/photo/reading/worker.js", host());
        assertEquals(200, sent.status(), sent.body());
        assertEquals("default-src 'none'; script-src 'self'", sent.headers().get("content-security-policy"));
    }

    @Test
    void listensOnTheLoopbackAddressOnly() {
        assertTrue(server.address().startsWith("http://127.0.0.1:"), server.address());
        assertTrue(port > 0);
    }

    static Stream<String> foreignHosts() {
        return Stream.of(
                "evil.example",
                "evil.example:" + port,
                "127.0.0.1",
                "localhost",
                "127.0.0.1:1",
                "127.0.0.1.evil.example:" + port,
                "0.0.0.0:" + port,
                "[::1]:" + port);
    }

    @ParameterizedTest
    @MethodSource("foreignHosts")
    void refusesAForeignHost(String host) throws IOException {
        for (String path : List.of("/", "/api/library", "/nothing")) {
            assertRefused(403, "Host", "foreign-host", get(path, "Host: " + host));
        }
    }

    @Test
    void takesBothNamesOfThisMachine() throws IOException {
        assertEquals(200, get("/api/version", host()).status());
        assertEquals(200, get("/api/version", "Host: localhost:" + port).status());
        assertEquals(200, get("/api/version", "Host: LOCALHOST:" + port).status());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Origin: http://evil.example                                   | Origin",
                "Origin: null                                                  | Origin",
                "Origin: https://127.0.0.1:PORT                                | Origin",
                "Origin: http://127.0.0.1:1                                    | Origin",
                "Origin: http://localhost:PORT                                 | Origin",
                "Origin: http://127.0.0.1:PORT;Sec-Fetch-Site: cross-site      | Origin",
                "Sec-Fetch-Site: cross-site                                    | Sec-Fetch-Site",
                "Sec-Fetch-Site: same-site                                     | Sec-Fetch-Site",
                "Sec-Fetch-Site: same-origin                                   | Sec-Fetch-Site",
            })
    void refusesAWriteFromElsewhere(String headers, String field) throws IOException {
        String lines = headers.replace("PORT", Integer.toString(port)).replace(";", "\n") + "\n";
        assertRefused(403, field, "cross-site", post(lines + "Content-Type: application/json", ASKED));
    }

    @Test
    void takesAWriteFromItsOwnPageAndFromAProgram() throws IOException {
        String json = "Content-Type: application/json";
        assertEquals(200, post(json, ASKED).status());
        assertEquals(200, post(json + "; charset=UTF-8", ASKED).status());
        String own = "Origin: http://127.0.0.1:" + port + "\n";
        assertEquals(200, post(own + json, ASKED).status());
        assertEquals(
                200, post(own + "Sec-Fetch-Site: same-origin\n" + json, ASKED).status());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "X-Nothing: 1",
                "Content-Type: text/plain",
                "Content-Type: application/x-www-form-urlencoded",
                "Content-Type: application/json-seq",
                "Content-Type: application/json; charset=latin1",
                "Content-Type: application/json\nContent-Encoding: gzip",
            })
    void refusesABodyThatIsNotSaidToBeJson(String headers) throws IOException {
        assertRefused(415, "Content-Type", "not-json-type", post(headers, ASKED));
    }

    @Test
    void refusesTenMegabytes() throws IOException {
        Sent sent = post("Content-Type: application/json", new byte[10 * 1024 * 1024]);
        assertRefused(413, "request", "too-large", sent);
    }

    @Test
    void refusesTenMegabytesOfUnsaidLength() throws IOException {
        byte[] chunk = ("100000\r\n" + " ".repeat(0x100000) + "\r\n").getBytes(StandardCharsets.UTF_8);
        byte[] body = new byte[chunk.length * 10 + 5];
        for (int i = 0; i < 10; i++) {
            System.arraycopy(chunk, 0, body, i * chunk.length, chunk.length);
        }
        System.arraycopy("0\r\n\r\n".getBytes(StandardCharsets.UTF_8), 0, body, 10 * chunk.length, 5);
        // the length that is added would contradict the chunks, so these are written as the head's end
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream()
                    .write(("POST /api/advice HTTP/1.1\r\nHost: 127.0.0.1:" + port
                                    + "\r\nContent-Type: application/json\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.UTF_8));
            socket.getOutputStream().write(body);
            String said = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(said.startsWith("HTTP/1.1 413"), said.substring(0, Math.min(200, said.length())));
            assertTrue(said.contains("\"code\":\"too-large\""), said);
        }
    }

    @Test
    void saysHowAPathMayBeAsked() throws IOException {
        Sent get = get("/api/advice", host());
        assertRefused(405, "method", "method-not-allowed", get);
        assertEquals("POST", get.headers().get("allow"));
        for (String method : List.of("PUT", "DELETE", "PATCH", "POST", "OPTIONS")) {
            for (String path : List.of("/api/library", "/", "/main.js")) {
                Sent sent = Sent.of(
                        server.address(),
                        method + " " + path + " HTTP/1.1",
                        host() + "Content-Type: application/json",
                        method.equals("OPTIONS") ? NOTHING : ASKED);
                assertRefused(405, "method", "method-not-allowed", sent);
                assertEquals("GET, HEAD", sent.headers().get("allow"));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/nothing", "/nothing.js", "/api/nothing", "/api/", "/api", "/pom.xml", "/../pom.xml", "/js/"})
    void whatIsNotThereIsToldInTheSameForm(String path) throws IOException {
        Sent sent = get(path, host());
        assertTrue(sent.status() == 404 || sent.status() == 400, sent.toString());
        assertEquals(List.of(), Schemas.broken("errors", sent.body()), sent.body());
        assertFalse(sent.body().contains("<"), sent.body());
        assertGuarded(sent);
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET /%2e%2e/pom.xml HTTP/1.1", "GET /a%2fb%00 HTTP/1.1", "GET / HTTP/9.9", "NONSENSE"})
    void brokenHttpIsToldInTheSameForm(String start) throws IOException {
        Sent sent = Sent.of(server.address(), start, host(), NOTHING);
        assertTrue(sent.status() >= 400 && sent.status() < 600, sent.toString());
        assertEquals(List.of(), Schemas.broken("errors", sent.body()), sent.toString());
        assertFalse(sent.body().toLowerCase(Locale.ROOT).contains("jetty"), sent.body());
    }

    @Test
    void servesNothingOutsideThePage() throws IOException {
        for (String path : List.of("/../texts/en.json", "/..%2ftexts%2fen.json", "/%2e%2e/solvent-data/solvents.csv")) {
            Sent sent = get(path, host());
            assertTrue(sent.status() >= 400, sent.toString());
        }
    }
}
