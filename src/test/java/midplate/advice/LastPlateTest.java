package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A last plate that shows already what is asked for; the readings are invented. */
@DisplayName("The last plate")
class LastPlateTest {
    private static final List<String> SAID = List.of("last-plate-works", "last-plate-best", "last-plate-best-apart");

    private static List<String> said(Asking asking) {
        return Asking.codes(asking.advice().notes()).stream()
                .filter(SAID::contains)
                .toList();
    }

    private static Asking two() {
        return Asking.acetate().spots("A", "B").in(Setting.BENCH);
    }

    @Test
    void didItWhereItsOwnRatioIsAdvisedAgain() {
        Asking asking = two().run(50, Map.of("A", 0.38, "B", 0.5));
        assertEquals("1:1", asking.advice().ratio().toString());
        assertEquals(List.of("last-plate-best"), said(asking));
        assertEquals(
                50.0,
                Asking.find(asking.advice().notes(), "last-plate-best").args().get("percent"));
        assertTrue(Asking.codes(asking.advice().why()).contains("why-same"), "both say the same");
    }

    @Test
    void onlyGetsSurerWhereAnotherRatioIsAdvised() {
        Asking asking = two().run(20, Map.of("A", 0.22, "B", 0.3));
        assertTrue(asking.advice().forecast().percentStrong() > 25);
        assertEquals(List.of("last-plate-works"), said(asking));
    }

    @Test
    void namesThePairsThatLieApart() {
        Asking apart = two().run(50, Map.of("A", 0.37, "B", 0.54)).apart("A", "B");
        assertEquals("1:1", apart.advice().ratio().toString());
        assertEquals(List.of("last-plate-best-apart"), said(apart));
    }

    @Test
    void countsSpotsThatNobodyLabelled() {
        assertEquals(List.of("last-plate-best"), said(two().unlabelled(50, Set.of(), 0.38, 0.5)));
        Asking known = two().run(20, Map.of("A", 0.2, "B", 0.3)).unlabelled(50, Set.of(), 0.36, 0.47);
        assertEquals(1, said(known).size(), said(known).toString());
    }

    // A spot more than is asked about, outside the window, is an impurity where the two others are known by a label.
    @Test
    void countsSpotsByWhatTheyMostLikelyAre() {
        Asking known = two().run(20, Map.of("A", 0.2, "B", 0.3)).unlabelled(50, Set.of(), 0.36, 0.47, 0.97);
        assertEquals(1, said(known).size(), said(known).toString());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.9})
    void doesNotWorkWithASpotOutside(double rf) {
        assertEquals(List.of(), said(two().unlabelled(50, Set.of(), 0.4, rf)));
    }

    @Test
    void doesNotWorkWithASpotTooFewOrOneNotSeen() {
        assertEquals(List.of(), said(Asking.acetate().spots("A", "B", "C").unlabelled(50, Set.of("C"), 0.35, 0.47)));
        assertEquals(List.of(), said(two().unlabelled(50, Set.of("B"), 0.35, 0.47)));
    }

    @Test
    void doesNotWorkWhereOneSpotWithoutALabelStandsForBoth() {
        Asking known = two().run(20, Map.of("A", 0.2, "B", 0.21)).unlabelled(50, Set.of(), 0.45);
        assertEquals(List.of(), said(known));
    }

    @Test
    void withUnlabelledSpotsLeavesNoPairTogether() {
        assertFalse(
                said(two().unlabelled(50, Set.of(), 0.38, 0.5).apart("A", "B")).isEmpty());
        assertEquals(List.of(), said(two().unlabelled(50, Set.of(), 0.4, 0.46).apart("A", "B")));
    }
}
