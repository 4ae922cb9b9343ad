package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import midplate.plate.Reading;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a round of plates is worth, beside what can be worked out by hand and beside a simulation with the program's own learning. */
@DisplayName("A round of plates")
class PreposteriorAnalysisTest {
    private static final List<Double> NEXT = List.of(0.0, 1.0, 2.0, 5.0, 10.0, 16.7, 25.0, 33.3, 50.0, 75.0, 100.0);
    private static final PreposteriorAnalysis.Draws DRAWS = new PreposteriorAnalysis.Draws(3000, 5);
    /** So many standard errors are more than chance: 1 in 16 000. */
    private static final double FAR = 4;

    private static PreposteriorAnalysis analysis(Outlook outlook, Parting parting, PreposteriorAnalysis.Draws draws) {
        return outlook.preposterior(parting, NEXT, draws);
    }

    private static RoundValue value(Outlook outlook, Double... round) {
        return analysis(outlook, Parting.NONE, DRAWS).value(List.of(round));
    }

    private static double best(Outlook outlook, List<Integer> spots) {
        return NEXT.stream()
                .mapToDouble(percent -> outlook.chance(percent, spots))
                .max()
                .orElseThrow();
    }

    /** Spots of which c is known and s is 1. */
    private static Outlook known(Setting setting, double... c) {
        PairModel model = Plates.BUILT_IN.find(Plates.ACETATE).orElseThrow();
        TraitGrid grid = TraitGrid.spots(TraitGrid.Trait.ALIKE, TraitGrid.Trait.ALIKE);
        List<TraitPrior> priors = new ArrayList<>();
        List<List<Trial>> none = new ArrayList<>();
        for (double each : c) {
            double[] density = new double[grid.cCount()];
            density[(int) Math.round((each - grid.cAt(0)) / grid.cStep())] = 1;
            priors.add(TraitPrior.of(grid, density));
            none.add(List.of());
        }
        Knowledge knowledge = Knowledge.from(model, PlateScatter.of(setting), 0, none, priors);
        return Plates.BUILT_IN.outlook(knowledge, setting, 0.2, 0.8);
    }

    // By hand: plates of known compounds differ by their errors alone, so V = q + (1 − q)·q' with q' the best chance.
    @ParameterizedTest
    @EnumSource(Setting.class)
    void ofKnownSpotsIsWorthItsChanceAndTheBestOneAfterIt(Setting setting) {
        for (Outlook outlook : List.of(known(setting, -1.4), known(setting, 0.9, -1.2))) {
            List<Integer> spots =
                    IntStream.range(0, outlook.knowledge().spots()).boxed().toList();
            double next = best(outlook, spots);
            for (double percent : new double[] {10, 25, 100}) {
                double now = outlook.chance(percent, spots);
                RoundValue value = value(outlook, percent);
                double error = Math.sqrt(now * (1 - now) / DRAWS.samples());
                assertEquals(now, value.now(), FAR * error + 1e-9, setting + " at " + percent);
                assertEquals(
                        now + (1 - now) * next,
                        value.chance(),
                        FAR * error * (1 - next) + 1e-9,
                        setting + " at " + percent);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Setting.class)
    void ofNoPlatesIsWorthTheBestChance(Setting setting) {
        Outlook outlook = Plates.outlook(Plates.ACETATE, setting, List.of("A", "B"), List.of());
        RoundValue value = value(outlook);
        assertEquals(best(outlook, List.of(0, 1)), value.chance(), FAR * value.standardError());
        assertEquals(0, value.now());
    }

    @ParameterizedTest
    @CsvSource({"BENCH, 10, 50", "AUTOMATED, 2, 25", "CLASS, 25, 100"})
    void isWorthWhatTheProgramsOwnLearningMakesOfIt(Setting setting, double one, double other) {
        Outlook outlook = Plates.outlook(Plates.ACETATE, setting, List.of("A", "B"), List.of());
        RoundValue value = value(outlook, one, other);
        BruteForce brute = new BruteForce(outlook, setting, 20_270_101);
        double[] each = IntStream.range(0, 250)
                .mapToDouble(k -> brute.sample(new double[] {one, other}))
                .toArray();
        RoundValue slow = new RoundValue(each, 0);
        assertEquals(
                slow.chance(),
                value.chance(),
                FAR * Math.hypot(slow.standardError(), value.standardError()),
                setting.id());
    }

    @Test
    void ofMorePlatesMeetsTheAimAtLeastAsOftenAtOnce() {
        Outlook outlook = Plates.outlook(Plates.ACETATE, Setting.BENCH, List.of("A", "B"), List.of());
        PreposteriorAnalysis analysis = analysis(outlook, Parting.NONE, DRAWS);
        RoundValue one = analysis.value(List.of(16.7));
        RoundValue two = analysis.value(List.of(16.7, 50.0));
        RoundValue three = analysis.value(List.of(16.7, 50.0, 2.0));
        assertTrue(one.now() <= two.now() && two.now() <= three.now());
        assertTrue(two.above(one) > -2 * two.errorAbove(one), "two " + two.above(one));
        assertTrue(three.above(two) > -2 * three.errorAbove(two), "three " + three.above(two));
    }

    @Test
    void isWorthTheSameOverOtherSamples() {
        Outlook outlook = Plates.outlook(Plates.ACETATE, Setting.BENCH, List.of("A", "B"), List.of());
        RoundValue few = analysis(outlook, Parting.NONE, new PreposteriorAnalysis.Draws(500, 77))
                .value(List.of(10.0, 50.0));
        RoundValue many = value(outlook, 10.0, 50.0);
        assertEquals(many.chance(), few.chance(), FAR * Math.hypot(few.standardError(), many.standardError()));
        assertTrue(few.standardError() > 2 * many.standardError());
    }

    @Test
    void isWorthTheSameInWhateverOrderItIsTyped() {
        PlateRun run = Plates.run(Plates.ACETATE, 5, Map.of("A", 0.03, "B", 0.21, "C", 0.1));
        Outlook outlook = Plates.outlook(Plates.ACETATE, Setting.AUTOMATED, List.of("A", "B", "C"), List.of(run));
        Outlook turned = Plates.outlook(Plates.ACETATE, Setting.AUTOMATED, List.of("C", "A", "B"), List.of(run));
        Parting pair = Parting.of(List.of(new SpotPair(0, 2)));
        Parting pairTurned = Parting.of(List.of(new SpotPair(0, 1)));
        RoundValue value = analysis(outlook, pair, DRAWS).value(List.of(25.0, 50.0));
        RoundValue other = analysis(turned, pairTurned, DRAWS).value(List.of(50.0, 25.0));
        assertEquals(value.chance(), other.chance());
        assertEquals(value.now(), other.now());
    }

    @Test
    void isWorthLessWhereSpotsMustAlsoComeApart() {
        Outlook outlook = Plates.outlook(Plates.ACETATE, Setting.BENCH, List.of("A", "B"), List.of());
        Parting apart = Parting.of(List.of(new SpotPair(0, 1)));
        RoundValue free = value(outlook, 16.7);
        RoundValue value = analysis(outlook, apart, DRAWS).value(List.of(16.7));
        double now = outlook.chance(16.7, List.of(0, 1), apart);
        // the chance of the program is itself within 0.01 of the full sum
        assertEquals(now, value.now(), 0.01 + FAR * Math.sqrt(now * (1 - now) / DRAWS.samples()));
        assertTrue(value.chance() < free.chance() - 0.1, value.chance() + " of " + free.chance());
    }

    @Test
    void needsSamplesAndANextRatio() {
        Outlook outlook = Plates.outlook(Plates.ACETATE, Setting.BENCH, List.of("A"), List.of());
        assertThrows(IllegalArgumentException.class, () -> new PreposteriorAnalysis.Draws(1, 1));
        assertThrows(IllegalArgumentException.class, () -> outlook.preposterior(Parting.NONE, List.of(), DRAWS));
        RoundValue few = analysis(outlook, Parting.NONE, new PreposteriorAnalysis.Draws(2, 1))
                .value(List.of(10.0));
        assertThrows(IllegalArgumentException.class, () -> few.above(value(outlook, 10.0)));
    }

    /** Draws a sample and its plates by plain random numbers, lets the program learn from them, and takes its best chance. */
    private static final class BruteForce {
        private final Outlook outlook;
        private final Setting setting;
        private final Random random;
        private final List<String> names = List.of("A", "B");

        BruteForce(Outlook outlook, Setting setting, long seed) {
            this.outlook = outlook;
            this.setting = setting;
            this.random = new Random(seed);
        }

        double sample(double[] percents) {
            PairModel model = outlook.knowledge().model();
            PlateScatter scatter = PlateScatter.of(setting);
            double[][] traits = {traits(0), traits(1)};
            List<PlateRun> runs = new ArrayList<>();
            boolean met = false;
            for (double percent : percents) {
                double shift = scatter.sharedError() * random.nextGaussian();
                double[] sigma = model.sigma(percent, scatter.readingError());
                Map<String, Reading> readings = new HashMap<>();
                boolean inside = true;
                for (int spot = 0; spot < 2; spot++) {
                    double[] its = traits[spot];
                    int mark = LogitScale.mark(model.climb(percent).eta(its[0], its[1], its[2]) + shift);
                    double read = Math.max(0, Math.min(1, model.rf()[mark] + sigma[mark] * student()));
                    inside &= read >= 0.2 && read <= 0.8;
                    readings.put(names.get(spot), Reading.of(read));
                }
                met |= inside;
                runs.add(new PlateRun(Plates.ACETATE, percent, readings));
            }
            return met ? 1 : best(Plates.outlook(Plates.ACETATE, setting, names, runs), List.of(0, 1));
        }

        private double student() {
            double normal = random.nextGaussian();
            double squares = 0;
            for (int i = 0; i < 5; i++) {
                squares += Math.pow(random.nextGaussian(), 2);
            }
            return normal / Math.sqrt(squares / 5);
        }

        private double[] traits(int spot) {
            TraitCloud cloud = outlook.knowledge().cloud(spot);
            double share = random.nextDouble();
            int point = 0;
            for (double sum = cloud.weight(0); sum < share && point < cloud.size() - 1; ) {
                sum += cloud.weight(++point);
            }
            return new double[] {cloud.c(point), cloud.s(point), cloud.t(point)};
        }
    }
}
