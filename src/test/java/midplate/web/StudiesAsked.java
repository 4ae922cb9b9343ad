package midplate.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;

/** Asks a server about studies. */
final class StudiesAsked {
    static final ObjectMapper JSON = new ObjectMapper();
    /** What a request for a study that is new says. */
    static final String NEW = "If-None-Match: *";

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final String address;

    StudiesAsked(PageServer server) {
        this.address = server.address();
    }

    /** The kept, invented study under another id. */
    static ObjectNode study(String id) throws IOException {
        ObjectNode study = (ObjectNode) JSON.readTree(Files.readString(Path.of("shared", "studies", "version-5.json")));
        return study.put("id", id);
    }

    /** Sends a request; headers as lines. */
    HttpResponse<String> send(String method, String path, String headers, String body)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address).resolve(path))
                .method(method, body.isEmpty() ? BodyPublishers.noBody() : BodyPublishers.ofString(body));
        headers.lines().filter(line -> !line.isBlank()).forEach(line -> {
            int colon = line.indexOf(':');
            request.header(line.substring(0, colon), line.substring(colon + 1).strip());
        });
        return CLIENT.send(request.build(), BodyHandlers.ofString());
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send("GET", path, "", "");
    }

    /** Sends a study to its own address. */
    HttpResponse<String> put(JsonNode study, String headers) throws IOException, InterruptedException {
        return send(
                "PUT",
                "/api/studies/" + study.get("id").asText(),
                "Content-Type: application/json\n" + headers,
                study.toString());
    }

    /** The header that expects the state an answer told of. */
    static String matching(HttpResponse<String> answer) {
        return "If-Match: " + answer.headers().firstValue("ETag").orElseThrow();
    }
}
