package midplate.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** One request sent byte by byte, so that any header can be forged, and what came back. */
record Sent(int status, Map<String, String> headers, String body) {
    private static final int PATIENCE_MS = 20_000;

    /**
     * Sends a request.
     *
     * @param address of the server
     * @param start such as {@code GET / HTTP/1.1}
     * @param headers lines, {@code Host} among them; the length is added
     */
    static Sent of(String address, String start, String headers, byte[] body) throws IOException {
        URI uri = URI.create(address);
        try (Socket socket = new Socket(uri.getHost(), uri.getPort())) {
            socket.setSoTimeout(PATIENCE_MS);
            String head = start + "\r\n" + headers.strip().replace("\n", "\r\n") + "\r\nConnection: close\r\n"
                    + (body.length > 0 ? "Content-Length: " + body.length + "\r\n" : "") + "\r\n";
            OutputStream out = socket.getOutputStream();
            out.write(head.getBytes(StandardCharsets.UTF_8));
            out.write(body);
            out.flush();
            return read(socket.getInputStream());
        }
    }

    /** First words of keys that a page does not say on a first visit. */
    private static final Set<String> NOT_AT_FIRST = Set.of(
            "later",
            "terminal",
            "fault",
            "todo",
            "allowed",
            "came",
            "kind",
            "group",
            "catalogue",
            "chemistry",
            "other",
            "scouting",
            "structure",
            "lesson",
            "compound",
            "outcome",
            "folder",
            "import",
            "study",
            "column",
            "same",
            "pure",
            "done",
            "seeing",
            "plate",
            "hrf");

    /** The texts of a file that a page says on a first visit. */
    static JsonNode ofPage(JsonNode file) {
        ObjectNode page = file.deepCopy();
        page.remove(page.properties().stream()
                .map(Map.Entry::getKey)
                .filter(key -> NOT_AT_FIRST.contains(key.substring(0, key.indexOf('.'))))
                .toList());
        return page;
    }

    private static Sent read(InputStream in) throws IOException {
        String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        int end = all.indexOf("\r\n\r\n");
        String[] lines = all.substring(0, end).split("\r\n", -1);
        Map<String, String> headers = new TreeMap<>();
        for (int i = 1; i < lines.length; i++) {
            int colon = lines[i].indexOf(':');
            headers.put(
                    lines[i].substring(0, colon).toLowerCase(Locale.ROOT),
                    lines[i].substring(colon + 1).strip());
        }
        return new Sent(Integer.parseInt(lines[0].split(" ", -1)[1]), headers, all.substring(end + 4));
    }
}
