package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import midplate.catalogue.PairBasis;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.StrengthSeries;
import midplate.catalogue.TheoryCheck;
import midplate.catalogue.TheoryKind;
import midplate.catalogue.TheoryStrength;
import midplate.chemistry.EluentComponent;
import midplate.chemistry.Sorbent;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Three invented pairs in which η of every compound follows the published law exactly, or misses it by a known amount: the truth is
 * {@code η = c + s·κ·(ε − ε₀)}, ε by Snyder's law written anew.
 */
@DisplayName("Published strengths fitted to measured pairs")
class TheoryFitTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    private static final double ACTIVITY = 0.66;
    private static final double SLOPE = 8;
    private static final int COMPOUNDS = 60;
    private static final double[] ACETATE = {0, 1, 2, 4, 7, 10, 14, 18, 22, 27, 33, 40, 50, 60, 75, 100};
    private static final double[] ETHER = {33, 40, 50};
    private static final double[] METHANOL = {0, 1, 2, 3, 5, 9};

    private final List<Series> series = IntStream.range(0, COMPOUNDS)
            .mapToObj(i -> new Series(i, "C".repeat(i + 1)))
            .toList();
    private final double[] c = new double[COMPOUNDS];
    private final double[] s = new double[COMPOUNDS];

    TheoryFitTest() {
        Random random = new Random(11);
        for (int i = 0; i < COMPOUNDS; i++) {
            c[i] = 1.2 * random.nextGaussian();
            s[i] = 1 + 0.15 * random.nextGaussian();
        }
    }

    private static double epsilon(String weak, String strong, double percent) {
        EluentComponent a = component(weak);
        EluentComponent b = component(strong);
        double moles = percent / b.molarVolume();
        double share = moles / (moles + (100 - percent) / a.molarVolume());
        double scale = ACTIVITY * b.molecularArea();
        return a.strength()
                + Math.log10(share * Math.pow(10, scale * (b.strength() - a.strength())) + 1 - share) / scale;
    }

    private static EluentComponent component(String solvent) {
        return CATALOGUE
                .component(CATALOGUE.solvent(solvent), Sorbent.SILICA, StrengthSeries.NEWER)
                .orElseThrow();
    }

    /** c and s of the compounds in one pair, which miss the law by so much. */
    private record Missed(ToDoubleFunction<Integer> c, double s) {
        static final Missed NOTHING = new Missed(i -> 0, 0);
    }

    /** A pair whose G is κ·(ε − ε₀), ε₀ that of its middle share, so that c there is c + s·κ·(ε₀ − 0.25). */
    private TheoryFit.Told told(String weak, String strong, double[] percents, Missed missed) {
        double origin = epsilon(weak, strong, percents[percents.length / 2]);
        List<Double> strength = Arrays.stream(percents)
                .mapToObj(percent -> SLOPE * (epsilon(weak, strong, percent) - origin))
                .toList();
        List<Double> shares = Arrays.stream(percents).boxed().toList();
        List<Double> ones = Collections.nCopies(percents.length, 1.0);
        List<Double> none = Collections.nCopies(percents.length, 0.0);
        PlatePair pair = new PlatePair(
                PairBasis.MEASURED,
                Sorbent.SILICA,
                CATALOGUE.solvent(weak),
                CATALOGUE.solvent(strong),
                percents[0],
                percents[percents.length - 1],
                shares,
                strength,
                none,
                ones,
                none,
                Collections.nCopies(percents.length, 0.03),
                0.1,
                0.005,
                0.01,
                0.01,
                new PlatePair.Traits(List.of(new PlatePair.Bell(1, 0, 1, 0, 1, 0, 0, 0.04, 0, 0))),
                COMPOUNDS,
                COMPOUNDS * percents.length,
                0.01,
                new PlatePair.Provenance(List.of(), "", "", "invented"));
        List<PairFit.Estimate> estimates = new ArrayList<>();
        for (int i = 0; i < COMPOUNDS; i++) {
            double at = SLOPE * (origin - 0.25);
            estimates.add(new PairFit.Estimate(
                    c[i] + s[i] * at + missed.c().applyAsDouble(i), s[i] + missed.s(), 0.01, 0.01));
        }
        return TheoryFit.Told.of(pair, series, estimates);
    }

    private TheoryStrength fit(Missed ether, Missed methanol) {
        return TheoryFit.fit(
                        CATALOGUE,
                        List.of(
                                told("hexane", "ethyl-acetate", ACETATE, Missed.NOTHING),
                                told("hexane", "diethyl-ether", ETHER, ether),
                                told("dichloromethane", "methanol", METHANOL, methanol)))
                .orElseThrow();
    }

    @Test
    void pairsThatObeyTheLawGiveItBackAndAreForetoldWithoutError() {
        TheoryStrength found = fit(Missed.NOTHING, Missed.NOTHING);
        assertEquals(ACTIVITY, found.activity(), 1e-9);
        // the average s of the compounds drawn, within 0.02 of 1, is part of the slope
        assertEquals(SLOPE * Arrays.stream(s).average().orElseThrow(), found.slope(), 0.05);
        for (TheoryCheck check : found.checks()) {
            assertEquals(0, check.bias(), 0.05, check.toString());
            assertEquals(0, check.scatter(), 0.05, check.toString());
            assertTrue(check.deviationC() < 0.09, check.toString());
            assertTrue(check.deviationS() < 0.09, check.toString());
        }
    }

    // Own algebra: ±0.3 by turns around −0.4 has the mean −0.4, the standard deviation 0.3 and the root mean square
    // 0.5.
    @Test
    void whatCompoundsMissTheLawByIsFound() {
        TheoryStrength found = fit(new Missed(i -> -0.4 + (i % 2 == 0 ? 0.3 : -0.3), 0), Missed.NOTHING);
        TheoryCheck check = found.check(TheoryKind.ALKANE_LOCALIZING);
        assertEquals("silica-hexane-diethyl-ether", check.pair());
        assertEquals(List.of(33.0, 40.0, 50.0), check.percents());
        // η of the average compound is fitted with what it is missed by, which moves α' and so the other side of the
        // balance a little
        assertEquals(-0.4, check.bias(), 0.12);
        assertEquals(0.3, check.scatter(), 0.05);
        assertEquals(Math.hypot(check.bias(), check.scatter()), check.deviationC(), 0.03);
    }

    // Own algebra: with α' and κ as they are, η changes with G by what s is missed by, in every compound alike.
    @Test
    void anSThatIsMissedIsFoundAndCountsForTheShareAlone() {
        TheoryStrength found = fit(Missed.NOTHING, new Missed(i -> 0, 0.3));
        TheoryCheck methanol = found.check(TheoryKind.ALCOHOL);
        assertEquals(List.of(1.0, 2.0, 3.0, 5.0, 9.0), methanol.percents());
        assertEquals(0.3, methanol.deviationS(), 0.1);
        TheoryCheck alone = found.check(TheoryKind.OTHER);
        assertEquals(List.of(0.0), alone.percents());
        assertEquals(methanol.deviationS(), alone.deviationS(), "one share does not tell");
    }

    // Own algebra: spots at a line in the pair foretold do not count, however wrong they are foretold; wherever else
    // they are, they do.
    @Test
    void onlySpotsForetoldAwayFromTheLinesCount() {
        Foretold foretold = new Foretold();
        foretold.add(new double[] {0, 1}, new double[] {-3.1, 2.9}, new double[] {5, 3.9}, new double[] {7, 0.5});
        foretold.add(new double[] {0, 1}, new double[] {-1, 0}, new double[] {-2, -9}, new double[] {1, 3});
        foretold.add(new double[] {0, 1}, new double[] {-4, -3}, new double[] {0, 0}, new double[] {7, 7});
        assertEquals(2, foretold.compounds());
        assertEquals((1 - 5) / 2.0, foretold.bias(), 1e-12);
        assertEquals(Math.sqrt(18 - (0.5 + 2) / 2), foretold.scatter(), 1e-12);
        assertEquals(Math.sqrt((1 + 1 + 81) / 3.0 - (0.5 + 1 + 3) / 3), foretold.deviationC(), 1e-12);
        assertEquals(8, foretold.deviationS(), 1e-12);
    }

    @Test
    void thereIsNoneWithoutOneOfThePairs() {
        assertTrue(TheoryFit.fit(CATALOGUE, List.of(told("hexane", "ethyl-acetate", ACETATE, Missed.NOTHING)))
                .isEmpty());
    }

    @Test
    void thereIsNoneWhereTheWeakSolventAloneWasNotMeasured() {
        double[] without = Arrays.copyOfRange(METHANOL, 1, METHANOL.length);
        assertTrue(TheoryFit.fit(
                        CATALOGUE,
                        List.of(
                                told("hexane", "ethyl-acetate", ACETATE, Missed.NOTHING),
                                told("hexane", "diethyl-ether", ETHER, Missed.NOTHING),
                                told("dichloromethane", "methanol", without, Missed.NOTHING)))
                .isEmpty());
    }

    @Test
    void thereIsNoneWithFewerThanFiveCompoundsInCommon() {
        TheoryFit.Told ether = told("hexane", "diethyl-ether", ETHER, Missed.NOTHING);
        List<PairFit.Estimate> four = List.copyOf(ether.compounds().values()).subList(0, 4);
        TheoryFit.Told few = TheoryFit.Told.of(ether.pair(), series.subList(0, 4), four);
        assertTrue(TheoryFit.fit(
                        CATALOGUE,
                        List.of(
                                told("hexane", "ethyl-acetate", ACETATE, Missed.NOTHING),
                                few,
                                told("dichloromethane", "methanol", METHANOL, Missed.NOTHING)))
                .isEmpty());
    }
}
