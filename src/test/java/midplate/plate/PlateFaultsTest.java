package midplate.plate;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import midplate.words.English;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Impossible plates are refused with the field that is wrong, and the plate just short of it is taken. */
class PlateFaultsTest {
    private static SpotMeasurement spot(double centreMm) {
        return SpotMeasurement.of("A", centreMm);
    }

    private static PlateMeasurement plate(SpotMeasurement... spots) {
        return PlateMeasurement.of(70, 10, 60, spots);
    }

    static Stream<Arguments> faultsAndNearMisses() {
        return Stream.of(
                Arguments.of(
                        "plate.frontMm",
                        "plate.front-not-above-start",
                        PlateMeasurement.of(70, 10, 10),
                        PlateMeasurement.of(70, 10, 15)),
                Arguments.of(
                        "plate.frontMm",
                        "plate.front-not-above-start",
                        PlateMeasurement.of(70, 60, 10),
                        PlateMeasurement.of(70, 10, 60)),
                Arguments.of(
                        "plate.frontMm",
                        "plate.run-too-short",
                        PlateMeasurement.of(70, 10, 14.9),
                        PlateMeasurement.of(70, 10, 15)),
                Arguments.of(
                        "plate.frontMm",
                        "plate.front-beyond-top",
                        PlateMeasurement.of(70, 10, 70.1),
                        PlateMeasurement.of(70, 10, 70)),
                Arguments.of(
                        "plate.solventLevelMm",
                        "plate.solvent-above-front",
                        plate().withSolventLevel(60),
                        plate().withSolventLevel(59)),
                Arguments.of("plate.spots[0].centreMm", "plate.spot-beyond-front", plate(spot(61.1)), plate(spot(61))),
                Arguments.of(
                        "plate.spots[0].centreMm",
                        "plate.spot-beyond-front",
                        plate(spot(62.6).withSize(5)),
                        plate(spot(62.5).withSize(5))),
                Arguments.of("plate.spots[0].centreMm", "plate.spot-below-start", plate(spot(8.9)), plate(spot(9))),
                Arguments.of(
                        "plate.spots[1].sizeMm",
                        "plate.spot-fills-run",
                        plate(spot(30), spot(35).withSize(50)),
                        plate(spot(30), spot(35).withSize(49))),
                Arguments.of(
                        "plate.spots[0].fromLeftMm",
                        "plate.spot-off-plate",
                        plate(spot(30).withFromLeft(41)).withWidth(40),
                        plate(spot(30).withFromLeft(40)).withWidth(40)),
                Arguments.of(
                        "plate.spots[0].spot",
                        "plate.spot-unnamed",
                        plate(SpotMeasurement.of(" ", 30)),
                        plate(SpotMeasurement.of("1", 30))));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("faultsAndNearMisses")
    void refusesTheImpossibleAndTakesTheNearMiss(
            String field, String key, PlateMeasurement impossible, PlateMeasurement nearMiss) {
        Refusal refusal = assertThrows(Refusal.class, () -> PlateReading.of(impossible));
        assertEquals(field, refusal.field());
        assertEquals(key, refusal.reason().key());
        assertFalse(Texts.english().render(refusal.reason()).isBlank());
        assertFalse(refusal.came().isBlank()
                || English.said(refusal.allowed()).isBlank()
                || English.said(refusal.todo()).isBlank());
        assertDoesNotThrow(() -> PlateReading.of(nearMiss));
    }

    private static void assertNoLength(String field, PlateMeasurement plate) {
        List<Refusal> faults = PlateReading.faults(plate);
        assertEquals(List.of(field), faults.stream().map(Refusal::field).toList());
        assertEquals("plate.length-out-of-range", faults.get(0).reason().key());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1000.1})
    void refusesWhatIsNoLengthInEveryField(double mm) {
        assertNoLength("plate.heightMm", PlateMeasurement.of(mm, 10, 60));
        assertNoLength("plate.startMm", PlateMeasurement.of(70, mm, 60));
        assertNoLength("plate.frontMm", PlateMeasurement.of(70, 10, mm));
        assertNoLength("plate.widthMm", plate().withWidth(mm));
        assertNoLength("plate.solventLevelMm", plate().withSolventLevel(mm));
        assertNoLength("plate.spots[0].centreMm", plate(spot(mm)));
        assertNoLength("plate.spots[0].sizeMm", plate(spot(30).withSize(mm)));
        assertNoLength("plate.spots[0].fromLeftMm", plate(spot(30).withFromLeft(mm)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1, 0, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 100.1})
    void refusesWhatCannotBeTheErrorOfAHeight(double mm) {
        List<Refusal> faults = PlateReading.faults(plate(spot(30).withError(mm)));
        assertEquals(
                List.of("plate.spots[0].errorMm"),
                faults.stream().map(Refusal::field).toList());
        assertEquals("plate.height-error-out-of-range", faults.get(0).reason().key());
        assertEquals("(0, 100] mm", English.said(faults.get(0).allowed()));
        for (double good : new double[] {Double.MIN_VALUE, 0.2, 100}) {
            assertDoesNotThrow(() -> PlateReading.of(plate(spot(30).withError(good))));
        }
    }

    @Test
    void zeroIsALengthForAStartLineAndNoneForAPlate() {
        assertDoesNotThrow(() -> PlateReading.of(PlateMeasurement.of(70, 0, 60)));
        assertDoesNotThrow(() -> PlateReading.of(plate().withSolventLevel(0)));
        assertNoLength("plate.heightMm", PlateMeasurement.of(0, 10, 60));
        assertNoLength("plate.frontMm", PlateMeasurement.of(70, 10, 0));
        assertNoLength("plate.widthMm", plate().withWidth(0));
        assertNoLength("plate.spots[0].sizeMm", plate(spot(30).withSize(0)));
    }

    @Test
    void givesAllFaultsAtOnce() {
        List<Refusal> faults = PlateReading.faults(plate(spot(5), spot(30), spot(66)));
        assertEquals(
                List.of("plate.spots[0].centreMm", "plate.spots[2].centreMm"),
                faults.stream().map(Refusal::field).toList());
    }

    @Test
    void saysWhatCameAndWhatIsAllowedWithoutTrailingZeros() {
        Refusal refusal = assertThrows(Refusal.class, () -> PlateReading.of(PlateMeasurement.of(100, 10.5, 10)));
        assertEquals("10", refusal.came());
        assertEquals("[15.5, 100] mm", English.said(refusal.allowed()));
    }

    @Test
    void writesTheSameWhateverTheMachinesLanguage() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            Refusal refusal = assertThrows(Refusal.class, () -> PlateReading.of(PlateMeasurement.of(100, 10.5, 10)));
            assertTrue(English.said(refusal.allowed()).contains("15.5"), English.said(refusal.allowed()));
        } finally {
            Locale.setDefault(before);
        }
    }
}
