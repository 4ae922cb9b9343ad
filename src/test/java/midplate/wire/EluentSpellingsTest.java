package midplate.wire;

import static midplate.wire.RunTableTest.keys;
import static midplate.wire.RunTableTest.read;
import static midplate.wire.RunTableTest.readings;
import static midplate.wire.RunTableTest.rejected;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.List;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which solvent a percentage belongs to: common practice at the bench, no source. All rows are invented. */
class EluentSpellingsTest {
    private static JsonNode one(String eluent) throws IOException {
        return read("plate\teluent\tspot\tRf\n1\t" + eluent + "\tA\t0.35");
    }

    private static String jar(JsonNode answer) {
        JsonNode plate = answer.path("plates").get(0);
        return plate.path("weak").asText() + " " + plate.path("strong").asText() + " "
                + plate.path("percentStrong").asText();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "20% EtOAc/Hex",
                "20 % EtOAc/hexane",
                "20%EtOAc/Hex",
                "20% EtOAc-hexane",
                "20% EtOAc : Hex",
                "20% EtOAc + hexanes",
                "20 % (v/v) EtOAc/Hex",
                "20% v/v EtOAc/Hex",
                "20 vol% EtOAc/Hex",
                "20 Vol.-% Essigester/Hexan",
                "20 % Essigester/Hexan",
                "20 Prozent Essigester/Hexan",
                "20 percent ethyl acetate/hexane",
                "20 % Ethylacetat mit Hexan",
                "(20%) EtOAc/Hex",
                "EtOAc/hexane 20%",
                "EtOAc/Hex (20 %)",
                "EtOAc/Hex [20 %]",
                "EtOAc/Hex: 20 %",
                "Essigester / Hexan, 20 %",
                "EtOAc/hexane = 20 % (v/v)",
                "20% EtOAc in hexanes",
                "20% of EtOAc in hexane",
                "20 % EtOAc in hexane (v/v)",
                "20,0 % EE in Hexan",
                "EtOAc in hexane (20 %)",
                "EtOAc in hexane, 20%",
                "EtOAc (20%) in hexane",
                "80% hexane in EtOAc",
                "20% EtOAc / 80% hexane",
                "80% hexane / 20% EtOAc",
                "80 % Hexan und 20 % Essigester",
                "hexane 80%, EtOAc 20%",
                "EtOAc (20%) / hexane (80%)",
                "hexane/EtOAc, 20 % EtOAc",
                "hexane/EtOAc (20 % EtOAc)",
                "hexane/EtOAc, 80 % hexane",
                "hexane/EtOAc 4:1",
                "EtOAc-Hexane (1-4)",
                "n-hexane-EtOAc (4-1)",
                "Hexan–EtOAc 4–1",
                "20 % EtOAc",
                "EtOAc 20%",
                "80 % hexane",
            })
    void aShareGoesWithTheSolventThatIsMeant(String eluent) throws IOException {
        JsonNode answer = one(eluent);
        assertEquals(List.of(), rejected(answer));
        assertEquals("hexane ethyl-acetate 20", jar(answer).replace(".0", ""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "10% MeOH/DCM             | dichloromethane methanol 10",
                "5% MeOH in DCM           | dichloromethane methanol 5",
                "7,5 % MeOH/DCM           | dichloromethane methanol 7.5",
                "Methanol/Dichlormethan 2,5 % | dichloromethane methanol 2.5",
                "30 % Aceton/Toluol       | toluene acetone 30",
                "50% Hex/EtOAc            | hexane ethyl-acetate 50",
                "50% EtOAc/Hex            | hexane ethyl-acetate 50",
                "pure EtOAc               | hexane ethyl-acetate 100",
                "reiner Essigester        | hexane ethyl-acetate 100",
                "EtOAc (neat)             | hexane ethyl-acetate 100",
                "100 % EtOAc              | hexane ethyl-acetate 100",
                "reines Hexan             | hexane ethyl-acetate 0",
                "pure DCM                 | hexane dichloromethane 100",
            })
    void otherPairsAndPureSolventsAreUnderstood(String eluent, String jar) throws IOException {
        JsonNode answer = one(eluent);
        assertEquals(List.of(), rejected(answer));
        assertEquals(jar, jar(answer));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "20% Hex/EtOAc",
                "20 % Hexan/Essigester",
                "hexane/EtOAc 20%",
                "Hexan/EE (20 Vol.-%)",
                "20% hexane-EtOAc",
                "0 % Hex/EtOAc",
            })
    void whereTheWeakerSolventStandsFirstTheRowIsLeftOutWithAQuestion(String eluent) throws IOException {
        JsonNode answer = one(eluent);
        assertEquals(List.of(), readings(answer));
        assertEquals(List.of("2 eluent share-of-which"), rejected(answer));
    }

    @Test
    void theQuestionTellsBothWaysToWriteItAndBothAreUnderstood() throws IOException {
        JsonNode row = one("20% Hex/EtOAc").path("rejected").get(0);
        assertEquals(
                "Which solvent is the 20 %? Write \"20 % ethyl acetate in hexane\" or \"20 % hexane in ethyl acetate\".",
                row.path("message").asText());
        assertEquals("20% Hex/EtOAc", row.path("came").asText());
        assertEquals("hexane ethyl-acetate 20", jar(one("20 % ethyl acetate in hexane")));
        assertEquals("hexane ethyl-acetate 80", jar(one("20 % hexane in ethyl acetate")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"20% EtOAc / 70% hexane", "4:1:0.1", "EtOAc", "20% foo/bar", "120% EtOAc/Hex", "20% x"})
    void whatIsNotUnderstoodIsKeptAsItStandsAndTold(String eluent) throws IOException {
        JsonNode answer = one(eluent);
        assertTrue(answer.path("plates").get(0).path("percentStrong").isMissingNode(), answer.toString());
        assertTrue(keys(answer).contains("import.no-ratio"), keys(answer).toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "04:01:00",
                "4:01:00 AM",
                "04. Jan",
                "4. Jan.",
                "04-Jan",
                "Jan-04",
                "Apr 01",
                "1. April",
                "04. Mär",
                "2026-01-04",
                "04.01.2026",
                "4/1/2026",
                "2026-01-04 00:00:00"
            })
    void aRatioThatASpreadsheetMadeATimeOrADateOfIsToldSo(String eluent) throws IOException {
        JsonNode answer = one(eluent);
        assertTrue(answer.path("plates").get(0).path("percentStrong").isMissingNode(), answer.toString());
        assertTrue(keys(answer).contains("import.time-or-date"), keys(answer).toString());
    }

    @Test
    void aColumnThatNamesAnotherSolventThanTheEluentBesideItIsTold() throws IOException {
        JsonNode answer = read("""
                plate,weak,strong,eluent,spot,Rf
                1,toluene,EtOAc,20% EtOAc/Hex,A,0.3
                2,hexane,EtOAc,20% EtOAc/Hex,A,0.3
                3,hexane,EtOAc,pure EtOAc,A,0.9
                4,DCM,MeOH,pure DCM,A,0.1
                """);
        assertEquals(List.of("2 weak names-two"), rejected(answer));
        assertEquals(
                "[20, 100, 0]",
                java.util.stream.StreamSupport.stream(answer.path("plates").spliterator(), false)
                        .map(plate -> plate.path("percentStrong").asInt())
                        .toList()
                        .toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "plate;eluent;spot;Rf\\n1;20% EtOAc/Hex;A;0,3 # 20 % ethyl acetate in hexane (the file says: 20% EtOAc/Hex)",
                "plate;eluent;spot;Rf\\n1;EtOAc/Hex 1:7;A;0,3 # 12.5 % ethyl acetate in hexane (the file says: EtOAc/Hex 1:7)",
                "plate;eluent;spot;Rf\\n1;3:1:1;A;0,3 # hexane with ethyl acetate, ratio not known (the file says: 3:1:1)",
                "plate;% MeOH in DCM;spot;Rf\\n1;5;A;0,3 # 5 % methanol in dichloromethane (the file says: % MeOH in DCM: 5)",
                "plate;spot;Rf\\n1;A;0,3 # hexane with ethyl acetate, ratio not known (the file says nothing of it)",
                "plate;eluent;additive;Rf\\n1;9:1;acetic acid 1 %;0,3 # 10 % ethyl acetate in hexane, with acetic acid 1 % (the file says: 9:1 | acetic acid 1 %)",
            },
            quoteCharacter = '~')
    void eachPlateIsAnsweredWithItsJarAndWhatTheFileSaid(String table, String text) throws IOException {
        JsonNode answer = read(table.replace("\\n", "\n"));
        JsonNode jar = answer.path("jars").get(0);
        assertEquals(text, jar.path("text").asText());
        assertEquals(answer.path("plates").get(0).path("id"), jar.path("plate"));
    }

    @Test
    void theQuestionIsAskedInGermanWithTheSameTwoWays() throws IOException {
        JsonNode answer = read(FakeAdviser.exchange().in(Language.GERMAN), "eluent;Rf\n20 % Hexan/Essigester;0,3\n");
        String question = answer.path("rejected").get(0).path("message").asText();
        assertTrue(question.contains("20 % Hexan in "), question);
        String[] quoted = question.split("[„“]", -1);
        assertEquals("hexane ethyl-acetate 20", jar(one(quoted[1])));
        assertEquals("hexane ethyl-acetate 80", jar(one(quoted[3])));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "EtOAc/Hex          | 1:4      | hexane ethyl-acetate 20",
                "Hex/EtOAc          | 4:1      | hexane ethyl-acetate 20",
                "Laufmittel (PE:EE) | 4:1      | petroleum-ether-40-60 ethyl-acetate 20",
                "Ratio (EtOAc:Hex)  | 1:4      | hexane ethyl-acetate 20",
                "Eluent MeOH/DCM    | 1:9      | dichloromethane methanol 10",
                "% EtOAc/Hex        | 20       | hexane ethyl-acetate 20",
                "MeOH/DCM           | 10 %     | dichloromethane methanol 10",
                "DCM/MeOH           | pure DCM | dichloromethane methanol 0",
                "MeOH/DCM           | 5 % MeOH | dichloromethane methanol 5",
            })
    void aHeaderMayNameThePairOfTheRatiosBelow(String header, String cell, String jar) throws IOException {
        JsonNode answer = read("plate\t" + header + "\tspot\tRf\n1\t" + cell + "\tA\t0.35");
        assertEquals(List.of(), rejected(answer));
        assertEquals(jar, jar(answer));
        String said = answer.path("jars").get(0).path("said").asText();
        assertEquals(header + ": " + cell, said);
    }

    @Test
    void aShareUnderAPairWithTheWeakerSolventFirstIsLeftOutWithAQuestion() throws IOException {
        JsonNode answer = read("Hex/EtOAc\tRf\n20\t0.3\n20 %\t0.3\n50\t0.4");
        assertEquals(List.of("2 eluent share-of-which", "3 eluent share-of-which"), rejected(answer));
        String question = answer.path("rejected").get(0).path("message").asText();
        assertTrue(question.contains("\"20 % ethyl acetate in hexane\""), question);
    }
}
