package midplate.identity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.words.Language;
import midplate.words.Message;
import midplate.words.Texts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a chemist would say of drawn plates: start at 10 mm, front at 60 mm; common practice, no source. */
@DisplayName("Same or not")
class SameOrNotTest {
    private static final SameOrNot JUDGE = SameOrNot.withoutModel();

    private static Compound named(String name) {
        return new Compound(name, OptionalDouble.empty(), Optional.empty());
    }

    private static LaneSpot spot(double mm, double size) {
        return LaneSpot.atMm(mm).sized(size);
    }

    private static IdentityAnswer judge(List<String> references, ComparedLane... lanes) {
        return JUDGE.judge(question(references, lanes));
    }

    private static IdentityQuestion question(List<String> references, ComparedLane... lanes) {
        return IdentityQuestion.of(
                List.of(ComparedPlate.of(10, 60, lanes)),
                references.stream().map(SameOrNotTest::named).toList());
    }

    /** One co-spot, so long; or two, where a second height is given. */
    @ParameterizedTest(name = "sample {0}, reference {1}, co-spot {2} and {4}: {5}")
    @CsvSource({
        "35,   31,   31,   3, 35,   different",
        "35,   30,   30,   3, 35,   different",
        "40,   30,   30,   3, 40,   different",
        "35,   31.5, 33,   6, -1,   different",
        "20,   45,   20,   3, 45,   different",
        "35,   35,   35,   3, -1,   not-told-apart",
        "35,   35.5, 35,   3, -1,   not-told-apart",
        "35,   34.5, 35,   3.5, -1, not-told-apart",
        "15,   15,   15,   3, -1,   not-told-apart",
        "35,   35,   33.5, 3, 36.5, undecided",
        "35,   35.5, 32,   3, 36,   undecided",
        "35,   31,   33,   3, -1,   undecided",
        "10,   10,   10,   3, -1,   undecided",
        "60,   60,   60,   3, -1,   undecided",
        "10.5, 11,   11,   3, -1,   undecided"
    })
    void oneSampleOneReference(double sample, double reference, double co, double size, double second, String said) {
        ComparedLane both = second < 0
                ? ComparedLane.coSpot("A", spot(co, size))
                : ComparedLane.coSpot("A", spot(co, size), spot(second, size));
        IdentityAnswer answer = judge(
                List.of("A"),
                ComparedLane.unknown(spot(sample, 3)),
                both,
                ComparedLane.reference("A", spot(reference, 3)));
        assertEquals(said, answer.verdicts().get(0).outcome().id(), answer::toString);
    }

    @Test
    void aSplitCoSpotBetweenEqualLanesIsNamedAsAContradiction() {
        Verdict verdict = judge(
                        List.of("A"),
                        ComparedLane.unknown(spot(35, 3)),
                        ComparedLane.coSpot("A", spot(33.5, 3), spot(36.5, 3)),
                        ComparedLane.reference("A", spot(35, 3)))
                .verdicts()
                .get(0);
        assertTrue(verdict.reasons().stream().anyMatch(each -> each.key().equals("same.co-split-against-equal")));
    }

    private static List<String> reasons(ComparedLane... lanes) {
        Verdict verdict = judge(List.of("A"), lanes).verdicts().get(0);
        assertEquals(Verdict.Outcome.UNDECIDED, verdict.outcome(), verdict::toString);
        return verdict.reasons().stream().map(each -> each.key()).toList();
    }

    @Test
    void aCoSpotOnOneOfTwoLanesThatLieApartMissesTheOther() {
        ComparedLane sample = ComparedLane.unknown(spot(35, 3));
        ComparedLane reference = ComparedLane.reference("A", spot(45, 3));
        assertTrue(reasons(sample, ComparedLane.coSpot("A", spot(45, 3)), reference)
                .contains("same.co-one-on-reference"));
        assertTrue(reasons(sample, ComparedLane.coSpot("A", spot(35, 3)), reference)
                .contains("same.co-one-on-sample"));
        assertTrue(reasons(sample, ComparedLane.coSpot("A", LaneSpot.atMm(45)), reference)
                .contains("same.co-one-on-reference"));
        assertTrue(reasons(sample, ComparedLane.coSpot("A", spot(40, 3)), reference)
                .contains("same.co-one-against-gap"));
    }

    @Test
    void twoLanesOfOneContentThatLieApartDecideNothing() {
        ComparedLane low = ComparedLane.unknown(spot(20, 3));
        ComparedLane high = ComparedLane.unknown(spot(40, 3));
        ComparedLane reference = ComparedLane.reference("A", spot(20, 3));
        assertTrue(reasons(low, high, reference).contains("same.lanes-of-sample"));
        assertTrue(reasons(low, reference, ComparedLane.reference("A", spot(40, 3)))
                .contains("same.lanes-of-reference"));
        IdentityAnswer answer = judge(List.of("A"), low, high, reference);
        assertTrue(answer.unexplained().isEmpty(), answer::toString);
    }

    @Test
    void noSentenceClaimsThatAGapAsLargeWouldHaveBeenTold() {
        List<String> keys = reasons(
                ComparedLane.unknown(spot(35, 3)),
                ComparedLane.coSpot("A", spot(33, 3)),
                ComparedLane.reference("A", spot(31, 3)));
        assertFalse(keys.contains("same.least"), keys::toString);
        List<String> equal = judge(
                        List.of("A"), ComparedLane.unknown(spot(35, 3)), ComparedLane.reference("A", spot(35, 3)))
                .verdicts()
                .get(0)
                .reasons()
                .stream()
                .map(each -> each.key())
                .toList();
        assertTrue(equal.contains("same.gap-none") && equal.contains("same.least"), equal::toString);
    }

    @Test
    void aGapWithoutCoSpotIsSaidToComeFromTheEdgesPerhaps() {
        Verdict verdict = judge(
                        List.of("A"), ComparedLane.unknown(spot(40, 3)), ComparedLane.reference("A", spot(30, 3)))
                .verdicts()
                .get(0);
        assertEquals(Verdict.Outcome.DIFFERENT, verdict.outcome());
        assertTrue(verdict.reasons().stream().anyMatch(each -> each.key().equals("same.edges")));
    }

    @Test
    void aPlateOfRfAloneIsJudgedWithTheUsualRun() {
        IdentityAnswer answer = JUDGE.judge(IdentityQuestion.of(
                List.of(ComparedPlate.ofRf(
                        ComparedLane.unknown(LaneSpot.atRf(0.5)), ComparedLane.reference("A", LaneSpot.atRf(0.3)))),
                List.of(named("A"))));
        Verdict verdict = answer.verdicts().get(0);
        assertEquals(Verdict.Outcome.DIFFERENT, verdict.outcome());
        assertEquals(0.2, verdict.gapRf().orElseThrow().value(), 1e-9);
        assertTrue(answer.warnings().stream().anyMatch(each -> each.key().equals("same.assumed-run")));
    }

    @Test
    void aSpotOfACoSpotFarFromBothLanesIsNeitherOfThem() {
        Verdict alone = besideEqualLanes(ComparedLane.coSpot("A", spot(52, 3)));
        assertEquals(Verdict.Outcome.UNDECIDED, alone.outcome(), "a lane that shows neither supports nothing");
        assertTrue(keys(alone).contains("same.co-missing"), keys(alone).toString());
        Verdict beside = besideEqualLanes(ComparedLane.coSpot("A", spot(25, 3), spot(52, 3)));
        assertEquals(Verdict.Outcome.NOT_TOLD_APART, beside.outcome());
        assertTrue(keys(beside).contains("same.co-one"), keys(beside).toString());
    }

    private static Verdict besideEqualLanes(ComparedLane coSpot) {
        return judge(List.of("A"), ComparedLane.unknown(spot(25, 3)), coSpot, ComparedLane.reference("A", spot(25, 3)))
                .verdicts()
                .get(0);
    }

    private static List<String> keys(Verdict verdict) {
        return verdict.reasons().stream().map(Message::key).toList();
    }

    /** Student's t with 5 degrees of freedom from any table: 0.920 (0.80), 3.365 (0.99), 4.032 (0.995). */
    @Test
    void theLeastDifferenceToldIsThatOfTheChanceStated() {
        double deviation = Math.sqrt(2 * (0.31 * 0.31 + 0.15 * 0.15 + 0.225 * 0.225)) / 50;
        ComparedLane sample = ComparedLane.unknown(spot(35, 3));
        ComparedLane reference = ComparedLane.reference("A", spot(35, 3));
        assertEquals((4.032 + 0.920) * deviation, least(sample, reference), 1e-4);
        assertEquals(
                (3.365 + 0.920) * deviation, least(sample, ComparedLane.coSpot("A", spot(35, 3)), reference), 1e-4);
    }

    private static double least(ComparedLane... lanes) {
        return judge(List.of("A"), lanes).verdicts().get(0).leastToldApartRf().orElseThrow();
    }

    @Test
    void sampleAndReferenceMayChangePlaces() {
        Verdict forth = judge(
                        List.of("A"), ComparedLane.unknown(spot(35, 3)), ComparedLane.reference("A", spot(33.5, 2.5)))
                .verdicts()
                .get(0);
        Verdict back = judge(
                        List.of("A"), ComparedLane.unknown(spot(33.5, 2.5)), ComparedLane.reference("A", spot(35, 3)))
                .verdicts()
                .get(0);
        assertEquals(forth.outcome(), back.outcome());
        assertEquals(forth.chanceOfOne(), back.chanceOfOne());
        assertEquals(
                forth.gapRf().orElseThrow().value(), -back.gapRf().orElseThrow().value(), 1e-12);
    }

    @Test
    void theOrderOfLanesAndReferencesChangesNothing() {
        List<ComparedLane> lanes = new ArrayList<>(List.of(
                ComparedLane.unknown(spot(25, 3), spot(40, 3)),
                ComparedLane.unknown(spot(25.5, 3), spot(40, 3)),
                ComparedLane.coSpot("A", spot(25, 3.2), spot(40, 3)),
                ComparedLane.reference("A", spot(25, 3)),
                ComparedLane.reference("B", spot(40.5, 3))));
        IdentityAnswer first = judge(List.of("A", "B"), lanes.toArray(ComparedLane[]::new));
        Collections.reverse(lanes);
        IdentityAnswer last = judge(List.of("B", "A"), lanes.toArray(ComparedLane[]::new));
        assertEquals(
                first.verdicts().get(0).chanceOfOne().orElseThrow(),
                last.verdicts().get(1).chanceOfOne().orElseThrow(),
                1e-12);
        assertEquals(first.verdicts().get(1).outcome(), last.verdicts().get(0).outcome());
        assertTrue(first.mixture().isPresent() && last.mixture().isPresent());
    }

    @Test
    void aSpotThatNoReferenceAccountsForIsNamed() {
        IdentityAnswer answer = judge(
                List.of("A"), ComparedLane.unknown(spot(25, 3), spot(45, 3)), ComparedLane.reference("A", spot(25, 3)));
        assertTrue(answer.mixture().isEmpty());
        assertEquals("same.unexplained", answer.unexplained().orElseThrow().key());
    }

    @Test
    void platesAreTakenTogetherAndOneThatSaysTheSameMakesItSurer() {
        ComparedPlate plate =
                ComparedPlate.of(10, 60, ComparedLane.unknown(spot(35, 3)), ComparedLane.reference("A", spot(33.5, 3)));
        double one = chance(List.of(plate));
        double two = chance(List.of(plate, plate));
        assertTrue(one > 0.02 && two < one, one + " " + two);
    }

    private static double chance(List<ComparedPlate> plates) {
        return JUDGE.judge(IdentityQuestion.of(plates, List.of(named("A"))))
                .verdicts()
                .get(0)
                .chanceOfOne()
                .orElseThrow();
    }

    @Test
    void aCandidateAtThePlaceOfTheSampleIsWithinAndOneFarAwayIsNot() {
        IdentityQuestion bare =
                question(List.of("A"), ComparedLane.unknown(spot(35, 3)), ComparedLane.reference("A", spot(35, 3)));
        List<Candidate> candidates = List.of(
                new Candidate(
                        "near", OptionalDouble.of(0.5), OptionalDouble.empty(), Optional.empty(), Optional.empty()),
                new Candidate(
                        "far", OptionalDouble.of(0.9), OptionalDouble.empty(), Optional.empty(), Optional.empty()));
        CandidatesWithin left = JUDGE.judge(new IdentityQuestion(
                        bare.plates(),
                        bare.references(),
                        candidates,
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Optional.empty()))
                .candidates()
                .orElseThrow();
        assertEquals(2, left.of());
        assertEquals(1, left.within());
    }

    @ParameterizedTest
    @CsvSource({"NaN", "61.5", "8"})
    void aSpotOffTheRunIsRefused(double mm) {
        assertFalse(IdentityFaults.in(question(
                        List.of("A"),
                        ComparedLane.unknown(LaneSpot.atMm(mm)),
                        ComparedLane.reference("A", spot(35, 3))))
                .isEmpty());
    }

    @Test
    void aCoSpotAloneALaneWithoutSpotsAndAReferenceNobodySpottedArePlainFaults() {
        assertEquals(List.of("co-spot-alone"), codes(question(List.of("A"), ComparedLane.coSpot("A", spot(35, 3)))));
        assertEquals(
                List.of("lane-without-spots"),
                codes(question(List.of("A"), ComparedLane.unknown(), ComparedLane.reference("A", spot(35, 3)))));
        assertEquals(
                List.of("reference-not-spotted"), codes(question(List.of("A"), ComparedLane.unknown(spot(35, 3)))));
    }

    private static List<String> codes(IdentityQuestion question) {
        return IdentityFaults.in(question).stream().map(each -> each.code()).toList();
    }

    @Test
    void allThatIsSaidCanBeSaidInBothLanguages() {
        IdentityAnswer answer = judge(
                List.of("A", "B"),
                ComparedLane.unknown(spot(25, 3), spot(40, 12)),
                ComparedLane.coSpot("A", spot(25, 3)),
                ComparedLane.reference("A", spot(25, 3).streaked()),
                ComparedLane.reference("B", spot(33, 3)));
        for (Language language : Language.values()) {
            Texts texts = Texts.of(language);
            answer.verdicts().forEach(each -> {
                texts.render(each.inWords());
                each.reasons().forEach(texts::render);
            });
            answer.warnings().forEach(texts::render);
            answer.secondWays().forEach(texts::render);
            assertTrue(texts.render(answer.unexplained().orElseThrow()).contains("Rf"));
        }
    }
}
