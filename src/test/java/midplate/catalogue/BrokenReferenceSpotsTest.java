package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A broken table of reference spots is refused by its row")
class BrokenReferenceSpotsTest extends CopiedSolventData {
    private String broken(String from, String to) throws IOException {
        edit(HrfSystems.FILE, text -> {
            assertTrue(text.contains(from), from);
            return text.replace(from, to);
        });
        DataFolder copy = DataFolder.of(folder);
        return assertThrows(RuntimeException.class, () -> HrfSystems.read(copy, SourceReader.read(copy)))
                .getMessage();
    }

    @Test
    void aValueOffTheScaleIsRefused() throws IOException {
        String message = broken("desipramine,11,", "desipramine,110,");
        assertTrue(message.startsWith("reference-spots.csv, row 10, column hrf: \"110\""), message);
    }

    @Test
    void spotsOutOfOrderAreRefused() throws IOException {
        String message = broken("physostigmine,36,", "physostigmine,60,");
        assertTrue(message.startsWith("reference-spots.csv, row 12, column hrf: \"54\""), message);
    }

    @Test
    void aSystemWithTwoEluentsIsRefused() throws IOException {
        String message = broken(
                "TL,acetone,\"silica G, 0.25 mm; plate dipped in 0.1 mol/l potassium hydroxide in methanol and dried before spotting\",procaine",
                "TL,acetone / water,\"silica G, 0.25 mm; plate dipped in 0.1 mol/l potassium hydroxide in methanol and dried before spotting\",procaine");
        assertTrue(message.contains("column system") && message.contains("Write all rows alike."), message);
    }

    @Test
    void aSourceThatIsNotListedIsRefused() throws IOException {
        String message = broken("papaverine,47,ClarkesAnalysis", "papaverine,47,Nobody");
        assertTrue(message.contains("column source: \"Nobody\""), message);
    }

    @Test
    void theFileAsItIsIsRead() {
        DataFolder copy = DataFolder.of(folder);
        assertEquals(
                HrfSystems.builtIn().all(),
                HrfSystems.read(copy, SourceReader.read(copy)).all());
    }
}
