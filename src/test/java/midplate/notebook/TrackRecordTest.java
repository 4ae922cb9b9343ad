package midplate.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.notebook.ScoredAdvice.Outcome;
import midplate.notebook.Study.Origin;
import midplate.notebook.TrackRecord.Rate;
import midplate.words.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How often advice came true. */
class TrackRecordTest {
    private static ScoredAdvice scored(int number, double probability, Outcome outcome) {
        GivenAdvice advice = new GivenAdvice(
                Instant.ofEpochSecond(number),
                "",
                List.of(),
                "hexane",
                "ethyl-acetate",
                20,
                "",
                0.2,
                0.8,
                List.of(),
                List.of(),
                probability,
                "measured");
        return new ScoredAdvice(
                0, advice, Optional.empty(), outcome, Message.of("outcome.came-true"), List.of(), List.of());
    }

    private static List<ScoredAdvice> some(int cameTrue, int missed) {
        List<ScoredAdvice> all = new ArrayList<>();
        for (int i = 0; i < cameTrue + missed; i++) {
            all.add(scored(i, 0.5, i < cameTrue ? Outcome.CAME_TRUE : Outcome.MISSED));
        }
        return all;
    }

    @ParameterizedTest // Newcombe, Statistics in Medicine 17 (1998) 857, table I, score method; from memory
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0.0000, 0.1611", "1, 29, 0.0061, 0.1718"})
    void theIntervalIsThatOfWilson(int cameTrue, int of, double low, double high) {
        Rate rate = TrackRecord.of(some(cameTrue, of - cameTrue)).all().orElseThrow();
        assertEquals(low, rate.low(), 5e-5);
        assertEquals(high, rate.high(), 5e-5);
        // the ends solve |p - x/n| = z·√(p(1 − p)/n), own algebra
        double z = 1.959963984540054;
        for (double end : new double[] {rate.low(), rate.high()}) {
            double share = (double) cameTrue / of;
            assertEquals((end - share) * (end - share), z * z * end * (1 - end) / of, 1e-9);
        }
    }

    @Test
    void nothingScoredIsNoRate() {
        assertEquals(Optional.empty(), TrackRecord.of(List.of()).all());
        assertEquals(
                Optional.empty(),
                TrackRecord.of(List.of(scored(1, 0.5, Outcome.NOT_RUN), scored(2, 0.5, Outcome.NOT_TOLD)))
                        .all());
    }

    @Test
    void theMeanChanceSaidIsThatOfTheScoredOnes() {
        Rate rate = TrackRecord.of(List.of(
                        scored(1, 0.6, Outcome.CAME_TRUE),
                        scored(2, 0.9, Outcome.MISSED),
                        scored(3, 0.1, Outcome.NOT_RUN)))
                .all()
                .orElseThrow();
        assertEquals(0.75, rate.said(), 1e-12);
        assertEquals(2, rate.of());
        assertEquals(1, rate.cameTrue());
    }

    @ParameterizedTest
    @CsvSource({"9, 0", "10, 2", "14, 2", "15, 3", "24, 4", "25, 5", "100, 5"})
    void groupsOfEqualSizeComeFromTenOn(int count, int groups) {
        List<ScoredAdvice> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(scored(i, (i * 7 % count) / 100.0, i % 3 == 0 ? Outcome.MISSED : Outcome.CAME_TRUE));
        }
        TrackRecord record = TrackRecord.of(all);
        assertEquals(groups, record.groups().size());
        if (groups > 0) {
            assertEquals(count, record.groups().stream().mapToInt(Rate::of).sum());
            assertEquals(
                    record.all().orElseThrow().cameTrue(),
                    record.groups().stream().mapToInt(Rate::cameTrue).sum());
            int least = record.groups().stream().mapToInt(Rate::of).min().orElseThrow();
            int most = record.groups().stream().mapToInt(Rate::of).max().orElseThrow();
            assertTrue(most - least <= 1 && least >= 5, least + " to " + most);
            for (int i = 1; i < groups; i++) {
                assertTrue(
                        record.groups().get(i - 1).said()
                                <= record.groups().get(i).said(),
                        "rising");
            }
        }
    }

    @Test
    void aCopyOfAStudyIsNoSecondPieceOfEvidence() {
        List<ScoredAdvice> twice = new ArrayList<>(some(3, 1));
        twice.addAll(some(3, 1));
        assertEquals(4, TrackRecord.of(twice).all().orElseThrow().of());
    }

    @Test
    void ofCopiesThatInTheStudyMadeFirstDecidesWhicheverWasWrittenLast() {
        StudySummary original = summary("20261026-p3h8d5wz2n", 10, 20, Outcome.MISSED);
        StudySummary copy = summary("20261026-a3h8d5wz2n", 11, 30, Outcome.CAME_TRUE);
        for (List<StudySummary> order : List.of(List.of(original, copy), List.of(copy, original))) {
            Rate rate = TrackRecord.ofStudies(order).all().orElseThrow();
            assertEquals(1, rate.of());
            assertEquals(0, rate.cameTrue());
        }
    }

    private static StudySummary summary(String id, int created, int modified, Outcome outcome) {
        return new StudySummary(
                new StudyId(id),
                "",
                Instant.ofEpochSecond(created),
                Instant.ofEpochSecond(modified),
                Study.Keeping.AT_HAND,
                Origin.OWN,
                1,
                List.of(),
                new StudyTag("0123456789abcdef0123456789abcdef"),
                List.of(),
                List.of(scored(1, 0.5, outcome)));
    }

    @Test
    void oneChanceStandsInOneGroupAndNoGroupIsSmallForIt() {
        assertEquals(List.of(12), groupsOf(12, 0, 0.8101, 0.9));
        assertEquals(List.of(12), groupsOf(11, 1, 0.81, 0.9), "one alone is no group");
        assertEquals(List.of(9, 6), groupsOf(9, 6, 0.81, 0.9));
    }

    private static List<Integer> groupsOf(int lower, int higher, double low, double high) {
        List<ScoredAdvice> all = new ArrayList<>();
        for (int i = 0; i < lower + higher; i++) {
            all.add(scored(i, i < lower ? low + i * 1e-5 : high, i % 3 == 0 ? Outcome.MISSED : Outcome.CAME_TRUE));
        }
        return TrackRecord.of(all).groups().stream().map(Rate::of).toList();
    }

    @Test
    void studiesThatBeganAsTheExampleAreLeftOut() {
        List<StudySummary> studies = new ArrayList<>();
        for (Origin origin : Origin.values()) {
            studies.add(new StudySummary(
                    new StudyId("20261026-p3h8d5wz2n"),
                    "",
                    Instant.EPOCH,
                    Instant.EPOCH,
                    Study.Keeping.ARCHIVED,
                    origin,
                    1,
                    List.of(),
                    new StudyTag("0123456789abcdef0123456789abcdef"),
                    List.of(),
                    List.of(scored(origin.ordinal(), 0.5, Outcome.CAME_TRUE))));
        }
        assertEquals(1, TrackRecord.ofStudies(studies).all().orElseThrow().of());
    }
}
