package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.plate.UnlabelledLane;
import midplate.plate.UnlabelledSpot;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Laws of spots without a label; all readings are invented. */
@DisplayName("Spots without a label")
class UnlabelledLawsTest {
    private static final List<String> AB = List.of("A", "B");

    private static UnlabelledLane lane(int number, Set<String> labelled, Reading... readings) {
        List<UnlabelledSpot> spots = new ArrayList<>();
        for (Reading reading : readings) {
            spots.add(new UnlabelledSpot(spots.size(), reading));
        }
        return new UnlabelledLane(number, labelled, spots);
    }

    private static PlateRun seen(double percent, Set<String> notSeen, Reading... readings) {
        return new PlateRun(
                Plates.ACETATE, percent, Map.of(), (int) percent, List.of(lane(1, Set.of(), readings)), notSeen);
    }

    private static PlateRun seen(double percent, double... rf) {
        Reading[] readings = new Reading[rf.length];
        for (int i = 0; i < rf.length; i++) {
            readings[i] = Reading.of(rf[i]);
        }
        return seen(percent, Set.of(), readings);
    }

    private static PlateRun labelled(double percent, double a, double b) {
        return Plates.run(Plates.ACETATE, percent, Map.of("A", a, "B", b));
    }

    private static Outlook after(Setting setting, List<String> spots, PlateRun... runs) {
        return Plates.outlook(Plates.ACETATE, setting, spots, List.of(runs));
    }

    private static List<String> guess(Outlook outlook, int spot) {
        return outlook.knowledge().guesses().get(spot).guess().spots();
    }

    private static double probability(Outlook outlook, int spot, String... names) {
        return outlook.knowledge().guesses().get(spot).possibilities().stream()
                .filter(each -> each.spots().equals(List.of(names)))
                .mapToDouble(SpotGuess.Possibility::probability)
                .sum();
    }

    private static void assertNear(Outlook one, Outlook other, double near) {
        for (double percent : new double[] {5, 15, 30, 60}) {
            for (int spot = 0; spot < one.knowledge().spots(); spot++) {
                assertEquals(one.rf(spot, percent), other.rf(spot, percent), near, "spot " + spot + " at " + percent);
            }
            assertEquals(one.chance(percent, List.of(0)), other.chance(percent, List.of(0)), near);
        }
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void oneOfOneSpotIsAsGoodAsLabelled(Setting setting) {
        PlateRun first = Plates.run(Plates.ACETATE, 10, Map.of("A", 0.2));
        Outlook unlabelled = after(setting, List.of("A"), first, seen(25, 0.4));
        Outlook labelled = after(setting, List.of("A"), first, Plates.run(Plates.ACETATE, 25, Map.of("A", 0.4)));
        assertNear(unlabelled, labelled, 0.01);
        assertTrue(probability(unlabelled, 0, "A") > 0.99);
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void farApartAreToldApartAndCountAsIfLabelled(Setting setting) {
        Outlook unlabelled = after(setting, AB, labelled(10, 0.08, 0.4), seen(25, 0.62, 0.22));
        assertEquals(List.of("B"), guess(unlabelled, 0));
        assertEquals(List.of("A"), guess(unlabelled, 1));
        assertTrue(probability(unlabelled, 0, "B") > 0.95 && probability(unlabelled, 1, "A") > 0.95);
        assertNear(unlabelled, after(setting, AB, labelled(10, 0.08, 0.4), labelled(25, 0.22, 0.62)), 0.01);
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void exchangingLabelsExchangesTheAnswers(Setting setting) {
        Outlook one = after(setting, AB, labelled(10, 0.15, 0.22), seen(25, 0.34, 0.42));
        Outlook other = after(setting, AB, labelled(10, 0.22, 0.15), seen(25, 0.34, 0.42));
        assertEquals(probability(one, 0, "A"), probability(other, 0, "B"), 1e-9);
        assertEquals(probability(one, 1, "A"), probability(other, 1, "B"), 1e-9);
        assertEquals(one.rf(0, 40), other.rf(1, 40), 1e-9);
        assertTrue(probability(one, 0, "A") > 0.5 && probability(one, 0, "A") < 0.99, "an open question");
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void whatNothingTellsApartIsEvenlyLikely(Setting setting) {
        Outlook outlook = after(setting, AB, labelled(10, 0.2, 0.2), seen(25, 0.33, 0.47));
        for (int spot = 0; spot < 2; spot++) {
            assertEquals(probability(outlook, spot, "A"), probability(outlook, spot, "B"), 1e-9);
            assertEquals(0.5, probability(outlook, spot, "A"), 0.01);
        }
        assertEquals(outlook.rf(0, 40), outlook.rf(1, 40), 1e-9);
    }

    // Labelled at 10 and at 50 %, both are expected within 0.02 of each other at 60 %: what is seen
    // there as one spot holds both.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void oneSpotHidesTwoWhereBothAreExpected(Setting setting) {
        PlateRun[] before = {labelled(10, 0.1, 0.3), labelled(50, 0.65, 0.67)};
        double a = after(setting, AB, before).rf(0, 60);
        double b = after(setting, AB, before).rf(1, 60);
        assertEquals(a, b, 0.02);
        Outlook outlook = after(setting, AB, before[0], before[1], seen(60, (a + b) / 2));
        assertEquals(AB, guess(outlook, 0));
        assertTrue(probability(outlook, 0, "A", "B") > 2 * probability(outlook, 0, "A"));
        assertTrue(probability(outlook, 0, "A", "B") > 2 * probability(outlook, 0, "B"));
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void notSeenIsNotAbsentAndCostsNothing(Setting setting) {
        PlateRun first = labelled(10, 0.1, 0.3);
        Outlook without = after(setting, AB, first, seen(25, Set.of("B"), Reading.of(0.25)));
        Outlook known = after(setting, AB, first, Plates.run(Plates.ACETATE, 25, Map.of("A", 0.25)));
        assertNear(without, known, 0.01);
        assertEquals(0, probability(without, 0, "B") + probability(without, 0, "A", "B"));
        PlateRun looked = new PlateRun(Plates.ACETATE, 25, Map.of("A", Reading.of(0.25)), 1, List.of(), Set.of("B"));
        assertNear(after(setting, AB, first, looked), known, 0);
    }

    @Test
    void aSpotThatNobodyCanBeIsNoneOfThem() {
        Outlook outlook = after(Setting.BENCH, AB, labelled(10, 0.1, 0.15), seen(10, 0.1, 0.15, 0.9));
        assertEquals(List.of(), guess(outlook, 2));
        assertTrue(probability(outlook, 2) > 0.9);
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void withoutAnyLabelTheFullestLaneGivesTheNamesFromTheStartLineUp(Setting setting) {
        List<String> spots = List.of("X", "B", "A");
        Outlook outlook = after(setting, spots, seen(40, 0.86), seen(15, 0.5, 0.06, 0.25));
        assertEquals(List.of("A"), guess(outlook, 0));
        assertEquals(List.of("X"), guess(outlook, 1));
        assertEquals(List.of("B"), guess(outlook, 2));
        assertEquals(List.of("A"), guess(outlook, 3));
        assertTrue(outlook.rf(0, 30) < outlook.rf(1, 30) && outlook.rf(1, 30) < outlook.rf(2, 30));
        Outlook named = after(
                setting, spots, Plates.run(Plates.ACETATE, 15, Map.of("X", 0.06, "B", 0.25, "A", 0.5)), seen(40, 0.86));
        assertEquals(probability(named, 0, "A"), probability(outlook, 3, "A"), 0.05);
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void aSpotBesideItsLikeInTheNextLaneIsItsLike(Setting setting) {
        PlateRun first = labelled(10, 0.12, 0.18);
        PlateRun second = new PlateRun(
                Plates.ACETATE,
                20,
                Map.of("A", Reading.of(0.3)),
                1,
                List.of(lane(2, Set.of(), Reading.of(0.31), Reading.of(0.37))),
                Set.of());
        Outlook outlook = after(setting, AB, first, second);
        assertTrue(
                probability(outlook, 0, "A") > 0.9,
                outlook.knowledge().guesses().toString());
        assertEquals(List.of("B"), guess(outlook, 1));
        // A second lane is no second plate: it leaves the band about as wide as one lane does.
        Outlook one = after(setting, AB, first, Plates.run(Plates.ACETATE, 20, Map.of("A", 0.305, "B", 0.37)));
        assertEquals(1, Plates.width(outlook, 40) / Plates.width(one, 40), 0.05);
    }

    @Test
    void twoSpotsOnTheStartLineAreOne() {
        Outlook outlook = after(Setting.BENCH, AB, labelled(25, 0.1, 0.14), seen(2, Set.of(), Reading.atStart(0.03)));
        assertEquals(AB, guess(outlook, 0));
        assertTrue(
                probability(outlook, 0, "A", "B") > 0.8,
                outlook.knowledge().guesses().toString());
    }

    @Test
    void probabilitiesOfASpotSumToOneUnlessWaysWereLeftOut() {
        Outlook outlook = after(Setting.AUTOMATED, AB, labelled(10, 0.15, 0.22), seen(25, 0.34, 0.42));
        for (SpotGuess guess : outlook.knowledge().guesses()) {
            double sum = guess.possibilities().stream()
                    .mapToDouble(SpotGuess.Possibility::probability)
                    .sum();
            assertEquals(outlook.knowledge().matched(), sum, 1e-9);
        }
        assertEquals(1, outlook.knowledge().matched(), 0.01);
        List<String> many = List.of("A", "B", "C", "D", "E", "F", "G");
        Map<String, Double> alike = Map.of("A", 0.2, "B", 0.2, "C", 0.2, "D", 0.2, "E", 0.2, "F", 0.2, "G", 0.2);
        Outlook hopeless = after(
                Setting.AUTOMATED,
                many,
                Plates.run(Plates.ACETATE, 10, alike),
                seen(20, 0.30, 0.31, 0.32, 0.33, 0.34, 0.35, 0.36));
        assertTrue(hopeless.knowledge().matched() < 0.5, "so many ways cannot all count");
    }

    @Test
    void inAnotherPairTheyCountForAnAlternativeToo() {
        List<PlateRun> runs = List.of(labelled(10, 0.1, 0.3), seen(25, 0.25, 0.52));
        Outlook there = Plates.outlook(Plates.METHANOL, Setting.BENCH, AB, runs);
        Outlook labelled = Plates.outlook(
                Plates.METHANOL, Setting.BENCH, AB, List.of(labelled(10, 0.1, 0.3), labelled(25, 0.25, 0.52)));
        for (int spot = 0; spot < 2; spot++) {
            assertEquals(labelled.rf(spot, 2), there.rf(spot, 2), 0.02);
        }
    }

    // Labelled in another pair, the spots have their names: A, which runs high there, is no longer the lower one here.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void labelsInAnotherPairTellThemApart(Setting setting) {
        PlateRun there = Plates.run(Plates.METHANOL, 2, Map.of("A", 0.8, "B", 0.15));
        Outlook outlook = after(setting, AB, there, seen(25, 0.1, 0.6));
        assertTrue(probability(outlook, 0, "B") > probability(outlook, 0, "A"));
        assertTrue(probability(outlook, 1, "A") > 0.5);
        assertEquals(List.of("A"), guess(after(setting, AB, seen(25, 0.1, 0.6)), 0));
    }
}
