package midplate.wire;

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
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.notebook.Study;
import midplate.notebook.UnreadableStudy;
import midplate.words.Language;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What no study may hold is told with its place, and all of it at once. */
class StudyFaultsTest {
    private static final Path KEPT = Path.of("shared", "studies");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final StudyFiles FILES = StudyFiles.builtIn();
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();

    private static String kept(int version) throws IOException {
        return Files.readString(KEPT.resolve("version-" + version + ".json"));
    }

    private static List<Fault> faults(String json) {
        FaultList faults = new FaultList(Texts.of(Language.ENGLISH));
        return assertThrows(
                        BadInput.class,
                        () -> new StudyReader(CATALOGUE, FunctionalGroups.builtIn(), faults)
                                .read(JsonText.read(json, faults)),
                        json)
                .faults();
    }

    private static Study read(String json) {
        FaultList faults = new FaultList(Texts.of(Language.ENGLISH));
        return new StudyReader(CATALOGUE, FunctionalGroups.builtIn(), faults).read(JsonText.read(json, faults));
    }

    /** The kept study with other JSON at a place; nothing there where it is said to be gone. */
    private static String with(int version, String pointer, String json) throws IOException {
        JsonNode study = JSON.readTree(kept(version));
        int slash = pointer.lastIndexOf('/');
        JsonNode parent = study.at(pointer.substring(0, slash));
        String name = pointer.substring(slash + 1);
        if (parent instanceof ObjectNode object) {
            if (json.equals("gone")) {
                object.remove(name);
            } else {
                object.set(name, JSON.readTree(json));
            }
        } else {
            ((ArrayNode) parent).set(Integer.parseInt(name), JSON.readTree(json));
        }
        return study.toString();
    }

    private static List<String> told(String json) {
        return faults(json).stream()
                .map(fault -> fault.field() + " " + fault.code())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/format            | gone                      | format no-study",
                "/format            | \"a letter\"              | format no-study",
                "/version           | gone                      | version no-version",
                "/version           | 0                         | version no-version",
                "/version           | 1.5                       | version no-version",
                "/version           | \"3\"                     | version no-version",
                "/version           | 6                         | version newer-study",
                "/version           | 1e300                     | version newer-study",
                "/id                | \"../../etc/passwd\"      | id no-study-id",
                "/id                | \"20261026-P3H8D5WZ2N\"   | id no-study-id",
                "/id                | 7                         | id no-study-id",
                "/title             | gone                      | title missing-field",
                "/title             | null                      | title wrong-type",
                "/title             | \"a\\nb\"                 | title line-not-taken",
                "/title             | \"a\\u0000b\"             | title line-not-taken",
                "/title             | \"a\\u0085b\"             | title line-not-taken",
                "/title             | \"\\ud83e\"               | title half-sign",
                "/title             | \"\\udd2c\\ud83e\"        | title half-sign",
                "/notes             | \"a \\udd2c b\"           | notes half-sign",
                "/created           | \"2026-10-26\"            | created no-time",
                "/created           | \"2026-10-26T13:02:11+02:00\" | created no-time",
                "/modified          | \"2026-02-30T13:02:11Z\"  | modified no-time",
                "/modified          | 0                         | modified wrong-type",
                "/archived          | \"no\"                    | archived wrong-type",
                "/origin            | \"mine\"                  | origin unknown-choice",
                "/sorbent           | \"slica\"                 | sorbent unknown-choice",
                "/setting           | \"Bench\"                 | setting unknown-choice",
                "/sha256            | \"abc\"                   | sha256 no-digest",
                "/shelf/0           | \"hexan\"                 | shelf[0] unknown-choice",
                "/shelf/0           | \"hexanes\"               | shelf[0] unknown-choice",
                "/shelf/1           | \"hexane\"                | shelf[1] id-twice",
                "/shelf             | {}                        | shelf wrong-type",
                "/author            | \"x\"                     | author unknown-field",
                "/spots/0/colour    | 1                         | spots[0].colour unknown-field",
                "/spots/0/id        | \"a b\"                   | spots[0].id no-id",
                "/spots/1/id        | \"s1\"                    | spots[1].id id-twice",
                "/spots/0/by        | gone                      | spots[0].smiles by-missing",
                "/spots/0/by        | \"name\"                  | spots[0].by unknown-choice",
                "/spots/0/groups/keton | 1                      | spots[0].groups.keton unknown-group",
                "/spots/1/groups/ketone | [1]                   | spots[1].groups.ketone wrong-type",
                "/spots/2/class     | \"estr\"                  | spots[2].class unknown-class",
                "/plates/0/lanes/0/readings/0/id | \"r2\"       | plates[0].lanes[0].readings[1].id id-twice",
                "/plates/0/lanes/0/readings/0/rf | 0.3          | plates[0].lanes[0].readings[0].rf two-places",
                "/plates/0/lanes/0/readings/0/centreMm | gone   | plates[0].lanes[0].readings[0].centreMm missing-field",
                "/plates/0/lanes/0/readings/0/centreMm | null   | plates[0].lanes[0].readings[0].centreMm wrong-type",
                "/plates/0/lanes/0/readings/0/spots/0 | \"s9\"  | plates[0].lanes[0].readings[0].spots no-such-spot",
                "/plates/0/lanes/0/readings/1/spots/1 | \"s2\"  | plates[0].lanes[0].readings[1].spots[1] id-twice",
                "/plates/1/lanes/0/id | \"l1\"                  | plates[1].lanes[0].id id-twice",
                "/plates/1/id       | \"p1\"                    | plates[1].id id-twice",
                "/plates/0/notSeen/0 | \"s9\"                   | plates[0].notSeen no-such-spot",
                "/plates/0/weak     | \"hexanes\"               | plates[0].weak unknown-choice",
                "/plates/0/percentStrong | \"10\"               | plates[0].percentStrong wrong-type",
                "/plates/0/additive/kind | \"own \"             | plates[0].additive.kind unknown-choice",
                "/plates/0/additive | \"none\"                  | plates[0].additive wrong-type",
                "/plates/0/conditions/lined | \"yes\"           | plates[0].conditions.lined wrong-type",
                "/plates/0/conditions/colour | 1                | plates[0].conditions.colour unknown-field",
                "/plates/0/heightMm | [70]                      | plates[0].heightMm wrong-type",
                "/plates/0/widthMm  | \"4\\t0\"                 | plates[0].widthMm line-not-taken",
                "/next/apart        | [\"s1\"]                  | next.apart not-two-spots",
                "/next/apart/0      | \"s9\"                    | next.apart no-such-spot",
                "/next/window       | [0.2]                     | next.window wrong-type",
                "/next/windowKind   | \"wide\"                  | next.windowKind unknown-choice",
                "/next              | gone                      | next missing-field",
                "/advices/0/given   | \"today\"                 | advices[0].given no-time",
                "/advices/0/probability | 1.01                  | advices[0].probability number-out-of-range",
                "/advices/0/percentStrong | -1                  | advices[0].percentStrong number-out-of-range",
                "/advices/0/spots/0/rf | 0.7                    | advices[0].spots[0].rf number-out-of-range",
                "/advices/0/spots/1/spot | \"s1\"               | advices[0].spots[1].spot id-twice",
                "/advices/0/basis   | \"luck\"                  | advices[0].basis unknown-choice",
            })
    void eachFaultIsToldWithItsPlace(String pointer, String json, String told) throws IOException {
        assertEquals(List.of(told), told(with(3, pointer, json)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/column            | 7                         | column wrong-type",
                "/column            | {}                        | column.massMg missing-field",
                "/column/colour     | 1                         | column.colour unknown-field",
                "/column/target     | \"s9\"                    | column.target no-such-spot",
                "/column/target     | null                      | column.target wrong-type",
                "/column/massMg     | [250]                     | column.massMg wrong-type",
                "/column/loading    | \"damp\"                  | column.loading unknown-choice",
                "/column/elution    | \"gradient\"              | column.elution unknown-choice",
                "/column/bed        | 12                        | column.bed wrong-type",
                "/column/bed/kind   | \"sand\"                  | column.bed.kind unknown-choice",
                "/column/bed/grams  | gone                      | column.bed.grams missing-field",
                "/column/runs/1/bed/bedMm | gone                | column.runs[1].bed.bedMm missing-field",
                "/column/steps/0/percentStrong | \"5\"          | column.steps[0].percentStrong wrong-type",
                "/column/steps/0/volumeMl | gone                | column.steps[0].volumeMl missing-field",
                "/column/runs/1/id  | \"c1\"                    | column.runs[1].id id-twice",
                "/column/runs/0/weak | \"hexanes\"              | column.runs[0].weak unknown-choice",
                "/column/runs/0/tubes/1/id | \"t1\"             | column.runs[0].tubes[1].id id-twice",
                "/column/runs/0/tubes/1/marks | null            | column.runs[0].tubes[1].marks wrong-type",
                "/column/runs/0/tubes/1/marks/0/spot | \"s9\"   | column.runs[0].tubes[1].marks[0].spot no-such-spot",
                "/column/runs/0/tubes/2/marks/1/spot | \"s1\"   | column.runs[0].tubes[2].marks[1].spot id-twice",
                "/column/runs/0/tubes/1/marks/0/strength | 5    | column.runs[0].tubes[1].marks[0].strength number-out-of-range",
                "/column/runs/0/tubes/1/marks/0/strength | 2.5  | column.runs[0].tubes[1].marks[0].strength number-out-of-range",
                "/column/runs/0/tubes/1/marks/0/strength | -1   | column.runs[0].tubes[1].marks[0].strength number-out-of-range",
                "/column/runs/0/tubes/1/marks/0/strength | \"3\" | column.runs[0].tubes[1].marks[0].strength wrong-type",
                "/column/runs/0/flasks/1/id | \"f1\"            | column.runs[0].flasks[1].id id-twice",
                "/column/runs/0/flasks/0/tareGrams | null       | column.runs[0].flasks[0].tareGrams wrong-type",
            })
    void eachFaultOfAColumnIsToldWithItsPlace(String pointer, String json, String told) throws IOException {
        assertEquals(told, told(with(3, pointer, json)).get(0));
        if (!json.equals("{}")) {
            assertEquals(1, told(with(3, pointer, json)).size());
        }
    }

    @Test
    void aCompoundThatAMarkNamesCannotBeTakenOutOfTheStudy() throws IOException {
        List<String> told = told(with(3, "/spots/1", "{\"id\": \"s7\", \"name\": \"B\"}"));
        assertTrue(
                told.containsAll(List.of(
                        "column.target no-such-spot",
                        "column.runs[0].tubes[2].marks[1].spot no-such-spot",
                        "column.runs[0].tubes[3].marks[0].spot no-such-spot")),
                told.toString());
    }

    @Test
    void aTubeIsNamedInItsRunOnly() throws IOException {
        String same = with(3, "/column/runs/1/tubes", "[{\"id\": \"t1\"}]");
        assertEquals(
                "t1",
                read(same).column().orElseThrow().runs().get(1).tubes().get(0).id());
    }

    @Test
    void listsOfAColumnAreBounded() throws IOException {
        for (String[] list : new String[][] {
            {"/column/runs", "column.runs", "" + StudyColumnReader.MOST_RUNS},
            {"/column/steps", "column.steps", "" + StudyColumnReader.MOST_STEPS},
            {"/column/runs/0/tubes", "column.runs[0].tubes", "" + StudyColumnReader.MOST_TUBES},
            {"/column/runs/0/flasks", "column.runs[0].flasks", "" + StudyColumnReader.MOST_FLASKS},
            {"/column/runs/0/tubes/1/marks", "column.runs[0].tubes[1].marks", "" + StudyColumnReader.MOST_MARKS}
        }) {
            int most = Integer.parseInt(list[2]);
            assertEquals(
                    List.of(list[1] + " too-many"), told(with(3, list[0], JSON.writeValueAsString(new int[most + 1]))));
            assertTrue(told(with(3, list[0], JSON.writeValueAsString(new int[most])))
                    .contains(list[1] + "[0] wrong-type"));
        }
    }

    @Test
    void version2KnewNoColumn() throws IOException {
        assertEquals(List.of("column unknown-field"), told(with(2, "/column", "{}")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/plates/0/photo        | 7                     | plates[0].photo wrong-type",
                "/plates/0/photo        | null                  | plates[0].photo wrong-type",
                "/plates/0/photo/sha256 | gone                  | plates[0].photo.sha256 missing-field",
                "/plates/0/photo/sha256 | \"../../etc/passwd\"  | plates[0].photo.sha256 no-photo-name",
                "/plates/0/photo/sha256 | \"BA7816BF\"          | plates[0].photo.sha256 no-photo-name",
                "/plates/0/photo/light  | gone                  | plates[0].photo.light missing-field",
                "/plates/0/photo/light  | \"UV 254\"            | plates[0].photo.light unknown-choice",
                "/plates/0/photo/width  | 900                   | plates[0].photo.width unknown-field",
                "/plates/0/lanes/0/readings/0/errorMm | [0.2]   | plates[0].lanes[0].readings[0].errorMm wrong-type",
                "/plates/0/lanes/0/readings/0/errorMm | null    | plates[0].lanes[0].readings[0].errorMm wrong-type",
            })
    void eachFaultOfAPhotoIsToldWithItsPlace(String pointer, String json, String told) throws IOException {
        assertEquals(List.of(told), told(with(5, pointer, json)));
    }

    @Test
    void version4KnewNoPhoto() throws IOException {
        assertEquals(List.of("plates[0].photo unknown-field"), told(with(4, "/plates/0/photo", "{}")));
        assertEquals(
                List.of("plates[0].lanes[0].readings[0].errorMm unknown-field"),
                told(with(4, "/plates/0/lanes/0/readings/0/errorMm", "0.2")));
        assertEquals(List.of("plates wrong-type"), told(with(4, "/plates", "7")));
        assertEquals(List.of("plates[0].lanes wrong-type"), told(with(4, "/plates/0/lanes", "7")));
    }

    @Test
    void anEmptyStudyHasNoSpots() throws IOException {
        assertTrue(told(with(2, "/spots", "[]")).contains("spots no-spots"));
    }

    @Test
    void allFaultsAreToldAtOnce() throws IOException {
        String json = kept(2).replace("\"silica\"", "\"sand\"")
                .replace("\"title\"", "\"titel\"")
                .replace("\"frontMm\": 62", "\"frontMm\": 1e999")
                .replace("\"r2\"", "\"r1\"")
                .replace("\"basis\": \"measured\"", "\"basis\": \"luck\", \"basis\": \"guess\"");
        assertEquals(
                new TreeSet<>(List.of(
                        "sorbent unknown-choice",
                        "titel unknown-field",
                        "title missing-field",
                        "plates[0].frontMm number-too-large",
                        "plates[0].lanes[0].readings[1].id id-twice",
                        "advices[0].basis duplicate-field",
                        "advices[0].basis unknown-choice")),
                new TreeSet<>(told(json)));
    }

    @Test
    void aFaultNamesWhatCameWhatIsAllowedAndWhatToDo() throws IOException {
        for (Fault fault : faults(with(2, "/shelf/0", "\"hexan\""))) {
            assertEquals("\"hexan\"", fault.came());
            assertTrue(fault.allowed().contains("hexane"), fault.allowed());
            assertEquals("Did you mean hexane?", fault.todo());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "{", "[]", "null", "7", "{\"a\": NaN}", "{\"a\": Infinity}", "{} {}", "{\"a\": 01}", "\u0000"
            })
    void whatIsNoStudyAtAllIsTold(String json) {
        assertEquals(1, faults(json).size());
    }

    @Test
    void theFieldsOfVersion1AreNotThoseOfVersion2() throws IOException {
        assertEquals(List.of("archived unknown-field"), told(with(1, "/archived", "false")));
        assertEquals(List.of("plates[0].lanes[0].id unknown-field"), told(with(1, "/plates/0/lanes/0/id", "\"l9\"")));
        assertEquals(List.of("plates[1].eluent unknown-field"), told(with(1, "/plates/1/eluent", "\"3:1\"")));
        assertEquals(List.of("spots[1].by unknown-field"), told(with(1, "/spots/1/by", "\"groups\"")));
        assertEquals(
                List.of("plates[0].lanes[0].readings[0].spots no-such-spot"),
                told(with(1, "/plates/0/lanes/0/readings/0/spot", "\"s9\"")));
        assertEquals(List.of("plates[0].lanes wrong-type"), told(with(1, "/plates/0/lanes", "7")));
        assertEquals(List.of("plates wrong-type"), told(with(1, "/plates", "{}")));
        assertEquals(List.of("plates[0] wrong-type"), told(with(1, "/plates/0", "7")));
    }

    @Test
    void aShareThatWasNoNumberIsTheEluentOfVersion2() throws IOException {
        Study study = read(with(1, "/plates/0/percentStrong", "\"4 :\""));
        assertEquals("4 :", study.plates().get(0).eluent());
        assertTrue(study.plates().get(0).percentStrong().isEmpty());
        assertEquals(
                "",
                read(with(1, "/plates/0/percentStrong", "gone")).plates().get(0).eluent());
        String small = kept(1).replace("\"percentStrong\": 10", "\"percentStrong\": 1e-5");
        assertEquals("0.00001", read(small).plates().get(0).eluent());
    }

    @Test
    void anAdviceMayNameWhatIsGoneSince() throws IOException {
        assertEquals(
                "s9",
                read(with(2, "/advices/0/spots/0/spot", "\"s9\""))
                        .advices()
                        .get(0)
                        .spots()
                        .get(0)
                        .spot());
        assertEquals(
                List.of("p9"),
                read(with(2, "/advices/0/after/0", "\"p9\"")).advices().get(0).after());
    }

    @Test
    void longTextsAreTakenUpToTheirLimit() throws IOException {
        String emoji = "\ud83e\uddea";
        String title = emoji.repeat(StudyReader.LONGEST_TITLE);
        assertEquals(
                title, read(with(2, "/title", JSON.writeValueAsString(title))).title());
        assertEquals(List.of("title line-not-taken"), told(with(2, "/title", JSON.writeValueAsString(title + emoji))));
        String notes = ("a line of notes\n".repeat(2000)).substring(0, 20_000);
        assertEquals(
                notes, read(with(2, "/notes", JSON.writeValueAsString(notes))).notes());
        String tooLong = "n".repeat(StudyReader.LONGEST_NOTES + 1);
        assertEquals(List.of("notes text-too-long"), told(with(2, "/notes", JSON.writeValueAsString(tooLong))));
    }

    @Test
    void listsAreBounded() throws IOException {
        String many = IntStream.range(0, StudyFields.MOST + 1)
                .mapToObj(i -> "{\"id\": \"s" + i + "\", \"name\": \"\"}")
                .reduce((a, b) -> a + "," + b)
                .orElse("");
        assertTrue(told(with(2, "/spots", "[" + many + "]")).contains("spots too-many"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"format\": \"midplate-study\", \"version\": 6, \"new\": [[[[[[[",
                "{\"format\":\"midplate-study\",\"version\":12}"
            })
    void aFileOfANewerProgramIsKnownByItsBeginning(String file) {
        UnreadableStudy unreadable =
                assertThrows(UnreadableStudy.class, () -> FILES.read(file.getBytes(StandardCharsets.UTF_8)), file);
        assertEquals(UnreadableStudy.Kind.NEWER, unreadable.kind());
        assertEquals("fault.newer-study", unreadable.reason().key());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"format\": \"midplate-study\", \"version\": 2             | study-breaks-off",
                "{\"format\": \"midplate-stuDy\", \"version\": 6}            | at.place",
                "{\"format\": \"midplate-study\", \"version\": \"5\"}        | at.place",
                "{\"format\": \"midplate-study\", \"version\": 2,, }        | study-garbled",
                "''                                                          | no-json",
            })
    void anythingElseIsDamagedAndItsFirstFaultIsTheReason(String file, String key) {
        UnreadableStudy unreadable =
                assertThrows(UnreadableStudy.class, () -> FILES.read(file.getBytes(StandardCharsets.UTF_8)), file);
        assertEquals(UnreadableStudy.Kind.DAMAGED, unreadable.kind());
        assertEquals("fault." + key, unreadable.reason().key());
        for (Language language : Language.values()) {
            Texts.of(language).render(unreadable.reason());
        }
    }

    @Test
    void bytesThatAreNoUtf8AreDamaged() throws IOException {
        byte[] file = kept(2).getBytes(StandardCharsets.UTF_8);
        file[200] = (byte) 0xff;
        UnreadableStudy unreadable = assertThrows(UnreadableStudy.class, () -> FILES.read(file));
        assertEquals(UnreadableStudy.Kind.DAMAGED, unreadable.kind());
        assertEquals("fault.not-utf8", unreadable.reason().key());
    }

    @Test
    void aMarkThatAnEditorPutBeforeTheFileIsPassedOver() throws IOException, UnreadableStudy {
        Study study = FILES.read(kept(2).getBytes(StandardCharsets.UTF_8));
        assertEquals(study, FILES.read(("\ufeff" + kept(2)).getBytes(StandardCharsets.UTF_8)));
        String newer = "\ufeff" + kept(2).replace("\"version\": 2", "\"version\": 6");
        UnreadableStudy unreadable =
                assertThrows(UnreadableStudy.class, () -> FILES.read(newer.getBytes(StandardCharsets.UTF_8)));
        assertEquals(UnreadableStudy.Kind.NEWER, unreadable.kind());
    }

    // a study that came through the door must never be too large for its own file
    @Test
    void theLargestStudyThatIsTakenFitsIntoItsFile() throws IOException, UnreadableStudy {
        ObjectNode study = (ObjectNode) JSON.readTree(kept(2));
        ArrayNode plates = (ArrayNode) study.get("plates");
        int lanes = 0;
        while (study.toString().length() < 0.95 * Exchange.MOST_BYTES) {
            ObjectNode plate = plates.get(1).deepCopy();
            plate.put("id", "p" + (plates.size() + 1))
                    .putArray("notSeen")
                    .add("s1")
                    .add("s2");
            ArrayNode all = plate.putArray("lanes");
            while (all.size() < StudyFields.MOST) {
                lanes++;
                all.addObject().put("id", "n" + lanes).putArray("readings");
            }
            plates.add(plate);
        }
        Study read = read(study.toString());
        byte[] file = FILES.write(read);
        assertTrue(file.length > Exchange.MOST_BYTES, "larger than what can be sent");
        assertEquals(read, FILES.read(file));
    }

    @Test
    void whatThePageCanChooseCanBeRead() throws IOException {
        String additives = Files.readString(Path.of("web", "sheet", "additive.js"));
        Matcher streaks = Pattern.compile("AGAINST_STREAKS = \\[([^\\]]*)]").matcher(additives);
        assertTrue(streaks.find());
        assertTrue(StudyJars.additives(CATALOGUE)
                .containsAll(List.of(streaks.group(1).replace("\"", "").split(", ", -1))));
        String sheet = Files.readString(Path.of("web", "sheet", "sheet.js"));
        Matcher kinds =
                Pattern.compile("WINDOWS = \\{ ([a-z]+): [^:]*, ([a-z]+): ").matcher(sheet);
        assertTrue(kinds.find());
        assertEquals(List.of(kinds.group(1), kinds.group(2), "own"), StudyJars.WINDOW_KINDS);
        Matcher shelf = Pattern.compile("shelf: \\[([^\\]]*)]").matcher(sheet);
        assertTrue(shelf.find());
        read(with(2, "/shelf", "[" + shelf.group(1) + "]"));
        JsonNode groups = JSON.readTree(FakeAdviser.exchange().groups());
        for (JsonNode kind : groups.get("classes")) {
            read(with(2, "/spots/2/class", kind.get("id").toString()));
        }
        for (JsonNode group : groups.get("groups")) {
            read(with(2, "/spots/1/groups", "{" + group.get("id") + ": \"\"}"));
        }
        for (JsonNode solvent : JSON.readTree(FakeAdviser.exchange().library()).get("solvents")) {
            read(with(2, "/next/weak", solvent.get("id").toString()));
        }
    }
}
