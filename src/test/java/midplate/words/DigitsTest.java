package midplate.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DigitsTest {
    // Own arithmetic.
    @ParameterizedTest
    @CsvSource({
        "57.142857, 57.1, 57",
        "66.666667, 66.7, 67",
        "10.04, 10.0, 10",
        "9.0909, 9.1, 9.1",
        "0.75, 0.8, 0.8",
        "100, 100, 100"
    })
    void aPercentageThatNobodyPoursIsWholeAboveTen(double percent, double poured, double about) {
        assertEquals(poured, Digits.percent(percent));
        assertEquals(about, Digits.aboutPercent(percent));
    }
}
