package midplate.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a photo told of a spot counts until the spot is placed by hand; its picture lies in the folder. All is invented. */
class ErrorOfPhotoIT extends OnPage {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String ID = "20261127-photoxyzab";

    /** The example as if read from a photo, as another study, opened. */
    private static void openPhotographed(Page page) {
        page.evaluate("""
                async (id) => {
                    const { inventedExample } = await import('./sheet/sheet.js');
                    const { studyOf } = await import('./study/study.js');
                    const sheet = Object.assign(inventedExample(), { id, title: 'Invented: photographed', example: 'no' });
                    const [first, second] = sheet.plates[0].lanes[0].readings;
                    Object.assign(first, { sizeMm: 3, errorMm: 0.2, shape: 'sharp-head' });
                    Object.assign(second, { sizeMm: 4, errorMm: 1.5, shape: 'round' });
                    sheet.plates[0].photo = { sha256: '0'.repeat(64), light: 'uv-254' };
                    await fetch('/api/studies/' + id, {
                        method: 'PUT',
                        headers: { 'Content-Type': 'application/json', 'If-None-Match': '*' },
                        body: JSON.stringify(studyOf(sheet)),
                    });
                    location.hash = id;
                }
                """, ID);
        assertThat(page.locator("#title")).hasValue("Invented: photographed");
    }

    private static JsonNode spots(List<String> asked) throws IOException {
        return JSON.readTree(asked.get(asked.size() - 1)).at("/runs/0/plate/spots");
    }

    private static void answeredAnew(Page page, List<String> asked, Runnable change) {
        int before = asked.size();
        change.run();
        page.waitForCondition(() -> asked.size() > before);
        answered(page);
    }

    @Test
    void aSpotThatIsPlacedByHandKeepsItsShapeAndLosesTheErrorOfThePhoto() throws IOException {
        Page page = open();
        List<String> asked = new ArrayList<>();
        page.onRequest(request -> {
            if (request.url().endsWith("/api/advice")) {
                asked.add(request.postData());
            }
        });
        answeredAnew(page, asked, () -> openPhotographed(page));
        JsonNode first = spots(asked).get(0);
        assertEquals(0.2, first.path("errorMm").asDouble());
        assertEquals("sharp-head", first.path("shape").asText());
        assertEquals(1.5, spots(asked).get(1).path("errorMm").asDouble());
        assertFalse(spots(asked).get(1).has("shape"), "no word of the four");

        page.locator("#seen-r1").focus();
        answeredAnew(page, asked, () -> page.keyboard().press("ArrowUp"));
        first = spots(asked).get(0);
        assertFalse(first.has("errorMm"), first.toString());
        assertEquals("sharp-head", first.path("shape").asText());
        assertEquals(3, first.path("sizeMm").asDouble());
        assertEquals(1.5, spots(asked).get(1).path("errorMm").asDouble(), "the other was not touched");

        answeredAnew(page, asked, () -> page.locator("#mm-r2").fill("18.5"));
        assertFalse(spots(asked).get(1).has("errorMm"), spots(asked).toString());
        assertEquals(4, spots(asked).get(1).path("sizeMm").asDouble());

        page.locator("#title").focus();
        answeredAnew(page, asked, () -> page.locator("#undo").click());
        answeredAnew(page, asked, () -> page.locator("#undo").click());
        assertEquals(0.2, spots(asked).get(0).path("errorMm").asDouble(), "taken back");
        assertEquals(1.5, spots(asked).get(1).path("errorMm").asDouble());
    }

    @Test
    void aPictureIsKeptSeenAndDroppedByThePage() throws IOException {
        Page page = open();
        Object seen = page.evaluate("""
                async (id) => {
                    const { keepPicture, pictureAddress, dropPicture } = await import('./photo/kept.js');
                    const canvas = Object.assign(document.createElement('canvas'), { width: 40, height: 70 });
                    canvas.getContext('2d').fillRect(5, 5, 20, 20);
                    const blob = await new Promise((done) => canvas.toBlob(done, 'image/jpeg', 0.8));
                    const name = await keepPicture(id, blob);
                    const picture = new Image();
                    picture.src = pictureAddress(id, name);
                    await picture.decode();
                    const size = [picture.naturalWidth, picture.naturalHeight].join(' ');
                    await dropPicture(id, name);
                    await dropPicture(id, name);
                    const gone = await fetch(pictureAddress(id, name), { cache: 'no-store' });
                    const refused = await keepPicture(id, new Blob(['no picture'])).catch((failure) => failure.faults[0].code);
                    return [size, /^[0-9a-f]{64}$/.test(name), gone.status, refused].join(', ');
                }
                """, "20261127-unsavedxyz");
        assertEquals("40 70, true, 404, no-jpeg", seen);
        try (Stream<Path> left = Files.list(place.resolve("photos"))) {
            assertTrue(left.findAny().isEmpty());
        }
    }

    @Override
    boolean isOnPurpose(String message) {
        return super.isOnPurpose(message) || message.contains("status of 404");
    }
}
