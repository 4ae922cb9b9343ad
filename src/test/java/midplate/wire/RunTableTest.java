package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables of runs as people and other programs write them. All plates here are invented. */
class RunTableTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Exchange EXCHANGE = FakeAdviser.exchange();

    static JsonNode read(byte[] file, String more) throws IOException {
        return read(EXCHANGE, file, more);
    }

    private static JsonNode read(Exchange exchange, byte[] file, String more) throws IOException {
        ObjectNode request = (ObjectNode) JSON.readTree("{" + more + "}");
        request.put("file", "table.csv").put("base64", Base64.getEncoder().encodeToString(file));
        JsonNode answer =
                JSON.readTree(exchange.studies().imports().of(request.toString().getBytes(StandardCharsets.UTF_8)));
        assertEquals("runs", answer.path("kind").asText());
        assertEquals(List.of(), Schemas.broken("import-answer", answer.toString()));
        return answer;
    }

    static JsonNode read(Exchange exchange, String table) throws IOException {
        return read(exchange, table.getBytes(StandardCharsets.UTF_8), "");
    }

    static JsonNode read(String table) throws IOException {
        return read(table.getBytes(StandardCharsets.UTF_8), "");
    }

    /** Each reading as plate, lane, compounds and place. */
    static List<String> readings(JsonNode answer) {
        List<String> all = new ArrayList<>();
        for (JsonNode plate : answer.path("plates")) {
            for (int lane = 0; lane < plate.path("lanes").size(); lane++) {
                for (JsonNode reading : plate.path("lanes").get(lane).path("readings")) {
                    List<String> names = new ArrayList<>();
                    reading.path("spots")
                            .forEach(id -> answer.path("spots").forEach(spot -> {
                                if (spot.path("id").equals(id)) {
                                    names.add(spot.path("name").asText());
                                }
                            }));
                    String place = reading.has("rf") ? "rf " + reading.get("rf") : "mm " + reading.get("centreMm");
                    all.add(plate.path("id").asText() + "/" + (lane + 1) + " " + String.join("&", names) + " " + place);
                }
            }
        }
        return all;
    }

    static List<String> keys(JsonNode answer) {
        List<String> keys = new ArrayList<>();
        answer.path("notes").forEach(note -> keys.add(note.path("key").asText()));
        return keys;
    }

    static List<String> rejected(JsonNode answer) {
        List<String> rows = new ArrayList<>();
        answer.path("rejected")
                .forEach(row -> rows.add(row.path("line") + " "
                        + row.path("field").asText() + " " + row.path("code").asText()));
        return rows;
    }

    @Test
    void aTableOfAGermanSpreadsheetIsUnderstood() throws IOException {
        // invented, laid out as such programs save it: semicolons, decimal commas, Windows-1252, CRLF
        byte[] file = Files.readAllBytes(Path.of("src", "test", "resources", "tables", "laufmittel.csv"));
        JsonNode answer = read(file, "");
        assertEquals(";", answer.path("delimiter").asText());
        assertEquals("comma", answer.path("decimal").asText());
        assertTrue(keys(answer).contains("import.windows"), keys(answer).toString());
        assertEquals(
                List.of(
                        "1/1 Säure mm 17.5",
                        "1/1 Ester mm 41",
                        "1/2 Säure mm 17.0",
                        "2/1 Säure mm 28.5",
                        "2/1 Ester mm 50.5"),
                readings(answer));
        JsonNode plate = answer.path("plates").get(0);
        assertEquals("petroleum-ether-40-60", plate.path("weak").asText());
        assertEquals("ethyl-acetate", plate.path("strong").asText());
        assertEquals("9:1", plate.path("eluent").asText());
        assertEquals(10, plate.path("percentStrong").asDouble());
        assertEquals(62.5, plate.path("frontMm").asDouble());
        assertEquals(
                "acetic-acid",
                answer.path("plates").get(1).path("additive").path("kind").asText());
        assertEquals(List.of("6 rf rf-out-of-range"), rejected(answer));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plate,spot,Rf\\n1,A,0.35                  | ,  | point",
                "plate;spot;Rf\\n1;A;0,35                  | ;  | comma",
                "plate;spot;Rf\\n1;A;0.35                  | ;  | point",
                "plate\\tspot\\tRf\\n1\\tA\\t0,35          | TAB | comma",
                "plate,spot,Rf\\n1,A,\"0,35\"              | ,  | comma",
                "sep=;\\nplate;spot;Rf\\n1;A;0,35          | ;  | comma",
                "Platte;Fleck;Rf-Wert\\r\\n1;A;0,35\\r\\n   | ;  | comma",
                "TLC plate no.;Compound;R_f value\\n1;A;.35 | ;  | point",
            })
    void delimiterAndDecimalMarkAreFoundOut(String table, String delimiter, String decimal) throws IOException {
        JsonNode answer = read(table.replace("\\n", "\n").replace("\\r", "\r").replace("\\t", "\t"));
        assertEquals(delimiter.replace("TAB", "\t"), answer.path("delimiter").asText());
        assertEquals(decimal, answer.path("decimal").asText());
        assertEquals(List.of("1/1 A rf 0.35"), readings(answer));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE"})
    void aMarkAtTheBeginningTellsTheEncoding(String charset) throws IOException {
        String table = "\uFEFFPlatte;Fleck;Rf\n1;Säure µ;0,3\n";
        assertEquals(List.of("1/1 Säure µ rf 0.3"), readings(read(table.getBytes(Charset.forName(charset)), "")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "9:1                     | 9:1     | 10",
                "9 : 1                   | 9 : 1   | 10",
                "09:01                   | 09:01   | 10",
                "9/1                     | 9/1     | 10",
                "10 %                    | 10 %    | 10",
                "10                      | 10      | 10",
                "7,5 %                   | 7,5 %   | 7.5",
                "hexane/EtOAc 9:1        | 9:1     | 10",
                "Hexan:Essigsäureethylester 4:1 | 4:1 | 20",
                "EtOAc/hexane 1:9        | 9 : 1   | 10",
                "9:1 hexane-EtOAc        | 9:1     | 10",
                "10 % EtOAc in hexane    | 10 %    | 10",
                "EA - Hex (1:4)          | 4 : 1   | 20",
                "Hexan/EtOAc (9:1 v/v)   | 9:1     | 10",
                "hexane / ethyl acetate = 9 : 1 (v/v) | 9 : 1 | 10",
                "10 vol% EtOAc in hexanes | 10 %    | 10",
                "10 vol.%                | 10 %    | 10",
                "90/10 hexane/EtOAc (v/v) | 90/10   | 10",
            })
    void anEluentIsUnderstoodAsPeopleWriteIt(String cell, String eluent, double percent) throws IOException {
        JsonNode plate = read("plate\teluent\tspot\tRf\n1\t" + cell + "\tA\t0.35")
                .path("plates")
                .get(0);
        assertEquals(eluent, plate.path("eluent").asText());
        assertEquals(percent, plate.path("percentStrong").asDouble(), 1e-9);
        assertEquals("hexane", plate.path("weak").asText());
        assertEquals("ethyl-acetate", plate.path("strong").asText());
    }

    @Test
    void solventsMayBeWrittenByIdNameOrAbbreviationInEitherLanguage() throws IOException {
        JsonNode answer = read("plate,weak,strong,eluent,Rf\n1,DCM,MeOH,10,0.3\n2,dichloromethane,methanol,10,0.3\n"
                + "3,Dichlormethan,Methanol,10,0.3\n4,CH2Cl2,methyl alcohol,10,0.3\n");
        assertEquals(List.of(), rejected(answer));
        answer.path("plates").forEach(plate -> {
            assertEquals("dichloromethane", plate.path("weak").asText());
            assertEquals("methanol", plate.path("strong").asText());
        });
        assertEquals(4, answer.path("plates").size());
    }

    @Test
    void aShareMayNameItsSolventInTheHeader() throws IOException {
        JsonNode answer = read("plate,% MeOH in DCM,spot,Rf\n1,5,A,0.3\n");
        JsonNode plate = answer.path("plates").get(0);
        assertEquals("dichloromethane", plate.path("weak").asText());
        assertEquals("methanol", plate.path("strong").asText());
        assertEquals("5", plate.path("eluent").asText());
        assertEquals(
                "percent_strong", answer.path("columns").get(1).path("meaning").asText());
    }

    @Test
    void centimetresAndHundredfoldRfAreTurned() throws IOException {
        JsonNode answer = read("plate,start (cm),front [cm],spot,hRf\n1,1,6.2,A,35\n");
        assertEquals(List.of("1/1 A rf 0.35"), readings(answer));
        assertEquals(62, answer.path("plates").get(0).path("frontMm").asDouble());
        assertTrue(
                keys(answer).containsAll(List.of("import.centimetres", "import.hundredfold")),
                keys(answer).toString());
    }

    @Test
    void rowsThatCannotBeTakenAreToldAndTheRestGoesOn() throws IOException {
        JsonNode answer = read("plate,eluent,spot,Rf,centre_mm\n"
                + "1,9:1,A,0.35,\n"
                + "1,9:1,B,1.2,\n"
                + "1,9:1,C,-0.1,\n"
                + "1,9:1,D,abc,\n"
                + "1,4:1,E,0.5,\n"
                + "1,9:1,F,,\"1,250\"\n"
                + "1,9:1,G,\"0,4\",\n"
                + "1,9:1,H,,2000\n"
                + "2,9:1,A,0.3 0.4,\n"
                + "3,9:1,A,NaN,\n"
                + "3,9:1,A,1e999,\n"
                + "1,9:1,I,0.6,\n");
        assertEquals(List.of("1/1 A rf 0.35", "1/1 G rf 0.4", "1/1 I rf 0.6"), readings(answer));
        assertEquals(
                List.of(
                        "3 rf rf-out-of-range",
                        "4 rf rf-out-of-range",
                        "5 rf no-number",
                        "6 eluent says-otherwise",
                        "7 centre_mm thousands",
                        "9 centre_mm length-out-of-range",
                        "10 rf no-number",
                        "11 rf no-number",
                        "12 rf no-number"),
                rejected(answer));
        JsonNode first = answer.path("rejected").get(0);
        assertEquals("1 | 9:1 | B | 1.2 |", first.path("row").asText().strip());
        assertEquals("1.2", first.path("came").asText());
        assertEquals("[0, 1]", first.path("allowed").asText());
        assertTrue(first.path("message").asText().contains("1.2"), first.toString());
    }

    @Test
    void linesAreCountedThroughLineBreaksInCells() throws IOException {
        JsonNode answer = read("plate,spot,Rf\n1,\"two\nlines\",0.3\n\n1,B,2\n");
        assertEquals(List.of("1/1 two lines rf 0.3"), readings(answer));
        assertEquals(List.of("5 rf rf-out-of-range"), rejected(answer));
    }

    @Test
    void whatFollowsAQuotationMarkThatNeverClosesIsToldAndWhatCameBeforeIsTaken() throws IOException {
        JsonNode answer = read("plate,spot,Rf\n1,A,0.3\n1,\"B,0.4\n1,C,0.5\n");
        assertEquals(List.of("1/1 A rf 0.3"), readings(answer));
        assertEquals(List.of("3 row open-quote"), rejected(answer));
    }

    @Test
    void aQuotationMarkInsideACellIsASignLikeAnyOther() throws IOException {
        assertEquals(
                List.of("1/1 3\" plate rf 0.3", "1/1 so called x rf 0.4"),
                readings(read("plate,spot,Rf\n1,3\" plate,0.3\n1,\"so called\" x,0.4\n")));
    }

    @Test
    void withoutAHeaderColumnsAreAskedForAndCanBeSet() throws IOException {
        byte[] file = "P1;9:1;A;0,35\nP1;9:1;B;0,52\n".getBytes(StandardCharsets.UTF_8);
        JsonNode guessed = read(file, "");
        assertTrue(keys(guessed).contains("import.no-header"));
        assertTrue(guessed.path("columns").get(0).path("header").isNull());
        assertEquals("rf", guessed.path("columns").get(3).path("meaning").asText());
        assertEquals(
                "[\"0,35\",\"0,52\"]",
                guessed.path("columns").get(3).path("examples").toString());
        JsonNode set = read(file, "\"columns\": {\"plate\": 0, \"eluent\": 1, \"spot\": 2, \"rf\": 3}");
        assertEquals(List.of("P1/1 A rf 0.35", "P1/1 B rf 0.52"), readings(set));
        assertEquals(10, set.path("plates").get(0).path("percentStrong").asDouble());
    }

    @Test
    void columnsDecimalMarkAndDelimiterCanBeSet() throws IOException {
        byte[] file = "plate,Rf,corrected\n1,\"0,350\",\"0,400\"\n".getBytes(StandardCharsets.UTF_8);
        assertEquals(List.of("1/1  rf 0.4"), readings(read(file, "\"columns\": {\"rf\": 2}, \"decimal\": \"comma\"")));
        byte[] doubtful = "plate,centre,start,front\n1,\"12,500\",\"10,000\",62\n".getBytes(StandardCharsets.UTF_8);
        assertEquals(List.of("2 centre_mm thousands"), rejected(read(doubtful, "")));
        assertEquals(List.of("1/1  mm 12.5"), readings(read(doubtful, "\"decimal\": \"comma\"")));
        byte[] odd = "plate;Rf,x\n1;0.3,y\n".getBytes(StandardCharsets.UTF_8);
        JsonNode comma = read(odd, "\"delimiter\": \",\", \"columns\": {\"spot\": 0, \"rf\": null}");
        assertEquals("plate;Rf", comma.path("columns").get(0).path("header").asText());
        assertEquals("spot", comma.path("columns").get(0).path("meaning").asText());
        assertTrue(keys(comma).contains("import.no-place"));
    }

    @Test
    void cellsThatWereJoinedBelongToTheRowAbove() throws IOException {
        JsonNode answer = read("plate,eluent,lane,spot,Rf\n1,9:1,1,A,0.3\n,,,B,0.4\n2,4:1,1,A,0.5\n,,2,B,0.7\n");
        assertEquals(List.of("1/1 A rf 0.3", "1/2 B rf 0.4", "2/1 A rf 0.5", "2/2 B rf 0.7"), readings(answer));
        assertTrue(keys(answer).contains("import.filled-down"));
    }

    @Test
    void withoutAPlateColumnRowsOfOneEluentAreOnePlate() throws IOException {
        JsonNode answer = read("eluent,spot,Rf\n9:1,A,0.3\n9:1,B,0.4\n4:1,A,0.5\n9:1,A,0.31\n");
        assertEquals(List.of("p1/1 A rf 0.3", "p1/1 B rf 0.4", "p1/2 A rf 0.31", "p2/1 A rf 0.5"), readings(answer));
        assertTrue(keys(answer).contains("import.plates-by-eluent"));
    }

    @Test
    void whatATableCannotTellIsPutInAndSaid() throws IOException {
        JsonNode answer = read("spot,Rf\nA,0.3\n");
        JsonNode plate = answer.path("plates").get(0);
        assertEquals(70, plate.path("heightMm").asDouble());
        assertEquals(62, plate.path("frontMm").asDouble());
        assertEquals("hexane", plate.path("weak").asText());
        assertEquals("", plate.path("eluent").asText());
        assertTrue(keys(answer).contains("import.usual-pair"), keys(answer).toString());
        JsonNode mm = read("spot,centre_mm\nA,20\n");
        assertEquals("", mm.path("plates").get(0).path("startMm").asText());
        assertTrue(keys(mm).contains("import.no-lines"));
        JsonNode both = read("spot,centre_mm,Rf\nA,20,0.3\n");
        assertEquals(List.of("p1/1 A rf 0.3"), readings(both), "without lines the Rf tells more");
        assertEquals(62, both.path("plates").get(0).path("frontMm").asDouble());
        assertEquals(List.of("p1/1 A mm 20"), readings(read("spot,centre_mm,Rf,start,front\nA,20,0.3,10,62\n")));
    }

    @Test
    void platesGoIntoAStudyBesideThoseThatAreThere() throws IOException {
        String into = Files.readString(Path.of("shared", "studies", "version-5.json"));
        byte[] file = "plate,eluent,spot,Rf\np1,3:1,A,0.4\np1,3:1,new,0.6\n".getBytes(StandardCharsets.UTF_8);
        JsonNode answer = read(file, "\"into\": " + into);
        List<String> spots = new ArrayList<>();
        answer.path("spots")
                .forEach(spot -> spots.add(
                        spot.path("id").asText() + " " + spot.path("name").asText()));
        assertEquals(List.of("s1 A", "s2 B", "s3 C", "s4 ", "s5 new"), spots);
        JsonNode plate = answer.path("plates").get(0);
        assertEquals("p3", plate.path("id").asText());
        assertEquals("l4", plate.path("lanes").get(0).path("id").asText());
        assertEquals(
                "[\"s1\"]",
                plate.path("lanes").get(0).path("readings").get(0).path("spots").toString());
        assertEquals(
                "r5",
                plate.path("lanes").get(0).path("readings").get(0).path("id").asText());
        assertEquals("4o", plate.path("widthMm").asText(), "cut like the last plate");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plate,spot,Rf      | import.no-rows",
                "x                  | import.no-place",
                "1                  | import.no-place",
                "a,b\\nc,d          | import.no-place",
            })
    void aTableWithoutRunsIsAnsweredPlainly(String table, String key) throws IOException {
        JsonNode answer = read(table.replace("\\n", "\n"));
        assertEquals(0, answer.path("plates").size());
        assertTrue(keys(answer).contains(key), keys(answer).toString());
    }

    @Test
    void oneColumnOfRfIsOnePlateOfUnlabelledSpots() throws IOException {
        assertEquals(List.of("p1/1  rf 0.3", "p1/1  rf 0.4"), readings(read("Rf\n0.3\n0.4\n")));
    }

    @Test
    void aHundredThousandRowsAreReadUpToWhatAStudyHolds() throws IOException {
        StringBuilder table = new StringBuilder("Rf\n");
        for (int i = 0; i < 100_000; i++) {
            table.append(".3\n");
        }
        JsonNode answer = read(table.toString());
        assertEquals(RunRows.MOST_READINGS, readings(answer).size());
        assertEquals(FaultList.MOST, answer.path("rejected").size());
        assertEquals(
                100_000 - RunRows.MOST_READINGS, answer.path("rejectedInAll").asInt());
        assertEquals("2002 rf too-many-readings", rejected(answer).get(0));
    }

    @Test
    void everyMessageHasItsGerman() throws IOException {
        Exchange german = EXCHANGE.in(Language.GERMAN);
        JsonNode answer =
                read(german, "plate,spot,Rf\n1,A,2\n1,B,x\n1,C,\"1,250\"\n".getBytes(StandardCharsets.UTF_8), "");
        assertEquals("[0; 1]", answer.path("rejected").get(0).path("allowed").asText());
        assertTrue(answer.path("rejected").get(1).path("message").asText().contains("keine Zahl"), answer.toString());
    }
}
