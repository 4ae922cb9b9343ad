package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The accuracy that is packed")
class MeasuredAccuracyTest {
    @Test
    void isTheFileOnOneLine() throws IOException {
        JsonMapper json = new JsonMapper();
        assertFalse(MeasuredAccuracy.json().contains("\n"));
        assertEquals(
                json.readTree(Files.readString(Path.of("solvent-data", "accuracy.json"))),
                json.readTree(MeasuredAccuracy.json()));
    }
}
