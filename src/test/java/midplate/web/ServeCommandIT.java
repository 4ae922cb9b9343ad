package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packed program, started as a person starts it. */
class ServeCommandIT {
    private static final Path JAR = Path.of("target", "midplate.jar");

    @TempDir
    private Path place;

    private static Process midplate(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", JAR.toString()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command).start();
    }

    private static BufferedReader reader(InputStream in) {
        return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }

    @Test
    void printsItsAddressOnceItAnswers() {
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            Process process = midplate("serve", "--port", "0", "--no-browser", "--data", place.toString());
            try {
                BufferedReader said = reader(process.getInputStream());
                String address = said.readLine();
                assertTrue(String.valueOf(address).matches("http://127\\.0\\.0\\.1:[0-9]+/"), address);
                HttpResponse<String> page = HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(URI.create(address)).build(),
                                HttpResponse.BodyHandlers.ofString());
                assertEquals(200, page.statusCode());
                assertTrue(page.body().contains("<title>Midplate</title>"));
                assertEquals("Studies are kept in " + place.toRealPath(), said.readLine());
            } finally {
                process.destroy();
                process.waitFor();
            }
        });
    }

    @Test
    void saysThatAPortIsTakenAndWhatToDo() {
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
                Process process = midplate(
                        "serve",
                        "--no-browser",
                        "--port",
                        Integer.toString(taken.getLocalPort()),
                        "--data",
                        place.toString());
                String said = String.join(
                        "\n", reader(process.getErrorStream()).lines().toList());
                assertEquals(1, process.waitFor());
                assertTrue(said.contains("Port " + taken.getLocalPort() + " is taken"), said);
                assertTrue(said.contains("--port 0"), said);
                assertTrue(!said.contains("ERROR"), said);
                assertTrue(!said.contains("\tat "), said);
            }
        });
    }

    @Test
    void aSecondStartSaysWhoKeepsTheFolderAndWhereAndTheFolderIsFreeOnceTheFirstEnded() {
        assertTimeoutPreemptively(Duration.ofSeconds(90), () -> {
            Process first = midplate("serve", "--port", "0", "--no-browser", "--data", place.toString());
            try {
                String address = reader(first.getInputStream()).readLine();
                Process second = midplate("serve", "--port", "0", "--no-browser", "--data", place.toString());
                String said = reader(second.getErrorStream()).lines().collect(Collectors.joining("\n"));
                assertEquals(1, second.waitFor());
                assertTrue(said.contains("process " + first.pid() + ", since 20"), said);
                assertTrue(said.contains("Open " + address + ", or start with --data"), said);
                assertTrue(!said.contains("\tat "), said);
            } finally {
                first.destroy();
                first.waitFor();
            }
            Process third = midplate("serve", "--port", "0", "--no-browser", "--data", place.toString());
            try {
                assertTrue(String.valueOf(reader(third.getInputStream()).readLine())
                        .startsWith("http://127.0.0.1:"));
            } finally {
                third.destroy();
                third.waitFor();
            }
        });
    }

    @Test
    void aFileWhereTheFolderShouldBeIsToldPlainlyAndLeftAlone() {
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            Path file = Files.writeString(place.resolve("notes.txt"), "invented");
            Process process = midplate("serve", "--port", "0", "--no-browser", "--data", file.toString());
            String said = reader(process.getErrorStream()).lines().collect(Collectors.joining("\n"));
            assertEquals(1, process.waitFor());
            assertTrue(said.contains(file + " is a file") && said.contains("--data"), said);
            assertTrue(!said.contains("\tat "), said);
            assertEquals("invented", Files.readString(file));
        });
    }

    @Test
    void theBatchAnswersBeforeItsInputEnds() {
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            Process process = midplate("batch");
            BufferedReader answers = reader(process.getInputStream());
            process.getOutputStream().write("{\"id\": \"a\"}\n".getBytes(StandardCharsets.UTF_8));
            process.getOutputStream().flush();
            assertTrue(answers.readLine().startsWith("{\"id\":\"a\",\"error\":{"));
            process.getOutputStream().write("{\"id\": \"é\"}\n".getBytes(StandardCharsets.UTF_8));
            process.getOutputStream().close();
            assertTrue(answers.readLine().startsWith("{\"id\":\"é\",\"error\":{"));
            assertEquals(0, process.waitFor());
        });
    }
}
