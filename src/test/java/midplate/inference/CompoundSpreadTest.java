package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import midplate.catalogue.PlatePair;
import midplate.catalogue.PlatePair.Bell;
import midplate.inference.SimulatedPair.Compound;
import midplate.inference.TraitGrid.Trait;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Invented compounds, read at all shares; the eluents are taken to be known, so that only the spread is fitted. */
@DisplayName("The spread of compounds")
class CompoundSpreadTest {
    private static final SimulatedPair TRUTH = SimulatedPair.USUAL;
    private static final TraitGrid GRID = TraitGrid.spots(Trait.OWN, Trait.OWN);

    private static List<Compound> around(int count, double c, double s, double t, double wide, Random random) {
        return IntStream.range(0, count)
                .mapToObj(i -> new Compound(
                        c + wide * random.nextGaussian(),
                        s + 0.2 * wide * random.nextGaussian(),
                        t + wide * random.nextGaussian()))
                .toList();
    }

    private static double mean(List<Compound> compounds, ToDoubleFunction<Compound> quantity) {
        return compounds.stream().mapToDouble(quantity).average().orElseThrow();
    }

    private static NormalSpread normal(List<Compound> compounds) {
        double c = mean(compounds, Compound::c);
        double s = mean(compounds, Compound::s);
        return new NormalSpread(
                c,
                s,
                mean(compounds, each -> (each.c() - c) * (each.c() - c)),
                mean(compounds, each -> (each.c() - c) * (each.s() - s)),
                mean(compounds, each -> (each.s() - s) * (each.s() - s)));
    }

    private static PlatePair.Traits freed(List<Compound> compounds, double[][] rf) {
        Climb[] climbs = IntStream.range(0, TRUTH.percents().length)
                .mapToObj(j -> new Climb(TRUTH.hold()[j], TRUTH.strength()[j], TRUTH.early()[j]))
                .toArray(Climb[]::new);
        PlateShape shape = new PlateShape(TRUTH.leftAtLines(), new Stretch(TRUTH.start(), TRUTH.front()));
        return CompoundSpread.freed(
                GRID, normal(compounds), FitTables.of(GRID, climbs, TRUTH.scales(), shape, 0.005), rf);
    }

    private static PlatePair.Traits freed(List<Compound> compounds, Random random) {
        return freed(compounds, TRUTH.table(compounds, random));
    }

    private static List<Compound> twoClasses(Random random) {
        List<Compound> both = new ArrayList<>(around(40, -1, 0.8, -1, 0.25, random));
        both.addAll(around(40, 1.6, 1.25, 1, 0.25, random));
        return both;
    }

    @Test
    void twoClassesMakeTwoHeaps() {
        Random random = new Random(1);
        double[] weights =
                new Bells(GRID).summed(freed(twoClasses(random), random).bells());
        double[] density = new double[GRID.cCount()];
        for (int node = 0; node < GRID.size(); node++) {
            density[GRID.cOf(node)] += weights[node];
        }
        assertEquals(1, Arrays.stream(density).sum(), 1e-9);
        double between = density[103];
        assertTrue(
                density[90] > 4 * between && density[116] > 4 * between,
                "c of −1, 0.3 and 1.6: " + density[90] + ", " + between + ", " + density[116]);
    }

    // Where t does not show (25 %, L = 0, G = 0) the reading tells c alone; the class tells the rest.
    @Test
    void aReadingThatPlacesACompoundInAClassSaysItsOtherTraits() {
        Random random = new Random(2);
        PlateModels models = PlateModels.of(List.of(TRUTH.measured(freed(twoClasses(random), random))));
        double[] s = new double[2];
        double[] t = new double[2];
        double[] read = {1 / (1 + Math.exp(1)), 1 / (1 + Math.exp(-1.6))};
        for (int i = 0; i < 2; i++) {
            PlateRun run = Plates.run(Plates.ACETATE, 25, Map.of("A", read[i]));
            TraitCloud cloud = models.learn(Plates.ACETATE, Setting.AUTOMATED, List.of("A"), List.of(run))
                    .scenarios()
                    .get(0)
                    .spots()
                    .get(0);
            s[i] = cloud.meanS();
            for (int point = 0; point < cloud.size(); point++) {
                t[i] += cloud.weight(point) * cloud.t(point);
            }
        }
        assertEquals(0.8, s[0], 0.04);
        assertEquals(1.25, s[1], 0.04);
        // the readings at two shares leave t uncertain, so a standard normal spread draws it towards 0
        assertTrue(t[0] > -1.1 && t[0] < -0.4, "t of the first class " + t[0]);
        assertTrue(t[1] > 0.4 && t[1] < 1.1, "t of the second class " + t[1]);
    }

    /** Mean share of a curve's own variance of c in that of all compounds. */
    private static double width(PlatePair.Traits traits, List<Compound> compounds) {
        return traits.bells().stream()
                        .filter(bell -> bell.weight() < 0.0099 || bell.weight() > 0.0101)
                        .mapToDouble(Bell::varianceC)
                        .average()
                        .orElseThrow()
                / normal(compounds).varianceC();
    }

    // By design: where compounds crowd in tight classes the next one is very like one of them.
    @Test
    void theCurvesAreNarrowerWhereCompoundsCrowd() {
        Random random = new Random(3);
        List<Compound> crowded = new ArrayList<>();
        for (double c : new double[] {-2.5, -1.2, 0.1, 1.4, 2.7}) {
            crowded.addAll(around(12, c, 1 + 0.12 * Math.sin(5 * c), Math.cos(3 * c), 0.05, random));
        }
        List<Compound> heap = TRUTH.compounds(60, random);
        double narrow = width(freed(crowded, random), crowded);
        double wide = width(freed(heap, random), heap);
        assertTrue(narrow < 0.6 * wide, narrow + " against " + wide);
    }

    // Own algebra: a mixture varies by its middles and by its curves; the compounds by what is read of each and by what
    // is not known.
    @ParameterizedTest
    @ValueSource(longs = {4, 5})
    void theCurvesTogetherVaryAsTheCompoundsDo(long seed) {
        Random random = new Random(seed);
        List<Compound> few = new ArrayList<>(around(4, -1, 0.9, -1, 0.3, random));
        few.addAll(around(3, 1, 1.2, 1, 0.3, random));
        double[][] rf = TRUTH.table(few, random);
        PlainSpread plain = new PlainSpread(TRUTH, GRID, normal(few), rf);
        List<Bell> bells = freed(few, rf).bells().stream()
                .filter(bell -> bell.weight() > 0.01)
                .toList();
        assertEquals(few.size(), bells.size());
        assertEquals(plain.variance(0), variance(bells, Bell::c, Bell::varianceC), 1e-3 * plain.variance(0));
        assertEquals(plain.variance(1), variance(bells, Bell::s, Bell::varianceS), 1e-3 * plain.variance(1));
        assertEquals(plain.variance(2), variance(bells, Bell::t, Bell::varianceT), 1e-3 * plain.variance(2));
    }

    private static double variance(List<Bell> bells, ToDoubleFunction<Bell> middle, ToDoubleFunction<Bell> own) {
        double mean = bells.stream().mapToDouble(middle).average().orElseThrow();
        return bells.stream()
                .mapToDouble(bell -> own.applyAsDouble(bell)
                        + (middle.applyAsDouble(bell) - mean) * (middle.applyAsDouble(bell) - mean))
                .average()
                .orElseThrow();
    }

    // Reference: the sums worked out plainly, with Student's t of Apache Commons Math.
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void theWideningIsTheOneThatMakesEachCompoundLikeliestUnderTheOthers(long seed) {
        Random random = new Random(seed);
        List<Compound> few = new ArrayList<>(around(4, -1, 0.9, -1, seed == 12 ? 1.5 : 0.1, random));
        few.addAll(around(3, 1, 1.2, 1, seed == 13 ? 1.5 : 0.1, random));
        double[][] rf = TRUTH.table(few, random);
        PlainSpread plain = new PlainSpread(TRUTH, GRID, normal(few), rf);
        List<double[]> expected = plain.likeliest();
        List<Bell> bells = freed(few, rf).bells();
        assertEquals(expected.size() + 1, bells.size(), "one for each compound and the wide one");
        for (double[] curve : expected) {
            Bell bell = bells.stream()
                    .min(java.util.Comparator.comparingDouble(each -> Math.abs(each.c() - curve[0])))
                    .orElseThrow();
            assertEquals(0.99 / few.size(), bell.weight(), 1e-12);
            assertEquals(curve[0], bell.c(), 1e-4);
            assertEquals(curve[1], bell.s(), 1e-4);
            assertEquals(curve[2], bell.t(), 1e-4);
            assertEquals(1, bell.varianceC() / curve[3], 1e-3, "widened " + plain.chosen());
            assertEquals(1, bell.varianceS() / curve[4], 1e-3);
            assertEquals(1, bell.varianceT() / curve[5], 1e-3);
        }
    }
}
