package midplate.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Collectors;
import midplate.catalogue.SolventCatalogue;
import midplate.notebook.Entered;
import midplate.notebook.JarAdditive;
import midplate.notebook.Study;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudyPlate.Given;
import midplate.notebook.StudyPlate.Lane;
import midplate.notebook.StudyPlate.SpotSeen;
import midplate.notebook.StudySpot;
import midplate.notebook.UnreadableStudy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs written as a table come back as they were, as far as the README says that the table holds them. */
class RunsRoundTripTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    private static final RunTable TABLE = new RunTable(CATALOGUE);
    /** Names from hell; no blanks at their ends, no control signs. */
    private static final List<String> NAMES = List.of(
            "A",
            "B",
            "=1+1",
            "+A",
            "-A",
            "@A",
            "'=1",
            "''=1",
            "'tis",
            "A + B",
            "A ++ B",
            "+",
            "++",
            "x +",
            "+ x",
            "+ +",
            "a + + b",
            "a +++ b",
            "A,B;C\tD".replace('\t', ' '),
            "\"quoted\"",
            "0,35",
            "9:1",
            "[M+H]+",
            "Säure µ",
            "日本語",
            "\u202Eabc",
            "=cmd|' /C calc'!A0",
            "\uFF1D1",
            "1e5",
            "../../x",
            "NULL",
            "?",
            "-",
            "\u22121");

    private static final List<List<String>> PAIRS = List.of(
            List.of("hexane", "ethyl-acetate"),
            List.of("petroleum-ether-40-60", "diethyl-ether"),
            List.of("dichloromethane", "methanol"),
            List.of("toluene", "acetone"));
    private static final List<String> ELUENTS =
            List.of("9 : 1", "9:1", "10 %", "7,5", "3/1", "4 :", "", "=2", "19 + 1", "0", "100");
    private static final List<String> NUMBERS = List.of("0", "1", "0.35", "0.350", "1e-1", "0.123456789");
    private static final List<String> LENGTHS = List.of("70", "62.5", "12.500", "1e1", "100.00");

    private final Random random = new Random(0);

    private <T> T one(List<T> some) {
        return some.get(random.nextInt(some.size()));
    }

    private Entered length() {
        int which = random.nextInt(8);
        String written = one(LENGTHS);
        return which == 0
                ? Entered.NOTHING
                : which == 1 ? Entered.text(one(List.of("4o", "=7", "?"))) : number(written);
    }

    private static Entered number(String written) {
        return Entered.number(written, Double.parseDouble(written));
    }

    private List<StudySpot> spots() {
        List<String> names = new ArrayList<>(NAMES);
        java.util.Collections.shuffle(names, random);
        List<StudySpot> spots = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            spots.add(new StudySpot("s" + (i + 1), names.get(i), Optional.empty()));
        }
        return spots;
    }

    private SpotSeen seen(int id, List<StudySpot> spots) {
        List<String> ids = new ArrayList<>(spots.stream().map(StudySpot::id).toList());
        java.util.Collections.shuffle(ids, random);
        Given given = one(List.of(Given.values()));
        return new SpotSeen(
                "r" + id,
                ids.subList(0, random.nextInt(3)),
                given,
                number(one(given == Given.RF ? NUMBERS : LENGTHS)),
                random.nextInt(3) == 0 ? Optional.of(number("2.5")) : Optional.empty(),
                random.nextInt(3) == 0 ? Optional.of(number("0.35")) : Optional.empty(),
                random.nextInt(3) == 0 ? Optional.of(one(NAMES)) : Optional.empty(),
                random.nextInt(3) == 0 ? Optional.of("UV 254, \"stain\"") : Optional.empty());
    }

    private List<StudyPlate> plates(List<StudySpot> spots) {
        List<StudyPlate> plates = new ArrayList<>();
        int lanes = 0;
        int readings = 0;
        for (int i = 1; i <= 1 + random.nextInt(4); i++) {
            List<Lane> all = new ArrayList<>();
            for (int lane = random.nextInt(4); lane >= 0; lane--) {
                List<SpotSeen> seen = new ArrayList<>();
                for (int n = random.nextInt(4); n > 0; n--) {
                    readings++;
                    seen.add(seen(readings, spots));
                }
                lanes++;
                all.add(new Lane("l" + lanes, seen));
            }
            List<String> pair = one(PAIRS);
            String eluent = one(ELUENTS);
            List<String> read = all.stream()
                    .flatMap(lane -> lane.readings().stream())
                    .flatMap(each -> each.spots().stream())
                    .toList();
            plates.add(new StudyPlate(
                    "p" + i,
                    length(),
                    length(),
                    length(),
                    length(),
                    pair.get(0),
                    pair.get(1),
                    eluent,
                    eluent.isEmpty() ? OptionalDouble.empty() : TypedEluent.percent(eluent),
                    one(List.of(
                            JarAdditive.NONE,
                            new JarAdditive("acetic-acid", ""),
                            new JarAdditive("own", "=1 % formic acid"))),
                    Optional.empty(),
                    all,
                    spots.stream()
                            .map(StudySpot::id)
                            .filter(id -> !read.contains(id) && random.nextInt(4) == 0)
                            .toList(),
                    Optional.empty()));
        }
        return plates;
    }

    private static Study study(List<StudySpot> spots, List<StudyPlate> plates) throws IOException, UnreadableStudy {
        Study kept = StudyFiles.builtIn().read(Files.readAllBytes(Path.of("shared", "studies", "version-5.json")));
        return new Study(
                kept.id(),
                kept.title(),
                kept.created(),
                kept.modified(),
                kept.keeping(),
                kept.origin(),
                kept.sorbent(),
                kept.setting(),
                kept.shelf(),
                spots,
                plates,
                kept.next(),
                List.of(),
                kept.column(),
                kept.checks(),
                "");
    }

    private static RunTable.Runs read(String csv) {
        TableBytes bytes = TableBytes.of(csv.getBytes(StandardCharsets.UTF_8)).orElseThrow();
        return TABLE.read(bytes.text(), RunTable.Asked.NOTHING, Optional.empty());
    }

    private static List<StudyPlate> plates(RunTable.Runs runs) {
        return runs.plates().stream().map(RunTable.Plate::plate).toList();
    }

    /** The plates with names in place of the ids of compounds, which a table does not hold. */
    private static List<StudyPlate> named(List<StudyPlate> plates, List<StudySpot> spots) {
        Map<String, String> names = spots.stream().collect(Collectors.toMap(StudySpot::id, StudySpot::name));
        return plates.stream()
                .map(plate -> new StudyPlate(
                        plate.id(),
                        plate.heightMm(),
                        plate.widthMm(),
                        plate.startMm(),
                        plate.frontMm(),
                        plate.weak(),
                        plate.strong(),
                        plate.eluent(),
                        plate.percentStrong(),
                        plate.additive(),
                        Optional.empty(),
                        plate.lanes().stream()
                                .map(lane -> new Lane(
                                        lane.id(),
                                        lane.readings().stream()
                                                .map(each -> new SpotSeen(
                                                        each.id(),
                                                        each.spots().stream()
                                                                .map(names::get)
                                                                .toList(),
                                                        each.given(),
                                                        each.place(),
                                                        each.sizeMm(),
                                                        each.errorMm(),
                                                        each.shape(),
                                                        each.seen()))
                                                .toList()))
                                .toList(),
                        plate.notSeen().stream().map(names::get).toList(),
                        Optional.empty()))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void randomStudiesComeBackWithTheSamePlatesAndNames(long seed) throws IOException, UnreadableStudy {
        random.setSeed(seed);
        for (int i = 0; i < 100; i++) {
            List<StudySpot> spots = spots();
            List<StudyPlate> plates = plates(spots);
            String csv = RunsCsv.of(study(spots, plates));
            RunTable.Runs back = read(csv);
            assertEquals(List.of(), back.read().rejected(), csv);
            assertEquals(named(plates, spots), named(plates(back), back.spots()), csv);
            assertEquals(csv, RunsCsv.of(study(back.spots(), plates(back))), "written again it is the same table");
        }
    }

    @Test
    void theKeptStudyComesBackButForAPlaceThatIsNoNumber() throws IOException, UnreadableStudy {
        Study kept = StudyFiles.builtIn().read(Files.readAllBytes(Path.of("shared", "studies", "version-5.json")));
        RunTable.Runs back = read(RunsCsv.of(kept));
        assertEquals(1, back.read().rejected().size());
        assertEquals("1x", back.read().rejected().get(0).why().came());
        StudyPlate first = plates(back).get(0);
        assertEquals(
                kept.plates().get(0).lanes().get(0).readings().subList(0, 1),
                first.lanes().get(0).readings().subList(0, 1));
        assertEquals("4o", plates(back).get(1).widthMm().typed());
        assertEquals("4 :", plates(back).get(1).eluent());
        assertEquals(
                new JarAdditive("own", "1 % formic acid"), plates(back).get(1).additive());
    }

    @Test
    void noCellBeginsLikeAFormulaAndNumbersStayNumbers() throws IOException, UnreadableStudy {
        List<StudySpot> spots =
                List.of(new StudySpot("s1", "=1+1", Optional.empty()), new StudySpot("s2", "@x", Optional.empty()));
        SpotSeen seen = new SpotSeen(
                "r1",
                List.of("s1", "s2"),
                Given.RF,
                number("0.35"),
                Optional.empty(),
                Optional.empty(),
                Optional.of("+A1"),
                Optional.of("-A1"));
        StudyPlate plate = new StudyPlate(
                "p1",
                number("-5"),
                length(),
                length(),
                length(),
                "hexane",
                "ethyl-acetate",
                "=9",
                OptionalDouble.empty(),
                JarAdditive.NONE,
                Optional.empty(),
                List.of(new Lane("l1", List.of(seen))),
                List.of(),
                Optional.empty());
        String row = RunsCsv.of(study(spots, List.of(plate))).split("\r\n", -1)[1];
        List<String> cells = SheetRows.of("x\n" + row, ',').rows().get(1).cells();
        assertEquals("'=1+1 + @x", cells.get(RunColumn.SPOT.ordinal()));
        assertEquals("0.35", cells.get(RunColumn.RF.ordinal()));
        assertEquals("-5", cells.get(RunColumn.HEIGHT.ordinal()), "a number is no formula");
        assertTrue(
                cells.stream().filter(cell -> !cell.equals("-5")).noneMatch(cell -> cell.matches("[=+\\-@].*")), row);
    }

    @Test
    void theTableBeginsWithTheMarkOfUtf8AndTheAgreedHeader() throws IOException, UnreadableStudy {
        assertTrue(RunsCsv.of(study(spots(), List.of()))
                .startsWith(
                        "\uFEFFplate,weak,strong,percent_strong,eluent,additive,height_mm,width_mm,start_mm,front_mm,lane,spot,centre_mm,rf,"
                                + "size_mm,error_mm,shape,seen,not_seen\r\n"));
    }
}
