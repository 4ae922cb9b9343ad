package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A broken table of compounds of lessons is refused by its row")
class BrokenTeachingCompoundsTest extends CopiedSolventData {
    private String broken(String from, String to) throws IOException {
        edit(TeachingCompounds.FILE, text -> {
            assertTrue(text.contains(from), from);
            return text.replace(from, to);
        });
        DataFolder copy = DataFolder.of(folder);
        return String.valueOf(
                assertThrows(BadSolventData.class, () -> TeachingCompounds.read(copy, SourceReader.read(copy)))
                        .getMessage());
    }

    @Test
    void aCompoundWrittenTwiceIsRefused() throws IOException {
        String message = broken("\nanthracene,", "\nbiphenyl,");
        assertTrue(message.startsWith("teaching-compounds.csv, row 3, column id: \"biphenyl\""), message);
        assertTrue(message.contains("Write each compound once."), message);
    }

    @Test
    void aWayOfSeeingThatIsNotKnownIsRefused() throws IOException {
        String message = broken("biphenyl,c1ccc(cc1)-c1ccccc1,uv-254", "biphenyl,c1ccc(cc1)-c1ccccc1,uv-366");
        assertTrue(message.startsWith("teaching-compounds.csv, row 2, column seen: \"uv-366\""), message);
    }

    @Test
    void aStructureLeftOutIsRefused() throws IOException {
        String message = broken("thymol,Cc1ccc(C(C)C)c(O)c1", "thymol,");
        assertTrue(message.startsWith("teaching-compounds.csv, row 22, column smiles"), message);
    }

    @Test
    void aNoteLeftOutIsRefused() throws IOException {
        String message = broken(",stays low in hexane and ethyl acetate", ",");
        assertTrue(message.startsWith("teaching-compounds.csv, row 30, column note"), message);
    }

    @Test
    void aSourceThatIsNotListedIsRefused() throws IOException {
        String message = broken("anisole,COc1ccccc1,uv-254,Midplate", "anisole,COc1ccccc1,uv-254,Nobody");
        assertTrue(message.startsWith("teaching-compounds.csv, row 5, column source: \"Nobody\""), message);
    }

    @Test
    void aBasisThatIsNoneIsRefused() throws IOException {
        String message = broken("anisole,COc1ccccc1,uv-254,Midplate,own", "anisole,COc1ccccc1,uv-254,Midplate,heard");
        assertTrue(message.startsWith("teaching-compounds.csv, row 5, column basis: \"heard\""), message);
    }

    @Test
    void theFileAsItIsIsRead() {
        DataFolder copy = DataFolder.of(folder);
        assertEquals(
                TeachingCompounds.builtIn().all(),
                TeachingCompounds.read(copy, SourceReader.read(copy)).all());
    }
}
