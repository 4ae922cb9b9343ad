package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import midplate.catalogue.ColumnLaw;
import midplate.catalogue.SolventCatalogue;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The packed law of columns")
class PackedColumnTest {
    private static final Path PACKED = Path.of("solvent-data/curves/column.json");

    @TempDir
    Path folder;

    // Regression only: what was read is written as it was.
    @Test
    void isWrittenAgainAsItWas() throws IOException {
        ColumnLaw law = ColumnLaw.builtIn(SolventCatalogue.builtIn());
        ColumnLawFile.write(law, folder);
        assertArrayEquals(Files.readAllBytes(PACKED), Files.readAllBytes(folder.resolve("column.json")));
        assertEquals(law, ColumnLaw.read(folder, SolventCatalogue.builtIn()).orElseThrow());
    }

    @Test
    void isMadeAgainByteForByteFromTheMeasurements() throws IOException {
        Path open = OpenData.folder();
        ColumnLaw law = ColumnCalibration.fit(
                OpenMeasurements.read(open),
                ColumnMeasurements.read(open).orElseThrow(),
                Plates.CURVES,
                "calibrate FOLDER");
        ColumnLawFile.write(law, folder);
        assertEquals(Files.readString(PACKED), Files.readString(folder.resolve("column.json")));
    }

    // φ agrees with the published bed, eluent in 0.8 of it and 0.5 g of silica in a millilitre: 1.6 ml/g
    @Test
    void itsVoidIsNearThePublishedOne() {
        ColumnLaw law = ColumnLaw.builtIn(SolventCatalogue.builtIn());
        assertEquals(1.6, law.voidMlPerGram(), 0.3);
        assertEquals(List.of(4.0, 8.0, 25.0, 40.0), law.sizes());
    }

    @Test
    void holdsNothingOfTheMachine() throws IOException {
        String text = Files.readString(PACKED);
        assertTrue(text.endsWith("}\n") && !text.contains("\r"));
        assertFalse(Pattern.compile("20[0-9]{2}-[0-9]{2}").matcher(text).find(), "no date");
        assertFalse(text.contains("shared") || text.contains("tmp"), "no path");
    }

    @Test
    void aFolderWithoutOneHasNone() {
        assertTrue(ColumnLaw.read(folder, SolventCatalogue.builtIn()).isEmpty());
    }
}
