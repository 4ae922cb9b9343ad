package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Flags of solvents")
class SolventFlagsTest {
    private static final SolventFlags FLAGS = new SolventFlags(Asking.CATALOGUE);

    // the statements of CLP Annex VI and formulas, from memory; peroxides of MTBE and 2-propanol: common practice, no
    // source
    @ParameterizedTest
    @CsvSource({
        "hexane, ethyl acetate, nerves reproduction",
        "heptane, ethyl acetate, ''",
        "heptane, acetone, ''",
        "hexane, diethyl ether, peroxides nerves reproduction extremely-flammable",
        "heptane, MTBE, slow-peroxides",
        "heptane, dichloromethane, chlorinated cancer",
        "dichloromethane, methanol, chlorinated organs cancer toxic",
        "toluene, ethyl acetate, organs reproduction",
        "heptane, tetrahydrofuran, peroxides cancer",
        "heptane, dioxane, peroxides cancer",
        "heptane, 2-propanol, slow-peroxides",
        "chloroform, ethanol, chlorinated organs cancer reproduction toxic",
        "petroleum ether, ethyl acetate, ''",
    })
    void areThoseOfStatementsCautionsAndFormula(String weak, String strong, String expected) {
        String found = FLAGS.of(Asking.CATALOGUE.solvent(weak), Asking.CATALOGUE.solvent(strong)).stream()
                .map(SolventFlag::id)
                .collect(Collectors.joining(" "));
        assertEquals(expected, found);
    }

    // boiling points: CRC Handbook, from memory; petroleum ether 40-60: the end of its range
    @ParameterizedTest
    @CsvSource({"hexane, ethyl acetate, 77.1", "petroleum ether, acetone, 60", "dichloromethane, methanol, 64.7"})
    void theHigherBoilingPointCounts(String weak, String strong, double celsius) {
        OptionalDouble found = FLAGS.boilingPoint(Asking.CATALOGUE.solvent(weak), Asking.CATALOGUE.solvent(strong));
        assertEquals(celsius, found.orElseThrow());
    }

    @Test
    void everyFlagHasItsSentence() {
        for (SolventFlag flag : SolventFlag.values()) {
            assertTrue(flag.said().key().endsWith(flag.id()), flag.id());
        }
    }
}
