package midplate.wire;

import static midplate.wire.RunTableTest.keys;
import static midplate.wire.RunTableTest.read;
import static midplate.wire.RunTableTest.readings;
import static midplate.wire.RunTableTest.rejected;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables that could be taken for something else than they are, or keep a reader busy. All of them are invented. */
class OddTablesTest {
    @ParameterizedTest
    @ValueSource(strings = {"spot,rf\nA,0,35\nB,0,52\n", "rf,spot\n0,35,A\n0,52,B\n"})
    void decimalCommasBetweenCommasAreToldAndNotTakenForAnRfOfZero(String table) throws IOException {
        JsonNode answer = read(table);
        assertEquals(List.of(), readings(answer));
        assertEquals(List.of("2 row cut-at-decimals", "3 row cut-at-decimals"), rejected(answer));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plate,spot,Rf\\n1,A,0.35,by lamp        | a remark without a header",
                "plate,spot,Rf\\n1,A,0.35,,              | empty cells at the end",
                "plate;spot;Rf\\n1;A;0,35;7;8            | nothing is cut at semicolons",
            })
    void aRowLongerThanTheHeaderIsTakenWhereNoNumberWasCut(String table, String why) throws IOException {
        JsonNode answer = read(table.replace("\\n", "\n"));
        assertEquals(List.of("1/1 A rf 0.35"), readings(answer), why);
        assertEquals(List.of(), rejected(answer), why);
    }

    @Test
    void aCompoundThatIsCalledLikeAColumnMakesNoHeader() throws IOException {
        JsonNode answer = read("Probe,0.35\nProdukt,0.52\n");
        assertEquals(List.of("p1/1 Probe rf 0.35", "p1/1 Produkt rf 0.52"), readings(answer));
        assertTrue(keys(answer).contains("import.no-header"));
    }

    @Test
    void plateAndSpotsThatOnlyAnAdviceStillNamesDoNotComeToMeanSomethingElse() throws IOException {
        ObjectNode into = (ObjectNode)
                new ObjectMapper().readTree(Files.readString(Path.of("shared", "studies", "version-5.json")));
        ObjectNode advice = (ObjectNode) into.path("advices").get(0);
        ((ArrayNode) advice.path("after")).add("p3");
        ((ArrayNode) advice.path("spots"))
                .addObject()
                .put("spot", "s5")
                .put("rf", 0.5)
                .put("low", 0.4)
                .put("high", 0.6);
        byte[] file = "plate,spot,Rf\np3,new,0.4\n".getBytes(StandardCharsets.UTF_8);
        JsonNode answer = read(file, "\"into\": " + into);
        assertEquals("p4", answer.path("plates").get(0).path("id").asText());
        assertEquals("s6", answer.path("spots").get(4).path("id").asText());
    }

    @Test
    void aTableOfFarTooManyColumnsIsRefused() {
        BadInput bad = assertThrows(BadInput.class, () -> read("plate,spot,Rf\n1,A" + ",".repeat(500_000) + "\n"));
        assertEquals("too-many-columns", bad.faults().get(0).code());
        assertEquals("500002", bad.faults().get(0).came());
        assertTrue(bad.faults().get(0).message().contains("line 2"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plate;spot;Rf\\n1;A;0.350                    | 1/1 A rf 0.35 | '' | a 0 begins no thousands",
                "plate;spot;centre\\n1;A;12.500                | ''             | 2 centre_mm thousands | as likely 12 500",
                "plate;spot;centre\\n1;A;12,500                | 1/1 A mm 12.5 | '' | semicolons go with decimal commas",
                "plate;spot;centre\\n1;A;12.500\\n1;B;20.5     | 1/1 A mm 12.5, 1/1 B mm 20.5 | '' | the other row tells",
                "plate,percent,eluent,Rf\\n1,10,9:1,.3\\n2,11,9:1,.4 | 1/1  rf 0.3 | 3 percent_strong ratio-and-share | 10 is not 11",
            })
    void whatMayMeanTwoThingsIsTakenOnlyWhereTheTableTells(String table, String read, String fault, String why)
            throws IOException {
        JsonNode answer = read(table.replace("\\n", "\n"));
        assertEquals(read, String.join(", ", readings(answer)), why);
        assertEquals(fault, String.join(", ", rejected(answer)), why);
    }

    @Test
    void whatWasSeenOnAPlateIsNotAmongWhatWasNotSeenOnIt() throws IOException {
        JsonNode answer = read("plate,spot,Rf,not seen\n1,A,0.3,B + C\n1,B,0.4,B + C\n");
        assertEquals("C", answer.path("spots").get(2).path("name").asText());
        assertEquals("[\"s3\"]", answer.path("plates").get(0).path("notSeen").toString());
    }

    /** In the square of the blanks this would take hours. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "percent,Rf\\n1_2,0.3  | 2 percent_strong no-number",
                "% a_b,Rf\\n1,0.3      | ''",
                "eluent,Rf\\na_b,0.3   | 2 eluent text-too-long",
            })
    void aCellFullOfBlanksKeepsNobodyBusy(String table, String fault) throws IOException {
        JsonNode answer = read(table.replace("\\n", "\n").replace("_", " ".repeat(500_000)));
        assertEquals(fault, String.join(", ", rejected(answer)));
    }
}
