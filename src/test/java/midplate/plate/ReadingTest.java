package midplate.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.words.English;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingTest {
    private static final Solvent HEXANE = new Solvent("hexane", "hexane", "110-54-3", "C6H14", List.of());
    private static final Solvent ACETATE =
            new Solvent("ethyl-acetate", "ethyl acetate", "141-78-6", "C4H8O2", List.of());

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 1})
    void takesAnyRfFromStartToFront(double rf) {
        assertEquals(new Reading(rf, Limit.NONE, OptionalDouble.empty()), Reading.of(rf));
        assertEquals(Limit.AT_START, Reading.atStart(rf).limit());
        assertEquals(Limit.AT_FRONT, Reading.atFront(rf).limit());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 1.001, Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoRf(double rf) {
        Refusal refusal = assertThrows(Refusal.class, () -> Reading.of(rf));
        assertEquals("rf", refusal.field());
        assertEquals("plate.rf-out-of-range", refusal.reason().key());
        assertEquals("[0, 1]", English.said(refusal.allowed()));
        assertRendered(refusal);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoError(double error) {
        Refusal refusal = assertThrows(Refusal.class, () -> new Reading(0.5, Limit.NONE, OptionalDouble.of(error)));
        assertEquals("standardError", refusal.field());
        assertRendered(refusal);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 100.1, Double.NaN})
    void refusesWhatIsNoPercentage(double percent) {
        Refusal refusal = assertThrows(Refusal.class, () -> Eluent.of(Sorbent.SILICA, HEXANE, ACETATE, percent));
        assertEquals("percentStrong", refusal.field());
        assertRendered(refusal);
    }

    @Test
    void takesPureSolventsAndANamedAdditive() {
        assertEquals(0, Eluent.of(Sorbent.SILICA, HEXANE, ACETATE, 0).percentStrong());
        assertEquals(100, Eluent.of(Sorbent.SILICA, HEXANE, ACETATE, 100).percentStrong());
        Eluent acid = new Eluent(Sorbent.SILICA, HEXANE, ACETATE, 20, Optional.of("acetic acid 1 %"));
        assertEquals(Optional.of("acetic acid 1 %"), acid.additive());
        Refusal refusal =
                assertThrows(Refusal.class, () -> new Eluent(Sorbent.SILICA, HEXANE, ACETATE, 20, Optional.of(" ")));
        assertEquals("additive", refusal.field());
        assertRendered(refusal);
    }

    @Test
    void aRunKeepsItsOwnReadingsInTheirOrder() {
        Map<String, Reading> readings = new LinkedHashMap<>();
        readings.put("Z", Reading.of(0.2));
        readings.put("A", Reading.of(0.4));
        Run run = new Run(Eluent.of(Sorbent.SILICA, HEXANE, ACETATE, 20), readings);
        readings.clear();
        assertEquals(List.of("Z", "A"), List.copyOf(run.readings().keySet()));
        assertThrows(UnsupportedOperationException.class, () -> run.readings().clear());
    }

    @Test
    void aRunRefusesASpotWithoutName() {
        Eluent eluent = Eluent.of(Sorbent.SILICA, HEXANE, ACETATE, 20);
        Refusal refusal = assertThrows(Refusal.class, () -> new Run(eluent, Map.of("", Reading.of(0.5))));
        assertEquals("readings", refusal.field());
        assertRendered(refusal);
    }

    @Test
    void aSettingIsFoundByItsIdOnly() {
        for (Setting setting : Setting.values()) {
            assertEquals(Optional.of(setting), Setting.byId(setting.id()));
        }
        assertEquals("class", Setting.CLASS.id());
        assertEquals(Optional.empty(), Setting.byId("BENCH"));
        assertEquals(Optional.empty(), Setting.byId(""));
    }

    private static void assertRendered(Refusal refusal) {
        assertEquals(false, Texts.english().render(refusal.reason()).isBlank());
    }
}
