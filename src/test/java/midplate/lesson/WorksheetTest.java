package midplate.lesson;

import static midplate.lesson.OnWorksheets.worksheet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import midplate.inference.PossiblePlates;
import midplate.words.Message;
import midplate.words.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Worksheets: the same by the same code, different by variant, each key true to what is drawn. */
class WorksheetTest {
    private static final LessonModel MODEL = OnWorksheets.model();
    private static final WorksheetKind[] ALL = WorksheetKind.values();

    private static List<WorksheetQuestion> questions(WorksheetPair pair, int variants, WorksheetKind kind) {
        List<WorksheetQuestion> all = new ArrayList<>();
        for (int seed = 0; seed < 4; seed++) {
            worksheet(MODEL, pair, 7919 * seed, variants, kind)
                    .sheets()
                    .forEach(sheet -> all.addAll(sheet.questions()));
        }
        return all;
    }

    @Test
    void theSameCodeGivesTheSameSheetsAlsoByAnotherModel() {
        Worksheet first = worksheet(MODEL, WorksheetPair.HEXANE_ETHYL_ACETATE, 77, 2, ALL);
        Worksheet second = Worksheet.of(
                OnWorksheets.model(),
                OnWorksheets.COMPOUNDS,
                LessonCode.read("code", first.code().text(), LessonCode.Kind.WORKSHEET));
        assertEquals(first, second);
        assertNotEquals(
                first.sheets(),
                worksheet(MODEL, WorksheetPair.HEXANE_ETHYL_ACETATE, 78, 2, ALL).sheets());
    }

    /** A question taken away moves none of those that stay. */
    @Test
    void aQuestionIsDrawnWhateverElseIsAsked() {
        Worksheet all = worksheet(MODEL, WorksheetPair.HEXANE_ETHYL_ACETATE, 5, 1, ALL);
        Worksheet two =
                worksheet(MODEL, WorksheetPair.HEXANE_ETHYL_ACETATE, 5, 1, WorksheetKind.EDGE, WorksheetKind.ORDER);
        assertEquals(
                List.of(
                        all.sheets().get(0).questions().get(1),
                        all.sheets().get(0).questions().get(4)),
                two.sheets().get(0).questions());
    }

    @ParameterizedTest
    @EnumSource(WorksheetKind.class)
    void variantsDiffer(WorksheetKind kind) {
        for (WorksheetPair pair : WorksheetPair.values()) {
            Worksheet six = worksheet(MODEL, pair, 31, WorksheetChoices.MOST_VARIANTS, kind);
            Set<List<WorksheetQuestion>> seen = new HashSet<>();
            six.sheets().forEach(sheet -> seen.add(sheet.questions()));
            assertEquals(WorksheetChoices.MOST_VARIANTS, seen.size(), pair.id());
        }
    }

    @Test
    void aCodeKeepsItsChoicesAndRefusesWhatNoWorksheetHas() {
        int kept = 0;
        for (int bits = 0; bits <= LessonCode.MOST_CHOICES; bits++) {
            if (WorksheetChoices.of(bits).isPresent()) {
                assertEquals(bits, WorksheetChoices.of(bits).get().bits());
                kept++;
            } else {
                LessonCode code = new LessonCode(LessonCode.Kind.WORKSHEET, bits, 1);
                assertThrows(Refusal.class, () -> Worksheet.choices(code));
            }
        }
        assertEquals(31 * 6 * 4, kept, "31 choices of questions, 6 of sheets, 4 of pairs");
    }

    /** Half millimetres, three places on the plate, and the Rf worked out anew from the millimetres drawn. */
    @ParameterizedTest
    @EnumSource(
            value = WorksheetKind.class,
            names = {"RF", "EDGE", "CO_SPOT"})
    void theKeyOfAPlateIsWhatIsDrawn(WorksheetKind kind) {
        for (WorksheetQuestion question : questions(WorksheetPair.HEXANE_ETHYL_ACETATE, 6, kind)) {
            DrawnPlate plate = question.plate().orElseThrow();
            List<WorksheetQuestion.Figure> figures = question.key().figures();
            assertEquals(plate.spots().size(), figures.size());
            for (int i = 0; i < figures.size(); i++) {
                DrawnPlate.Spot spot = plate.spots().get(i);
                assertEquals(spot.letter(), figures.get(i).of());
                double way = spot.centreMm() - plate.startMm();
                double run = plate.frontMm() - plate.startMm();
                assertEquals(way / run, figures.get(i).value(), 1e-12);
                assertTrue(figures.get(i).from() <= (way - 0.5) / (run + 0.5) + 1e-12);
                assertTrue(figures.get(i).to() >= Math.min(1, (way + 0.5) / (run - 0.5)) - 1e-12);
                assertTrue(way >= DrawnPlate.ALONG_MM / 2 && run - way >= DrawnPlate.ALONG_MM / 2, "between the lines");
            }
            assertTrue(plate.frontMm() < DrawnPlate.HEIGHT_MM - 2 && plate.startMm() >= 8 && plate.startMm() <= 12);
        }
    }

    /** Both cases stand among the variants; which it is can be seen in the middle lane alone. */
    @Test
    void sameOrNotIsSeenInTheMiddleLane() {
        int two = 0;
        List<WorksheetQuestion> all = questions(WorksheetPair.HEXANE_ETHYL_ACETATE, 6, WorksheetKind.CO_SPOT);
        for (WorksheetQuestion question : all) {
            List<DrawnPlate.Spot> spots = question.plate().orElseThrow().spots();
            double[] middle = spots.stream()
                    .filter(spot -> spot.lane() == 1)
                    .mapToDouble(DrawnPlate.Spot::centreMm)
                    .toArray();
            double sides = Math.abs(
                    spots.get(0).centreMm() - spots.get(spots.size() - 1).centreMm());
            String said = question.key().says().get(0).key();
            if (middle.length == 2) {
                two++;
                assertEquals("lesson.worksheet-co-spot-two", said);
                assertTrue(Math.abs(middle[0] - middle[1]) > DrawnPlate.ALONG_MM + 0.5, "two, with room between");
                assertEquals(Math.abs(middle[0] - middle[1]), sides, 1e-12);
            } else {
                assertEquals("lesson.worksheet-co-spot-one", said);
                assertTrue(sides <= 0.5, "within the ruler's error");
            }
        }
        assertEquals(all.size() / 2, two, "every other variant");
    }

    /** What the student noted is measured from the edge: c/f, always too large. */
    @Test
    void theMistakeIsThatOfMeasuringFromTheEdge() {
        for (WorksheetQuestion question : questions(WorksheetPair.HEXANE_ETHYL_ACETATE, 6, WorksheetKind.EDGE)) {
            DrawnPlate plate = question.plate().orElseThrow();
            List<List<Optional<Message>>> rows = question.toFill().orElseThrow().rows();
            for (int i = 0; i < rows.size(); i++) {
                double centre = plate.spots().get(i).centreMm();
                assertEquals(centre, rows.get(i).get(1).orElseThrow().args().get("mm"));
                assertEquals(
                        plate.frontMm(), rows.get(i).get(2).orElseThrow().args().get("mm"));
                double noted = (Double) rows.get(i).get(3).orElseThrow().args().get("rf");
                assertEquals(centre / plate.frontMm(), noted, 1e-12);
                assertTrue(noted > question.key().figures().get(i).value());
                assertTrue(rows.get(i).get(4).isEmpty(), "the right Rf is to be found");
            }
        }
    }

    /** Counted over the possible plates of the four compounds alone: 256 samples, so two standard errors below 95 % are 92 %. */
    @ParameterizedTest
    @EnumSource(WorksheetPair.class)
    void onlyWideGapsAreAskedFor(WorksheetPair pair) {
        for (WorksheetQuestion question : questions(pair, 3, WorksheetKind.ORDER)) {
            List<LessonCompound> rising =
                    OnWorksheets.column(question.key().table().orElseThrow(), 1);
            List<LessonCompound> asked = OnWorksheets.column(question.toFill().orElseThrow(), 0);
            assertEquals(new HashSet<>(rising), new HashSet<>(asked));
            assertEquals(pair.ordered(), rising.size());
            PossiblePlates plates = OnWorksheets.plates(MODEL, pair, rising);
            double percent = OnWorksheets.percent(question);
            for (int i = 1; i < rising.size(); i++) {
                int upper = i;
                long above = IntStream.range(0, plates.samples())
                        .filter(sample ->
                                plates.rf(sample, upper, percent) - plates.rf(sample, upper - 1, percent) >= 0.05)
                        .count();
                assertTrue(
                        above >= 0.92 * plates.samples(),
                        rising.get(upper - 1).name() + " below "
                                + rising.get(upper).name() + " in " + above);
            }
        }
    }

    /** The sample is found again by what the plate shows; then every share is tried. */
    @Test
    void everyShareThatIsAcceptedHasAllSpotsInTheWindowAndApartAndNoOther() {
        WorksheetPair pair = WorksheetPair.HEXANE_ETHYL_ACETATE;
        List<LessonCompound> pool = OnWorksheets.COMPOUNDS.stream()
                .filter(each ->
                        !each.name().equals("benzoic-acid") && !each.name().equals("caffeine"))
                .toList();
        PossiblePlates plates = OnWorksheets.plates(MODEL, pair, pool);
        for (WorksheetQuestion question : questions(pair, 2, WorksheetKind.RATIO)) {
            int[] spots = OnWorksheets.column(question.key().table().orElseThrow(), 0).stream()
                    .mapToInt(pool::indexOf)
                    .toArray();
            DrawnPlate plate = question.plate().orElseThrow();
            double first = OnWorksheets.percent(question);
            WorksheetQuestion.Figure share = question.key().figures().get(0);
            assertFalse(first >= share.from() && first <= share.to(), "the first plate went wrong");
            int[] samples = IntStream.range(0, plates.samples())
                    .filter(sample -> IntStream.range(0, spots.length)
                            .allMatch(i -> Math.round(plates.rf(sample, spots[i], first) * plate.halfRun())
                                    == plate.spots().get(i).halfCentre() - plate.halfStart()))
                    .toArray();
            assertTrue(
                    IntStream.of(samples).anyMatch(sample -> works(plates, sample, spots, share)),
                    samples.length + " samples show this plate");
            Message advice = question.key().says().get(2);
            double strongMl = (Double) advice.args().get("strongMl");
            double poured = 100 * strongMl / (strongMl + (Double) advice.args().get("weakMl"));
            assertTrue(poured >= share.from() - 1 && poured <= share.to() + 1, "what is advised is accepted");
        }
    }

    /** Between 0.2 and 0.8, and no two nearer than 0.05; the Rf come rising. */
    private static boolean isSeenInside(double... rf) {
        return rf[0] >= 0.2
                && rf[rf.length - 1] <= 0.8
                && IntStream.range(1, rf.length).allMatch(i -> rf[i] - rf[i - 1] >= 0.05);
    }

    /** Whether exactly the whole shares from low to high work. */
    private static boolean works(PossiblePlates plates, int sample, int[] spots, WorksheetQuestion.Figure share) {
        return IntStream.rangeClosed(0, 100)
                .allMatch(percent -> isSeenInside(IntStream.of(spots)
                                .mapToDouble(spot -> plates.rf(sample, spot, percent))
                                .sorted()
                                .toArray())
                        == (percent >= share.from() && percent <= share.to()));
    }
}
