package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The functional groups")
class BrokenGroupsTest {
    private static final Path PACKED = Path.of("solvent-data");

    @TempDir
    Path folder;

    private BadSolventData afterChanging(String file, String from, String to) throws IOException {
        Files.createDirectories(folder.resolve("curves"));
        for (Path source : List.of(PACKED.resolve("groups.csv"), PACKED.resolve("sources.json"))) {
            Files.copy(source, folder.resolve(source.getFileName()));
        }
        try (Stream<Path> files = Files.list(PACKED.resolve("curves"))) {
            for (Path source : files.toList()) {
                Files.copy(source, folder.resolve("curves").resolve(source.getFileName()));
            }
        }
        Path changed = folder.resolve(file);
        String text = Files.readString(changed);
        assertTrue(text.contains(from), from);
        Files.writeString(changed, text.replaceFirst(Pattern.quote(from), to));
        return assertThrows(BadSolventData.class, () -> {
            FunctionalGroups.read(DataFolder.of(folder), SourceReader.read(DataFolder.of(folder)));
            MeasuredPairs.read(folder.resolve("curves"), SolventCatalogue.builtIn());
        });
    }

    @Test
    void eachIdStandsOnceAndTheEnergiesHaveTheirBasis() {
        FunctionalGroups groups = FunctionalGroups.builtIn();
        assertEquals(groups.ids().size(), groups.ids().stream().distinct().count());
        for (FunctionalGroup group : groups.all()) {
            assertEquals(group.basis() == Basis.MEMORY, group.source().key().equals("Snyder1968"), group.id());
        }
        assertTrue(groups.find(FunctionalGroups.UNRECOGNISED).isPresent());
    }

    @ParameterizedTest
    @CsvSource({
        "'aryl-ketone,group', 'aryl ketone,group', id",
        "'aryl-ketone,group', 'aldehyde,group', id",
        "'aryl-ketone,group', 'aryl-ketone,shape', kind",
        "'4.69,Snyder1968', 'much,Snyder1968', energy",
        "'4.69,Snyder1968', '469,Snyder1968', energy",
        "'4.69,Snyder1968', '4.69,Nobody1900', source",
        "'4.69,Snyder1968,memory,M', '4.69,Snyder1968,memory,', confidence"
    })
    void aBrokenRowIsNamedWithItsColumn(String from, String to, String column) throws IOException {
        BadSolventData bad = afterChanging("groups.csv", from, to);
        assertTrue(bad.getMessage().contains("groups.csv") && bad.getMessage().contains(column), bad.getMessage());
    }

    @Test
    void aPairThatTheIndexNamesForStructuresMustBeThere() throws IOException {
        BadSolventData bad = afterChanging(
                "curves/index.json", "\"structures\" : [ \"silica-hexane", "\"structures\" : [ \"silica-nothing");
        assertTrue(
                bad.getMessage().contains("structures") && bad.getMessage().contains("silica-nothing"),
                bad.getMessage());
    }

    @ParameterizedTest
    @CsvSource({
        "'\"part\" : \"constant\"', '\"part\" : \"other\"', effects",
        "'\"part\" : \"aryl-ketone\"', '\"part\" : \"nonsense\"', nonsense",
        "'\"part\" : \"alkyne\",\n    \"mean\"', '\"part\" : \"other\",\n    \"mean\"', typical",
        "'\"residualC\" : ', '\"residualC\" : -', residualC",
        "'\"pair\" : \"silica-hexane-ethyl-acetate\"', '\"pair\" : \"silica-hexane-ether\"', pair",
        "'\"covarianceC\" : [ ', '\"covarianceC\" : [ 1, ', covarianceC",
        "'\"scale\" : ', '\"scale\" : -', scale"
    })
    void fittedEffectsThatCannotBeAreNamed(String from, String to, String field) throws IOException {
        BadSolventData bad = afterChanging("curves/silica-hexane-ethyl-acetate-groups.json", from, to);
        assertTrue(bad.getMessage().contains(field), bad.getMessage());
        assertTrue(bad.getMessage().contains("groups.json"), bad.getMessage());
    }
}
