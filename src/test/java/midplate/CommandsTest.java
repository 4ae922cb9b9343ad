package midplate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command line as a person uses it; the readings are invented. */
class CommandsTest {
    private record Said(int status, String out, String err) {}

    private static Said say(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Commands.run(new PrintWriter(out), new PrintWriter(err), arguments);
        return new Said(status, out.toString(), err.toString());
    }

    /** Splits at bars, so that blanks can stand in an argument. */
    private static Said line(String arguments) {
        return say(Arrays.stream(arguments.split("\\|", -1))
                .filter(argument -> !argument.isEmpty())
                .toArray(String[]::new));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "advize",
                "advise",
                "advise|--run",
                "advise|--run|nonsense",
                "advise|--run|10: A=abc",
                "advise|--run|10: A=1.2",
                "advise|--run|101: A=0.2",
                "advise|--run|10: A=0.2|--window|0.8-0.2",
                "advise|--run|10: A=0.2|--window|wide",
                "advise|--run|10: A=0.2|--weak|water",
                "advise|--run|10: A=0.2|--weak|methanol|--strong|hexane",
                "advise|--run|10: A=0.2|--setting|home",
                "advise|--run|10: A=0.2|--amount|much",
                "advise|--run|10: A=0.2|--amount|-3",
                "advise|--run|10: A=0.2|--graduation|20",
                "advise|--run|10: A=0.2|--colour|red",
                "advise|--smiles|A",
                "advise|--smiles|A=CC(=O",
                "advise|--class|A=keton",
                "advise|--class|A=",
                "advise|--smiles|=CC",
                "advise|--smiles|CC(=O)c1ccccc1",
                "advise|--groups|A=",
                "advise|--groups|A=keton:1",
                "advise|--groups|A=ketone:one",
                "advise|--groups|A=ketone:99",
                "advise|--groups|A=ketone:1,ketone:2",
                "advise|--smiles|A=CCO|--class|A=alcohol",
                "column",
                "column|--mass|250",
                "column|--run|9:1 A=0.35 B=0.22|--mass|250",
                "column|--run|9:1 A=0.35 B=0.22|--target|B",
                "column|--run|9:1 A=0.35|--mass|much",
                "column|--run|9:1 A=0.35|--mass|NaN",
                "column|--run|9:1 A=0.35|--mass|0",
                "column|--run|9:1 A=0.35|--mass|-1",
                "column|--run|9:1 A=0.35|--mass|5000000",
                "column|--run|9:1 A=0.35|--mass|250|--target|C",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--bed|13g",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--bed|12",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--bed|wide",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--bed|5mm",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--bed|20 x 10 mm",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--loading|damp",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--load|0",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--flow|fast",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--fraction|-8",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--steps|much",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--steps|5 %:60, 20 %",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--steps|5 %:0",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--steps|101 %",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--steps|0:0",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--elution|gradient",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--elution|steps|--steps|5 %:60",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--sorbent|alumina",
                "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250|--colour|red",
                "seeing|--smiles|A",
                "seeing|--smiles|A=CC(=O",
                "seeing|--class|A=keton",
                "seeing|--groups|A=alcohol:0",
                "seeing|--run|10: A=0.2",
                "reading|--height|80",
                "reading|--height|80|--start|ten|--front|70|--spot|A=28",
                "reading|--height|80|--start|10|--front|70|--spot|A",
                "reading|--height|80|--start|10|--front|90|--spot|A=28",
                "strength|--percent|200",
                "strength|--percent|20|--to|hexane",
                "strength|--percent|20|--series|oldest",
                "serve|--port|99999",
                "serve|--port|-1",
                "serve|--web|no-such-folder",
                "batch|--lines|5",
            })
    void nonsenseIsToldAndEndsWithTwo(String arguments) {
        Said said = line(arguments);
        assertEquals(2, said.status(), said.err());
        assertEquals("", said.out());
        assertTrue(said.err().length() > 20, said.err());
        assertTrue(!said.err().contains("Exception") && !said.err().contains("\tat "), said.err());
    }

    @Test
    void aFaultNamesTheOptionWhatCameWhatIsAllowedAndWhatToDo() {
        String err = line("advise|--run|10: A=0.2|--run|20: A=1.2|--amount|-3").err();
        assertTrue(err.contains("--run no. 2, A: "), err);
        assertTrue(err.contains("Came: 1.2. Allowed: at least 0, at most 1."), err);
        assertTrue(err.contains("--amount: "), err);
        assertTrue(err.contains("Came: -3. Allowed: more than 0, at most 10000."), err);
    }

    @Test
    void aFaultOfAColumnNamesItsOption() {
        String plate = "column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|";
        String err = line(plate + "5000000|--steps|5 %:60, 20 %:0|--flow|0").err();
        assertTrue(err.contains("--mass: "), err);
        assertTrue(err.contains("Came: 5000000. Allowed: more than 0, at most 100000."), err);
        assertTrue(err.contains("--steps no. 2, volume: "), err);
        assertTrue(err.contains("--flow: "), err);
        assertTrue(line(plate + "250|--bed|13g").err().startsWith("--bed: "));
        assertTrue(line(plate + "250|--steps|101 %").err().startsWith("--steps: "));
    }

    @Test
    void allOptionsOfAColumnThatCannotBeReadAreToldAtOnce() {
        Said said = line("column|--run|9:1 A=0.35|--mass|5 g|--bed|wide|--fraction|few|--steps|much");
        assertEquals(2, said.status());
        String err = said.err().replaceAll("\\s+", " ");
        for (String option :
                List.of("--mass came as \"5 g\"", "--bed came as", "--fraction came as", "--steps came as")) {
            assertTrue(err.contains(option), option + " in " + err);
        }
        assertTrue(err.contains("in mg: 5000 for 5 g."), err);
    }

    @Test
    void theHelpOfAColumnOffersNoSorbentThatIsRefused() {
        String help = line("column|--help").out();
        assertTrue(help.contains("--sorbent") && !help.contains("alumina"), help);
        assertTrue(line("advise|--help").out().contains("alumina"));
        assertEquals(
                2, line("column|--run|9:1 A=0.35|--mass|250|--sorbent|alumina").status());
    }

    @Test
    void aColumnIsSaidInWords() {
        Said said = line("column|--run|9:1 A=0.35 B=0.22|--target|B|--mass|250 mg|--bed|20 x 150 mm|--loading|dry"
                + "|--fraction|8 ml|--steps|5 %:60, 4:1:120");
        assertEquals(0, said.status(), said.err());
        String words = said.out().replaceAll("\\s+", " ");
        assertTrue(words.startsWith("Column: glass, 20 mm wide, silica 150 mm high (24 g)."), words);
        assertTrue(words.contains("Load: 250 mg dried onto "), words);
        assertTrue(words.contains("Pour 60 ml of 19:1 hexane : ethyl acetate (5.0 % ethyl acetate); mix "), words);
        assertTrue(words.contains(" of 4:1 hexane : ethyl acetate (20.0 % ethyl acetate); mix "), words);
        assertTrue(words.contains("Fractions of 8 ml: ") && words.contains("- A: begins to leave at about "), words);
        assertTrue(words.contains("Why: - ") && words.contains("Before you pour: - "), words);
    }

    /** Common practice: the lamp shows a phenyl ketone, and permanganate an alcohol. */
    @Test
    void waysOfSeeingAreSaidInWords() {
        Said said = line("seeing|--smiles|A=CC(=O)c1ccccc1|--groups|B=alcohol:1,alkyl-carbon:6|--spot|C");
        assertEquals(0, said.status(), said.err());
        String words = said.out().replaceAll("\\s+", " ");
        assertTrue(
                words.startsWith("First UV light at 254 nm for A: mark with pencil what shows.")
                        && words.contains("Then permanganate for B.")
                        && words.contains("Of C too little"),
                words);
        assertTrue(
                words.contains("UV light at 254 nm: leaves the plate as it is. - Shows: A. - Not known of: B, C."),
                words);
        assertTrue(words.contains("permanganate: the spots are gone for any other way. - Shows: B."), words);
        assertTrue(words.contains("Before you look: - The supplier's safety data sheets"), words);
        assertTrue(line("seeing|--json").out().startsWith("{\"ways\":["));
        String err = line("seeing|--spot|A|--smiles|B=CC(=O").err().replaceAll("\\s+", " ");
        assertTrue(err.startsWith("--smiles of compound no. "), err);
    }

    @Test
    void aStructureIsEnoughForAFirstPlate() {
        Said said = line("advise|--smiles|A=CC(=O)c1ccccc1|--class|B=ester");
        assertEquals(0, said.status(), said.err());
        assertTrue(said.out().contains("- A: Rf about ") && said.out().contains("- B: Rf about "), said.out());
        String err = line("advise|--spot|A|--smiles|B=CC(=O").err().replaceAll("\\s+", " ");
        assertTrue(err.startsWith("--smiles of spot no. 2: Character 3, after \"CC\": the branch"), err);
        assertTrue(err.contains("Came: CC(=O. Allowed: SMILES of one compound"), err);
    }

    @Test
    void groupsSayTheSameAsTheSmilesThatHasThem() {
        String same = line("advise|--groups|A=aryl-ketone:1,aromatic-carbon:6,alkyl-carbon:1")
                .out();
        assertTrue(same.contains("aryl ketone"), same);
        String err = line("advise|--groups|A=ketone:99").err().replaceAll("\\s+", " ");
        assertTrue(err.startsWith("--groups of spot no. 1, ketone: "), err);
        assertTrue(line("advise").err().replaceAll("\\s+", " ").contains("--smiles, --groups, --class or --spot"));
        assertTrue(line("advise|--smiles|A=").err().contains("Nothing came behind ="));
    }

    @Test
    void anUnknownClassIsToldInShort() {
        String near = line("advise|--class|A=keton").err();
        assertTrue(near.contains("Did you mean ketone") && near.lines().count() < 8, near);
        assertTrue(line("advise|--class|A=qqq").err().contains("aryl-ketone"));
    }

    @Test
    void platesToRunAtOnceComeWithTheirCautions() {
        String out = line("advise|--smiles|A=CC(=O)c1ccccc1|--jars|2").out();
        assertTrue(out.contains("Before you pour:") && out.contains("ethyl acetate: H225"), out);
    }

    @Test
    void otherEluentsComeAfterTheAdvice() {
        Said said = line("advise|--run|20: A=0.3, B=0.35|--others");
        assertEquals(0, said.status(), said.err());
        String out = said.out().replaceAll("\\s+", " ");
        assertTrue(out.indexOf("Next plate: ") < out.indexOf("Other eluents as strong as"), out);
        assertTrue(out.contains(" hexane : diethyl ether (") && out.contains(" – measured."), out);
        assertTrue(out.contains("safety data sheet"), out);
        assertTrue(said.out().lines().allMatch(text -> text.length() <= 80), said.out());
        String safe = line("advise|--run|20: A=0.3|--others|safety|--json").out();
        assertTrue(safe.startsWith("{") && safe.contains("\"rank\":\"safety\""), safe);
    }

    @Test
    void anOrderOfOtherEluentsThatIsNoneIsToldWithTheOnesThereAre() {
        String err = line("advise|--run|20: A=0.3|--others|cheap").err().replaceAll("\\s+", " ");
        assertTrue(err.contains("--others") && err.contains("apart, safety, drying, measured"), err);
        String both = line("advise|--run|20: A=0.3|--jars|2|--others").err();
        assertTrue(both.contains("one at a time"), both);
    }

    @Test
    void advisesInWordsWithinEightyColumns() {
        Said said = line("advise|--run|10: A=0.05, B=0.12");
        assertEquals(0, said.status(), said.err());
        List<String> lines = said.out().lines().toList();
        assertTrue(lines.get(0).startsWith("Next plate: "), said.out());
        assertTrue(lines.get(1).contains(" ml hexane + "), said.out());
        assertTrue(
                said.out()
                        .replaceAll("\\s+", " ")
                        .contains("of 100 plates like this all spots lie between Rf 0.2 and 0.8."),
                said.out());
        assertTrue(lines.get(0).contains(" hexane : ethyl acetate ("), said.out());
        assertTrue(said.out().contains("- A: Rf about "), said.out());
        assertTrue(said.out().contains("safety data sheet"), said.out());
        assertTrue(said.out().contains("hood"), said.out());
        assertTrue(lines.stream().allMatch(line -> line.length() <= 80), said.out());
    }

    @Test
    void anAdviceSaysWhereItsNumberComesFrom() {
        String out =
                line("advise|--run|10: A=0.05, B=0.12|--setting|class").out().replaceAll("\\s+", " ");
        assertTrue(out.contains("Where the number comes from: - Measured: "), out);
        assertTrue(out.contains("in hexane : ethyl acetate on silica"), out);
        assertTrue(out.contains("Setting, class: "), out);
        assertTrue(out.contains("Chem 8 (2022) 3202") && out.contains("Principles of Adsorption Chromatography"), out);
        assertTrue(line("advise|--run|10: A=0.05|--weak|petroleum ether 60-80")
                .out()
                .replaceAll("\\s+", " ")
                .contains("in hexane : ethyl acetate on silica"));
    }

    @Test
    void aPureSolventIsPouredAlone() {
        String out = line("advise|--run|50: A=0").out();
        assertTrue(out.startsWith("Next plate: pure ethyl acetate, 10 ml."), out);
        assertFalse(out.contains("0 ml hexane"), out);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"advise", "advise|--run|10: A=abc", "reading|--height|ten|--start|10|--front|70|--spot|A=28"})
    void aTextThatCannotBeReadIsToldInThreeLinesAndNotBuriedUnderTheOptions(String arguments) {
        String err = line(arguments).err();
        assertTrue(err.contains("\n  Allowed: "), err);
        assertFalse(err.contains("Usage:"), err);
    }

    @Test
    void aSpotInMillimetresIsNamedAsItWasTyped() {
        String err = line("reading|--height|80|--start|10|--front|70|--spot|A=28|--spot|B=5")
                .err();
        assertTrue(err.contains("--spot no. 2, height: "), err);
    }

    @Test
    void aPercentageMayCarryItsSign() {
        assertEquals(
                line("strength|--percent|20").out(),
                line("strength|--percent|20 %").out());
    }

    @Test
    void aRatioAndAPercentageAreTheSamePlate() {
        Said percent = line("advise|--run|10: A=0.05, B=0.12|--json");
        Said ratio = line("advise|--run|9:1 A=0,05 B=0,12|--json");
        assertEquals(0, percent.status(), percent.err());
        assertTrue(percent.out().startsWith("{\"id\":null,\"advice\":{"), percent.out());
        assertEquals(percent.out(), ratio.out());
    }

    @Test
    void worksOutRfFromMillimetres() {
        Said said = line("reading|--height|80|--start|10|--front|70|--spot|A=28|--spot|B=10|--spot|C=69,5/3");
        assertEquals(0, said.status(), said.err());
        assertTrue(said.out().contains("A: Rf 0.30"), said.out()); // (28 - 10)/(70 - 10)
        assertTrue(said.out().contains("B: on the start line"), said.out());
        assertTrue(said.out().contains("C: at the front"), said.out());
    }

    @Test
    void tellsAnEquallyStrongMixtureAndThatItIsTheory() {
        Said said = line("strength|--percent|20|--to|hexane/acetone");
        assertEquals(0, said.status(), said.err());
        assertTrue(said.out().contains("% acetone in hexane is equally strong."), said.out());
        assertTrue(said.out().contains("theory"), said.out());
        assertTrue(line("strength|--percent|20|--json").out().startsWith("{\"basis\":\"theory\""));
    }

    @Test
    void helpAndVersionEndWithZero() {
        for (String command : List.of("--help", "serve|--help", "batch|--help", "advise|--help", "help|advise")) {
            Said said = line(command);
            assertEquals(0, said.status(), command + said.err());
            assertTrue(said.out().lines().allMatch(line -> line.length() <= 80), said.out());
        }
        assertEquals("midplate 0.1.0", line("--version").out().strip());
    }
}
