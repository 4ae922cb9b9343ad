package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PairBasis;
import midplate.catalogue.PlatePair;
import midplate.chemistry.Sorbent;
import midplate.plate.Setting;
import midplate.words.Message;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What may take the place of a mixture; all readings are invented. */
@DisplayName("Other eluents")
class OtherEluentsTest {
    private static final String[] WIDE_SHELF = {
        "hexane", "heptane", "toluene", "diethyl ether", "ethyl acetate", "acetone", "dichloromethane", "methanol"
    };

    static Asking touching() {
        return Asking.acetate().spots("A", "B").run(20, Map.of("A", 0.34, "B", 0.37));
    }

    static Replacements others(Asking asking, double percent, OtherRank rank) {
        return Asking.ADVISER.others(asking.question(), new OthersWish(OptionalDouble.of(percent), Optional.of(rank)));
    }

    static OtherEluent of(Replacements found, String weak, String strong) {
        return found.others().stream()
                .filter(other -> names(other).equals(weak + "/" + strong))
                .findFirst()
                .orElseThrow(() -> new AssertionError(
                        found.others().stream().map(OtherEluentsTest::names).toList()));
    }

    static String names(OtherEluent other) {
        return other.weak().id() + "/" + other.strong().id();
    }

    @Test
    void theMiddleOfTheSampleStaysWhereItIs() {
        Replacements found = others(touching(), 20, OtherRank.APART);
        OtherEluent ether = of(found, "hexane", "diethyl-ether");
        Question there = new Question(
                Sorbent.SILICA,
                ether.weak(),
                ether.strong(),
                Optional.empty(),
                List.of("A", "B"),
                touching().question().runs(),
                Window.USUAL,
                Setting.AUTOMATED,
                Glassware.USUAL);
        Forecast forecast = Asking.ADVISER
                .predict(there, List.of(ether.equal().orElseThrow().percentStrong()))
                .get(0);
        assertEquals(
                found.of().rf(),
                forecast.spots().stream()
                        .mapToDouble(SpotForecast::rf)
                        .average()
                        .orElseThrow(),
                0.002);
        assertEquals(
                touching().forecast(20).spots().stream()
                        .mapToDouble(SpotForecast::rf)
                        .average()
                        .orElseThrow(),
                found.of().rf(),
                1e-9);
    }

    @Test
    void theBandHoldsTheShareAndThePouredRatioIsSimple() {
        for (OtherEluent other : others(touching(), 20, OtherRank.APART).others()) {
            other.equal().ifPresent(equal -> {
                assertTrue(equal.low() <= equal.percentStrong() && equal.percentStrong() <= equal.high());
                assertTrue(other.pour().ratio().weak() + other.pour().ratio().strong() <= 201);
            });
            assertEquals(10, other.pour().weakMl() + other.pour().strongMl(), 1e-9);
        }
    }

    // the classes of Snyder, Kirkland and Dolan (2010), Fig. 8.15
    @Test
    void theStrongSolventsAreOfOneClassOrNot() {
        Replacements found = others(touching(), 20, OtherRank.APART);
        assertEquals(
                OtherEluent.Kind.OTHER, of(found, "hexane", "diethyl-ether").kind());
        assertEquals(OtherEluent.Kind.SAME, of(found, "hexane", "acetone").kind());
        assertEquals(
                OtherEluent.Kind.SAME, of(found, "toluene", "ethyl-acetate").kind());
        assertEquals(
                OtherEluent.Kind.OTHER, of(found, "dichloromethane", "methanol").kind());
    }

    @Test
    void whereNoShelfWasToldPairsInCommonUseAreShown() {
        Replacements found = others(touching(), 20, OtherRank.APART);
        assertEquals(7, found.others().size(), "the two that come to pure dichloromethane are one");
        assertEquals(PairBasis.THEORY, of(found, "hexane", "acetone").basis());
        assertTrue(Asking.codes(found.notes()).contains("shelf-untold"));
    }

    @Test
    void ofMoreThanAreWorkedOutThoseThatReachTheStrengthComeFirst() {
        String[] everything = Asking.CATALOGUE.solvents().stream()
                .map(solvent -> solvent.name())
                .toArray(String[]::new);
        Replacements found = others(touching().shelf(everything), 20, OtherRank.SAFETY);
        assertEquals(PairsToOffer.MOST, found.others().size());
        assertTrue(found.others().stream().allMatch(other -> other.equal().isPresent()));
        assertTrue(Asking.codes(found.notes()).contains("more"));
    }

    @Test
    void aPlateInTheOtherPairNarrowsTheBand() {
        double before = of(others(touching(), 20, OtherRank.APART), "hexane", "diethyl-ether")
                .width();
        Asking read = touching().run(Asking.silica("hexane", "ether", 40), Map.of("A", 0.3, "B", 0.36));
        OtherEluent ether = of(others(read, 20, OtherRank.APART), "hexane", "diethyl-ether");
        assertTrue(ether.width() < before / 2, before + " " + ether.width());
        assertTrue(Asking.codes(ether.reasons()).contains("was-run"));
    }

    @Test
    void whatPartsTheTwoClosestSpotsOnAPlateComesFirst() {
        Asking methanol = Asking.acetate()
                .spots("A", "B")
                .run(20, Map.of("A", 0.5, "B", 0.53))
                .run(Asking.silica("dichloromethane", "methanol", 1), Map.of("A", 0.38, "B", 0.64))
                .run(Asking.silica("hexane", "ether", 50), Map.of("A", 0.5, "B", 0.51));
        Replacements found = others(methanol, 20, OtherRank.APART);
        assertTrue(found.of().closest().orElseThrow().chance() < 0.2);
        OtherEluent ether = of(found, "hexane", "diethyl-ether");
        OtherEluent other = of(found, "dichloromethane", "methanol");
        assertTrue(other.closest().orElseThrow().chance() > 0.9, other.closest().toString());
        assertTrue(ether.closest().orElseThrow().chance() < 0.3, ether.closest().toString());
        assertEquals("dichloromethane/methanol", names(found.others().get(0)));
        assertTrue(other.goal() > 0.8 && ether.goal() < 0.3, other.goal() + " " + ether.goal());
    }

    @Test
    void partingOutsideTheWindowIsNoMerit() {
        List<OtherEluent> reached = others(touching(), 20, OtherRank.APART).others().stream()
                .filter(other -> other.equal().isPresent())
                .toList();
        for (OtherEluent other : reached) {
            assertTrue(other.goal() <= other.chance() + 1e-9);
            assertTrue(other.goal() <= other.closest().orElseThrow().chance() + 0.03, names(other));
        }
        for (int i = 1; i < reached.size(); i++) {
            assertTrue(reached.get(i).goal() <= reached.get(i - 1).goal());
        }
    }

    @Test
    void ofThreeSpotsTheTwoClosestAreFollowed() {
        Asking three = Asking.acetate().spots("A", "B", "C").run(20, Map.of("A", 0.2, "B", 0.55, "C", 0.58));
        ClosestSpots closest = others(three, 20, OtherRank.APART).of().closest().orElseThrow();
        assertEquals(Set.of("B", "C"), Set.of(closest.one(), closest.other()));
        assertTrue(closest.gap() > 0.02 && closest.gap() < 0.1, closest.toString());
    }

    @Test
    void twoSpotsOfWhichNothingIsKnownAreFarApartOnAverage() {
        ClosestSpots closest = others(Asking.acetate().spots("A", "B"), 30, OtherRank.APART)
                .of()
                .closest()
                .orElseThrow();
        assertTrue(closest.gap() > 0.15, closest.toString());
    }

    @ParameterizedTest
    @EnumSource
    void thePairAskedAboutIsNeverOfferedAndNothingThatLacksOnTheShelf(OtherRank rank) {
        Set<String> shelf = Set.of(WIDE_SHELF).stream()
                .map(name -> Asking.CATALOGUE.solvent(name).id())
                .collect(Collectors.toSet());
        Replacements found = others(touching().shelf(WIDE_SHELF), 20, rank);
        assertFalse(found.others().isEmpty());
        for (OtherEluent other : found.others()) {
            assertFalse(names(other).equals("hexane/ethyl-acetate"));
            assertTrue(
                    shelf.contains(other.weak().id())
                            && shelf.contains(other.strong().id()),
                    names(other));
        }
        assertTrue(others(touching(), 20, rank).others().stream()
                .noneMatch(other -> names(other).equals("hexane/ethyl-acetate")));
    }

    @Test
    void aShelfWithNothingElseSaysSo() {
        Replacements found = others(touching().shelf("hexane", "ethyl acetate"), 20, OtherRank.APART);
        assertTrue(found.others().isEmpty());
        assertEquals(List.of("shelf-none"), Asking.codes(found.notes()));
    }

    @Test
    void whatIsOnlyAddedToEluentsIsNoSolventOfThem() {
        assertTrue(others(touching().shelf("hexane", "ethyl acetate", "acetic acid", "NEt3"), 20, OtherRank.APART)
                .others()
                .isEmpty());
    }

    @Test
    void forSafetyHeptaneTakesThePlaceOfHexaneAndChlorinatedOnesAndPeroxideFormersComeLast() {
        Replacements found = others(touching(), 20, OtherRank.SAFETY);
        assertTrue(found.others().stream().noneMatch(other -> other.weak().id().equals("hexane")));
        OtherEluent heptane = of(found, "heptane", "ethyl-acetate");
        assertEquals(20, heptane.equal().orElseThrow().percentStrong());
        assertTrue(heptane.equal().get().low() < 20 && heptane.equal().get().high() > 20);
        assertEquals(List.of(), heptane.flags());
        assertTrue(Asking.codes(heptane.reasons()).contains("stand-in"));
        List<OtherEluent> shelf =
                others(touching().shelf(WIDE_SHELF), 20, OtherRank.SAFETY).others();
        boolean avoided = false;
        for (OtherEluent other :
                shelf.stream().filter(each -> each.equal().isPresent()).toList()) {
            boolean now = other.flags().contains(SolventFlag.CHLORINATED)
                    || other.flags().contains(SolventFlag.PEROXIDES);
            assertTrue(now || !avoided, names(other));
            avoided = now;
        }
        assertTrue(avoided);
    }

    @Test
    void forDryingTheLowestBoilingPairComesFirst() {
        List<OtherEluent> all = others(touching().shelf(WIDE_SHELF), 20, OtherRank.DRYING).others().stream()
                .filter(other -> other.equal().isPresent())
                .toList();
        List<OtherEluent> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparingDouble(other -> other.boilingPoint().orElseThrow()));
        assertTrue(all.size() > 1);
        assertEquals(
                sorted.stream().map(other -> other.boilingPoint()).toList(),
                all.stream().map(other -> other.boilingPoint()).toList());
        assertTrue(Asking.codes(all.get(0).reasons()).contains("boils"));
    }

    @Test
    void oneSpotHasNoNeighbourAndTheUsualOrderIsByWhatWasMeasured() {
        Replacements usual = Asking.ADVISER.others(Asking.acetate().question(), OthersWish.USUAL);
        assertEquals(OtherRank.MEASURED, usual.rank());
        assertTrue(usual.of().closest().isEmpty());
        assertEquals(
                OtherRank.APART,
                Asking.ADVISER.others(touching().question(), OthersWish.USUAL).rank());
        assertTrue(Asking.codes(others(Asking.acetate(), 20, OtherRank.APART).notes())
                .contains("one-spot"));
    }

    @Test
    void theMixtureAdvisedIsTakenWhereNoneIsSaid() {
        Advice advice = touching().advice();
        Replacements.Of of =
                Asking.ADVISER.others(touching().question(), OthersWish.USUAL).of();
        assertEquals(advice.ratio(), of.ratio().orElseThrow());
        assertEquals(advice.forecast().chance(), of.chance(), 1e-9);
        assertTrue(others(touching(), 23.1, OtherRank.APART).of().ratio().isEmpty());
    }

    @Test
    void anAdditiveMakesASystemOfItsOwn() {
        List<String> notes = Asking.codes(
                others(touching().with("acetic acid 1 %"), 20, OtherRank.APART).notes());
        assertTrue(notes.contains("additive") && notes.contains("additive-system"), notes.toString());
    }

    @Test
    void laddersRise() {
        Replacements found = others(touching(), 20, OtherRank.APART);
        List<List<Rung>> ladders = new ArrayList<>(List.of(found.ladder()));
        found.others().forEach(other -> ladders.add(other.ladder()));
        for (List<Rung> ladder : ladders) {
            for (int i = 1; i < ladder.size(); i++) {
                assertTrue(ladder.get(i).percentStrong() > ladder.get(i - 1).percentStrong(), ladder.toString());
                assertTrue(ladder.get(i).rf() >= ladder.get(i - 1).rf() - 0.003, ladder.toString());
            }
        }
    }

    /** The pair with ether as if it were theory. */
    private static Adviser withTheory(PairBasis basis) {
        MeasuredPairs curves = MeasuredPairs.builtIn(Asking.CATALOGUE);
        List<PlatePair> pairs = curves.pairs().stream()
                .map(pair -> pair.strong().id().equals("diethyl-ether") ? resting(pair, basis) : pair)
                .toList();
        return Adviser.of(Asking.CATALOGUE, new MeasuredPairs(pairs, curves.joint(), curves.structures()));
    }

    private static PlatePair resting(PlatePair p, PairBasis basis) {
        return new PlatePair(
                basis,
                p.sorbent(),
                p.weak(),
                p.strong(),
                p.trustedFrom(),
                p.trustedTo(),
                p.percentStrong(),
                p.strength(),
                p.strengthError(),
                p.hold(),
                p.early(),
                p.noiseScale(),
                p.noiseLeftAtLines(),
                p.atLines(),
                p.stretchStart(),
                p.stretchFront(),
                p.prior(),
                p.compounds(),
                p.readings(),
                p.residual(),
                p.provenance());
    }

    @Test
    void theoryIsToldFromWhatWasMeasuredAndComesAfterIt() {
        Replacements found = withTheory(PairBasis.THEORY)
                .others(
                        touching()
                                .run(Asking.silica("dichloromethane", "methanol", 1), Map.of("A", 0.3, "B", 0.3))
                                .question(),
                        new OthersWish(OptionalDouble.of(30), Optional.of(OtherRank.MEASURED)));
        OtherEluent ether = of(found, "hexane", "diethyl-ether");
        assertEquals(PairBasis.THEORY, ether.basis());
        assertTrue(Asking.codes(found.notes()).contains("bases"));
        assertEquals("dichloromethane/methanol", names(found.others().get(0)));
        Asking three = touching().shelf("hexane", "EtOAc", "heptane");
        assertTrue(Asking.codes(others(three, 20, OtherRank.MEASURED).notes()).contains("all-measured"));
    }

    @Test
    void theBandOfTheoryIsWiderForSeveralSpotsAsAllMayBeOffTogether() {
        Question question = touching().question();
        OthersWish wish = new OthersWish(OptionalDouble.of(20), Optional.of(OtherRank.MEASURED));
        double measured = of(Asking.ADVISER.others(question, wish), "hexane", "diethyl-ether")
                .width();
        double theory = of(withTheory(PairBasis.THEORY).others(question, wish), "hexane", "diethyl-ether")
                .width();
        assertEquals(Math.sqrt(2), theory / measured, 0.15);
    }

    @ParameterizedTest
    @EnumSource
    void adviceSaysWhatItsPairRestsOn(PairBasis basis) {
        Adviser adviser = basis == PairBasis.MEASURED ? Asking.ADVISER : withTheory(basis);
        Advice advice =
                adviser.advise(Asking.about("hexane", "ether").spots("A").question());
        assertEquals(basis, advice.basis());
        List<String> notes = Asking.codes(advice.notes());
        assertEquals(basis == PairBasis.THEORY, notes.contains("theory-pair"));
        assertEquals(basis == PairBasis.GUESS, notes.contains("guess-pair"));
        assertEquals(
                basis == PairBasis.MEASURED ? "why-no-plate" : "why-no-plate-theory",
                advice.why().get(0).code());
    }

    @Test
    void noReasonIsSaidTwice() {
        for (OtherRank rank : OtherRank.values()) {
            for (OtherEluent other :
                    others(touching().shelf(WIDE_SHELF), 20, rank).others()) {
                List<Message> reasons = other.reasons();
                assertEquals(Set.copyOf(reasons).size(), reasons.size(), names(other));
            }
        }
    }
}
