package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The file of pairs without measurements")
class TheoryFileTest extends CopiedCurves {

    // α' of silica is published as 0.57 to 0.83 (Snyder 1968, memory H).
    @Test
    void thePackedOneHasAnActivityOfSilicaAndACheckOfEachKind() {
        TheoryStrength theory = MeasuredPairs.builtIn(CATALOGUE).theory().orElseThrow();
        assertEquals(StrengthSeries.NEWER, theory.series());
        assertTrue(theory.activity() >= 0.57 && theory.activity() <= 0.83, "α' " + theory.activity());
        for (TheoryKind kind : TheoryKind.values()) {
            TheoryCheck check = theory.check(kind);
            assertEquals(kind, check.kind());
            assertEquals("silica-hexane-ethyl-acetate", check.from());
            double least = Math.hypot(check.bias(), check.scatter());
            assertEquals(least, check.deviationC(), 0.1 * least, "root mean square of δ, " + kind);
        }
        assertEquals(
                List.of(33.33, 50.0), theory.check(TheoryKind.ALKANE_LOCALIZING).percents());
        assertEquals(List.of(0.0), theory.check(TheoryKind.OTHER).percents());
    }

    // Own counts on the table of Xu et al., Chem 8 (2022) 3202, with Python: logit of Rf in dichloromethane less that
    // in 16.7 % (25 %) ethyl
    // acetate, both Rf between 0.03 and 0.97: +0.17 (−0.37) on average, 0.89 apart; in 50 % ether less that in 25 % (50
    // %) ethyl acetate:
    // +0.05 (−1.35), 0.32 apart. By the law dichloromethane is like 20 and half ether like 27 % of ethyl acetate; spots
    // at the lines, which the
    // counts leave out, lie farther apart.
    @Test
    void thePackedChecksAgreeWithPlainCounts() {
        TheoryStrength theory = MeasuredPairs.builtIn(CATALOGUE).theory().orElseThrow();
        TheoryCheck alone = theory.check(TheoryKind.OTHER);
        assertEquals(0, alone.bias(), 0.3);
        assertTrue(alone.scatter() > 0.8 && alone.scatter() < 1.3, "scatter " + alone.scatter());
        TheoryCheck ether = theory.check(TheoryKind.ALKANE_LOCALIZING);
        assertTrue(ether.bias() < 0.1 && ether.bias() > -0.5, "bias " + ether.bias());
        assertTrue(ether.scatter() > 0.25 && ether.scatter() < 0.45, "scatter " + ether.scatter());
    }

    @Test
    void anOlderFolderHasNone() throws IOException {
        edit("index.json", ",\\s*\"theory\" : \"[^\"]*\"", "");
        Files.delete(folder.resolve("theory.json"));
        MeasuredPairs read = MeasuredPairs.read(folder, CATALOGUE);
        assertEquals(Optional.empty(), read.theory());
        assertEquals(3, read.pairs().size());
    }

    @Test
    void aMissingFileIsNamed() throws IOException {
        Files.delete(folder.resolve("theory.json"));
        assertTrue(fault().startsWith("theory.json, row -, column -: "), fault());
        assertTrue(fault().contains("Allowed: a readable file. Put the file back"), fault());
    }

    @Test
    void anotherNameOfTheFileIsNamed() throws IOException {
        edit("index.json", "\"theory.json\"", "\"thoughts.json\"");
        assertTrue(
                fault().startsWith(
                                "index.json, row theory, column -: \"thoughts.json\". Allowed: one of [theory.json]"),
                fault());
    }

    // Each line: what is exchanged for what; the field named; what came; what is allowed.
    @ParameterizedTest(name = "{2}: {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"newer\" | \"newest\" | series | newest | one of [older, newer]",
                "\"activity\" : [^,]* | \"activity\" : 1.2 | activity | 1.2 | a number in [1.0E-6, 1.0]",
                "\"activity\" : [^,]* | \"activity\" : 0 | activity | 0 | a number in [1.0E-6, 1.0]",
                "\"slope\" : [^,]* | \"slope\" : -10 | slope | -10 | a number in [1.0E-6, 500.0]",
                "\"slope\" : [^,]*, |  | slope | nothing | this field",
                "\"checks\" : | \"others\" : | checks | nothing | this field",
                "\"kind\" : \"other\" | \"kind\" : \"alcohol\" | checks | [alkane-localizing, alcohol, alcohol]"
                        + " | one for each of [alkane-localizing, other, alcohol], in this order",
                "\"kind\" : \"other\" | \"kind\" : \"ether\" | checks[1].kind | ether"
                        + " | one of [alkane-localizing, other, alcohol]",
                "\"pair\" : \"[^\"]*\" | \"pair\" : \"water\" | checks[0].pair | water | one of"
                        + " [silica-hexane-ethyl-acetate, silica-hexane-diethyl-ether, silica-dichloromethane-methanol]",
                "\"from\" : \"[^\"]*\" | \"from\" : 7 | checks[0].from | 7 | a text",
                "33.33, 50 | 33.33, 133 | checks[0].percents[1] | 133 | a number in [0.0, 100.0]",
                "33.33, 50 | 33.33, 20 | checks[0].percents[1] | 20 | not below the number before it",
                "\"compounds\" : [0-9]* | \"compounds\" : 0 | checks[0].compounds | 0 | a whole number of 1 or more",
                "\"bias\" : [^,]* | \"bias\" : \"none\" | checks[0].bias | \"\"\"none\"\"\" | a number in [-50.0, 50.0]",
                "\"scatter\" : [^,]* | \"scatter\" : -1 | checks[0].scatter | -1 | a number in [0.0, 50.0]",
                "\"deviationC\" : [^,]* | \"deviationC\" : 0 | checks[0].deviationC | 0 | a number in [1.0E-6, 50.0]",
                "\"deviationS\" : [^ ]* | \"deviationS\" : null | checks[0].deviationS | null"
                        + " | a number in [1.0E-6, 50.0]",
            })
    void aMistakeIsNamedByFileAndField(String pattern, String replacement, String field, String came, String allowed)
            throws IOException {
        edit("theory.json", pattern, replacement == null ? "" : replacement);
        assertEquals(
                "theory.json, row " + field + ", column -: \"" + came.replace("\"\"\"", "\"") + "\". Allowed: "
                        + allowed + ". Make the file again with the command calibrate, or put the packed one back.",
                fault());
    }
}
