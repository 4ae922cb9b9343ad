package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Folds of structures")
class FoldTest {
    // Own: first byte of the SHA-256 of "fold/" and the SMILES, worked out with Python's hashlib.
    @ParameterizedTest
    @CsvSource({"c1ccccc1, 169", "CCO, 79", "COc1ccccc1, 3", "O=C(O)c1ccccc1, 27"})
    void theFirstByteOfTheDigestDecides(String smiles, int firstByte) {
        for (int count = 2; count <= 20; count++) {
            assertTrue(new Fold(firstByte % count, count).holds(smiles), smiles + " of " + count);
        }
    }

    @Test
    void eachStructureIsInOneFold() {
        for (int i = 0; i < 200; i++) {
            String smiles = "C".repeat(1 + i);
            long homes = IntStream.range(0, 5)
                    .filter(index -> new Fold(index, 5).holds(smiles))
                    .count();
            assertEquals(1, homes);
        }
    }

    @Test
    void isReadAsItIsWritten() {
        assertEquals(new Fold(1, 5), Fold.of("1/5"));
        assertEquals("1/5", Fold.of("1/5").toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5/5", "1", "1/1", "0/21", "-1/5", "1/5/5", "a/5", "999/5"})
    void whatIsNoFoldIsRefusedWithWhatIsAllowed(String text) {
        Exception refusal = assertThrows(IllegalArgumentException.class, () -> Fold.of(text));
        assertTrue(refusal.getMessage().contains("came " + text + ";"), refusal.getMessage());
        assertTrue(refusal.getMessage().contains("N in [2, 20]"), refusal.getMessage());
    }
}
