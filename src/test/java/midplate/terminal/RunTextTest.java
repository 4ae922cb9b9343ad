package midplate.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RunTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "10: A=0.05, B=0.12    | 10 | {A=0.05, B=0.12}",
                "10 %: A=0.05 B=0.12   | 10 | {A=0.05, B=0.12}",
                "9:1 A=0.05 B=0.12     | 10 | {A=0.05, B=0.12}",
                "9 : 1: A = 0.05       | 10 | {A=0.05}",
                "10: A=0,05, B=0,12    | 10 | {A=0.05, B=0.12}",
                "10: A=0,05,B=0,12     | 10 | {A=0.05, B=0.12}",
                "10: A=0,05; B=0,12    | 10 | {A=0.05, B=0.12}",
                "10: A=0.05,B=0.12     | 10 | {A=0.05, B=0.12}",
                "12,5: A=,3            | 12.5 | {A=0.3}",
                "0: A=1                | 0 | {A=1.0}",
                "10: P1=0.05 2=0.12    | 10 | {P1=0.05, 2=0.12}",
                "10: A=0.05,           | 10 | {A=0.05}",
                "101: A=1.2            | 101 | {A=1.2}",
            })
    void readsPercentageOrRatioAndSpots(String text, double percent, String rf) {
        RunText run = RunText.of(text);
        assertEquals(percent, run.percentStrong(), 1e-12);
        assertEquals(rf, run.rf().toString());
    }

    @Test
    void keepsTheOrderOfSpots() {
        assertEquals(
                List.of("Z", "A"), List.copyOf(RunText.of("5: Z=0.1 A=0.2").rf().keySet()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "10",
                "10:",
                "A=0.05",
                "ten: A=0.05",
                "10: A",
                "10: A=",
                "10: A=x",
                "10: A=NaN",
                "10: A=0.05 B",
                "10: =0.05",
                "10: A=0.1 A=0.2",
                "0:0 A=0.1",
                "9:1:1 A=0.1",
                "10: A=1e3",
                "10: A=0.05,2=0.3",
                "10: A=0.1=0.2",
                "9:1"
            })
    void refusesNonsenseAndQuotesIt(String text) {
        Nonsense nonsense = assertThrows(Nonsense.class, () -> RunText.of(text));
        String said = String.valueOf(nonsense.getMessage());
        assertTrue(said.contains("--run"), said);
        assertTrue(said.contains("allowed is"), said);
    }
}
