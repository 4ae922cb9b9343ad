package midplate.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import midplate.words.Message;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each usual mistake is told, and the measurement just short of it is not. */
class PlateMistakesTest {
    private static SpotMeasurement spot(String name, double centreMm) {
        return SpotMeasurement.of(name, centreMm);
    }

    private static PlateMeasurement plate(SpotMeasurement... spots) {
        return PlateMeasurement.of(70, 10, 60, spots);
    }

    static Stream<Arguments> mistakesAndNearMisses() {
        return Stream.of(
                Arguments.of(
                        "plate.start-at-edge",
                        PlateMeasurement.of(70, 0, 60, spot("A", 30)),
                        PlateMeasurement.of(70, 1, 60, spot("A", 30))),
                Arguments.of(
                        "plate.start-at-edge-shift",
                        PlateMeasurement.of(70, 0, 60, spot("A", 30)),
                        PlateMeasurement.of(70, 0, 60)),
                Arguments.of(
                        "plate.front-near-top", PlateMeasurement.of(70, 10, 65.1), PlateMeasurement.of(70, 10, 65)),
                Arguments.of("plate.front-at-top", PlateMeasurement.of(70, 10, 70), PlateMeasurement.of(70, 10, 69)),
                Arguments.of("plate.run-short", PlateMeasurement.of(70, 10, 29.9), PlateMeasurement.of(70, 10, 30)),
                Arguments.of("plate.start-under-solvent", plate().withSolventLevel(10), plate().withSolventLevel(9.9)),
                Arguments.of("plate.start-near-solvent", plate().withSolventLevel(7.1), plate().withSolventLevel(7)),
                Arguments.of("plate.spot-past-front", plate(spot("A", 60.5)), plate(spot("A", 60))),
                Arguments.of("plate.spot-under-start", plate(spot("A", 9.5)), plate(spot("A", 10))),
                Arguments.of(
                        "plate.spot-streak",
                        plate(spot("A", 30).withSize(8.1)),
                        plate(spot("A", 30).withSize(8))),
                // a quarter of a run of 24 mm is 6 mm
                Arguments.of(
                        "plate.spot-streak",
                        PlateMeasurement.of(70, 10, 34, spot("A", 22).withSize(6.1)),
                        PlateMeasurement.of(70, 10, 34, spot("A", 22).withSize(6))),
                Arguments.of(
                        "plate.spot-overloaded",
                        plate(spot("A", 30).withShape(SpotForm.SHARP_HEAD)),
                        plate(spot("A", 30).withShape(SpotForm.COMPACT))),
                Arguments.of(
                        "plate.spot-merged",
                        plate(spot("A", 30).withShape(SpotForm.MERGED)),
                        plate(spot("A", 30).withShape(SpotForm.STREAK))),
                Arguments.of(
                        "plate.spot-drawn-out",
                        plate(spot("A", 30).withShape(SpotForm.STREAK)),
                        plate(spot("A", 30).withShape(SpotForm.STREAK).withSize(8.1))),
                Arguments.of(
                        "plate.spot-near-edge",
                        plate(spot("A", 30).withFromLeft(4.9)),
                        plate(spot("A", 30).withFromLeft(5))),
                Arguments.of(
                        "plate.spot-near-edge",
                        plate(spot("A", 30).withFromLeft(35.1)).withWidth(40),
                        plate(spot("A", 30).withFromLeft(35)).withWidth(40)),
                // two spots of 4 mm need 2 + 2 + 1 mm
                Arguments.of(
                        "plate.lanes-close",
                        plate(
                                spot("A", 30).withSize(4).withFromLeft(10),
                                spot("B", 40).withSize(4).withFromLeft(14.9)),
                        plate(
                                spot("A", 30).withSize(4).withFromLeft(10),
                                spot("B", 40).withSize(4).withFromLeft(15))),
                // 2.1 mm of a run of 50 mm is 0.042, 2 mm is 0.04
                Arguments.of(
                        "plate.lanes-differ",
                        plate(spot("A", 30), spot("A", 32.1)),
                        plate(spot("A", 30), spot("A", 32))));
    }

    private static List<Message> said(PlateMeasurement plate) {
        return PlateReading.of(plate).warnings();
    }

    private static boolean says(PlateMeasurement plate, String key) {
        return said(plate).stream().anyMatch(message -> message.key().equals(key));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mistakesAndNearMisses")
    void tellsTheMistakeAndNotTheNearMiss(String key, PlateMeasurement mistake, PlateMeasurement nearMiss) {
        assertTrue(says(mistake, key), () -> key + " not in " + said(mistake));
        assertFalse(says(nearMiss, key), () -> key + " in " + said(nearMiss));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mistakesAndNearMisses")
    void everyWarningHasAText(String key, PlateMeasurement mistake, PlateMeasurement nearMiss) {
        for (Message message : said(mistake)) {
            assertFalse(Texts.english().render(message).isBlank(), key + " " + nearMiss);
        }
    }

    @Test
    void aGoodPlateIsNotCommentedOn() {
        PlateMeasurement good = plate(
                        spot("A", 25).withSize(3).withFromLeft(10),
                        spot("B", 40).withSize(4).withFromLeft(20),
                        spot("A", 25.5).withSize(3).withFromLeft(30),
                        spot("B", 40).withSize(4).withFromLeft(30.5))
                .withWidth(40)
                .withSolventLevel(4);
        assertEquals(List.of(), said(good));
    }

    // Own algebra: from the edge 20/60 = 0.333; from 10 mm (20 − 10)/(60 − 10) = 0.2. A spot at 50 mm moves
    // less: told is the spot that moves most.
    @Test
    void tellsByHowMuchAStartLineAtTheEdgeChangesRf() {
        Message shift = said(PlateMeasurement.of(70, 0, 60, spot("B", 50), spot("A", 20))).stream()
                .filter(message -> message.key().equals("plate.start-at-edge-shift"))
                .findFirst()
                .orElseThrow();
        assertEquals("A", shift.args().get("spot"));
        assertEquals(20.0 / 60, number(shift, "rf"), 1e-12);
        assertEquals(0.2, number(shift, "rfThen"), 1e-12);
        assertEquals(
                "With a start line at the usual 10 mm the Rf of A would be 0.20 and not 0.33.",
                Texts.english().render(shift));
    }

    // Own algebra: midway on 15 mm the error is 0.5·√1.5/15 = 0.0408.
    @Test
    void tellsTheErrorOfAShortRun() {
        Message told = said(PlateMeasurement.of(70, 10, 25)).get(0);
        assertEquals("plate.run-short", told.key());
        assertEquals(0.5 * Math.sqrt(1.5) / 15, number(told, "rfError"), 1e-12);
    }

    @Test
    void aSpotSlightlyOutsideTheRunCountsAsLyingOnTheLine() {
        PlateReading plate = PlateReading.of(plate(spot("low", 9.2), spot("high", 60.9)));
        assertEquals(Limit.AT_START, limit(plate, "low"));
        assertEquals(Limit.AT_FRONT, limit(plate, "high"));
        assertEquals(
                List.of("plate.spot-under-start", "plate.spot-past-front"),
                plate.warnings().stream().map(Message::key).toList());
    }

    @Test
    void spotsOneAboveTheOtherInOneLaneAreNotTooNear() {
        assertEquals(
                List.of(),
                said(plate(
                        spot("A", 20).withFromLeft(20),
                        spot("B", 30).withFromLeft(20.4),
                        spot("C", 40).withFromLeft(20.9))));
    }

    // Own algebra: start 10, front 60, Rf 0.4: √(0.8² + 0.25·(0.36 + 0.16))/50.
    @Test
    void whatASpotLooksLikeIsToldOnceWithTheErrorThatCounts() {
        List<Message> told =
                said(plate(spot("A", 30).withSize(14).withError(0.8).withShape(SpotForm.SHARP_HEAD)));
        assertEquals(
                List.of("plate.spot-overloaded"),
                told.stream().map(Message::key).toList());
        assertEquals(Math.sqrt(0.64 + 0.13) / 50, number(told.get(0), "rfError"), 1e-12);
        assertTrue(Texts.english().render(told.get(0)).contains("Dilute, and spot it again"));
        List<Message> streak = said(plate(spot("A", 30).withSize(14).withError(0.8)));
        assertEquals(Math.sqrt(0.64 + 0.13) / 50, number(streak.get(0), "rfError"), 1e-12);
    }

    @Test
    void tellsEveryMistakeOfAPlateWithSeveral() {
        PlateMeasurement bad = PlateMeasurement.of(
                        70, 10, 68, spot("A", 30).withSize(20).withFromLeft(2))
                .withSolventLevel(12);
        assertEquals(
                List.of(
                        "plate.front-near-top",
                        "plate.start-under-solvent",
                        "plate.spot-streak",
                        "plate.spot-near-edge"),
                said(bad).stream().map(Message::key).toList());
    }

    private static Limit limit(PlateReading plate, String spot) {
        Reading reading = plate.readings().get(spot);
        assertNotNull(reading);
        return reading.limit();
    }

    private static double number(Message message, String name) {
        Object value = message.args().get(name);
        assertNotNull(value);
        return (Double) value;
    }
}
