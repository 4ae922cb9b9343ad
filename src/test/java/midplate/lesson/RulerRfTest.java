package midplate.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What half a millimetre on either length does to an Rf; the numbers worked out by hand. */
class RulerRfTest {
    /** Way and run in mm: 25/50; 24.5/50.5 = 0.48515, 25.5/49.5 = 0.51515; 9.5/45.5 = 0.20879, 9/46 = 0.19565, 10/45 = 0.22222. */
    @ParameterizedTest
    @CsvSource({
        "25,   50,   0.5,     0.485149, 0.515152, 0.48, 0.52",
        "9.5,  45.5, 0.208791, 0.195652, 0.222222, 0.19, 0.23",
        "0,    50,   0,       0,        0.010101, 0,    0.02",
        "50,   50,   1,       0.980198, 1,        0.98, 1",
        "20,   50,   0.4,     0.386139, 0.414141, 0.38, 0.42",
    })
    void allowsHalfAMillimetreOnEitherLength(
            double way, double run, double rf, double least, double most, double from, double to) {
        RulerRf measured = new RulerRf((int) (2 * way), (int) (2 * run));
        assertEquals(rf, measured.rf(), 1e-6);
        assertEquals(least, measured.least(), 1e-6);
        assertEquals(most, measured.most(), 1e-6);
        assertEquals(from, measured.acceptedFrom(), 0);
        assertEquals(to, measured.acceptedTo(), 0);
    }

    /** Whoever reads both lengths to half a millimetre and rounds Rf to two decimals is right, and nobody much further off is. */
    @Test
    void acceptsEveryReadingWithinTheRulerAndLittleMore() {
        for (int halfRun = 90; halfRun <= 104; halfRun++) {
            for (int halfWay = 1; halfWay < halfRun - 1; halfWay++) {
                RulerRf measured = new RulerRf(halfWay, halfRun);
                for (double way = -0.5; way <= 0.5; way += 0.125) {
                    for (double run = -0.5; run <= 0.5; run += 0.125) {
                        double read = Math.rint(100 * (halfWay / 2.0 + way) / (halfRun / 2.0 + run)) / 100;
                        assertTrue(
                                read >= measured.acceptedFrom() - 1e-9 && read <= measured.acceptedTo() + 1e-9,
                                halfWay + " of " + halfRun + ": " + read);
                    }
                }
                assertTrue(measured.least() - measured.acceptedFrom() < 0.01, "rounded by less than a hundredth");
                assertTrue(measured.acceptedTo() - measured.most() < 0.01, "rounded by less than a hundredth");
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"-1, 100", "101, 100", "0, 1"})
    void refusesWhatIsOnNoPlate(int halfWay, int halfRun) {
        assertThrows(IllegalArgumentException.class, () -> new RulerRf(halfWay, halfRun));
    }
}
