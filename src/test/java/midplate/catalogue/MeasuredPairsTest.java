package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Curve files")
class MeasuredPairsTest extends CopiedCurves {
    private static final String ACETATE = "silica-hexane-ethyl-acetate.json";
    private static final String COVARIANCE =
            "cc, cs, ct, ss, st, tt of a covariance; cc at least 0.0001, ss 0 or at least 0.0001, tt 0 or at least 0.0025";

    @Test
    void thePackedOnesAreRead() {
        MeasuredPairs pairs = MeasuredPairs.read(folder, CATALOGUE);
        assertEquals(MeasuredPairs.builtIn(CATALOGUE), pairs);
        assertEquals(
                List.of(
                        "silica-hexane-ethyl-acetate",
                        "silica-hexane-diethyl-ether",
                        "silica-dichloromethane-methanol"),
                pairs.pairs().stream().map(PlatePair::id).toList());
        JointTraits joint = pairs.joint().orElseThrow();
        assertEquals(6, joint.reaches().size(), "each pair from each other");
        assertEquals(6, joint.differences().size(), "and what groups do from each to each");
        assertEquals(joint.axes().size(), joint.means().size());
    }

    // Facts of the open measurements (Xu et al., Chem 8 (2022) 3202): the shares at which plates were run.
    @Test
    void thePackedOnesHaveTheSharesThatWereMeasured() {
        PlatePair acetate = MeasuredPairs.builtIn(CATALOGUE).pairs().get(0);
        assertEquals(List.of(0.0, 1.96, 4.76, 16.67, 25.0, 50.0, 66.67, 100.0), acetate.percentStrong());
        assertEquals(0, acetate.strength().get(4), "0 at the reference share");
        assertEquals(List.of("Xu2022", "XuProtocol2022"), acetate.provenance().sources());
        assertEquals(64, acetate.provenance().inputSha256().length());
    }

    // Each line: what is exchanged for what, in one file; the field named; what came; what is allowed.
    @ParameterizedTest(name = "{2}: {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"sorbent\" : \"silica\" | \"sorbent\" : \"paper\" | sorbent | paper | silica or alumina",
                "\"weak\" : \"hexane\" | \"weak\" : \"octane\" | weak | octane | the id of a solvent of solvents.csv",
                "\"strong\" : \"ethyl-acetate\" | \"strong\" : \"acetone\" | strong | silica-hexane-acetone"
                        + " | the pair that index.json names: silica-hexane-ethyl-acetate",
                "\"strong\" : \"ethyl-acetate\" | \"strong\" : 7 | strong | 7 | a text",
                "\"from\" : 0 | \"from\" : -1 | trusted.from | -1 | a number in [0.0, 100.0]",
                "\"to\" : 100 | \"to\" : 101 | trusted.to | 101 | a number in [0.0, 100.0]",
                "\\[ 0, 1.96, 4.76 | [ 0, 5.96, 4.76 | percentStrong[2] | 4.76 | not below the number before it",
                "\\[ 0, 1.96 | [ 0, \"1.96\" | percentStrong[1] | \"\"\"1.96\"\"\" | a number in [0.0, 100.0]",
                "66.67, 100 \\] | 66.67, 120 ] | percentStrong[7] | 120 | a number in [0.0, 100.0]",
                "\"strength\" : \\[ -3[^,]*, | \"strength\" : [ | strength | 7 numbers"
                        + " | 8 numbers, as many as percentStrong",
                "\"strength\" : \\[ -3[^,]*, [^,]*, | \"strength\" : [ 3, 2.5, | strength[1] | 2.5"
                        + " | not below the number before it",
                "\"strength\" : \\[ -3[^,]*, | \"strength\" : [ null, | strength[0] | null"
                        + " | a number in [-50.0, 50.0]",
                "\"strengthError\" : \\[ [^,]*, | \"strengthError\" : [ -0.05, | strengthError[0] | -0.05"
                        + " | a number in [0.0, 50.0]",
                "\"noiseScale\" : \\[ [^,]*, | \"noiseScale\" : [ 0, | noiseScale[0] | 0 | a number in [1.0E-6, 1.0]",
                "\"noiseLeftAtLines\" : [^,]*, | \"noiseLeftAtLines\" : 1.2, | noiseLeftAtLines | 1.2"
                        + " | a number in [1.0E-6, 1.0]",
                "\"stretchStart\" : [^,]*, | \"stretchStart\" : 0.3, | stretchStart | 0.3 | a number in [0.0, 0.2]",
                "\"stretchFront\" : [^,]*, |  | stretchFront | nothing | this field",
                "\"compounds\" : [0-9]* | \"compounds\" : 17.5 | fit.compounds | 17.5 | a whole number of 1 or more",
                "\"readings\" : [0-9]* | \"readings\" : 0 | fit.readings | 0 | a whole number of 1 or more",
                "\"residual\" : [0-9.]* | \"residual\" : 7 | fit.residual | 7 | a number in [0.0, 1.0]",
                "\"Xu2022\" | \"Nobody1900\" | provenance.sources | Nobody1900 | keys of sources.json",
                "\\[ \"Xu2022\", \"XuProtocol2022\" \\] | \"Xu2022\" | provenance.sources | \"\"\"Xu2022\"\"\""
                        + " | a list of texts",
                "\"inputSha256\" : \"[^\"]*\" | \"inputSha256\" : \" \" | provenance.inputSha256 | \"\"\" \"\"\""
                        + " | a text",
                "\"hold\" : \\[[^\\]]*\\],  |  | hold | nothing | this field",
                "\"hold\" : \\[ [^,]*, | \"hold\" : [ | hold | 7 numbers | 8 numbers, as many as percentStrong",
                "\"hold\" : \\[ [^,]*, | \"hold\" : [ 0.05, | hold[0] | 0.05 | a number in [0.1, 10.0]",
                "\"early\" : \\[[^\\]]*\\],  |  | early | nothing | this field",
                "\"early\" : \\[ [^,]*, | \"early\" : [ 0, 0, | early | 9 numbers | 8 numbers, as many as percentStrong",
                "\"early\" : \\[ [^,]*, | \"early\" : [ -0.1, | early[0] | -0.1 | a number in [0.0, 50.0]",
                "\"atLines\" : [^,]*, |  | atLines | nothing | this field",
                "\"atLines\" : [^,]*, | \"atLines\" : 0.11, | atLines | 0.11 | a number in [0.0, 0.1]",
                "\"bells\" : | \"others\" : | traits.bells | nothing | this field",
                "\"bells\" : \\[ | \"bells\" : 7, \"others\" : [ | traits.bells | 7 | a list",
                "\"bells\" : \\[ | \"bells\" : [ 7, | traits.bells[0] | 7 | an object",
                "\"bells\" : \\[ | \"bells\" : [], \"others\" : [ | traits.bells | weights that sum to 0.0"
                        + " | weights that sum to 1",
                "\"weight\" : [^,]*, |  | traits.bells[0].weight | nothing | this field",
                "\"weight\" : [^,]*, | \"weight\" : -0.1, | traits.bells[0].weight | -0.1 | a number in [0.0, 1.0]",
                "\"middle\" : \\[[^\\]]* | \"middle\" : [ 1, 2 | traits.bells[0].middle | [1.0, 2.0]"
                        + " | c in [-10, 10], s in [0.3, 2], t in [-3, 3]",
                "\"middle\" : \\[ [^,]*, | \"middle\" : [ 51, | traits.bells[0].middle[0] | 51"
                        + " | a number in [-50.0, 50.0]",
                "\"covariance\" : \\[[^\\]]* | \"covariance\" : [ 1, 0, 0, 1, 0 | traits.bells[0].covariance"
                        + " | [1.0, 0.0, 0.0, 1.0, 0.0] | " + COVARIANCE,
                "\"covariance\" : \\[[^\\]]* | \"covariance\" : [ 0, 0, 0, 1, 0, 1 | traits.bells[0].covariance"
                        + " | [0.0, 0.0, 0.0, 1.0, 0.0, 1.0] | " + COVARIANCE,
                "\"covariance\" : \\[[^\\]]* | \"covariance\" : [ 1, 0, 0, -1, 0, 1 | traits.bells[0].covariance"
                        + " | [1.0, 0.0, 0.0, -1.0, 0.0, 1.0] | " + COVARIANCE,
                "\"covariance\" : \\[[^\\]]* | \"covariance\" : [ 1, 2, 0, 1, 0, 1 | traits.bells[0].covariance"
                        + " | [1.0, 2.0, 0.0, 1.0, 0.0, 1.0] | " + COVARIANCE,
                "\"covariance\" : \\[[^\\]]* | \"covariance\" : [ 1, 1, 0, 1, 0, 1 | traits.bells[0].covariance"
                        + " | [1.0, 1.0, 0.0, 1.0, 0.0, 1.0] | " + COVARIANCE,
                "\"covariance\" : \\[[^\\]]* | \"covariance\" : [ 1, 0, 0.5, 1, 0, 0 | traits.bells[0].covariance"
                        + " | [1.0, 0.0, 0.5, 1.0, 0.0, 0.0] | " + COVARIANCE,
                // each pair of traits alone would do; all three do not: 1 + 2·0.9·0.9·(−0.9) − 3·0.81 < 0
                "\"covariance\" : \\[[^\\]]* | \"covariance\" : [ 1, 0.9, 0.9, 1, -0.9, 1"
                        + " | traits.bells[0].covariance | [1.0, 0.9, 0.9, 1.0, -0.9, 1.0] | " + COVARIANCE,
                "\"traits\" : \\{ | \"traits\" : 3, \"other\" : { | traits | 3 | an object",
            })
    void aMistakeIsNamedByFileAndField(String pattern, String replacement, String field, String came, String allowed)
            throws IOException {
        edit(ACETATE, pattern, replacement == null ? "" : replacement);
        String message = fault();
        String shown = came.replace("\"\"\"", "\"");
        assertEquals(
                ACETATE + ", row " + field + ", column -: \"" + shown + "\". Allowed: " + allowed
                        + ". Make the file again with the command calibrate, or put the packed one back.",
                message);
    }

    @Test
    void aTraitInWhichOnlySomeCompoundsDifferIsNamed() throws IOException {
        edit(ACETATE, "\"covariance\" : \\[[^\\]]*", "\"covariance\" : [ 1, 0, 0, 1, 0, 0");
        String start = ACETATE + ", row traits.bells[1].covariance, column -: \"[";
        assertTrue(
                fault().startsWith(start)
                        && fault().contains("Allowed: the same variances 0 as in the curves before it. Make"),
                fault());
    }

    @Test
    void weightsThatDoNotSumToOneAreNamed() throws IOException {
        edit(ACETATE, "\"weight\" : [^,]*,", "\"weight\" : 0.5,");
        String start = ACETATE + ", row traits.bells, column -: \"weights that sum to 1.";
        assertTrue(fault().startsWith(start) && fault().contains("Allowed: weights that sum to 1."), fault());
    }

    @ParameterizedTest(name = "{1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"pair\" : \"silica-hexane-ethyl-acetate\" | joint.axes[0].pair | water | one of [silica-hexane-ethyl-acetate",
                "\"trait\" : \"c\" | joint.axes[0].trait | water | one of [c, s, t]",
                "\"means\" : [^,]* | joint.means[0] | 51 | a number in [-50.0, 50.0]",
                "\"from\" : \"silica-hexane-ethyl-acetate\" | reaches[0].from | water | one of [silica-hexane-ethyl-acetate",
                "\"to\" : \"silica-hexane-diethyl-ether\" | reaches[0].to | water | one of [silica-hexane-ethyl-acetate",
                "\"lowest\" : [^,]* | reaches[0].lowest | 51 | a number in [-50.0, 50.0]",
                "\"factor\" : [0-9.]* | joint.width.factor | 0 | a number in [1.0E-9, 50.0]",
                "\"slope\" : [-0-9.]* | joint.width.slope | 3 | a number in [-2.5, 2.5]",
                "\"compounds\" : [0-9]* | reaches[0].compounds | -3 | a whole number of 1 or more",
                "\"differences\" : \"differences.json\" | differences | water | differences.json",
            })
    void aMistakeInTheIndexIsNamed(String pattern, String field, String came, String allowed) throws IOException {
        String name = pattern.substring(0, pattern.indexOf(':') + 2);
        String list = pattern.contains("means") ? "[ " : "";
        edit("index.json", pattern, name + list + (came.equals("water") ? "\"water\"" : came));
        String start = "index.json, row " + field + ", column -: \"" + came + "\". Allowed: " + allowed;
        assertEquals(start, fault().substring(0, Math.min(start.length(), fault().length())));
    }

    @Test
    void aCovarianceThatIsNoneIsNamed() throws IOException {
        edit("index.json", "\"covariance\" : \\[ [^,]*", "\"covariance\" : [ -1");
        assertTrue(
                fault().startsWith(
                                "index.json, row joint.covariance, column -: \"no covariance\". Allowed: a covariance"),
                fault());
        edit("index.json", "\"covariance\" : \\[ [^,]*,", "\"covariance\" : [");
        assertTrue(fault().contains("\"27 numbers\". Allowed: 28 numbers, for 7 of them"), fault());
    }

    @ParameterizedTest(name = "{1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"part\" : \"constant\" | differences[0].parts[0].part | water | one of [constant",
                "\"residual\" : [^,]* | differences[0].residual | 0 | a number in [1.0E-9, 50.0]",
                "\"unseen\" : [^,]* | differences[0].unseen | -1 | a number in [0.0, 50.0]",
            })
    void aMistakeInWhatGroupsDoBetweenPairsIsNamed(String pattern, String field, String came, String allowed)
            throws IOException {
        String name = pattern.substring(0, pattern.indexOf(':') + 2);
        edit("differences.json", pattern, name + (came.equals("water") ? "\"water\"" : came));
        String start = "differences.json, row " + field + ", column -: \"" + came + "\". Allowed: " + allowed;
        assertEquals(start, fault().substring(0, Math.min(start.length(), fault().length())));
    }

    @Test
    void aMissingFileIsNamed() throws IOException {
        Files.delete(folder.resolve(ACETATE));
        assertTrue(fault().startsWith(ACETATE + ", row -, column -: "), fault());
        assertTrue(fault().contains("Allowed: a readable file. Put the file back"), fault());
        Files.delete(folder.resolve("index.json"));
        assertTrue(fault().startsWith("index.json, row -, column -: "), fault());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "7", "{", "{} {}", "{\"pairs\": [], \"pairs\": [], \"structures\": []}", "NaN"})
    void whatIsNoObjectIsNamed(String text) throws IOException {
        Files.writeString(folder.resolve("index.json"), text);
        assertTrue(fault().startsWith("index.json, row -, column -: "), fault());
        assertTrue(fault().contains("Allowed: one JSON object. "), fault());
    }

    @Test
    void bytesThatAreNoUtf8AreRefused() throws IOException {
        Files.write(folder.resolve("index.json"), new byte[] {'{', (byte) 0xfc, '}'});
        assertTrue(fault().startsWith("index.json") && fault().contains("text in UTF-8"), fault());
    }
}
