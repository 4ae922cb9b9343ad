package midplate.advice;

import static midplate.advice.OtherEluentsTest.names;
import static midplate.advice.OtherEluentsTest.of;
import static midplate.advice.OtherEluentsTest.others;
import static midplate.advice.OtherEluentsTest.touching;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.words.Refusal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Where a pair or a sample comes to an end; readings are invented. */
@DisplayName("Other eluents at the ends of what they reach")
class OtherEluentsReachTest {
    @Test
    void aPairThatIsTooStrongAtEveryShareSaysSoAndComesLast() {
        Replacements found = others(loose(), 0, OtherRank.APART);
        OtherEluent methanol = of(found, "dichloromethane", "methanol");
        int place = found.others().indexOf(methanol);
        assertTrue(found.others().subList(place, found.others().size()).stream()
                .allMatch(other -> other.equal().isEmpty()));
        OtherEluent.Nearest nearest = methanol.nearest().orElseThrow();
        assertEquals(OtherEluent.Side.STRONGER, nearest.side());
        assertEquals(0, nearest.percentStrong());
        assertTrue(nearest.rf() > found.of().rf());
        assertTrue(methanol.equal().isEmpty());
        assertTrue(Asking.codes(methanol.reasons()).contains("stays-stronger"));
    }

    @Test
    void aPairThatIsTooWeakAtEveryShareSaysSo() {
        Adviser invented = Adviser.of(Asking.CATALOGUE, InventedPairs.measured());
        OtherEluent ether = invented.others(
                        Asking.acetate().run(30, Map.of("A", 0.4)).question(),
                        new OthersWish(OptionalDouble.of(100), Optional.empty()))
                .others()
                .get(0);
        assertEquals(OtherEluent.Side.WEAKER, ether.nearest().orElseThrow().side());
        assertEquals(100, ether.nearest().get().percentStrong());
        assertEquals(new Ratio(0, 1), ether.pour().ratio());
    }

    @Test
    void onePureSolventIsOneEluentWhicheverPairHasIt() {
        Asking polar = Asking.acetate().spots("A", "B").run(100, Map.of("A", 0.35, "B", 0.45));
        for (double percent : new double[] {0, 100}) {
            Replacements found = others(percent == 0 ? loose() : polar, percent, OtherRank.APART);
            List<OtherEluent> same = found.others().stream()
                    .filter(other -> other.equal().isPresent())
                    .filter(other -> other.pour().ratio().percentStrong() == percent)
                    .filter(other -> percent == 0
                            ? other.weak().id().equals("hexane")
                            : other.strong().id().equals("ethyl-acetate"))
                    .toList();
            assertEquals(1, same.size(), "told once");
            assertEquals(
                    Optional.of(new OtherEluent.Equal(percent, percent, percent)),
                    same.get(0).equal());
            for (OtherEluent other : same) {
                assertEquals(found.of().chance(), other.chance(), names(other));
                assertEquals(found.of().goal(), other.goal(), names(other));
                assertEquals(found.of().closest(), other.closest(), names(other));
            }
        }
    }

    /** Spots that climb in hexane alone; invented. */
    private static Asking loose() {
        return Asking.acetate().spots("A", "B").run(0, Map.of("A", 0.35, "B", 0.40));
    }

    @Test
    void spotsAtALineAreMatchedToTheWindowInstead() {
        Replacements low = others(touching(), 1, OtherRank.MEASURED);
        assertEquals(0.5, low.of().aim().orElseThrow(), "the middle of the window 0.2 to 0.8");
        assertEquals("needs-stronger", Asking.codes(low.notes()).get(0));
        OtherEluent ether = of(low, "hexane", "diethyl-ether");
        double middle = (ether.spots().get(0).rf() + ether.spots().get(1).rf()) / 2;
        assertEquals(0.5, middle, 0.06, "the simple ratio next to it");
        assertTrue(ether.equal().orElseThrow().low() < ether.equal().get().percentStrong());
        assertTrue(ether.equal().get().high() > ether.equal().get().percentStrong());
        assertEquals(
                "needs-weaker",
                Asking.codes(others(loose(), 100, OtherRank.MEASURED).notes()).get(0));
        Replacements inside = others(touching(), 20, OtherRank.MEASURED);
        assertTrue(inside.of().aim().isEmpty());
        assertFalse(Asking.codes(inside.notes()).contains("needs-stronger"));
    }

    // The mixture to be replaced may be of solvents that ran out: only what takes its place stands on the shelf.
    @Test
    void whatIsToBeReplacedNeedNotStandOnTheShelf() {
        Replacements found = others(touching().shelf("heptane", "EtOAc", "acetone", "MTBE"), 20, OtherRank.MEASURED);
        assertEquals("heptane/ethyl-acetate", names(found.others().get(0)));
        assertTrue(found.others().size() >= 3, found.others().toString());
        assertThrows(
                Refusal.class,
                () -> Asking.ADVISER.advise(touching().shelf("heptane", "EtOAc").question()));
    }

    // Own reasoning: compounds that no plate of the pair has told apart yet may be off together, which parts none of
    // them.
    @Test
    void theoryThatMayBeOffForAllSpotsPartsThemLessThanOneThatIsOffForEach() {
        Replacements found = others(touching(), 20, OtherRank.APART);
        double sameStrong =
                of(found, "toluene", "ethyl-acetate").closest().orElseThrow().chance();
        double otherStrong =
                of(found, "hexane", "dichloromethane").closest().orElseThrow().chance();
        assertTrue(sameStrong < otherStrong - 0.2, sameStrong + " against " + otherStrong);
    }

    @Test
    void pairsInWhichNothingLikeTheSpotsWasMeasuredAreLeftOutAndSaid() {
        Asking held =
                Asking.about("dichloromethane", "methanol").spots("A", "B").run(9, Map.of("A", 0.02, "B", 0.04));
        Replacements found = others(held, 9, OtherRank.MEASURED);
        assertTrue(Asking.codes(found.notes()).contains("beyond"), found.notes().toString());
        assertTrue(
                found.others().stream().noneMatch(other -> other.strong().id().equals("ethyl-acetate")));
    }
}
