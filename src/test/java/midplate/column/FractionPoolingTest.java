package midplate.column;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import midplate.column.FractionAnswer.Kind;
import midplate.column.FractionAnswer.Pool;
import midplate.column.FractionAnswer.SeenBand;
import midplate.words.English;
import midplate.words.Language;
import midplate.words.Message;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Tubes poured together, and what the flasks hold; all invented")
class FractionPoolingTest {
    private static final Tube UNLOOKED = Tube.notLookedAt();

    /** Tubes as letters: a blank is empty, {@code ?} was not looked at, each letter a compound of strength 3, small ones faint. */
    private static List<Tube> tubes(String... each) {
        List<Tube> tubes = new ArrayList<>();
        for (String letters : each) {
            if (letters.equals("?")) {
                tubes.add(UNLOOKED);
                continue;
            }
            tubes.add(Tube.seen(letters.strip()
                    .chars()
                    .mapToObj(letter -> new TubeMark(
                            String.valueOf((char) Character.toUpperCase(letter)),
                            Character.isUpperCase(letter) ? 3 : 1))
                    .toArray(TubeMark[]::new)));
        }
        return tubes;
    }

    private static FractionQuestion asked(List<Tube> tubes, Flask... flasks) {
        return new FractionQuestion(List.of("A", "B"), "B", 250, 8, 0, tubes, List.of(flasks));
    }

    private static FractionAnswer pooled(String... each) {
        return FractionPooling.pool(asked(tubes(each)));
    }

    private static List<String> shape(FractionAnswer answer) {
        return answer.pools().stream()
                .map(pool -> pool.kind().id() + pool.spots() + pool.fromTube() + "-" + pool.toTube())
                .toList();
    }

    private static List<String> codes(List<Message> messages) {
        return messages.stream().map(Message::code).toList();
    }

    @Test
    void neighboursThatHoldTheSameGoTogether() {
        FractionAnswer answer = pooled("", "A", "A", "AB", "B", "B", "B", "", "");
        assertEquals(List.of("empty[]1-1", "pure[A]2-3", "mixed[A, B]4-4", "pure[B]5-7", "empty[]8-9"), shape(answer));
        Pool target = answer.pools().get(3);
        assertEquals("pool-target", target.reason().code());
        assertEquals(24, target.volumeMl(), 0);
        assertTrue(target.massMg().isEmpty());
        assertTrue(answer.balance().isEmpty());
        assertTrue(answer.warnings().isEmpty());
    }

    @Test
    void anEmptyTubeInsideABandIsToldWhateverElseItsNeighboursHold() {
        FractionAnswer answer = pooled("A", "AB", "", "B", "", "");
        Message told = answer.pools().stream()
                .filter(pool -> pool.fromTube() == 3)
                .findFirst()
                .orElseThrow()
                .reason();
        assertEquals("pool-empty-inside", told.code());
        assertEquals(3, told.args().get("tube"));
        assertEquals(
                "pool-empty",
                answer.pools().get(answer.pools().size() - 1).reason().code());
        assertEquals("pool-empty", pooled("A", "", "B").pools().get(1).reason().code());
    }

    @Test
    void everyTubeIsInOnePoolInOrder() {
        FractionAnswer answer = pooled("?", "A", "", "A", "?", "?", "AB", "B", "?", "?", "?", "B", "", "", "?");
        int next = 1;
        for (Pool pool : answer.pools()) {
            assertEquals(next, pool.fromTube());
            next = pool.toTube() + 1;
        }
        assertEquals(16, next);
    }

    @Test
    void aTubeNotLookedAtBetweenTwoOfOneCompoundIsTakenForItAndTold() {
        FractionAnswer answer = pooled("", "B", "?", "B", "");
        assertEquals(List.of("empty[]1-1", "pure[B]2-4", "empty[]5-5"), shape(answer));
        assertTrue(English.said(answer.pools().get(1).reason()).contains("tube 3"));
    }

    @Test
    void threeNotLookedAtAreNot() {
        FractionAnswer answer = pooled("B", "?", "?", "?", "B", "");
        assertEquals(List.of("pure[B]1-1", "unknown[]2-4", "pure[B]5-5", "empty[]6-6"), shape(answer));
        assertEquals("pool-unknown-beside", answer.pools().get(1).reason().code());
    }

    @Test
    void betweenTwoDifferentOnesNobodyKnows() {
        assertEquals(
                List.of("pure[A]1-1", "unknown[]2-2", "pure[B]3-3", "empty[]4-4"), shape(pooled("A", "?", "B", "")));
    }

    @Test
    void oneEmptyTubeInsideABandIsASlipAndTold() {
        FractionAnswer answer = pooled("", "B", "", "B", "");
        assertEquals(List.of("empty[]1-1", "pure[B]2-4", "empty[]5-5"), shape(answer));
        assertTrue(English.said(answer.pools().get(1).reason()).contains("Tube 3 shows nothing"));
        assertEquals(
                List.of("pure[B]1-1", "empty[]2-3", "pure[B]4-4", "empty[]5-5"), shape(pooled("B", "", "", "B", "")));
    }

    @Test
    void faintBesidePlainIsMixedButToldAsLittle() {
        FractionAnswer answer = pooled("", "A", "aB", "aB", "B", "");
        Pool mixed = answer.pools().get(2);
        assertEquals(Kind.MIXED, mixed.kind());
        assertEquals("pool-faint", mixed.reason().code());
        assertEquals("A", English.value(mixed.reason(), "faint"));
        assertEquals(
                "pool-mixed",
                pooled("", "AB", "aB", "B", "").pools().get(1).reason().code());
    }

    @Test
    void marksOfStrengthZeroAreNothing() {
        Tube looked = Tube.seen(new TubeMark("A", 0), new TubeMark("B", 0));
        Tube only = Tube.seen(new TubeMark("A", 0), new TubeMark("B", 2));
        FractionAnswer answer = FractionPooling.pool(asked(List.of(looked, only, looked)));
        assertEquals(List.of("empty[]1-1", "pure[B]2-2", "empty[]3-3"), shape(answer));
    }

    @Test
    void bandsGoFromTheFirstTubeToTheLastWithHalfAFraction() {
        FractionAnswer answer = pooled("", "", "A", "AB", "B", "B", "");
        assertEquals(List.of(new SeenBand("A", 16, 32, 4), new SeenBand("B", 24, 48, 4)), answer.observed());
    }

    @Test
    void tubesNotLookedAtAtTheEndsMakeABandLessSure() {
        FractionAnswer answer = pooled("", "?", "B", "B", "?", "?", "");
        assertEquals(List.of(new SeenBand("B", 12, 40, 12)), answer.observed());
    }

    @Test
    void whatWasCollectedLaterIsCountedFromTheFirstDrop() {
        FractionQuestion late =
                new FractionQuestion(List.of("A", "B"), "B", 250, 8, 100, tubes("", "B", "", "A", ""), List.of());
        assertEquals(
                List.of(new SeenBand("A", 124, 132, 4), new SeenBand("B", 108, 116, 4)),
                FractionPooling.pool(late).observed());
    }

    @Test
    void aBandWhoseEndsWereNotSeenTeachesNothing() {
        FractionAnswer open = pooled("", "A", "B", "B");
        assertEquals(List.of(new SeenBand("A", 8, 16, 4)), open.observed());
        assertEquals(List.of("band-not-over"), codes(open.notes()));
        FractionQuestion late =
                new FractionQuestion(List.of("A", "B"), "B", 250, 8, 50, tubes("B", "B", ""), List.of());
        assertEquals(List.of("band-begun"), codes(FractionPooling.pool(late).notes()));
        FractionAnswer broken = pooled("", "B", "", "", "B", "");
        assertTrue(broken.observed().isEmpty());
        assertEquals(List.of("band-broken"), codes(broken.notes()));
    }

    @Test
    void flasksGiveMassesAndTheBalance() {
        List<Tube> tubes = tubes("", "A", "A", "AB", "B", "B", "B", "");
        FractionAnswer answer = FractionPooling.pool(asked(
                tubes,
                new Flask(2, 3, 20.0000, 20.1100),
                new Flask(4, 4, 21.5000, 21.5040),
                new Flask(5, 7, 25.1034, 25.2201)));
        FractionAnswer.Balance balance = answer.balance().orElseThrow();
        assertEquals(116.7, balance.targetPureMg(), 1e-9);
        assertEquals(230.7, balance.foundMg(), 1e-9);
        assertEquals(230.7 / 250, balance.ofLoaded(), 1e-12);
        assertEquals(116.7, answer.pools().get(3).massMg().orElseThrow(), 1e-9);
        assertEquals("balance-complete", balance.text().code());
        double sum = answer.pools().stream()
                .mapToDouble(pool -> pool.massMg().orElse(0))
                .sum();
        assertEquals(balance.foundMg(), sum, 1e-9);
    }

    @Test
    void moreThanWasPutOnIsTold() {
        List<Tube> tubes = tubes("", "B", "");
        assertEquals("balance-over", balance(tubes, 10.3));
        assertEquals("balance-complete", balance(tubes, 10.25));
        assertEquals("balance-short", balance(tubes, 10.2));
    }

    private static String balance(List<Tube> tubes, double gross) {
        return FractionPooling.pool(asked(tubes, new Flask(2, 2, 10, gross)))
                .balance()
                .orElseThrow()
                .text()
                .code();
    }

    @Test
    void aFlaskAcrossPoolsCountsInTheTotalOnly() {
        FractionAnswer answer =
                FractionPooling.pool(asked(tubes("", "A", "AB", "B", "B", ""), new Flask(3, 5, 20, 20.2)));
        assertEquals(200, answer.balance().orElseThrow().foundMg(), 1e-9);
        assertEquals(0, answer.balance().orElseThrow().targetPureMg(), 0);
        assertTrue(codes(answer.warnings()).contains("flask-crosses"));
        assertTrue(answer.pools().stream().allMatch(pool -> pool.massMg().isEmpty()));
    }

    @Test
    void aTubeInTwoFlasksAndTubesInNoneAreTold() {
        FractionAnswer answer = FractionPooling.pool(
                asked(tubes("", "B", "B", "B", ""), new Flask(2, 3, 20, 20.1), new Flask(3, 3, 20, 20.05)));
        assertTrue(codes(answer.warnings()).contains("tube-twice"));
        assertEquals(List.of("tubes-not-weighed"), codes(answer.notes()));
    }

    @Test
    void aTargetNeverAloneOrNotSeenIsTold() {
        assertEquals(
                List.of("target-never-pure"), codes(pooled("", "A", "AB", "").warnings()));
        assertEquals(List.of("target-not-seen"), codes(pooled("", "A", "").warnings()));
    }

    @Test
    void whatCannotBeIsRefusedAllAtOnce() {
        List<Tube> tubes = List.of(
                Tube.seen(new TubeMark("Z", 2)),
                Tube.seen(new TubeMark("A", 5), new TubeMark("A", 1)),
                Tube.seen(new TubeMark("B", -1)));
        FractionQuestion bad = new FractionQuestion(
                List.of("A", "B"),
                "C",
                0,
                0,
                -1,
                tubes,
                List.of(new Flask(0, 1, 10, 11), new Flask(2, 1, 10, 9), new Flask(1, 4, 0, 11)));
        List<Refusal> faults = FractionFaults.in(bad);
        assertEquals(
                List.of(
                        "target",
                        "massMg",
                        "fractionMl",
                        "collectedFromMl",
                        "tubes[0].marks[0].spot",
                        "tubes[1].marks[0].strength",
                        "tubes[1].marks[1].spot",
                        "tubes[2].marks[0].strength",
                        "flasks[0].fromTube",
                        "flasks[1].toTube",
                        "flasks[1].grossGrams",
                        "flasks[2].toTube",
                        "flasks[2].tareGrams"),
                faults.stream().map(Refusal::field).toList());
        assertThrows(Refusal.class, () -> FractionPooling.pool(bad));
        assertEquals(
                List.of("tubes"),
                FractionFaults.in(asked(List.of())).stream().map(Refusal::field).toList());
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everythingSaidReadsInEveryLanguage(Language language) {
        Texts texts = Texts.of(language);
        for (String[] run : new String[][] {
            {"", "A", "aB", "B", "?", "B", "", "B", "?", "?", "?", ""}, {"A", "?", "", "AB"}, {"B", "", "", "B"}
        }) {
            FractionAnswer answer = FractionPooling.pool(asked(tubes(run), new Flask(1, 4, 20, 20.3)));
            List<Message> all = new ArrayList<>(answer.warnings());
            all.addAll(answer.notes());
            answer.pools().forEach(pool -> all.add(pool.reason()));
            all.add(answer.balance().orElseThrow().text());
            all.forEach(message -> assertFalse(texts.render(message).contains("{"), message.key()));
        }
    }
}
