package midplate.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import midplate.wire.RequestText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Eluents for a column, as people type them. */
class StepsTextTest {
    private static String json(String text) {
        RequestText column = RequestText.empty();
        StepsText.of(text).put(column);
        return column.toString();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "10 %     | 10",
                "12,5%    | 12.5",
                "9:1      | 10",
                "1 : 1    | 50",
                "0 : 1    | 100",
                "1:0      | 0",
            })
    void oneEluentWithoutAVolumeGoesOnToTheEnd(String text, String percent) {
        assertEquals("{\"percentStrong\":" + percent + "}", json(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 %:60, 20 %:120", "5%:60 ml; 4:1:120 ml", "19:1:60, 20 % : 120", "5,0 %:60, 20,0 %:120"})
    void stepsHaveTheirVolumes(String text) {
        assertEquals(
                "{\"steps\":[{\"percentStrong\":5,\"volumeMl\":60},{\"percentStrong\":20,\"volumeMl\":120}]}",
                json(text));
    }

    @Test
    void whatCannotBePouredIsLeftToTheReaderOfRequests() {
        assertEquals("{\"steps\":[{\"percentStrong\":5,\"volumeMl\":0}]}", json("5 %:0"));
        assertEquals("{\"percentStrong\":101}", json("101 %"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "much",
                "5",
                "5:",
                "5 %:",
                "5 %:60,",
                "5 %:60, 20 %",
                "0:0",
                "-1:2:30",
                "5 %:60 l",
                "NaN %",
                "1:2:3:4"
            })
    void nonsenseIsRefused(String text) {
        assertThrows(Nonsense.class, () -> StepsText.of(text), text);
    }
}
