package midplate.column;

import static midplate.column.Columns.FOUR;
import static midplate.column.Columns.LAW;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import midplate.inference.Knowledge;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The bands of a column")
class ColumnForecastTest {
    private static final double LOAD = 0.1;

    @Test
    void whatIsHeldMoreLeavesLater() {
        Bands bands = Columns.forecast(0.2, 0.35, 0.5).bands(FOUR, Program.isocratic(20), LOAD);
        double slow = Columns.median(Columns.middles(bands, 0));
        double middle = Columns.median(Columns.middles(bands, 1));
        double fast = Columns.median(Columns.middles(bands, 2));
        assertTrue(slow > 1.3 * middle && middle > 1.3 * fast, slow + " " + middle + " " + fast);
    }

    @Test
    void aStrongerEluentBringsItOutSooner() {
        ColumnForecast forecast = Columns.forecast(0.3);
        double before = Double.POSITIVE_INFINITY;
        for (double percent : new double[] {5, 10, 20, 40, 80}) {
            double now = Columns.median(Columns.middles(forecast.bands(FOUR, Program.isocratic(percent), LOAD), 0));
            assertTrue(now < before, percent + " %: " + now);
            before = now;
        }
    }

    @Test
    void startMiddleAndEndStandInTheirOrderInEveryCase() {
        Bands bands = Columns.forecast(0.15, 0.5)
                .bands(FOUR, Columns.steps(5, 60, 20, 40, 50, Double.POSITIVE_INFINITY), LOAD);
        for (int spot = 0; spot < 2; spot++) {
            for (int k = 0; k < bands.cases(); k++) {
                assertTrue(0 < bands.startMl(spot, k)
                        && bands.startMl(spot, k) < bands.middleMl(spot, k)
                        && bands.middleMl(spot, k) < bands.endMl(spot, k));
            }
        }
    }

    // V = 2·start/(1 + e^u)·… by definition: the middle of one eluent lies midway
    @Test
    void theMiddleLiesMidwayInOneEluent() {
        Bands bands = Columns.forecast(0.3).bands(FOUR, Program.isocratic(20), LOAD);
        for (int k = 0; k < bands.cases(); k++) {
            double midway = (bands.startMl(0, k) + bands.endMl(0, k)) / 2;
            assertEquals(midway, bands.middleMl(0, k), 1e-9 * midway);
        }
    }

    // A gradient of no slope: published as the check of every gradient program.
    @Test
    void stepsOfOneEluentGiveExactlyWhatOneEluentGives() {
        ColumnForecast forecast = Columns.forecast(0.2, 0.6);
        Bands one = forecast.bands(FOUR, Program.isocratic(20), LOAD);
        Bands steps = forecast.bands(FOUR, Columns.steps(20, 7, 20, 11.3, 20, 900), LOAD);
        for (int spot = 0; spot < 2; spot++) {
            assertArrayEquals(Columns.all(one, spot), Columns.all(steps, spot), 0);
        }
    }

    @Test
    void aStepThatComesTooLateChangesNothing() {
        ColumnForecast forecast = Columns.forecast(0.5);
        Bands one = forecast.bands(FOUR, Program.isocratic(20), LOAD);
        Bands steps = forecast.bands(FOUR, Columns.steps(20, 1e5, 100, 10), LOAD);
        assertArrayEquals(Columns.all(one, 0), Columns.all(steps, 0), 0);
    }

    @Test
    void aStrongerStepLiesBetweenItsTwoEluents() {
        ColumnForecast forecast = Columns.forecast(0.2);
        double weak = Columns.median(Columns.middles(forecast.bands(FOUR, Program.isocratic(10), LOAD), 0));
        double strong = Columns.median(Columns.middles(forecast.bands(FOUR, Program.isocratic(60), LOAD), 0));
        double both = Columns.median(Columns.middles(forecast.bands(FOUR, Columns.steps(10, 30, 60, 10), LOAD), 0));
        assertTrue(strong < both && both < weak, strong + " " + both + " " + weak);
    }

    // Own algebra: h·m·e^(−γη) vanishes at the front, V₀ = V_ext + φ·m stays.
    @Test
    void whatIsNotHeldLeavesAtTheVoid() {
        ColumnForecast forecast = Columns.forecast(0.5);
        double[] middles = Columns.middles(forecast.bands(FOUR, Program.isocratic(100), LOAD), 0);
        double unretained = LAW.outsideMl() + 4 * LAW.voidMlPerGram();
        assertEquals(unretained, forecast.unretainedMl(FOUR), 1e-12);
        assertEquals(4 * LAW.voidMlPerGram(), forecast.voidMl(FOUR), 1e-12);
        assertEquals(1, Columns.median(middles) / unretained, 0.1);
    }

    // Decided: a number of the plate that says little must not read as a number of millilitres that says much.
    @Test
    void nothingKnownGivesAWiderBandThanOnePlate() {
        Knowledge nothing = Columns.MODELS.learn(Columns.ACETATE, Setting.AUTOMATED, List.of("A"), List.of());
        ColumnForecast wide =
                ColumnForecast.of(LAW, nothing, List.of("A"), ColumnForecast.Conditions.MEASURED, List.of());
        double[] before = Columns.middles(wide.bands(FOUR, Program.isocratic(20), LOAD), 0);
        double[] after = Columns.middles(Columns.forecast(0.3).bands(FOUR, Program.isocratic(20), LOAD), 0);
        assertTrue(Columns.spread(before) > 2 * Columns.spread(after));
    }

    private static double meanLog(double[] middles) {
        return Arrays.stream(middles).map(Math::log).average().orElseThrow();
    }

    @Test
    void anEarlierColumnNarrowsTheBandAndMovesItTowardsWhatWasSeen() {
        double[] before = Columns.middles(Columns.forecast(0.3).bands(FOUR, Program.isocratic(20), LOAD), 0);
        double usual =
                Columns.median(Columns.middles(Columns.forecast(0.3).bands(FOUR, Program.isocratic(10), LOAD), 0));
        for (double factor : new double[] {0.85, 1.2}) {
            ObservedBand seen =
                    new ObservedBand("A", FOUR, Program.isocratic(10), 0.75 * factor * usual, 1.25 * factor * usual, 1);
            double[] after =
                    Columns.middles(Columns.forecast(List.of(seen), 0.3).bands(FOUR, Program.isocratic(20), LOAD), 0);
            assertTrue(Columns.spread(after) < Columns.spread(before), "narrower");
            double moved = (meanLog(after) - meanLog(before)) / Math.log(factor);
            assertTrue(moved > 0.3 && moved < 1.1, "moved by " + moved);
        }
    }

    @Test
    void anEarlierColumnOfOneSpotLeavesTheOthersAlone() {
        ObservedBand seen = new ObservedBand("A", FOUR, Program.isocratic(10), 60, 100, 2);
        double[] before = Columns.middles(Columns.forecast(0.3, 0.5).bands(FOUR, Program.isocratic(20), LOAD), 1);
        double[] after =
                Columns.middles(Columns.forecast(List.of(seen), 0.3, 0.5).bands(FOUR, Program.isocratic(20), LOAD), 1);
        assertArrayEquals(before, after, 0);
    }

    @Test
    void theOrderOfEarlierColumnsDoesNotMatter() {
        List<ObservedBand> seen = new ArrayList<>(List.of(
                new ObservedBand("A", FOUR, Program.isocratic(10), 60, 100, 2),
                new ObservedBand("B", FOUR, Program.isocratic(10), 20, 30, 2),
                new ObservedBand("A", FOUR, Columns.steps(10, 30, 30, 50), 40, 60, 2),
                new ObservedBand("A", new GlassColumn(20, 150), Program.isocratic(20), 80, 140, 5)));
        Bands one = Columns.forecast(seen, 0.3, 0.5).bands(FOUR, Program.isocratic(20), LOAD);
        Collections.reverse(seen);
        Bands other = Columns.forecast(seen, 0.3, 0.5).bands(FOUR, Program.isocratic(20), LOAD);
        for (int spot = 0; spot < 2; spot++) {
            assertArrayEquals(Columns.all(one, spot), Columns.all(other, spot), 0);
        }
    }

    // As in the fit: repeats on one bed with one program count as one run.
    @Test
    void theSameColumnTwiceMovesAMiddleNoMoreThanOnce() {
        ObservedBand seen = new ObservedBand("A", FOUR, Program.isocratic(10), 90, 150, 1);
        double[] once =
                Columns.middles(Columns.forecast(List.of(seen), 0.3).bands(FOUR, Program.isocratic(20), LOAD), 0);
        double[] often = Columns.middles(
                Columns.forecast(List.of(seen, seen, seen, seen, seen), 0.3).bands(FOUR, Program.isocratic(20), LOAD),
                0);
        assertEquals(1, Columns.median(often) / Columns.median(once), 0.02);
        assertEquals(1, Columns.spread(often) / Columns.spread(once), 0.1);
    }

    @Test
    void aBandReadWithAGreatErrorSaysLess() {
        double[] exact = spreadAfter(0.5);
        double[] rough = spreadAfter(60);
        assertTrue(Columns.spread(exact) < Columns.spread(rough));
    }

    // A band seen from the first tube on starts at 0 ml: ln(end/start) would be infinite, and every band to come with
    // it.
    @Test
    void aBandThatBeganWithTheFirstDropSaysNothingOfWidths() {
        ObservedBand seen = new ObservedBand("A", FOUR, Program.isocratic(20), 0, 60, 4);
        double before = width(Columns.forecast(0.3));
        double after = width(Columns.forecast(List.of(seen), 0.3));
        assertEquals(1, after / before, 0.15, before + " " + after);
    }

    /** The middle of ln(end/start). */
    private static double width(ColumnForecast forecast) {
        Bands bands = forecast.bands(FOUR, Program.isocratic(20), LOAD);
        return Columns.median(Columns.sorted(bands, k -> Math.log(bands.endMl(0, k) / bands.startMl(0, k))));
    }

    private static double[] spreadAfter(double errorMl) {
        ObservedBand seen = new ObservedBand("A", FOUR, Program.isocratic(10), 60, 100, errorMl);
        return Columns.middles(Columns.forecast(List.of(seen), 0.3).bands(FOUR, Program.isocratic(20), LOAD), 0);
    }

    @Test
    void aLargerLoadMakesTheBandWider() {
        ColumnForecast forecast = Columns.forecast(0.3);
        double before = 0;
        for (double load : new double[] {0, 0.05, 0.1, 0.15, 2}) {
            Bands bands = forecast.bands(FOUR, Program.isocratic(20), load);
            double width = Columns.median(Columns.sorted(bands, k -> bands.endMl(0, k) - bands.startMl(0, k)));
            assertTrue(width > before, load + " ml: " + width);
            before = width;
        }
    }

    @Test
    void whereColumnsWereNotMeasuredTheBandIsWider() {
        Knowledge knowledge = Columns.plate(Columns.ACETATE, Setting.AUTOMATED, 20, 0.3);
        List<String> spot = List.of("A");
        ColumnForecast measured =
                ColumnForecast.of(LAW, knowledge, spot, ColumnForecast.Conditions.MEASURED, List.of());
        ColumnForecast other = ColumnForecast.of(LAW, knowledge, spot, ColumnForecast.Conditions.OTHER, List.of());
        assertTrue(spread(measured, FOUR) < spread(other, FOUR), "another pair");
        assertTrue(spread(measured, FOUR) < spread(measured, new GlassColumn(20, 150)), "glass");
    }

    // Own reasoning: a bed that holds everything otherwise than the law says leaves two alike compounds together.
    @Test
    void whatWasNotMeasuredShiftsAllSpotsAlike() {
        Knowledge knowledge = Columns.plate(Columns.ACETATE, Setting.AUTOMATED, 20, 0.3, 0.3);
        ColumnForecast measured =
                ColumnForecast.of(LAW, knowledge, List.of("A", "B"), ColumnForecast.Conditions.MEASURED, List.of());
        ColumnForecast other =
                ColumnForecast.of(LAW, knowledge, List.of("A", "B"), ColumnForecast.Conditions.OTHER, List.of());
        double usual = apart(measured, new Cartridge(40));
        assertTrue(apart(measured, new GlassColumn(50, 150)) < 1.4 * usual, "glass");
        assertTrue(apart(other, new Cartridge(40)) < 1.2 * usual, "another pair");
    }

    /** Width of the 90 % band of ln of one middle over the other. */
    private static double apart(ColumnForecast forecast, Bed bed) {
        Bands bands = forecast.bands(bed, Program.isocratic(20), LOAD);
        return Columns.spread(Columns.sorted(bands, k -> bands.middleMl(0, k) / bands.middleMl(1, k)));
    }

    private static double spread(ColumnForecast forecast, Bed bed) {
        return Columns.spread(Columns.middles(forecast.bands(bed, Program.isocratic(20), LOAD), 0));
    }

    // science: bed of 15 cm, 47.1 ml of bed in 20 mm, 37.7 ml of it eluent; the ideal law V = V_m/Rf, 1/0.35 = 2.857
    @Test
    void aGlassColumnFollowsThePublishedBedAndTheIdealLaw() {
        ColumnForecast forecast = Columns.forecast(0.35);
        GlassColumn glass = new GlassColumn(20, 150);
        assertEquals(37.7, forecast.voidMl(glass), 0.05);
        assertEquals(37.7, forecast.unretainedMl(glass), 0.05);
        double rf = forecast.rf(0, 20).value();
        assertEquals(0.35, rf, 0.02);
        assertEquals(37.7 / rf, forecast.idealMl(0, glass, Program.isocratic(20)), 0.1);
        double median = Columns.median(Columns.middles(forecast.bands(glass, Program.isocratic(20), LOAD), 0));
        assertEquals(1, median * rf / 37.7, 0.1);
    }

    // V₀ + V_m·(1 − Rf)/Rf: tubing and detector hold nothing, so they count once
    @Test
    void onACartridgeTheIdealLawHoldsInTheBedAlone() {
        ColumnForecast forecast = Columns.forecast(0.25);
        double rf = forecast.rf(0, 20).value();
        double ideal = LAW.outsideMl() + 4 * LAW.voidMlPerGram() / rf;
        assertEquals(ideal, forecast.idealMl(0, FOUR, Program.isocratic(20)), 1e-9);
    }

    // own algebra: 1/0.35 = 2.857; 1/0.20 − 1/0.30 = 1.667; 1/0.45 − 1/0.55 = 0.404
    @Test
    void theIdealLawCountsColumnVolumes() {
        assertEquals(2.857, BedLaw.columnVolumes(0.35), 5e-4);
        assertEquals(1.667, BedLaw.columnVolumes(0.20) - BedLaw.columnVolumes(0.30), 5e-4);
        assertEquals(0.404, BedLaw.columnVolumes(0.45) - BedLaw.columnVolumes(0.55), 5e-4);
        assertEquals(1, BedLaw.columnVolumes(1), 0);
    }

    @Test
    void everyNumberIsFiniteHoweverStronglySomethingIsHeld() {
        Knowledge nothing = Columns.MODELS.learn(Columns.ACETATE, Setting.CLASS, List.of("A", "B"), List.of());
        ColumnForecast forecast =
                ColumnForecast.of(LAW, nothing, List.of("A", "B"), ColumnForecast.Conditions.MEASURED, List.of());
        for (double percent : new double[] {0, 0.01, 100}) {
            Bands bands = forecast.bands(new Cartridge(120), Program.isocratic(percent), 0);
            for (int spot = 0; spot < 2; spot++) {
                for (double each : Columns.all(bands, spot)) {
                    assertTrue(each > 0 && each < Double.POSITIVE_INFINITY);
                }
                double ideal = forecast.idealMl(spot, FOUR, Program.isocratic(percent));
                assertTrue(ideal > 0 && ideal < Double.POSITIVE_INFINITY);
            }
        }
    }

    @Test
    void theOrderOfSpotsDoesNotMatter() {
        Bands one = Columns.forecast(0.2, 0.5).bands(FOUR, Program.isocratic(20), LOAD);
        Bands other = Columns.forecast(0.5, 0.2).bands(FOUR, Program.isocratic(20), LOAD);
        assertArrayEquals(Columns.all(one, 0), Columns.all(other, 1), 0);
        assertArrayEquals(Columns.all(one, 1), Columns.all(other, 0), 0);
    }
}
