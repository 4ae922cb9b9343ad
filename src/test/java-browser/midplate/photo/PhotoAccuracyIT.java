package midplate.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import midplate.web.ReadingPage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * The aims of reading photos, on a few pictures with seeds of their own: each is to hold as far as two standard errors of so small a set
 * tell. The whole measurement is {@link PhotoTrial}.
 */
@DisplayName("Photos of plates are read")
class PhotoAccuracyIT {
    private static final long FIRST = 5_000;
    private static final int COUNT = 40;
    private static final double WITHIN = 0.95;
    private static final double FALSE = 0.05;
    /** A set without any mistake still tells no more than this. */
    private static final double LEAST_ERROR = 0.01;

    private static List<Judge.Both> both = List.of();
    private static List<Judged> judged = List.of();

    @BeforeAll
    static void judge() throws IOException {
        try (ReadingPage browser = ReadingPage.open()) {
            Judge judge = Judge.of(Reading.on(browser.empty()));
            both = PhotoTrial.judged(judge, FIRST, COUNT, seed -> Photo.of(seed, 1200, 1600));
            judged = both.stream().map(Judge.Both::byHand).toList();
        }
    }

    private static double twice(Tally.Share share) {
        return 2 * Math.max(LEAST_ERROR, share.error());
    }

    private static Tally aim() {
        return Conditions.AIM.of(judged);
    }

    @Test
    void everyPictureIsRead() {
        assertEquals(
                List.of(),
                judged.stream()
                        .filter(picture -> !picture.fault().isEmpty())
                        .map(picture -> picture.seed() + " " + picture.fault())
                        .toList());
        assertTrue(aim().count() > 150, "spots to be judged: " + aim().count());
    }

    @Test
    void nineteenOfTwentyLieWithinTheAim() {
        Tally.Share within = aim().ofAll(outcome -> outcome.isWithin(Tally.NEAR));
        assertTrue(within.value() >= WITHIN - twice(within), "" + within);
    }

    @Test
    void fewAreMissed() {
        Tally.Share missed = aim().ofAll(Outcome::isMissed);
        assertTrue(missed.value() <= FALSE + twice(missed), "" + missed);
    }

    @Test
    void fewAreFalse() {
        Tally.Share extra = aim().extra();
        assertTrue(extra.of() > 150 && extra.value() <= FALSE + twice(extra), "" + extra);
    }

    @Test
    void rfLiesWithinTwoErrors() {
        Tally.Share within = aim().ofFound(Outcome::isRfWithinTwoErrors);
        assertTrue(within.value() >= WITHIN - twice(within), "" + within);
    }

    @Test
    void streaksCarryWideErrors() {
        List<Outcome> streaks = judged.stream()
                .flatMap(picture -> picture.outcomes().stream())
                .filter(outcome -> outcome.mark().form().equals("streak") && !outcome.isMissed())
                .toList();
        assertTrue(streaks.size() >= 3, "streaks found: " + streaks.size());
        long wide = streaks.stream()
                .filter(outcome -> outcome.found() != null
                        && outcome.found().errorMm() >= outcome.mark().sizeMm() / 5)
                .count();
        assertTrue(wide >= 0.8 * streaks.size(), wide + " of " + streaks);
    }

    @Test
    void cornersAreProposedWhereTheyAre() {
        List<Double> corners = both.stream()
                .map(each -> each.asProposed().corners())
                .filter(corner -> !corner.isNaN())
                .toList();
        long near = corners.stream().filter(corner -> corner <= 1).count();
        assertTrue(corners.size() >= COUNT / 2 && near >= 0.8 * corners.size(), near + " of " + corners.size());
    }
}
