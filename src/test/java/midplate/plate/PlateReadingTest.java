package midplate.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PlateReadingTest {
    private static Reading read(double height, double start, double front, SpotMeasurement spot) {
        Reading reading = PlateReading.of(PlateMeasurement.of(height, start, front, spot))
                .readings()
                .get(spot.spot());
        return Objects.requireNonNull(reading);
    }

    private static Reading read(SpotMeasurement spot) {
        return read(70, 10, 60, spot);
    }

    // Own algebra: start 10, front 60, so L = 50. Centre 35: Rf = 25/50. Error: 0.5·√(1 + 0.5² + 0.5²)/50 =
    // 0.5·√1.5/50.
    @Test
    void worksOutRfAndItsErrorFromTheLengths() {
        Reading reading = read(SpotMeasurement.of("A", 35));
        assertEquals(Limit.NONE, reading.limit());
        assertEquals(0.5, reading.rf(), 1e-12);
        assertEquals(0.5 * Math.sqrt(1.5) / 50, reading.standardError().orElseThrow(), 1e-12);
    }

    // Own algebra: the general form 0.5·√(1 + Rf² + (1 − Rf)²)/L, worked out by hand for Rf 0.2, L 40: 0.5·√1.68/40.
    @ParameterizedTest
    @CsvSource({"10, 50, 18, 0.2, 0.0162019", "10, 50, 42, 0.8, 0.0162019", "0, 100, 25, 0.25, 0.0063738"})
    void followsTheLawOfTheRulersError(double start, double front, double centre, double rf, double error) {
        Reading reading = read(110, start, front, SpotMeasurement.of("A", centre));
        assertEquals(rf, reading.rf(), 1e-12);
        assertEquals(error, reading.standardError().orElseThrow(), 5e-8);
    }

    // The same error by brute force: 200 000 plates measured with a ruler of 0.5 mm, fixed seed; 0.5 % is about 3 s.d.
    @Test
    void theErrorIsTheSpreadOfPlatesMeasuredAgainAndAgain() {
        Random random = new Random(20260101);
        int n = 200_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double start = 10 + 0.5 * random.nextGaussian();
            double front = 60 + 0.5 * random.nextGaussian();
            double rf = (25 + 0.5 * random.nextGaussian() - start) / (front - start);
            sum += rf;
            squares += rf * rf;
        }
        double spread = Math.sqrt(squares / n - (sum / n) * (sum / n));
        double error = read(SpotMeasurement.of("A", 25)).standardError().orElseThrow();
        assertEquals(spread, error, 0.005 * spread);
    }

    // Own algebra: half of 4 mm on a run of 50 mm is 0.04.
    @ParameterizedTest
    @CsvSource({
        "10, AT_START, 0.04",
        "12, AT_START, 0.04",
        "12.1, NONE, 0.042",
        "57.9, NONE, 0.958",
        "58, AT_FRONT, 0.96",
        "60, AT_FRONT, 0.96",
    })
    void aSpotThatReachesALineIsABound(double centre, Limit limit, double rf) {
        Reading reading = read(SpotMeasurement.of("A", centre).withSize(4));
        assertEquals(limit, reading.limit());
        assertEquals(rf, reading.rf(), 1e-12);
        assertTrue(reading.standardError().isPresent());
    }

    @Test
    void aSpotWithoutSizeCountsAsTwoMillimetresLong() {
        assertEquals(Limit.AT_START, read(SpotMeasurement.of("A", 11)).limit());
        assertEquals(0.02, read(SpotMeasurement.of("A", 11)).rf(), 1e-12);
        assertEquals(Limit.NONE, read(SpotMeasurement.of("A", 11.1)).limit());
    }

    @Test
    void keepsTheSpotsInTheirOrder() {
        PlateReading plate = PlateReading.of(PlateMeasurement.of(
                70, 10, 60, SpotMeasurement.of("Z", 20), SpotMeasurement.of("A", 30), SpotMeasurement.of("M", 40)));
        assertEquals(List.of("Z", "A", "M"), List.copyOf(plate.readings().keySet()));
        assertEquals(List.of(), plate.warnings());
    }

    // Own algebra: centres 34 and 36 have mean 35, so Rf 0.5. Seen variance 2 mm² exceeds 0.25; over two lanes 1 mm².
    // Error √(1 + 0.25·(0.25 + 0.25))/50 = √1.125/50. With both at 35: √(0.125 + 0.125)/50 = 0.01.
    @Test
    void aSpotInTwoLanesIsReadAsTheirMean() {
        PlateReading apart = PlateReading.of(
                PlateMeasurement.of(70, 10, 60, SpotMeasurement.of("A", 34), SpotMeasurement.of("A", 36)));
        Reading mean = apart.readings().values().iterator().next();
        assertEquals(1, apart.readings().size());
        assertEquals(0.5, mean.rf(), 1e-12);
        assertEquals(Math.sqrt(1.125) / 50, mean.standardError().orElseThrow(), 1e-12);
        PlateReading same = PlateReading.of(
                PlateMeasurement.of(70, 10, 60, SpotMeasurement.of("A", 35), SpotMeasurement.of("A", 35)));
        assertEquals(
                0.01, same.readings().values().iterator().next().standardError().orElseThrow(), 1e-12);
    }

    // Own algebra: 12 mm spread evenly has variance 144/12 = 12 mm²; at Rf 0.5 and L 50: √(0.25 + 12 + 0.125)/50.
    @Test
    void aStreakHasTheErrorOfItsLength() {
        Reading streak = read(SpotMeasurement.of("A", 35).withSize(12));
        assertEquals(0.5, streak.rf(), 1e-12);
        assertEquals(Math.sqrt(12.375) / 50, streak.standardError().orElseThrow(), 1e-12);
    }

    // Own algebra: at Rf 0.5 and L 50 the lines give 0.25·(0.25 + 0.25) = 0.125 mm².
    @ParameterizedTest
    @CsvSource({"0.5, 0.25", "1.2, 1.44", "0.1, 0.01", "100, 10000"})
    void anErrorThatWasWorkedOutElsewhereTakesThePlaceOfTheRulers(double errorMm, double variance) {
        double expected = Math.sqrt(variance + 0.125) / 50;
        SpotMeasurement spot = SpotMeasurement.of("A", 35).withError(errorMm);
        assertEquals(expected, read(spot).standardError().orElseThrow(), 1e-12);
        for (SpotForm form : SpotForm.values()) {
            Reading shaped = read(spot.withShape(form).withSize(12));
            assertEquals(expected, shaped.standardError().orElseThrow(), 1e-12, form + ": its error is known already");
        }
    }

    @Test
    void halfAMillimetreIsTheErrorOfTheRuler() {
        for (double centre = 10; centre <= 60; centre += 0.5) {
            assertEquals(
                    read(SpotMeasurement.of("A", centre)),
                    read(SpotMeasurement.of("A", centre).withError(0.5)));
        }
    }

    // Own algebra: d = 3 mm gives 9/12 = 0.75 mm², the usual 2 mm 4/12; with σ² = 0.25 and 0.125 of the lines.
    @ParameterizedTest
    @CsvSource({
        "STREAK, 1.125, 0.7083333333",
        "SHARP_HEAD, 1.125, 0.7083333333",
        "MERGED, 1.125, 0.7083333333",
        "COMPACT, 0.375, 0.375",
    })
    void aShapeThatWasSeenWidensTheErrorAsALengthDoes(SpotForm form, double sized, double unsized) {
        SpotMeasurement spot = SpotMeasurement.of("A", 35).withShape(form);
        assertEquals(
                Math.sqrt(sized) / 50, read(spot.withSize(3)).standardError().orElseThrow(), 1e-12);
        assertEquals(Math.sqrt(unsized) / 50, read(spot).standardError().orElseThrow(), 1e-11);
    }

    @Test
    void aStreakCalledCompactStaysOne() {
        SpotMeasurement streak = SpotMeasurement.of("A", 35).withSize(12);
        assertEquals(read(streak), read(streak.withShape(SpotForm.COMPACT)));
    }

    // Own algebra: variances 0.09, 0.25 (ruler) and 0.25 + 9/12 (streak) sum to 1.34; of the mean 1.34/9.
    @Test
    void eachLaneHasItsOwnError() {
        PlateReading plate = PlateReading.of(PlateMeasurement.of(
                70,
                10,
                60,
                SpotMeasurement.of("A", 35).withError(0.3),
                SpotMeasurement.of("A", 35),
                SpotMeasurement.of("A", 35).withSize(3).withShape(SpotForm.STREAK)));
        assertEquals(
                Math.sqrt(1.34 / 9 + 0.125) / 50,
                plate.readings().values().iterator().next().standardError().orElseThrow(),
                1e-12);
    }

    @Test
    void anEmptyPlateHasNoReadings() {
        assertTrue(PlateReading.of(PlateMeasurement.of(70, 10, 60)).readings().isEmpty());
    }

    @Test
    void theReadingsCannotBeChangedFromOutside() {
        PlateReading plate = PlateReading.of(PlateMeasurement.of(70, 10, 60, SpotMeasurement.of("A", 35)));
        assertThrows(UnsupportedOperationException.class, () -> plate.readings().clear());
        assertThrows(UnsupportedOperationException.class, () -> plate.warnings().clear());
    }

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 60);
    }

    private static double between(Random random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static PlateMeasurement anyPlate(Random random, double scale) {
        double start = between(random, 8, 15);
        double front = start + between(random, 25, 80);
        List<SpotMeasurement> spots = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            spots.add(SpotMeasurement.of("S" + i, scale * between(random, start, front))
                    .withSize(scale * between(random, 1, 8)));
        }
        return PlateMeasurement.of(
                scale * (front + 6), scale * start, scale * front, spots.toArray(SpotMeasurement[]::new));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void twiceEveryLengthGivesTheSameRf(int seed) {
        PlateReading one = PlateReading.of(anyPlate(new Random(seed), 1));
        PlateReading two = PlateReading.of(anyPlate(new Random(seed), 2));
        assertEquals(5, one.readings().size());
        one.readings().forEach((spot, reading) -> {
            Reading twice = Objects.requireNonNull(two.readings().get(spot));
            assertEquals(reading.limit(), twice.limit());
            assertEquals(reading.rf(), twice.rf(), 1e-12);
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theOrderOfTheSpotsDoesNotMatter(int seed) {
        PlateMeasurement plate = anyPlate(new Random(seed), 1);
        List<SpotMeasurement> shuffled = new ArrayList<>(plate.spots());
        Collections.shuffle(shuffled, new Random(seed));
        PlateMeasurement other = PlateMeasurement.of(
                plate.heightMm(), plate.startMm(), plate.frontMm(), shuffled.toArray(SpotMeasurement[]::new));
        assertEquals(PlateReading.of(plate).readings(), PlateReading.of(other).readings());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aHigherSpotHasAHigherRfAndALongerRunASmallerError(int seed) {
        Random random = new Random(seed);
        double start = between(random, 8, 15);
        double run = between(random, 25, 80);
        double part = between(random, 0.1, 0.8);
        double higher = part + between(random, 0.001, 0.1);
        Reading low = read(200, start, start + run, SpotMeasurement.of("A", start + part * run));
        Reading high = read(200, start, start + run, SpotMeasurement.of("A", start + higher * run));
        assertTrue(high.rf() > low.rf());
        double longer = run * between(random, 1.01, 2);
        Reading far = read(200, start, start + longer, SpotMeasurement.of("A", start + part * longer));
        assertEquals(low.rf(), far.rf(), 1e-12);
        assertTrue(far.standardError().orElseThrow() < low.standardError().orElseThrow());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aLargerErrorOfAnyLaneNeverMakesTheReadingSurer(int seed) {
        Random random = new Random(seed);
        PlateMeasurement plate = anyPlate(random, 1);
        List<SpotMeasurement> lanes = new ArrayList<>();
        for (int lane = 0; lane < 3; lane++) {
            double centre = plate.startMm() + between(random, 0.3, 0.6) * plate.runMm();
            lanes.add(SpotMeasurement.of("A", centre).withError(between(random, 0.05, 3)));
        }
        double before = 0;
        for (int step = 0; step < 30; step++) {
            double error = PlateReading.of(PlateMeasurement.of(
                            plate.heightMm(), plate.startMm(), plate.frontMm(), lanes.toArray(SpotMeasurement[]::new)))
                    .readings()
                    .values()
                    .iterator()
                    .next()
                    .standardError()
                    .orElseThrow();
            assertTrue(error >= before, error + " after " + before);
            before = error;
            int lane = random.nextInt(3);
            SpotMeasurement less = lanes.get(lane);
            lanes.set(lane, less.withError(less.errorMm().orElseThrow() * between(random, 1, 1.5)));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theErrorIsLeastMidwayAndTheSameFromBothEnds(int seed) {
        Random random = new Random(seed);
        double rf = random.nextDouble();
        double run = between(random, 5, 100);
        double error = RulerError.ofRf(rf, run, RulerError.compactVariance());
        assertEquals(error, RulerError.ofRf(1 - rf, run, RulerError.compactVariance()), 1e-12);
        assertTrue(error >= RulerError.ofRf(0.5, run, RulerError.compactVariance()));
        assertTrue(error <= RulerError.ofRf(0, run, RulerError.compactVariance()));
    }
}
