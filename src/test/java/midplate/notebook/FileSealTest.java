package midplate.notebook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The digest of a file is its own; one of a picture in it stays. */
class FileSealTest {
    private static final String DIGEST = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private static byte[] bytes(String text) {
        return text.replace("DIGEST", DIGEST).getBytes(StandardCharsets.UTF_8);
    }

    private static String without(String text) {
        return new String(FileSeal.without(bytes(text)), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"format\": \"f\", \"version\": 1, \"photo\": {\"sha256\": \"DIGEST\", \"light\": \"x\"}}",
                "{\"format\": \"f\", \"version\": 1, \"photo\": {\"light\": \"x\", \"sha256\": \"DIGEST\"}}",
                "{\"format\": \"f\", \"version\": 1, \"a\": \"}\\\"}\", \"photo\": {\"sha256\": \"DIGEST\", \"b\": 1}}",
            })
    void thatOfAPictureStays(String file) {
        assertArrayEquals(bytes(file), FileSeal.without(bytes(file)));
    }

    @Test
    void thatOfTheFileGoesWhereverAnEditorMovedIt() {
        String photo = "\"photo\": {\"sha256\": \"DIGEST\", \"light\": \"x\"}".replace("DIGEST", DIGEST);
        String first = "{\"format\": \"f\", \"a\": 1, \"sha256\": \"DIGEST\", " + photo + "}";
        assertEquals(
                "{\"format\": \"f\", \"a\": 1 , " + photo + "}", without(first).replaceAll(" +", " "));
        String last = "{\"format\": \"f\", " + photo + ", \"sha256\": \"DIGEST\"}";
        assertEquals("{\"format\": \"f\", " + photo + " }", without(last).replaceAll(" +", " "));
    }

    /** A study whose first lines somebody took out has no seal, and yet the picture of its plate. */
    @Test
    void aStudyWithoutASealKeepsThePictureOfItsPlate(@TempDir Path place) throws Exception {
        byte[] bare = Files.readAllBytes(Path.of("shared", "studies", "version-5.json"));
        StudyId id = RealStudies.FORMAT.read(bare).id();
        try (StudyFolder folder = RealStudies.open(place)) {
            Files.write(place.resolve("studies").resolve(id.value() + ".json"), bare);
            Optional<PlatePhoto> photo = folder.read(id).study().plates().get(0).photo();
            assertEquals(DIGEST, photo.orElseThrow().name().sha256());
        }
    }
}
