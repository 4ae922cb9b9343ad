package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import midplate.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a file is, by what is in it. */
class ImportAnswersTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final ImportAnswers IMPORTS =
            FakeAdviser.exchange().studies().imports();

    private static ObjectNode request(String name, byte[] file) {
        return JSON.createObjectNode()
                .put("file", name)
                .put("base64", Base64.getEncoder().encodeToString(file));
    }

    private static String answer(ObjectNode request) {
        return IMPORTS.of(request.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static List<Fault> refused(ObjectNode request) {
        return assertThrows(BadInput.class, () -> answer(request)).faults();
    }

    private static byte[] latin(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] zip(String entry, byte[] content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry(entry));
            zip.write(content);
        }
        return bytes.toByteArray();
    }

    private static byte[] gzip(byte[] content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(bytes)) {
            zip.write(content);
        }
        return bytes.toByteArray();
    }

    static Stream<Arguments> foreign() throws IOException {
        byte[] zeros = new byte[50_000_000];
        return Stream.of(
                Arguments.of(zip("bomb", zeros), "import.kind-zip"),
                Arguments.of(zip("../../x.json", new byte[] {'{', '}'}), "import.kind-zip"),
                Arguments.of(latin("PK\5\6" + "\0".repeat(18)), "import.kind-zip"),
                Arguments.of(zip("xl/workbook.xml", latin("<x/>")), "import.kind-spreadsheet"),
                Arguments.of(zip("word/document.xml", latin("<x/>")), "import.kind-document"),
                Arguments.of(latin("\u00D0\u00CF\u0011\u00E0\u00A1\u00B1\u001A\u00E1"), "import.kind-spreadsheet"),
                Arguments.of(gzip(zeros), "import.kind-packed"),
                Arguments.of(latin("%PDF-1.7\n"), "import.kind-pdf"),
                Arguments.of(latin("\u0089PNG\r\n\u001A\n"), "import.kind-picture"),
                Arguments.of(latin("\u00FF\u00D8\u00FF\u00E0\0\u0010JFIF"), "import.kind-picture"),
                Arguments.of(latin("\0\0\0\u0018ftypheic\0\0\0\0"), "import.kind-picture"),
                Arguments.of(latin("GIF89a\1\0\1\0"), "import.kind-picture"),
                Arguments.of(latin("{\\rtf1\\ansi x}"), "import.kind-document"),
                Arguments.of(latin("<!DOCTYPE html><p>Rf"), "import.kind-web-page"),
                Arguments.of(latin("\u00EF\u00BB\u00BF<?xml version=\"1.0\"?><a/>"), "import.kind-web-page"),
                Arguments.of(latin("plate,Rf\n1,0.3\0\n"), "import.kind-unknown"),
                Arguments.of(latin("\1\2\3\4"), "import.kind-unknown"),
                Arguments.of(new byte[] {(byte) 0xFF, (byte) 0xFE, 0}, "import.kind-unknown"));
    }

    @ParameterizedTest
    @MethodSource("foreign")
    void whatIsNoTableAndNoStudyIsRefusedByWhatItIs(byte[] file, String kind) {
        // a name that lies changes nothing
        List<Fault> faults = refused(request("runs.csv", file));
        assertEquals(1, faults.size());
        assertEquals("base64", faults.get(0).field());
        String called = midplate.words.Texts.english().render(midplate.words.Message.of(kind));
        assertEquals("runs.csv is " + called + ".", faults.get(0).message());
        assertFalse(faults.get(0).todo().isBlank());
    }

    @ParameterizedTest
    @CsvSource({"BMW,0.3", "MM*,0.3", "PKA,0.3", "GIF8,0.3", "[M+H]+,0.3", "<A>,0.3", "BZ,0.3"})
    void aTableThatBeginsLikeAnotherKindIsStillATable(String name, String rf) throws IOException {
        JsonNode answer =
                JSON.readTree(answer(request("x", (name + "," + rf + "\nB,0.4\n").getBytes(StandardCharsets.UTF_8))));
        assertEquals("runs", answer.path("kind").asText());
        assertEquals(name, answer.path("spots").get(0).path("name").asText());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "\uFEFF", ",,,\n,,\n", "   "})
    void anEmptyFileIsRefusedPlainly(String file) {
        List<Fault> faults = refused(request("x.csv", file.getBytes(StandardCharsets.UTF_8)));
        assertEquals("empty", faults.get(0).code());
    }

    @Test
    void aFileThatIsOneOpenQuotationMarkIsRefusedPlainly() {
        assertEquals(
                "open-quote",
                refused(request("x.csv", latin("\"plate,Rf\n1,0.3\n"))).get(0).code());
    }

    @ParameterizedTest
    @CsvSource({"version-1.json, 1", "version-2.json, 1", "version-3.json, 1", "version-4.json, 1", "version-5.json, 0"
    })
    void aStudyOfAnyVersionIsReadAndBroughtToTheNewest(String file, int notes) throws IOException {
        byte[] bytes = Files.readAllBytes(Path.of("shared", "studies", file));
        String answered = answer(request("anything.png", bytes));
        assertEquals(List.of(), Schemas.broken("import-answer", answered));
        JsonNode answer = JSON.readTree(answered);
        assertEquals("study", answer.path("kind").asText());
        assertEquals(List.of(), Schemas.broken("study", answer.path("study").toString()));
        assertEquals(JSON.readTree(bytes).path("id"), answer.path("study").path("id"));
        assertEquals(notes, answer.path("notes").size());
    }

    @Test
    void aStudyWithFaultsIsRefusedWithAllOfThemAndANewerOneByItsVersion() throws IOException {
        ObjectNode study = (ObjectNode) JSON.readTree(Files.readString(Path.of("shared", "studies", "version-5.json")));
        study.put("title", 5).put("setting", "moon");
        List<Fault> faults = refused(request("x.json", study.toString().getBytes(StandardCharsets.UTF_8)));
        assertEquals(
                List.of("title", "setting"), faults.stream().map(Fault::field).toList());
        study.put("version", 99);
        assertEquals(
                "newer-study",
                refused(request("x.json", study.toString().getBytes(StandardCharsets.UTF_8)))
                        .get(0)
                        .code());
        BadInput broken = assertThrows(BadInput.class, () -> answer(request("x.json", latin("{\"format\": "))));
        assertEquals(BadInput.Kind.FIELDS, broken.kind(), "the request itself was JSON");
        assertEquals("base64", broken.faults().get(0).field());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{}                                              | base64      | missing-field",
                "{\"base64\": 5}                                 | base64      | wrong-type",
                "{\"base64\": \"a-b\"}                           | base64      | no-base64",
                "{\"base64\": \"UmY=\", \"file\": 5}             | file        | wrong-type",
                "{\"base64\": \"UmY=\", \"path\": \"/x\"}        | path        | unknown-field",
                "{\"base64\": \"UmY=\", \"decimal\": \".\"}      | decimal     | unknown-choice",
                "{\"base64\": \"UmY=\", \"delimiter\": \":\"}    | delimiter   | unknown-choice",
                "{\"base64\": \"UmY=\", \"columns\": {\"rf\": 1.5}}   | columns.rf  | number-out-of-range",
                "{\"base64\": \"UmY=\", \"columns\": {\"rf\": -1}}    | columns.rf  | number-out-of-range",
                "{\"base64\": \"UmY=\", \"columns\": {\"rf\": 1e9}}   | columns.rf  | number-out-of-range",
                "{\"base64\": \"UmY=\", \"columns\": {\"RF\": 1}}     | columns.RF  | unknown-field",
                "{\"base64\": \"UmY=\", \"columns\": {\"rf\": 1, \"spot\": 1}} | columns | column-twice",
                "{\"base64\": \"UmY=\", \"into\": {\"format\": \"x\"}} | into.format | no-study",
                "{\"base64\": \"UmY=\", \"into\": 5}             | into        | wrong-type",
                "[]                                              | request     | wrong-type",
            })
    void aFaultyRequestIsToldByField(String request, String field, String code) {
        BadInput bad = assertThrows(BadInput.class, () -> IMPORTS.of(request.getBytes(StandardCharsets.UTF_8)));
        assertEquals(field, bad.faults().get(0).field());
        assertEquals(code, bad.faults().get(0).code());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"../../x.json", "C:\\Windows\\x.csv", "con", "a\u0000b.csv", "\u202Egpj.csv", "x\r\nSet-Cookie: a"
            })
    void theNameOfAFileIsOnlyQuoted(String name) throws IOException {
        String message = refused(request(name, zip("x", latin("x")))).get(0).message();
        assertTrue(message.chars().noneMatch(Character::isISOControl), message);
        assertFalse(message.contains("\u202E"), message);
        assertTrue(message.length() < 120, message);
        String longName =
                refused(request("x".repeat(5000), zip("x", latin("x")))).get(0).message();
        assertTrue(longName.length() < 120, longName);
    }

    @Test
    void refusalsAreSaidInGerman() throws IOException {
        ImportAnswers german =
                FakeAdviser.exchange().in(Language.GERMAN).studies().imports();
        byte[] request = request("x", zip("x", latin("x"))).toString().getBytes(StandardCharsets.UTF_8);
        BadInput bad = assertThrows(BadInput.class, () -> german.of(request));
        assertEquals("x ist ein ZIP-Archiv.", bad.faults().get(0).message());
    }
}
