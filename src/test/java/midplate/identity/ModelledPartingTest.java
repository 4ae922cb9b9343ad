package midplate.identity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.advice.Adviser;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.plate.Setting;
import midplate.words.Language;
import midplate.words.Texts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Where two compounds are likely to part; all readings are invented. */
@DisplayName("Eluents that part two compounds")
class ModelledPartingTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    private static final PartingEluents PARTING = ModelledParting.of(Adviser.builtIn(CATALOGUE), CATALOGUE);
    private static final Compound ONE = compound("A", 0.4);
    private static final Compound SAME_PLACE = compound("B", 0.4);

    static Compound compound(String name, double rf) {
        return new Compound(name, OptionalDouble.of(rf), Optional.empty());
    }

    static PlateEluent here(Sorbent sorbent, String... shelf) {
        List<Solvent> atHand = List.of(shelf).stream().map(CATALOGUE::solvent).toList();
        return new PlateEluent(
                sorbent,
                CATALOGUE.solvent("hexane"),
                CATALOGUE.solvent("ethyl-acetate"),
                20,
                Optional.empty(),
                Setting.BENCH,
                atHand);
    }

    @Test
    void theLikeliestComesFirstAndNoMoreThanAsked() {
        List<NextEluent> all = PARTING.apart(here(Sorbent.SILICA), ONE, SAME_PLACE, 50);
        assertTrue(all.size() > 4, all::toString);
        assertEquals(
                all.stream()
                        .sorted(Comparator.comparingDouble(NextEluent::chanceApart)
                                .reversed())
                        .toList(),
                all);
        assertEquals(all.subList(0, 2), PARTING.apart(here(Sorbent.SILICA), ONE, SAME_PLACE, 2));
    }

    @Test
    void aPureLiquidComesOnceWhateverItIsPairedWith() {
        List<List<Solvent>> alone =
                PARTING.apart(here(Sorbent.SILICA), compound("A", 0.7), compound("B", 0.7), 99).stream()
                        .map(NextEluent::solvents)
                        .filter(each -> each.size() == 1)
                        .toList();
        assertFalse(alone.isEmpty());
        assertEquals(Set.copyOf(alone).size(), alone.size(), alone::toString);
    }

    @Test
    void theSourceOfTheClassesIsToldOnce() {
        List<NextEluent> all = PARTING.apart(here(Sorbent.SILICA), ONE, SAME_PLACE, 20);
        assertEquals(
                1,
                all.stream()
                        .filter(each ->
                                Texts.of(Language.ENGLISH).render(each.text()).contains("Dolan"))
                        .count());
    }

    @Test
    void spotsInOnePlaceRatherPartInAnotherPairThanAtAnotherRatio() {
        NextEluent first =
                PARTING.apart(here(Sorbent.SILICA), ONE, SAME_PLACE, 1).get(0);
        assertFalse(first.strong().id().equals("ethyl-acetate"), first::toString);
    }

    @Test
    void twoOfThemChangingPlacesChangesNothing() {
        List<NextEluent> forth = PARTING.apart(here(Sorbent.SILICA), ONE, compound("B", 0.46), 3);
        List<NextEluent> back = PARTING.apart(here(Sorbent.SILICA), compound("B", 0.46), ONE, 3);
        for (int i = 0; i < forth.size(); i++) {
            assertEquals(forth.get(i).ratio(), back.get(i).ratio());
            assertEquals(forth.get(i).chanceApart(), back.get(i).chanceApart(), 0.02);
        }
    }

    @Test
    void onlyWhatStandsOnTheShelfIsNamed() {
        List<NextEluent> all =
                PARTING.apart(here(Sorbent.SILICA, "hexane", "ethyl-acetate", "acetone"), ONE, SAME_PLACE, 20);
        assertFalse(all.isEmpty());
        for (NextEluent next : all) {
            assertTrue(
                    List.of("hexane", "ethyl-acetate", "acetone")
                            .contains(next.strong().id()),
                    next::toString);
        }
    }

    @Test
    void whatIsFarApartAlreadyPartsAtOtherRatiosOfThePair() {
        List<NextEluent> all = PARTING.apart(here(Sorbent.SILICA), compound("A", 0.3), compound("B", 0.6), 30);
        NextEluent ratio = all.stream()
                .filter(next -> next.strong().id().equals("ethyl-acetate")
                        && next.weak().id().equals("hexane"))
                .findFirst()
                .orElseThrow();
        assertTrue(ratio.chanceApart() > 0.5, ratio::toString);
        assertTrue(ratio.expectedGap() > 0.15, ratio::toString);
    }

    @Test
    void aStructureCountsWhereNothingWasRead() {
        Compound alcohol = new Compound(
                "alcohol",
                OptionalDouble.empty(),
                Optional.of(new GroupCounts(Map.of("alcohol", 1), GroupCounts.Detail.GROUPS)));
        Compound ether = new Compound(
                "ether",
                OptionalDouble.empty(),
                Optional.of(new GroupCounts(Map.of("ether", 1), GroupCounts.Detail.GROUPS)));
        assertFalse(PARTING.apart(here(Sorbent.SILICA), alcohol, ether, 3).isEmpty());
    }

    @Test
    void nothingIsAdvisedOnAluminaWhereThereIsNoModel() {
        assertTrue(PARTING.apart(here(Sorbent.ALUMINA), ONE, SAME_PLACE, 3).isEmpty());
    }

    @Test
    void eachSentenceCanBeSaidInBothLanguages() {
        for (NextEluent next : PARTING.apart(here(Sorbent.SILICA), ONE, SAME_PLACE, 30)) {
            for (Language language : Language.values()) {
                String said = Texts.of(language).render(next.text());
                assertTrue(said.length() > 40, said);
            }
        }
    }
}
