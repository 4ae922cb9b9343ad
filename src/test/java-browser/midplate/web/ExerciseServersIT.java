package midplate.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import midplate.lesson.ExerciseCode;
import midplate.lesson.ExerciseLevel;
import midplate.lesson.ExercisePair;
import midplate.notebook.StudyFolder;
import midplate.wire.Exchange;
import midplate.wire.StudyFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two installations with folders of their own make the same of a code. */
class ExerciseServersIT {
    @TempDir
    private static Path place;

    private static List<String> answers(String folder, String code) throws IOException, InterruptedException {
        StudyFolder kept = StudyFolder.open(place.resolve(folder), StudyFiles.builtIn(), Clock.systemUTC());
        PageServer server = PageServer.of(Exchange.builtIn(), kept, 0).start();
        try {
            List<String> answers = new ArrayList<>();
            for (Map.Entry<String, String> each : List.of(
                    Map.entry("", ""),
                    Map.entry("/run", ", \"percentStrong\": 10, \"plate\": 1"),
                    Map.entry("/run", ", \"percentStrong\": 45.45, \"plate\": 2"),
                    Map.entry("/hint", ", \"plates\": [10, 45.45], \"count\": 4"),
                    Map.entry("/placed", ", \"placed\": [0.2, 0.4, 0.6]"),
                    Map.entry("/program", ""),
                    Map.entry("/key", ""))) {
                HttpRequest request = HttpRequest.newBuilder(
                                URI.create(server.address()).resolve("/api/lesson/exercise" + each.getKey()))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(
                                "{\"code\": \"" + code + "\"" + each.getValue() + "}"))
                        .build();
                HttpResponse<String> response =
                        HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
                assertEquals(200, response.statusCode(), response.body());
                answers.add(response.body());
            }
            return answers;
        } finally {
            server.stop();
            kept.close();
        }
    }

    @Test
    void theSameCodeIsTheSameExerciseInBoth() throws IOException, InterruptedException {
        for (ExerciseLevel level : ExerciseLevel.values()) {
            String code = new ExerciseCode(level, ExercisePair.HEXANE_ETHYL_ACETATE, 424_242).text();
            assertEquals(answers("one-" + level.id(), code), answers("other-" + level.id(), code));
        }
    }
}
