package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import midplate.notebook.AdviceOutcomes;
import midplate.notebook.ScoredAdvice;
import midplate.notebook.ScoredAdvice.SpotOutcome;
import midplate.notebook.Study;
import midplate.plate.Limit;
import midplate.plate.SpotForm;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;

/** A plate is read alike where its Rf are shown and where an advice is scored by it. */
class ScoredReadingTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Exchange EXCHANGE = FakeAdviser.exchange();

    private static ObjectNode plate(Random random) {
        ObjectNode plate =
                JSON.createObjectNode().put("id", "p2").put("heightMm", 70).put("widthMm", 40);
        plate.put("startMm", random.nextInt(12)).put("frontMm", random.nextInt(8) == 0 ? 5 : 40 + random.nextInt(32));
        plate.put("weak", "hexane")
                .put("strong", "ethyl-acetate")
                .put("eluent", "20")
                .put("percentStrong", 20);
        plate.putObject("additive").put("kind", "none").put("text", "");
        plate.putArray("notSeen");
        ArrayNode lanes = plate.putArray("lanes");
        int reading = 0;
        for (int lane = 1; lane <= 1 + random.nextInt(3); lane++) {
            ArrayNode readings = lanes.addObject().put("id", "l" + lane).putArray("readings");
            for (int i = random.nextInt(4); i >= 0; i--) {
                reading++;
                ObjectNode seen = readings.addObject().put("id", "r" + reading);
                ArrayNode spots = seen.putArray("spots").add("s" + (1 + random.nextInt(3)));
                if (random.nextInt(4) == 0 && !spots.get(0).asText().equals("s3")) {
                    spots.add("s3");
                }
                if (random.nextBoolean()) {
                    seen.put("centreMm", 5 + random.nextInt(60));
                } else {
                    seen.put("rf", random.nextInt(11) / 10.0);
                }
                if (random.nextInt(3) == 0) {
                    seen.put("sizeMm", 1 + random.nextInt(9));
                }
                if (random.nextInt(3) == 0) {
                    seen.put("errorMm", random.nextInt(40) / 10.0); // 0 is refused
                }
                if (random.nextInt(3) == 0) {
                    seen.put("shape", SpotForm.ids().get(random.nextInt(4)));
                }
            }
        }
        return plate;
    }

    /** The same plate as the page asks about it. */
    private static ObjectNode question(ObjectNode plate) {
        ObjectNode request = JSON.createObjectNode();
        plate.properties().stream()
                .filter(field -> field.getKey().endsWith("Mm"))
                .forEach(field -> request.set(field.getKey(), field.getValue()));
        ArrayNode spots = request.putArray("spots");
        for (int lane = 0; lane < plate.path("lanes").size(); lane++) {
            for (JsonNode seen : plate.path("lanes").get(lane).path("readings")) {
                for (JsonNode spot : seen.path("spots")) {
                    ObjectNode one =
                            spots.addObject().put("spot", spot.asText()).put("lane", lane + 1);
                    seen.properties().stream()
                            .filter(field -> !field.getKey().equals("id")
                                    && !field.getKey().equals("spots"))
                            .forEach(field -> one.set(field.getKey(), field.getValue()));
                }
            }
        }
        return request;
    }

    private static ScoredAdvice scored(ObjectNode plate) throws IOException {
        ObjectNode study = (ObjectNode) JSON.readTree(Files.readString(Path.of("shared", "studies", "version-5.json")));
        study.putArray("plates").add(plate);
        ArrayNode spots = ((ObjectNode) study.at("/advices/0")).putArray("spots");
        for (String id : new String[] {"s1", "s2", "s3"}) {
            spots.addObject().put("spot", id).put("rf", 0.5).put("low", 0.4).put("high", 0.6);
        }
        FaultList faults = new FaultList(Texts.english());
        Study read = new StudyReader(
                        midplate.catalogue.SolventCatalogue.builtIn(),
                        midplate.catalogue.FunctionalGroups.builtIn(),
                        faults)
                .read(JsonText.read(study.toString(), faults));
        return AdviceOutcomes.of(read).get(0);
    }

    @Test
    void whatIsShownAndWhatIsScoredAreTheSame() throws IOException {
        Random random = new Random(8);
        int compared = 0;
        int impossible = 0;
        for (int i = 0; i < 300; i++) {
            ObjectNode plate = plate(random);
            ScoredAdvice scored = scored(plate);
            JsonNode shown;
            try {
                shown = JSON.readTree(EXCHANGE.reading(question(plate).toString()))
                        .path("readings");
            } catch (BadInput bad) {
                assertEquals("outcome.unreadable", scored.why().key(), plate.toString());
                impossible++;
                continue;
            }
            for (SpotOutcome spot : scored.spots()) {
                JsonNode expected = shown.path(spot.foretold().spot());
                assertEquals(expected.isMissingNode(), spot.read().isEmpty(), plate.toString());
                if (spot.read().isPresent()) {
                    assertEquals(
                            expected.path("rf").asDouble(), spot.read().get().rf(), 5e-5, plate.toString());
                    String limit = spot.read().get().limit() == Limit.NONE
                            ? "none"
                            : spot.read().get().limit() == Limit.AT_START ? "at-start" : "at-front";
                    assertEquals(expected.path("limit").asText(), limit, plate.toString());
                    compared++;
                }
            }
        }
        assertTrue(compared > 200 && impossible > 20, compared + " compared, " + impossible + " impossible");
    }
}
