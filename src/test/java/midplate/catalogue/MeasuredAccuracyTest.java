package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The accuracy that is packed")
class MeasuredAccuracyTest {
    @Test
    void isWhatTheFileSaysOfTheProgramOnOneLine() throws IOException {
        JsonMapper json = new JsonMapper();
        assertFalse(MeasuredAccuracy.json().contains("\n"));
        JsonNode file = json.readTree(Files.readString(Path.of("solvent-data", "accuracy.json")));
        JsonNode told = json.readTree(MeasuredAccuracy.json());
        assertEquals(file.get("setting"), told.get("setting"));
        for (String part : List.of("contenders", "structures")) {
            JsonNode program = told.get(part);
            assertEquals(1, program.size(), part);
            String name = program.fieldNames().next();
            assertEquals(file.get(part).fieldNames().next(), name);
            assertEquals(file.get(part).get(name), program.get(name));
        }
        assertEquals("Midplate", told.get("contenders").fieldNames().next());
    }
}
