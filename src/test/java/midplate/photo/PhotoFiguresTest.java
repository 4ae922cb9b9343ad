package midplate.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The figures of photos told in the README")
class PhotoFiguresTest {
    private static JsonNode figures() throws IOException {
        return new ObjectMapper().readTree(PhotoTable.FILE.toFile());
    }

    @Test
    void areThoseOfTheMeasurement() throws IOException {
        String told = PhotoTable.found(Files.readString(PhotoTable.README));
        assertEquals(PhotoTable.of(figures()), told, "write them anew with PhotoTrial");
    }

    @Test
    void comeFromSeedsForJudgingAndEnoughPictures() throws IOException {
        JsonNode figures = figures();
        long first = figures.get("firstSeed").asLong();
        long last = figures.get("lastSeed").asLong();
        assertTrue(first >= 80_000, "first seed " + first);
        assertEquals(figures.get("pictures").asLong(), last - first + 1);
        double error = figures.get("byHand").get(0).get("within").get("error").asDouble();
        assertTrue(error > 0 && error < 0.01, "too few pictures: standard error " + error);
    }

    @Test
    void tellEveryCondition() throws IOException {
        JsonNode rows = figures().get("byHand");
        assertTrue(rows.size() >= 50, "rows " + rows.size());
        for (JsonNode row : rows) {
            assertTrue(row.get("spots").asLong() > 0 && row.get("within").has("value"), row.toString());
        }
    }
}
