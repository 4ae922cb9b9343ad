package midplate.wire;

import static midplate.wire.RunTableTest.keys;
import static midplate.wire.RunTableTest.read;
import static midplate.wire.RunTableTest.readings;
import static midplate.wire.RunTableTest.rejected;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How notebooks lay their tables out: distances, titles, a column a compound. Everything in them is invented. */
class TableFormsTest {
    /** Rf = spot distance / front distance, as every textbook has it; 18/60 = 0.3 and 33/60 = 0.55 by hand. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "plate;spot;distance (mm);front distance (mm)\n1;A;18;60\n1;B;33;60\n",
                "plate;spot;distance spot / cm;distance solvent / cm\n1;A;1,8;6\n1;B;3,3;6\n",
                "Platte;Fleck;Laufstrecke / cm;Laufmittelstrecke / cm\n1;A;1,8;6,0\n1;B;3,3;\n",
                "Platte;Fleck;Laufstrecke (mm);Front (mm)\n1;A;18;60\n1;B;33;60\n",
                "plate;spot;distance of spot;distance of solvent front\n1;A;18;60\n1;B;33;60\n",
                "plate;spot;distance;solvent front;Rf\n1;A;18;60;0,30\n1;B;33;60;0,55\n",
            })
    void aDistanceFromTheStartLineDividedByThatOfTheFrontIsTheRf(String table) throws IOException {
        JsonNode answer = read(table);
        assertEquals(List.of(), rejected(answer));
        assertEquals(
                "[1/1 A rf 0.3, 1/1 B rf 0.55]", readings(answer).toString().replace("0.30", "0.3"));
        assertTrue(keys(answer).contains("import.distances"), keys(answer).toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plate;spot;start;front;distance (mm)\\n1;A;10;62;18,5       | 1/1 A mm 28.5 | 62",
                "plate;spot;start (cm);distance (cm);front distance (cm)\\n1;A;1;1,85;5,2 | 1/1 A mm 28.5 | 62",
                "plate;spot;start;front;distance\\n1;A;10;62;18.5\\n1;B;;;20 | 1/1 A mm 28.5, 1/1 B mm 30 | 62",
                "plate;spot;start;distance\\n1;A;10;18.5                     | 1/1 A mm 28.5 | ''",
            })
    void withTheStartLineADistanceIsAHeightAboveTheLowerEdge(String table, String read, String front)
            throws IOException {
        JsonNode answer = read(table.replace("\\n", "\n"));
        assertEquals(read, String.join(", ", readings(answer)));
        assertEquals(List.of(), rejected(answer));
        assertEquals(
                front, answer.path("plates").get(0).path("frontMm").asText().replace(".0", ""));
        assertTrue(keys(answer).contains("import.distance-added"), keys(answer).toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "spot;distance;front distance\\nA;63;60      | 2 distance_mm distance-beyond-front",
                "spot;distance;front distance\\nA;18;0       | 2 front_distance_mm distance-without-front",
                "spot;distance;front distance\\nA;18;        | 2 front_distance_mm distance-without-front",
                "spot;distance (mm)\\nA;18                   | 2 front_distance_mm distance-without-front",
                "spot;distance;front distance\\nA;-1;60      | 2 distance_mm length-out-of-range",
                "spot;distance;front distance\\nA;x;60       | 2 distance_mm no-number",
                "spot;distance;front distance;Rf\\nA;18;60;0,45 | 2 rf distances-otherwise",
            })
    void aDistanceThatMakesNoRfIsTold(String table, String fault) throws IOException {
        JsonNode answer = read(table.replace("\\n", "\n"));
        assertEquals(List.of(fault), rejected(answer));
        assertEquals(List.of(), readings(answer));
    }

    @Test
    void aLengthThatIsAskedForIsInTheUnitOfItsHeader() throws IOException {
        byte[] file = "plate;spot;cm;front (cm)\n1;A;1,8;6\n".getBytes(StandardCharsets.UTF_8);
        JsonNode rf = read(file, "\"columns\": {\"spot\": 1, \"distance_mm\": 2, \"front_distance_mm\": 3}");
        assertEquals(List.of("1/1 A rf 0.3"), readings(rf));
        byte[] mixed = "start (mm);front (mm);position (cm)\n10;62;1,85\n".getBytes(StandardCharsets.UTF_8);
        JsonNode mm = read(mixed, "\"columns\": {\"start_mm\": 0, \"front_mm\": 1, \"distance_mm\": 2}");
        assertEquals(List.of("p1/1  mm 28.5"), readings(mm));
    }

    @ParameterizedTest
    @CsvSource({
        "distance, distance_mm",
        "Distance (mm), distance_mm",
        "distance travelled by compound, distance_mm",
        "distance from origin, distance_mm",
        "spot distance / cm, distance_mm",
        "migration distance, distance_mm",
        "Laufstrecke, distance_mm",
        "Laufstrecke des Flecks in mm, distance_mm",
        "Abstand von der Startlinie, distance_mm",
        "Strecke Substanz, distance_mm",
        "Wanderungsstrecke (cm), distance_mm",
        "solvent front distance, front_distance_mm",
        "distance of the solvent front, front_distance_mm",
        "distance travelled by solvent (cm), front_distance_mm",
        "front distance, front_distance_mm",
        "Laufstrecke Laufmittel / mm, front_distance_mm",
        "Laufmittelstrecke, front_distance_mm",
        "Strecke Laufmittelfront, front_distance_mm",
        "Laufstrecke der Front, front_distance_mm",
        "Abstand Startlinie, ",
        "distance from front, ",
        "distance to edge, ",
        "mm, ",
        "cm, ",
        "run, plate",
    })
    void aHeaderSaysWhoseDistanceItIs(String header, String id) {
        assertEquals(
                java.util.Optional.ofNullable(id),
                Headers.meaning(header).map(meaning -> meaning.column().id()));
    }

    @Test
    void aFrontThatIsTakenForADistanceIsSaidAndCanBeSetRight() throws IOException {
        byte[] file = "plate;spot;distance;front\n1;A;18;60\n".getBytes(StandardCharsets.UTF_8);
        JsonNode answer = read(file, "");
        assertEquals(
                "front_distance_mm",
                answer.path("columns").get(3).path("meaning").asText());
        assertTrue(
                keys(answer).contains("import.front-from-start"), keys(answer).toString());
        JsonNode set = read(file, "\"columns\": {\"plate\": 0, \"spot\": 1, \"distance_mm\": 2, \"front_mm\": 3}");
        assertEquals(List.of("2 front_distance_mm distance-without-front"), rejected(set));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Plates of May 2026\\nplate,spot,Rf\\n1,A,0.35",
                "Versuch 12;;\\nBetreuer;X;\\n;;\\nPlatte;Fleck;Rf-Wert\\n1;A;0,35",
                "TLC\\n\\nplate;spot;Rf\\n1;A;0.35",
                "Reaction, workup, and plates\\nDate;2026-05-03\\nplate;spot;Rf\\n1;A;0.35",
                "a\\nb\\nc\\nd\\ne\\nf\\ng\\nh\\ni\\nplate;spot;Rf\\n1;A;0.35",
            })
    void linesAboveTheHeaderAreLeftOutAndSaid(String table) throws IOException {
        JsonNode answer = read(table.replace("\\n", "\n"));
        assertEquals(List.of("1/1 A rf 0.35"), readings(answer));
        assertEquals(List.of(), rejected(answer));
        assertTrue(keys(answer).contains("import.title-lines"), keys(answer).toString());
    }

    @Test
    void aRowOfWordsAmongNumbersIsNoHeader() throws IOException {
        JsonNode answer = read("Probe,0.35\nProbe,n.s.\nProdukt,0.52\n");
        assertTrue(keys(answer).contains("import.no-header"), keys(answer).toString());
        assertEquals(
                "[\"0.35\",\"n.s.\",\"0.52\"]",
                answer.path("columns").get(1).path("examples").toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plate;eluent;ester;alcohol\n1;9:1;0,35;0,1\n2;4:1;0,52;\n",
                "Trials in May;;;\nplate;Laufmittel;ester;alcohol\n1;9:1;0,35;0,1\n2;4:1;0,52;\n",
                "plate,eluent,ester,alcohol,remark\n1,9:1,0.35,0.1,streaks\n2,4:1,0.52,,\n",
            })
    void aTableWithAColumnForEachCompoundIsRead(String table) throws IOException {
        JsonNode answer = read(table);
        assertEquals(List.of("1/1 ester rf 0.35", "1/1 alcohol rf 0.1", "2/1 ester rf 0.52"), readings(answer));
        assertEquals(List.of(), rejected(answer));
        assertEquals(20, answer.path("plates").get(1).path("percentStrong").asDouble());
        assertTrue(
                keys(answer).contains("import.compound-columns"), keys(answer).toString());
        assertTrue(answer.path("columns").get(2).path("meaning").isNull());
        assertEquals("ester", answer.path("columns").get(2).path("header").asText());
        assertTrue(answer.path("canBeTaken").asBoolean());
    }

    @Test
    void inATableWithAColumnForEachCompoundAFaultIsToldOnceAndAtItsLine() throws IOException {
        JsonNode answer = read("% EtOAc in hexane,A,B\n10,0.3,0.4\n200,0.5,0.6\n20,0.5,1.6\n");
        assertEquals(List.of("3 percent_strong percent-out-of-range", "4 rf rf-out-of-range"), rejected(answer));
        assertEquals(2, answer.path("rejectedInAll").asInt());
        assertEquals(List.of("p1/1 A rf 0.3", "p1/1 B rf 0.4", "p2/1 A rf 0.5"), readings(answer));
    }

    @Test
    void whereNothingCanBeTakenItIsSaidWithAnExampleThatIsUnderstood() throws IOException {
        JsonNode answer = read("eluent;A;B\n9:1;far;near\n");
        assertFalse(answer.path("canBeTaken").asBoolean(true));
        assertEquals(List.of("import.no-place", "import.example"), keys(answer));
        String[] example = answer.path("notes").get(1).path("text").asText().split("\"", -1);
        JsonNode read = read(example[1] + "\n" + example[3] + "\n");
        assertTrue(read.path("canBeTaken").asBoolean());
        assertEquals(List.of("1/1 A rf 0.35"), readings(read));
        assertFalse(read("plate,spot,Rf\n1,A,7\n").path("canBeTaken").asBoolean(true));
    }

    @Test
    void sizesThatAreAssumedAreSaidInOneLineAndOnlyWhereMillimetresMatter() throws IOException {
        JsonNode mm = read("spot,centre,start,front\nA,20,10,62\n");
        assertEquals("Not in the file and assumed: plate height 70 mm, plate width 40 mm.", text(mm, "import.assumed"));
        assertFalse(keys(read("spot,Rf\nA,0.3\n")).contains("import.assumed"));
        JsonNode german = read(FakeAdviser.exchange().in(Language.GERMAN), "Fleck;Rf;Plattenhöhe\nA;0,3;100\n");
        assertEquals(
                "Nicht in der Datei und angenommen: Plattenbreite 40 mm, Startlinie 10 mm, Front 62 mm.",
                text(german, "import.assumed"));
    }

    @Test
    void aSizeThatTheLastPlateLacksIsNotAssumed() throws IOException {
        ObjectNode into = (ObjectNode)
                new ObjectMapper().readTree(Files.readString(Path.of("shared", "studies", "version-5.json")));
        JsonNode last = into.path("plates").get(into.path("plates").size() - 1);
        ((ObjectNode) last).put("heightMm", "").put("widthMm", 50);
        byte[] file = "spot,centre,start,front\nA,20,10,62\n".getBytes(StandardCharsets.UTF_8);
        assertEquals(
                "Not in the file and assumed: plate width 50 mm.",
                text(read(file, "\"into\": " + into), "import.assumed"));
    }

    private static String text(JsonNode answer, String key) {
        for (JsonNode note : answer.path("notes")) {
            if (note.path("key").asText().equals(key)) {
                return note.path("text").asText();
            }
        }
        return "";
    }

    @Test
    void aCompoundWithoutAReadingIsToldAndItsRowStillTellsThePlate() throws IOException {
        JsonNode answer = read("plate,eluent,spot,Rf\n1,9:1,F,\n,,A,0.4\n");
        assertEquals(List.of("2 rf no-reading"), rejected(answer));
        assertEquals(List.of("1/1 A rf 0.4"), readings(answer));
        assertEquals(10, answer.path("plates").get(0).path("percentStrong").asDouble());
        assertEquals(1, answer.path("spots").size(), "no compound without a reading");
        assertEquals(List.of(), rejected(read("plate,eluent,spot,Rf,not_seen\n1,9:1,,,F\n")));
    }
}
