package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import midplate.lesson.ExerciseCode;
import midplate.lesson.ExerciseLevel;
import midplate.lesson.ExercisePair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two installations make the same of a code: programs with folders of their own, of another language, time and way to compile. */
class ExerciseServersIT {
    private static final Path JAR = Path.of("target", "midplate.jar").toAbsolutePath();

    private static final List<String> HERE = List.of("-Duser.language=en", "-Duser.country=GB", "-Duser.timezone=UTC");
    private static final List<String> ELSEWHERE = List.of(
            "-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Pacific/Auckland", "-XX:TieredStopAtLevel=1");

    @TempDir
    private static Path place;

    /** What a program of its own answers about codes. */
    private static List<String> answers(String folder, List<String> options, List<String> codes)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-jar", JAR.toString(), "serve", "--port", "0", "--no-browser", "--data"));
        command.add(place.resolve(folder).toString());
        Process program = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said = program.inputReader(StandardCharsets.UTF_8)) {
            URI address = URI.create(said.readLine());
            List<String> answers = new ArrayList<>();
            for (String code : codes) {
                answers.addAll(answers(address, code));
            }
            return answers;
        } finally {
            program.destroy();
            program.waitFor();
        }
    }

    private static List<String> answers(URI address, String code) throws IOException, InterruptedException {
        List<String> answers = new ArrayList<>();
        for (Map.Entry<String, String> each : List.of(
                Map.entry("", ""),
                Map.entry("/run", ", \"percentStrong\": 10, \"plate\": 1"),
                Map.entry("/run", ", \"percentStrong\": 45.45, \"plate\": 2"),
                Map.entry("/hint", ", \"plates\": [10, 45.45], \"count\": 4"),
                Map.entry("/placed", ", \"placed\": [0.2, 0.4, 0.6]"),
                Map.entry("/program", ""),
                Map.entry("/key", ""))) {
            HttpRequest request = HttpRequest.newBuilder(address.resolve("/api/lesson/exercise" + each.getKey()))
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString("{\"code\": \"" + code + "\"" + each.getValue() + "}"))
                    .build();
            HttpResponse<String> response =
                    HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
            assertEquals(200, response.statusCode(), response.body());
            answers.add(response.body());
        }
        return answers;
    }

    @Test
    void theSameCodeIsTheSameExerciseInBoth() throws IOException, InterruptedException {
        List<String> codes = new ArrayList<>();
        for (ExerciseLevel level : ExerciseLevel.values()) {
            codes.add(new ExerciseCode(level, ExercisePair.HEXANE_ETHYL_ACETATE, 424_242).text());
        }
        assertEquals(answers("one", HERE, codes), answers("other", ELSEWHERE, codes));
    }
}
