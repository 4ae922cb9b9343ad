package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Pairs without measurements")
class TheoryPairsTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    private static final MeasuredPairs MEASURED = MeasuredPairs.builtIn(CATALOGUE);
    private static final TheoryStrength THEORY = MEASURED.theory().orElseThrow();
    private static final TheoryPairs PAIRS = TheoryPairs.of(CATALOGUE, MEASURED, THEORY);

    private static Optional<TheoryPair> find(String weak, String strong) {
        return PAIRS.find(Sorbent.SILICA, CATALOGUE.solvent(weak), CATALOGUE.solvent(strong));
    }

    private static List<TheoryPair> all() {
        List<TheoryPair> all = new ArrayList<>();
        for (Solvent weak : CATALOGUE.solvents()) {
            for (Solvent strong : CATALOGUE.solvents()) {
                PAIRS.find(Sorbent.SILICA, weak, strong).ifPresent(all::add);
            }
        }
        return all;
    }

    // Classes by Snyder, Kirkland and Dolan 2010, Fig. 8.15 (read); the strength of ethanol is from memory, confidence
    // L.
    @ParameterizedTest(name = "{0}/{1}: {2}")
    @CsvSource({
        "hexane, acetone, alkane-localizing, hexane-ethyl-acetate, 5",
        "hexane, MTBE, alkane-localizing, hexane-ethyl-acetate, 5",
        "hexane, THF, alkane-localizing, hexane-ethyl-acetate, 5",
        "heptane, acetone, alkane-localizing, hexane-ethyl-acetate, 5",
        "heptane, MTBE, alkane-localizing, hexane-ethyl-acetate, 5",
        "petroleum ether, acetone, alkane-localizing, hexane-ethyl-acetate, 5",
        "hexane, dichloromethane, other, hexane-ethyl-acetate, 0",
        "heptane, dichloromethane, other, hexane-ethyl-acetate, 0",
        "toluene, ethyl acetate, other, hexane-ethyl-acetate, 5",
        "dichloromethane, ethyl acetate, other, hexane-ethyl-acetate, 5",
        "hexane, dioxane, alcohol, hexane-ethyl-acetate, 5",
        "heptane, ethyl acetate with ethanol 3:1, alcohol, dichloromethane-methanol, 5",
        "hexane, EtOAc/EtOH 3:1, alcohol, dichloromethane-methanol, 5",
        "ethyl acetate, methanol, alcohol, dichloromethane-methanol, 1",
        "dichloromethane, 2-propanol, alcohol, dichloromethane-methanol, 1",
        "ethyl acetate, ethanol, alcohol, dichloromethane-methanol, 1",
        "hexane, 2-propanol, alcohol, dichloromethane-methanol, 5",
        "hexane, ethanol, alcohol, dichloromethane-methanol, 5",
    })
    void aPairIsMadeOfItsKind(String weak, String strong, String kind, String base, double from) {
        TheoryPair pair = find(weak, strong).orElseThrow();
        TheoryCheck check = THEORY.check(TheoryKind.byId(kind).orElseThrow());
        assertEquals("silica-" + base, pair.base());
        assertEquals(check.deviationC(), pair.deviationC());
        assertEquals(check.deviationS(), pair.deviationS());
        assertEquals(
                kind.equals("alcohol") ? "guess" : "theory", pair.pair().basis().id());
        assertEquals(from, pair.pair().trustedFrom());
        assertEquals(
                base.equals("dichloromethane-methanol") ? 20 : 100, pair.pair().trustedTo());
        assertEquals(CATALOGUE.solvent(weak), pair.pair().weak());
        assertEquals(CATALOGUE.solvent(strong), pair.pair().strong());
    }

    @ParameterizedTest(name = "{0}/{1}: {2}")
    @CsvSource({
        "hexane, ethyl acetate, measured",
        "heptane, ethyl acetate, measured by what it stands in for",
        "petroleum ether, diethyl ether, measured by what it stands in for",
        "dichloromethane, methanol, measured",
        "hexane, acetonitrile, not miscible",
        "heptane, methanol, miscible in part",
        "pentane, hexane, one alkane in another",
        "ethyl acetate, hexane, wrong order",
        "methanol, acetone, wrong order",
        "acetone, acetone, one solvent",
        "acetone, THF, equally strong",
        "hexane, diisopropyl ether, no strength in that series",
        "hexane, triethylamine, no strength on silica",
        "dichloromethane, acetic acid, no strength on silica",
    })
    void noPairIsMade(String weak, String strong, String why) {
        assertEquals(Optional.empty(), find(weak, strong), why);
    }

    @Test
    void noneIsMadeOnAlumina() {
        assertEquals(
                Optional.empty(),
                PAIRS.find(Sorbent.ALUMINA, CATALOGUE.solvent("hexane"), CATALOGUE.solvent("acetone")));
    }

    @Test
    void whereTheUsualBaseWasNotMeasuredTheNextOneLendsItsCurve() {
        TheoryPairs few = TheoryPairs.of(CATALOGUE, MEASURED.without("silica-dichloromethane-methanol"), THEORY);
        TheoryPair alcohol = few.find("silica-dichloromethane-methanol").orElseThrow();
        assertEquals("silica-hexane-ethyl-acetate", alcohol.base());
        assertEquals(
                "silica-hexane-diethyl-ether",
                TheoryPairs.of(CATALOGUE, MEASURED.without("silica-hexane-ethyl-acetate"), THEORY)
                        .find("silica-hexane-acetone")
                        .orElseThrow()
                        .base());
        TheoryPairs none = TheoryPairs.of(CATALOGUE, new MeasuredPairs(List.of()), THEORY);
        assertTrue(none.find("silica-hexane-acetone").isEmpty());
    }

    @Test
    void aPairIsFoundByItsIdAndMadeOnce() {
        TheoryPair pair = PAIRS.find("silica-hexane-acetone").orElseThrow();
        assertEquals("silica-hexane-acetone", pair.pair().id());
        assertSame(pair, find("hexane", "acetone").orElseThrow());
        assertEquals(Optional.empty(), PAIRS.find("silica-hexane-water"));
        assertEquals(Optional.empty(), PAIRS.find("alumina-hexane-acetone"));
        assertEquals(Optional.empty(), PAIRS.find("silica-hexane-ethyl-acetate"));
    }

    @Test
    void heptaneHasNumbersOfItsOwnAndPetroleumEtherThoseOfHexane() {
        List<Double> hexane = find("hexane", "acetone").orElseThrow().pair().strength();
        assertNotEquals(hexane, find("heptane", "acetone").orElseThrow().pair().strength());
        assertEquals(
                hexane, find("petroleum ether", "acetone").orElseThrow().pair().strength());
    }

    @Test
    void aStrengthThatIsUncertainMakesAGuess() {
        assertEquals(
                PairBasis.GUESS, find("acetone", "ethanol").orElseThrow().pair().basis());
    }

    @Test
    void noCurveFallsAndEveryNumberIsOneOfACurve() {
        List<TheoryPair> all = all();
        assertTrue(all.size() > 60, all.size() + " pairs");
        for (TheoryPair each : all) {
            PlatePair pair = each.pair();
            assertEquals(0, pair.percentStrong().get(0), pair.id());
            assertEquals(100, pair.percentStrong().get(pair.percentStrong().size() - 1), pair.id());
            for (int i = 0; i < pair.percentStrong().size(); i++) {
                String place = pair.id() + " at " + pair.percentStrong().get(i);
                assertTrue(i == 0 || pair.strength().get(i) >= pair.strength().get(i - 1), place);
                assertTrue(Math.abs(pair.strength().get(i)) < 15, place);
                assertTrue(pair.hold().get(i) > 1 - 1e-9 && pair.hold().get(i) < 2, place);
                assertTrue(pair.early().get(i) >= 0 && pair.early().get(i) < 1, place);
                assertTrue(pair.noiseScale().get(i) > 0.01 && pair.noiseScale().get(i) < 0.2, place);
                assertTrue(pair.strengthError().get(i) > 0, place);
            }
        }
    }

    // Law of variances: of two things that have nothing to do with each other the variances add.
    @Test
    void whatCompoundsAreLikeIsWiderByTheDeviations() {
        TheoryPair pair = find("hexane", "dichloromethane").orElseThrow();
        List<PlatePair.Bell> base = MEASURED.pairs().get(0).prior().bells();
        List<PlatePair.Bell> wider = pair.pair().prior().bells();
        assertEquals(base.size(), wider.size());
        for (int i = 0; i < base.size(); i++) {
            PlatePair.Bell before = base.get(i);
            PlatePair.Bell after = wider.get(i);
            assertEquals(before.c(), after.c());
            assertEquals(before.covarianceCS(), after.covarianceCS());
            assertEquals(Math.pow(pair.deviationC(), 2), after.varianceC() - before.varianceC(), 1e-9);
            assertEquals(Math.pow(pair.deviationS(), 2), after.varianceS() - before.varianceS(), 1e-9);
            assertEquals(before.varianceT(), after.varianceT());
        }
    }

    @Test
    void compoundsOfOneSStayOfOneS() {
        PlatePair acetate = MEASURED.pairs().get(0);
        PlatePair.Bell one = new PlatePair.Bell(1, 0, 1, 0, 2, 0, 0, 0, 0, 0);
        PlatePair alike = withTraits(acetate, new PlatePair.Traits(List.of(one)));
        TheoryPairs pairs = TheoryPairs.of(CATALOGUE, new MeasuredPairs(List.of(alike)), THEORY);
        PlatePair.Bell found = pairs.find("silica-hexane-acetone")
                .orElseThrow()
                .pair()
                .prior()
                .bells()
                .get(0);
        assertEquals(0, found.varianceS());
        assertTrue(found.varianceC() > 2);
    }

    @Test
    void aPairNamesTheTablesOfItsStrengthsAndTheMeasurementsOfItsBase() {
        PlatePair acetone = find("hexane", "acetone").orElseThrow().pair();
        assertEquals(
                List.of("Snyder1983", "Sadek2004", "Xu2022", "XuProtocol2022"),
                acetone.provenance().sources());
        assertTrue(
                acetone.provenance().command().startsWith("made from published strengths (silica newer, activity 0."),
                acetone.provenance().command());
        for (TheoryPair each : all()) {
            assertTrue(CATALOGUE
                    .sources()
                    .keySet()
                    .containsAll(each.pair().provenance().sources()));
        }
    }

    @Test
    void aKindWithoutACheckIsRefused() {
        List<TheoryCheck> two = THEORY.checks().subList(0, 2);
        assertThrows(
                IllegalArgumentException.class,
                () -> new TheoryStrength(StrengthSeries.NEWER, THEORY.activity(), THEORY.slope(), two));
    }

    private static PlatePair withTraits(PlatePair pair, PlatePair.Traits traits) {
        return new PlatePair(
                pair.basis(),
                pair.sorbent(),
                pair.weak(),
                pair.strong(),
                pair.trustedFrom(),
                pair.trustedTo(),
                pair.percentStrong(),
                pair.strength(),
                pair.strengthError(),
                pair.hold(),
                pair.early(),
                pair.noiseScale(),
                pair.noiseLeftAtLines(),
                pair.atLines(),
                pair.stretchStart(),
                pair.stretchFront(),
                traits,
                pair.compounds(),
                pair.readings(),
                pair.residual(),
                pair.provenance());
    }
}
