package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Similarity of structures by substrings of their SMILES")
class LingoTest {
    // Counted by hand with (1/l)·Σ (1 − |a − b|/(a + b)):
    // CCCCO {CCCC, CCCO}, CCCCN {CCCC, CCCN}: 1 of 3 in both, 1/3.
    // CCCCCO {CCCC twice, CCCO}, CCCCO: (1 − 1/3 + 1)/2 = 5/6; CCCCCCO {CCCC three times, CCCO}, CCCCO: (1 − 2/4 + 1)/2
    // = 3/4.
    // C1CC1O {C0CC, 0CC0, CC0O}, C1CC1N {C0CC, 0CC0, CC0N}: 2 of 4.
    // [13CH4] {[13C, 13CH, 3CH4, CH4]}, [14CH4] {[14C, 14CH, 4CH4, CH4]}: 1 of 7, for digits in brackets close no ring.
    // C%11CC%11 is C%00CC%00 like C%12CC%12.
    @ParameterizedTest
    @CsvSource({
        "CCCCO, CCCCO, 1",
        "CCCCO, CCCCN, 0.333333333333",
        "CCCCCO, CCCCO, 0.833333333333",
        "CCCCCCO, CCCCO, 0.75",
        "CCCCO, NNNNN, 0",
        "C1CC1O, C2CC2O, 1",
        "C1CC1O, C1CC1N, 0.5",
        "[13CH4], [14CH4], 0.142857142857",
        "C%11CC%11, C%12CC%12, 1",
        "CO, CO, 1",
        "CO, CN, 0",
        "CO, CCCO, 0"
    })
    void isThatCountedByHand(String one, String other, double similarity) {
        assertEquals(similarity, Lingo.of(one).similarity(Lingo.of(other)), 1e-11);
        assertEquals(similarity, Lingo.of(other).similarity(Lingo.of(one)), 1e-11);
    }

    // Similarities to CCCCO: CCCCCO 5/6, CCCCCCO 3/4, CCCCN and CCCCS 1/3, NNNNN 0.
    @Test
    void theNearestAndAllThatAreAlikeAreNeighbours() {
        assertEquals(
                Set.of("CCCCCO", "CCCCCCO"),
                Neighbours.of(List.of("CCCCO"), List.of("NNNNN", "CCCCN", "CCCCCCO", "CCCCCO")));
    }

    @Test
    void ofSeveralEquallyNearAllAreNeighbours() {
        assertEquals(Set.of("CCCCN", "CCCCS"), Neighbours.of(List.of("CCCCO"), List.of("NNNNN", "CCCCN", "CCCCS")));
    }

    @Test
    void eachStructureAskedAboutHasItsOwn() {
        assertEquals(
                Set.of("CCCCN", "NNNNS"), Neighbours.of(List.of("CCCCO", "NNNNO"), List.of("NNNNS", "CCCCN", "SSSSS")));
    }

    @Test
    void whatHasNothingInCommonIsNoNeighbour() {
        assertEquals(Set.of(), Neighbours.of(List.of("CCCCO"), List.of("NNNNN", "SSSSS")));
        assertEquals(Set.of(), Neighbours.of(List.of("CCCCO"), List.of()));
    }
}
