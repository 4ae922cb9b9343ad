package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import midplate.catalogue.ColumnLaw;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.structure.Structures;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packed curves are those of the open measurements (Xu et al., Chem 8 (2022) 3202, development part). */
@DisplayName("The packed curves")
class PackedCurvesTest {
    @TempDir
    Path folder;

    @Test
    void areWhatAFreshCalibrationWrites() throws IOException {
        CalibrationFiles.write(
                PairCalibration.fit(
                        OpenData.read(),
                        SolventCatalogue.builtIn(),
                        "calibrate FOLDER",
                        Form.THREE_TRAITS,
                        FunctionalGroups.builtIn(),
                        Structures.of(FunctionalGroups.builtIn())::counts,
                        GroupForm.ENERGIES),
                folder);
        Path packed = Path.of("solvent-data", "curves");
        List<String> ofPlates = names(packed).stream()
                .filter(name -> !name.equals(ColumnLaw.FILE))
                .toList();
        assertEquals(ofPlates, names(folder), "the law of columns has a test of its own");
        for (String name : names(folder)) {
            assertEquals(
                    Files.readString(packed.resolve(name)),
                    Files.readString(folder.resolve(name)),
                    name + ": make it anew with the command calibrate");
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
