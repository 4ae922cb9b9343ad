package midplate.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Sorbent;
import midplate.plate.Limit;
import midplate.plate.PlateReading;
import midplate.plate.Reading;
import midplate.plate.Setting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What each slip makes of a plate. Every expected number is worked out by hand for a start line at 10 mm, a front at 60 mm and a top at 70 mm:
 * true Rf 0.3 lies at 25 mm, 0.6 at 40 mm.
 */
class SlipPlatesTest {
    private static final SlipPlate PLATE = new SlipPlate(70, 40, 10, 60);
    private static final double TOLERANCE = 5e-5;

    private static SlipPlates plates(Slip slip, double size, Double... rf) {
        List<LessonCompound> compounds = new ArrayList<>();
        for (int i = 0; i < rf.length; i++) {
            compounds.add(new LessonCompound(
                    "ABCDEF".substring(i, i + 1), new GroupCounts(Map.of("ketone", 1), GroupCounts.Detail.GROUPS)));
        }
        return plates(slip, size, compounds, rf);
    }

    private static SlipPlates plates(Slip slip, double size, List<LessonCompound> compounds, Double... rf) {
        SolventCatalogue solvents = SolventCatalogue.builtIn();
        LessonSample sample = new LessonSample(
                compounds,
                Sorbent.SILICA,
                solvents.solvent("hexane"),
                solvents.solvent("ethyl acetate"),
                Setting.CLASS);
        SlipQuestion question = new SlipQuestion(sample, 20, PLATE, slip, size);
        return SlipPlates.of(new SlipCase(question, List.of(rf), 20, List.of(rf)));
    }

    private static Map<String, Reading> read(SlipNoting noting) {
        return PlateReading.of(noting.plate()).readings();
    }

    private static void assertNoted(double expected, SlipPlates plates, String spot) {
        assertEquals(1, plates.notings().size());
        Reading reading = read(plates.notings().get(0)).get(spot);
        assertEquals(Limit.NONE, reading.limit());
        assertEquals(expected, reading.rf(), TOLERANCE);
    }

    @ParameterizedTest
    @CsvSource({
        "FROM_EDGE, 10, 0.4166667, 0.6666667", // (10 + 15)/60, (10 + 30)/60
        "FROM_EDGE, 4, 0.3518519, 0.6296296", // (4 + 15)/54, (4 + 30)/54
        "START_LINE_OFF, 5, 0.37, 0.64", // at 15 + 0.3*45 = 28.5 and 15 + 0.6*45 = 42
        "START_LINE_OFF, -3, 0.258, 0.576", // at 7 + 0.3*53 = 22.9 and 7 + 0.6*53 = 38.8
        "FRONT_TO_TOP, 20, 0.4, 0.8", // at 10 + 0.3*80 = 34 and 10 + 0.6*80 = 58, of 60
        "FRONT_NOT_MARKED, 10, 0.375, 0.75", // 15/40, 30/40
        "IN_THE_POOL, 0, 0.3059418, 0.6033953", // half a circle begins 4/(3 pi) = 0.424413 mm higher
        "OVERLOAD, 4, 0.34, 0.64", // 4 mm longer, 2 mm higher
        "UNLINED_JAR, 10, 0.33, 0.66", // as if the run were 55 mm
    })
    void aSlipMovesSpotsAsGeometrySays(Slip slip, double size, double first, double second) {
        SlipPlates plates = plates(slip, size, 0.3, 0.6);
        assertNoted(first, plates, "A");
        assertNoted(second, plates, "B");
        Map<String, Reading> right = read(plates.rightly());
        assertEquals(0.3, right.get("A").rf(), TOLERANCE);
        assertEquals(0.6, right.get("B").rf(), TOLERANCE);
    }

    @Test
    void onAShortRunHalfAMillimetreIsATwentiethOfTen() {
        SlipPlates plates = plates(Slip.STOPPED_SHORT, 10, 0.3, 0.6);
        assertEquals(20, plates.seen().frontMm());
        List<String> readings =
                plates.notings().stream().map(noting -> noting.reading().id()).toList();
        assertEquals(List.of("too-low", "too-high"), readings);
        assertEquals(0.25, read(plates.notings().get(0)).get("A").rf(), TOLERANCE);
        assertEquals(0.35, read(plates.notings().get(1)).get("A").rf(), TOLERANCE);
        assertEquals(0.55, read(plates.notings().get(0)).get("B").rf(), TOLERANCE);
        assertEquals(0.65, read(plates.notings().get(1)).get("B").rf(), TOLERANCE);
    }

    @Test
    void whatIsBelowTheSurfaceIsLost() {
        // half a circle at the line; at half the radius acos(0.5) - 0.5*sqrt(0.75) of pi: 0.195501; all of it from 1 mm
        // on
        assertEquals(0.5, plates(Slip.IN_THE_POOL, 0, 0.3).seen().spots().get(0).share(), TOLERANCE);
        assertEquals(
                0.195501,
                plates(Slip.IN_THE_POOL, 0.5, 0.3).seen().spots().get(0).share(),
                TOLERANCE);
        assertEquals(
                0.804499,
                plates(Slip.IN_THE_POOL, -0.5, 0.3).seen().spots().get(0).share(),
                TOLERANCE);
        SlipPlates gone = plates(Slip.IN_THE_POOL, 1, 0.3);
        assertEquals(SeenSpot.Look.LOST, gone.seen().spots().get(0).look());
        assertEquals(Map.of(), read(gone.notings().get(0)));
        assertEquals(11, gone.seen().surfaceMm().orElseThrow());
        assertTrue(PlateReading.of(gone.notings().get(0).plate()).warnings().stream()
                .anyMatch(message -> message.key().equals("plate.start-under-solvent")));
    }

    @Test
    void noSpotRunsPastTheTopOrTheFront() {
        SlipPlates top = plates(Slip.FRONT_TO_TOP, 40, 0.9);
        assertEquals(70, top.seen().spots().get(0).mm(), 1e-9); // 10 + 0.9*100 = 100
        assertEquals(Limit.AT_FRONT, read(top.notings().get(0)).get("A").limit());
        assertEquals(60, plates(Slip.UNLINED_JAR, 30, 0.9).seen().spots().get(0).mm(), 1e-9); // 10 + 0.9*65 = 68.5
    }

    @Test
    void aFrontNotedFarTooLowIsRefused() {
        SlipPlates plates = plates(Slip.FRONT_NOT_MARKED, 10, 0.9); // at 55 mm, the front noted at 50
        assertEquals(
                "plate.spot-beyond-front",
                PlateReading.faults(plates.notings().get(0).plate())
                        .get(0)
                        .reason()
                        .key());
    }

    @Test
    void aSpotCutByTheSideIsLeftOutAndTheOthersStay() {
        // 4*sqrt(0.25 + 0.0125*15) = 2.6458 mm wide: cut nearer than 1.3229 mm to the side; 4*sqrt(0.25 + 0.05*15) = 4
        // mm long
        SlipPlates cut = plates(Slip.EDGE_TOO_NEAR, 1.3, 0.3, 0.6);
        assertEquals(2.6458, cut.seen().spots().get(0).acrossMm(), TOLERANCE);
        assertEquals(4, cut.seen().spots().get(0).alongMm(), TOLERANCE);
        assertEquals(SeenSpot.Look.CUT, cut.seen().spots().get(0).look());
        assertEquals(Set.of("A"), cut.notings().get(0).leftOut());
        assertTrue(cut.seen().spots().get(0).share() > 0.95
                && cut.seen().spots().get(0).share() < 1);
        assertEquals(
                0.5, plates(Slip.EDGE_TOO_NEAR, 0, 0.3).seen().spots().get(0).share(), TOLERANCE);
        SlipPlates whole = plates(Slip.EDGE_TOO_NEAR, 1.35, 0.3, 0.6);
        assertEquals(SeenSpot.Look.CLEAR, whole.seen().spots().get(0).look());
        assertEquals(Set.of(), whole.notings().get(0).leftOut());
    }

    @Test
    void twoSpotsMergeMidwayWhereTheyAreWithinHalfAWidth() {
        // at 25 and 26 mm: across 7 and 7.2 mm², so sqrt(7.1) = 2.6646; along 16 and 16.8 mm², so sqrt(16.4) = 4.0497;
        // hypot(1/2.6646, 1/4.0497) = 0.449
        SlipPlates merged = plates(Slip.NEIGHBOURS_TOO_NEAR, 1, 0.3, 0.6, 0.32);
        assertNoted(0.31, merged, "A");
        assertNoted(0.31, merged, "C");
        assertNoted(0.6, merged, "B");
        assertEquals(SeenSpot.Look.MERGED, merged.seen().spots().get(2).look());
        SlipPlates apart = plates(Slip.NEIGHBOURS_TOO_NEAR, 1.5, 0.3, 0.6, 0.32); // hypot(1.5/2.6646, 1/4.0497) = 0.615
        assertNoted(0.3, apart, "A");
        assertNoted(0.32, apart, "C");
        assertTrue(PlateReading.of(apart.notings().get(0).plate()).warnings().stream()
                .anyMatch(message -> message.key().equals("plate.lanes-close")));
        // 3 mm apart in height, 16 and 18.4 mm² along: 3/sqrt(17.2) = 0.723
        SlipPlates high = plates(Slip.NEIGHBOURS_TOO_NEAR, 0, 0.3, 0.36);
        assertNoted(0.36, high, "B");
    }

    @Test
    void lanesThatMakeOnePatchFollowFromTheHeights() {
        List<SeenSpot> near =
                plates(Slip.NEIGHBOURS_TOO_NEAR, 20, 0.3, 0.32).right().spots();
        // sqrt(7.1*(0.25 - 1/16.4)) = sqrt(1.34207) = 1.15848
        assertEquals(1.15848, SizeSlips.mergedWithin(near.get(0), near.get(1)).orElseThrow(), TOLERANCE);
        List<SeenSpot> high =
                plates(Slip.NEIGHBOURS_TOO_NEAR, 20, 0.3, 0.36).right().spots();
        assertTrue(SizeSlips.mergedWithin(high.get(0), high.get(1)).isEmpty());
        assertEquals(2.0736, SizeSlips.clearFrom(high.get(0), high.get(1)), TOLERANCE); // sqrt(17.2)/2
    }

    @Test
    void whatTheInkCoversIsNotRead() {
        SlipPlates plates = plates(Slip.INK_LINE, 22, 0.3, 0.6, 0.9); // from 24 to 46 mm
        assertEquals(List.of(24.0, 46.0), plates.seen().smear());
        assertEquals(Set.of("C"), read(plates.notings().get(0)).keySet());
        assertNoted(0.9, plates, "C");
    }

    @Test
    void anAcidStreaksOrTheLowestSpotWhereThereIsNone() {
        SlipPlates none = plates(Slip.ACID_STREAKING, 60, 0.6, 0.3); // trails 9 mm down from 25: its middle at 20.5
        assertNoted(0.6, none, "A");
        assertNoted(0.21, none, "B");
        assertEquals(4 + 9, none.seen().spots().get(1).alongMm(), TOLERANCE);
        assertTrue(PlateReading.of(none.notings().get(0).plate()).warnings().stream()
                .anyMatch(message -> message.key().equals("plate.spot-streak")));
        SlipPlates acid = plates(
                Slip.ACID_STREAKING,
                60,
                List.of(
                        new LessonCompound(
                                "A", new GroupCounts(Map.of("carboxylic-acid", 1), GroupCounts.Detail.GROUPS)),
                        new LessonCompound("B", new GroupCounts(Map.of("ketone", 1), GroupCounts.Detail.GROUPS))),
                0.6,
                0.3);
        assertNoted(0.42, acid, "A"); // trails 18 mm down from 40: its middle at 31
        assertNoted(0.3, acid, "B");
    }

    @ParameterizedTest
    @EnumSource(Slip.class)
    void withoutItsSizeNothingGoesWrong(Slip slip) {
        SlipPlates plates = plates(slip, slip.size(PLATE).none(), 0.02, 0.3, 0.6, 0.99);
        if (slip == Slip.STOPPED_SHORT) {
            assertEquals(0.29, read(plates.notings().get(0)).get("B").rf(), TOLERANCE, "the ruler's error is left");
        } else if (slip != Slip.FRONT_TO_TOP) {
            assertEquals(read(plates.rightly()), read(plates.notings().get(0)));
        } else { // on the longer run up to the top
            assertEquals(0.6, read(plates.notings().get(0)).get("C").rf(), TOLERANCE);
        }
        assertEquals(Set.of(), plates.notings().get(0).leftOut());
    }

    @ParameterizedTest
    @CsvSource({
        "FROM_EDGE, 1",
        "FRONT_TO_TOP, 1",
        "FRONT_NOT_MARKED, 1",
        "OVERLOAD, 1",
        "UNLINED_JAR, 1",
        "ACID_STREAKING, -1",
    })
    void aLargerSlipErrsMoreAndAlwaysToItsSide(Slip slip, int side) {
        Slip.Size range = slip.size(PLATE);
        double before = 0;
        for (double part : List.of(0.1, 0.3, 0.5, 0.8)) {
            double size = range.none() + part * (range.high() - range.none());
            double off = read(plates(slip, size, 0.3).notings().get(0)).get("A").rf() - 0.3;
            assertTrue(side * off > before, slip + " " + size + ": " + off);
            before = side * off;
        }
    }

    @Test
    void fourAtMostAreIllustrationsAndTheirSizesStayAsStated() {
        List<Slip> rough = List.of(Slip.values()).stream()
                .filter(slip -> slip.kind() == Slip.Kind.ILLUSTRATION)
                .toList();
        assertEquals(4, rough.size());
        for (double rf : new double[] {0.05, 0.3, 0.5, 0.8, 0.95}) {
            // 10 times the amount: 2*log2(10)/2 = 3.322 mm; 30 % of the way; half of the way down
            assertTrue(moved(Slip.OVERLOAD, 10, rf) <= 3.3220 / 50);
            assertTrue(moved(Slip.UNLINED_JAR, 30, rf) <= 0.3 * rf + 1e-9);
            assertTrue(moved(Slip.ACID_STREAKING, 100, rf) <= 0.5 * rf + 1e-9);
            assertTrue(moved(Slip.INK_LINE, 0, rf) == 0);
        }
        assertFalse(Slip.FROM_EDGE.kind() == Slip.Kind.ILLUSTRATION);
    }

    private static double moved(Slip slip, double size, double rf) {
        return Math.abs(plates(slip, size, rf).seen().spots().get(0).mm() - (10 + 50 * rf)) / 50;
    }
}
