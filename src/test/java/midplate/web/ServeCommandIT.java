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
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The packed program, started as a person starts it. */
class ServeCommandIT {
    private static final Path JAR = Path.of("target", "midplate.jar");

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
            Process process = midplate("serve", "--port", "0", "--no-browser");
            try {
                String address = reader(process.getInputStream()).readLine();
                assertTrue(String.valueOf(address).matches("http://127\\.0\\.0\\.1:[0-9]+/"), address);
                HttpResponse<String> page = HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(URI.create(address)).build(),
                                HttpResponse.BodyHandlers.ofString());
                assertEquals(200, page.statusCode());
                assertTrue(page.body().contains("<title>Midplate</title>"));
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
                Process process = midplate("serve", "--no-browser", "--port", Integer.toString(taken.getLocalPort()));
                String said = String.join(
                        "\n", reader(process.getErrorStream()).lines().toList());
                assertEquals(1, process.waitFor());
                assertTrue(said.contains("Port " + taken.getLocalPort() + " is taken"), said);
                assertTrue(said.contains("--port 0"), said);
                assertTrue(!said.contains("\tat "), said);
            }
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
