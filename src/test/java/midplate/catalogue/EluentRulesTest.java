package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.English;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What makes two solvents no eluent")
class EluentRulesTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    private static final EluentRules RULES = EluentRules.of(CATALOGUE);

    private static Optional<Refusal> against(Sorbent sorbent, String weak, String strong) {
        return RULES.against("strong", sorbent, CATALOGUE.solvent(weak), CATALOGUE.solvent(strong));
    }

    @ParameterizedTest
    @CsvSource({
        "hexane, ethyl acetate", "hexane, diethyl ether", "dichloromethane, methanol", "heptane, ethyl acetate",
        "petroleum ether 40-60, ethyl acetate", "hexane, acetone", "toluene, ethyl acetate", "hexane, dichloromethane",
        "dichloromethane, acetonitrile"
    })
    void whatMixesInTheRightOrderIsAnEluent(String weak, String strong) {
        assertEquals(Optional.empty(), against(Sorbent.SILICA, weak, strong));
    }

    @Test
    void oneSolventTwiceIsNone() {
        Refusal refusal = against(Sorbent.SILICA, "hexane", "n-hexane").orElseThrow();
        assertEquals("same-solvent", refusal.code());
        assertEquals("strong", refusal.field());
        assertEquals("another solvent than hexane", English.said(refusal.allowed()));
    }

    // Acetonitrile does not mix with saturated hydrocarbons (The Merck Index, acetonitrile).
    // Methanol mixes with them at some ratios only (common practice, no source).
    @ParameterizedTest
    @CsvSource({
        "hexane, acetonitrile, pair-immiscible",
        "heptane, acetonitrile, pair-immiscible",
        "petroleum ether 60-80, acetonitrile, pair-immiscible",
        "acetonitrile, hexane, pair-immiscible",
        "hexane, methanol, pair-partly-miscible",
        "cyclohexane, methanol, pair-partly-miscible",
        "methanol, pentane, pair-partly-miscible",
    })
    void whatMakesTwoLayersIsNoneInWhateverOrder(String weak, String strong, String code) {
        Refusal refusal = against(Sorbent.SILICA, weak, strong).orElseThrow();
        assertEquals(code, refusal.code());
        assertEquals(CATALOGUE.solvent(strong).name(), refusal.came());
        assertTrue(
                English.said(refusal.allowed())
                        .contains("mixes with " + CATALOGUE.solvent(weak).name()),
                English.said(refusal.allowed()));
        assertTrue(English.said(refusal.todo()).contains("ethyl acetate"), English.said(refusal.todo()));
    }

    @ParameterizedTest
    @CsvSource({
        "SILICA, ethyl acetate, hexane",
        "SILICA, methanol, dichloromethane",
        "SILICA, ethyl acetate, heptane",
        "ALUMINA, ethyl acetate, petroleum ether 40-60",
        "SILICA, ethyl acetate, petroleum ether 40-60",
        "ALUMINA, acetone, hexane",
    })
    void theStrongerOneNamedWeakIsRefusedWithBothStrengths(Sorbent sorbent, String weak, String strong) {
        Refusal refusal = against(sorbent, weak, strong).orElseThrow();
        assertEquals("pair-reversed", refusal.code());
        assertTrue((double) refusal.reason().args().get("weakStrength")
                > (double) refusal.reason().args().get("strongStrength"));
        assertEquals(sorbent.said(), refusal.reason().args().get("sorbent"));
        assertEquals("a solvent stronger than " + CATALOGUE.solvent(weak).name(), English.said(refusal.allowed()));
        assertTrue(English.said(refusal.todo()).startsWith("Swap the two solvents"), English.said(refusal.todo()));
        assertTrue(Texts.english().render(refusal.reason()).contains("is stronger than"));
    }

    // The two series on silica turn some pairs over (ethyl acetate 0.38 or 0.48, acetone 0.47 or 0.53, tetrahydrofuran
    // 0.44 or 0.53): a pair is refused only where every table agrees, and of any two at least one order is allowed.
    @Test
    void oneOfTheTwoOrdersIsAlwaysAllowed() {
        for (Sorbent sorbent : Sorbent.values()) {
            for (Solvent one : CATALOGUE.solvents()) {
                for (Solvent other : CATALOGUE.solvents()) {
                    if (!one.equals(other)
                            && CATALOGUE.immiscible(one, other).isEmpty()
                            && RULES.against("strong", sorbent, one, other).isPresent()) {
                        assertEquals(
                                Optional.empty(),
                                RULES.against("strong", sorbent, other, one),
                                one.id() + " and " + other.id() + " on " + sorbent.id());
                    }
                }
            }
        }
    }

    @Test
    void theFieldIsTheOneGiven() {
        Solvent hexane = CATALOGUE.solvent("hexane");
        assertEquals(
                "runs[3].strong",
                RULES.against("runs[3].strong", Sorbent.SILICA, hexane, hexane)
                        .orElseThrow()
                        .field());
    }

    // Stand-ins of solvent-data/stand-ins.csv: eluent strengths that agree within 0.01.
    @ParameterizedTest
    @CsvSource({
        "heptane, hexane",
        "petroleum ether 40-60, hexane",
        "petroleum ether 60-80, hexane",
        "hexane, hexane",
        "pentane, pentane",
        "ethyl acetate, ethyl-acetate"
    })
    void theStandardOfASolventIsTheMeasuredOne(String solvent, String standard) {
        assertEquals(standard, RULES.standard(CATALOGUE.solvent(solvent)).id());
    }
}
