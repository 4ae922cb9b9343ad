package midplate.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import javax.imageio.ImageIO;
import midplate.wire.Schemas;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pictures of plates that are kept with a study. */
class PhotoRoutesIT extends StudiesServed {
    private static final String PHOTOS = PATH + "/photos";
    private static final String NO_SUCH = "0".repeat(64);
    private static final int MOST = 600_000;
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private static byte[] jpeg() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertTrue(ImageIO.write(new BufferedImage(20, 30, BufferedImage.TYPE_INT_RGB), "jpg", out));
        return out.toByteArray();
    }

    /** As large as asked for, and still between the two markers of a JPEG. */
    private static byte[] jpegOf(int bytes) throws IOException {
        byte[] small = jpeg();
        byte[] large = new byte[bytes];
        System.arraycopy(small, 0, large, 0, small.length);
        large[bytes - 2] = (byte) 0xff;
        large[bytes - 1] = (byte) 0xd9;
        return large;
    }

    private static String digest(byte[] bytes) throws NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }

    private HttpResponse<String> post(String path, String type, byte[] body) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(
                        URI.create(server.address()).resolve(path))
                .POST(BodyPublishers.ofByteArray(body));
        if (!type.isEmpty()) {
            request.header("Content-Type", type);
        }
        return CLIENT.send(request.build(), BodyHandlers.ofString());
    }

    private HttpResponse<byte[]> picture(String sha256) throws IOException, InterruptedException {
        URI address = URI.create(server.address()).resolve(PHOTOS + "/" + sha256);
        return CLIENT.send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofByteArray());
    }

    @Test
    void aPictureIsKeptSeenAndTakenAway() throws Exception {
        byte[] picture = jpeg();
        String name = digest(picture);
        for (int time = 0; time < 2; time++) { // sent again because the answer was lost
            HttpResponse<String> made = post(PHOTOS, "image/jpeg", picture);
            assertEquals(201, made.statusCode(), made.body());
            assertEquals(List.of(), Schemas.broken("photo-kept", made.body()));
            assertEquals(
                    name, StudiesAsked.JSON.readTree(made.body()).get("sha256").asText());
        }
        assertEquals(List.of("photos/" + ID + "-" + name + ".jpg"), files());
        HttpResponse<byte[]> seen = picture(name);
        assertEquals(200, seen.statusCode());
        assertArrayEquals(picture, seen.body());
        assertEquals("image/jpeg", seen.headers().firstValue("Content-Type").orElse(""));
        assertEquals(
                "nosniff", seen.headers().firstValue("X-Content-Type-Options").orElse(""));
        assertEquals(
                "default-src 'none'",
                seen.headers().firstValue("Content-Security-Policy").orElse(""));
        assertEquals(
                "private, max-age=31536000, immutable",
                seen.headers().firstValue("Cache-Control").orElse(""));
        assertTrue(
                seen.headers().firstValue("Content-Disposition").orElse("").startsWith("inline; filename=\"midplate-"));
        assertEquals(200, asked.send("HEAD", PHOTOS + "/" + name, "", "").statusCode());
        HttpResponse<String> gone = asked.send("DELETE", PHOTOS + "/" + name, "", "");
        assertEquals(204, gone.statusCode());
        assertEquals("", gone.body());
        assertEquals(List.of(), files());
        assertTold(404, "photo", "no-photo", asked.send("DELETE", PHOTOS + "/" + name, "", ""));
    }

    @Test
    void aPictureThatIsNotThereIsToldAndNotRemembered() throws Exception {
        HttpResponse<String> answer = asked.get(PHOTOS + "/" + NO_SUCH);
        assertTold(404, "photo", "no-photo", answer);
        assertEquals("no-store", answer.headers().firstValue("Cache-Control").orElse(""));
        assertEquals(404, asked.send("HEAD", PHOTOS + "/" + NO_SUCH, "", "").statusCode());
        String name = digest(jpeg());
        post(PHOTOS, "image/jpeg", jpeg());
        Files.write(place.resolve("photos/" + ID + "-" + name + ".jpg"), new byte[] {1});
        HttpResponse<String> changed = asked.get(PHOTOS + "/" + name);
        assertTold(409, "data", "photo-changed", changed);
        assertEquals("no-store", changed.headers().firstValue("Cache-Control").orElse(""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "text/plain", "application/json", "image/png", "image/jpeg;x=1", "image/svg+xml"})
    void onlyJpegIsTaken(String type) throws Exception {
        assertTold(415, "Content-Type", "not-jpeg-type", post(PHOTOS, type, jpeg()));
        assertEquals(List.of(), files());
    }

    @Test
    void aPictureIsNoStudyAndAStudyNoPicture() throws Exception {
        assertTold(415, "Content-Type", "not-json-type", post("/api/advice", "image/jpeg", jpeg()));
        HttpResponse<String> packed =
                asked.send("POST", PHOTOS, "Content-Type: image/jpeg\nContent-Encoding: gzip", "invented");
        assertTold(415, "Content-Type", "not-jpeg-type", packed);
    }

    @Test
    void whatIsNoWholeJpegIsRefused() throws Exception {
        byte[] picture = jpeg();
        byte[] png = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
        List<byte[]> others = List.of(
                new byte[0],
                png,
                "<svg xmlns=\"http://www.w3.org/2000/svg\"/>".getBytes(StandardCharsets.UTF_8),
                Arrays.copyOf(picture, picture.length - 1),
                Arrays.copyOf(picture, 3),
                Arrays.copyOfRange(picture, 1, picture.length),
                new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xd9});
        for (byte[] other : others) {
            assertTold(422, "request", "no-jpeg", post(PHOTOS, "image/jpeg", other));
        }
        assertEquals(List.of(), files());
    }

    @Test
    void upToSixHundredKilobytesAreTaken() throws Exception {
        assertEquals(201, post(PHOTOS, "image/jpeg", jpegOf(MOST)).statusCode());
        HttpResponse<String> tooLarge = post(PHOTOS, "image/jpeg", jpegOf(MOST + 1));
        assertTold(413, "request", "too-large", tooLarge);
        assertTrue(tooLarge.body().contains("900 pixels"), tooLarge.body());
        assertEquals(413, post(PHOTOS, "image/jpeg", jpegOf(5_000_000)).statusCode());
        assertEquals(1, files().size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Host: evil.example                   | Host",
                "HOST;Origin: http://evil.example     | Origin",
                "HOST;Origin: null                    | Origin",
                "HOST;Sec-Fetch-Site: cross-site      | Sec-Fetch-Site",
            })
    void aWriteFromElsewhereIsRefused(String headers, String field) throws Exception {
        post(PHOTOS, "image/jpeg", jpeg());
        String lines = headers.replace("HOST", host().strip()).replace(";", "\n") + "\n";
        for (String method : List.of("POST " + PHOTOS, "DELETE " + PHOTOS + "/" + digest(jpeg()))) {
            boolean sends = method.startsWith("POST");
            Sent sent = Sent.of(
                    server.address(),
                    method + " HTTP/1.1",
                    lines + (sends ? "Content-Type: image/jpeg\n" : ""),
                    sends ? jpegOf(2000) : new byte[0]);
            assertEquals(403, sent.status(), sent.body());
            assertTrue(sent.body().contains("\"field\":\"" + field + "\""), sent.body());
        }
        assertEquals(1, files().size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/studies/20261126-aaaa2222bb/photos/",
                "/api/studies/20261126-aaaa2222bb/photos/x",
                "/api/studies/20261126-aaaa2222bb/photos/..%2f..%2fmidplate.lock",
                "/api/studies/20261126-aaaa2222bb/photos/%2e%2e",
                "/api/studies/20261126-AAAA2222BB/photos",
                "/api/studies/..%2f..%2fx/photos",
                "/api/studies/photos",
            })
    void whatIsNoNameIsNoAddress(String path) throws Exception {
        for (String method : List.of("GET", "POST", "DELETE")) {
            Sent sent = Sent.of(
                    server.address(),
                    method + " " + path + " HTTP/1.1",
                    host() + (method.equals("POST") ? "Content-Type: image/jpeg\n" : ""),
                    method.equals("POST") ? jpeg() : new byte[0]);
            assertTrue(sent.status() == 404 || sent.status() == 400, sent.toString());
        }
        assertEquals(List.of(), files());
    }

    @Test
    void otherWaysToAskAreToldTheWaysThereAre() throws Exception {
        HttpResponse<String> list = asked.get(PHOTOS);
        assertTold(405, "method", "method-not-allowed", list);
        assertEquals("POST", list.headers().firstValue("Allow").orElse(""));
        HttpResponse<String> put = asked.send("PUT", PHOTOS + "/" + NO_SUCH, "Content-Type: image/jpeg", "x");
        assertTold(405, "method", "method-not-allowed", put);
        assertEquals("DELETE, GET, HEAD", put.headers().firstValue("Allow").orElse(""));
        assertTold(400, "request", "body-not-wanted", asked.send("DELETE", PHOTOS + "/" + NO_SUCH, "", "{}"));
    }

    @Test
    void aLinkInPlaceOfTheFolderIsTold() throws Exception {
        Path elsewhere = Files.createDirectory(place.resolve("elsewhere"));
        Files.createSymbolicLink(place.resolve("photos"), elsewhere);
        assertTold(507, "data", "is-link", post(PHOTOS, "image/jpeg", jpeg()));
        assertEquals(List.of(), files());
    }
}
