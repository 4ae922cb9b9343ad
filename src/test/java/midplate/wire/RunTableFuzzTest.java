package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.words.Texts;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a file holds, it is answered or refused with its faults, and plates that are answered can be kept. */
class RunTableFuzzTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final ImportAnswers IMPORTS =
            FakeAdviser.exchange().studies().imports();
    private static final List<String> PIECES = List.of(
            ",",
            ";",
            "\t",
            "\n",
            "\r\n",
            "\r",
            "\"",
            "\"\"",
            "'",
            " ",
            "=",
            "+",
            " + ",
            "-",
            "@",
            "plate",
            "Rf",
            "hRf",
            "spot",
            "eluent",
            "% EtOAc",
            "% MeOH in DCM",
            "centre (cm)",
            "front",
            "start",
            "lane",
            "weak",
            "strong",
            "percent_strong",
            "additive",
            "not_seen",
            "9:1",
            "9 : 1",
            "hexane/EtOAc 4:1",
            "EtOAc/hexane",
            "10 %",
            "20% EtOAc/Hex",
            "20 % Hex/EtOAc",
            "pure DCM",
            "Hex/EtOAc",
            "04:01:00",
            "distance (cm)",
            "front distance",
            "0.35",
            "0,35",
            "1,250",
            "1.234,5",
            "1e5",
            "1e-99",
            "NaN",
            "A",
            "B",
            "hexane",
            "MeOH",
            "water",
            "sep=;\n",
            "\uFEFF",
            "\u0000",
            "\u001A",
            "µ",
            "日",
            "0",
            "1",
            "62",
            "-5",
            "x".repeat(300),
            "{",
            "[",
            "/",
            ":",
            "∞",
            "\u2028",
            "\uD83E\uDDEA");

    private static String piled(Random random) {
        StringBuilder text = new StringBuilder(random.nextInt(3) == 0 ? "plate,eluent,lane,spot,Rf,centre_mm\n" : "");
        int count = random.nextInt(60);
        for (int i = 0; i < count; i++) {
            text.append(PIECES.get(random.nextInt(PIECES.size())));
            if (random.nextInt(3) == 0) {
                text.append(',');
            } else if (random.nextInt(6) == 0) {
                text.append('\n');
            }
        }
        return text.toString();
    }

    private static byte[] bytes(Random random) {
        byte[] bytes =
                piled(random).getBytes(random.nextInt(4) == 0 ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8);
        for (int i = random.nextInt(4) == 0 ? 3 : 0; i > 0 && bytes.length > 0; i--) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return bytes;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void nothingButAnAnswerOrFaultsComesOut(long seed) throws IOException {
        Random random = new Random(seed);
        ObjectNode kept = (ObjectNode) JSON.readTree(Files.readString(Path.of("shared", "studies", "version-5.json")));
        int answered = 0;
        int plates = 0;
        for (int i = 0; i < Integer.getInteger("midplate.fuzz", 150); i++) {
            byte[] file = bytes(random);
            ObjectNode request =
                    JSON.createObjectNode().put("base64", Base64.getEncoder().encodeToString(file));
            if (random.nextInt(3) == 0) {
                ObjectNode columns = request.putObject("columns");
                columns.put("rf", random.nextInt(6))
                        .put("spot", 6 + random.nextInt(3))
                        .putNull("lane");
            }
            if (random.nextInt(4) == 0) {
                request.set("into", kept);
            }
            String json;
            try {
                json = IMPORTS.of(request.toString().getBytes(StandardCharsets.UTF_8));
            } catch (BadInput bad) {
                assertTrue(bad.faults().stream()
                        .noneMatch(fault ->
                                fault.message().isBlank() || fault.todo().isBlank()));
                continue;
            }
            JsonNode answer = JSON.readTree(json);
            answered++;
            plates += answer.path("plates").size();
            assertEquals(
                    List.of(), Schemas.broken("import-answer", json), () -> new String(file, StandardCharsets.UTF_8));
            canBeKept(kept.deepCopy(), answer, request.has("into"));
        }
        assertTrue(answered > 50 && plates > 20, answered + " answered, " + plates + " plates");
    }

    /** On the sheet of a study they make one that is read without a fault. */
    private static void canBeKept(ObjectNode study, JsonNode answer, boolean into) {
        if (answer.path("spots").isEmpty()) {
            return;
        }
        study.set("spots", answer.path("spots"));
        ArrayNode plates = into ? (ArrayNode) study.path("plates") : study.putArray("plates");
        answer.path("plates").forEach(plates::add);
        if (!into) {
            ((ObjectNode) study.path("next")).putArray("apart");
            study.putArray("advices");
            study.remove("column");
        }
        FaultList faults = new FaultList(Texts.english());
        new StudyReader(SOLVENTS, FunctionalGroups.builtIn(), faults).read(JsonText.read(study.toString(), faults));
    }

    private static final SolventCatalogue SOLVENTS = SolventCatalogue.builtIn();
}
