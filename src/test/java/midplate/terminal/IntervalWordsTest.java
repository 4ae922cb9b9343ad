package midplate.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IntervalWordsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "(0, 100000]|more than 0, at most 100000",
                "[0, 1]|at least 0, at most 1",
                "(0, 1)|more than 0, less than 1",
                "[-0.5, 40) mm|at least -0.5, less than 40 mm"
            })
    void anIntervalIsSaidInWords(String interval, String words) {
        assertEquals(words, IntervalWords.of(interval));
    }

    @ParameterizedTest
    @ValueSource(strings = {"A, B", "silica", "one of [A, B]", "4, 8, 12 (g)", "", "[0, 1] or nothing"})
    void anythingElseStaysAsItIs(String allowed) {
        assertEquals(allowed, IntervalWords.of(allowed));
    }
}
