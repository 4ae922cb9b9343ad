package midplate.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings and plates far from the others, each judged by itself. */
class OutlyingReadingsTest {
    private static final double[] THREE = {0.2, 0.4, 0.6};

    private static List<ClassReading> pretend(long seed, double factor, double rulerMm, int lanes) {
        return new PretendClass(seed, THREE, factor, rulerMm)
                .pairs(20, lanes, PretendClass.Divides.RIGHTLY, HowRead.UNTOLD);
    }

    private static ClassReading moved(ClassReading each, double rf) {
        return new ClassReading(each.pair(), each.plate(), each.lane(), each.spot(), rf, each.how());
    }

    // measured on 300 classes without mistakes, in readings and plates a class: 0.007 and 0.017; 0.007 and 0.090; with
    // a coarse
    // ruler 0.30 and 0.06; 0.23 and 0.09; the bounds lie three standard errors above
    @ParameterizedTest
    @CsvSource({"0.12, 0.8, 0.03, 0.05", "0.24, 0.8, 0.03, 0.15", "0.12, 1.5, 0.42, 0.11", "0.24, 1.5, 0.34, 0.15"})
    void hardlyAnythingIsFarWhereNothingIsWrong(double factor, double rulerMm, double readings, double plates) {
        int classes = 300;
        int far = 0;
        int farPlates = 0;
        for (int i = 0; i < classes; i++) {
            List<ClassReading> read = pretend(7000 + i, factor, rulerMm, 1);
            far += OutlyingReadings.in(3, read).size();
            farPlates += PlateShifts.of(3, read).far().size();
        }
        assertTrue(far <= readings * classes, "readings " + far);
        assertTrue(farPlates <= plates * classes, "plates " + farPlates);
    }

    // a plate whose eluent was wrong: the times in the two phases differ by a factor of 3, so Rf 0.2, 0.4, 0.6 become
    // 1/13, 2/11, 1/3
    @Test
    void aPlateThatLiesLowIsAPlateAndNoneOfItsReadings() {
        for (int seed = 1; seed <= 50; seed++) {
            List<ClassReading> read = new ArrayList<>();
            double[] low = {0.08, 0.18, 0.33};
            pretend(seed, 0.12, 0.5, 1)
                    .forEach(each -> read.add(each.pair().equals("p3") ? moved(each, low[each.spot()]) : each));
            assertTrue(
                    OutlyingReadings.in(3, read).stream()
                            .noneMatch(each -> each.pair().equals("p3")),
                    "seed " + seed);
            assertTrue(PlateShifts.of(3, read).far().contains(ClassPlate.ofPair("p3", 1)), "seed " + seed);
        }
    }

    @Test
    void oneReadingThatIsWrongIsFoundAndItsPlateIsNot() {
        for (int seed = 1; seed <= 50; seed++) {
            List<ClassReading> read = new ArrayList<>();
            pretend(seed, 0.12, 0.5, 1)
                    .forEach(each -> read.add(each.pair().equals("p3") && each.spot() == 1 ? moved(each, 0.65) : each));
            List<ClassReading> far = OutlyingReadings.in(3, read);
            assertEquals(
                    1, far.stream().filter(each -> each.pair().equals("p3")).count(), "seed " + seed);
            assertTrue(far.stream().anyMatch(each -> each.rf() == 0.65), "seed " + seed);
            assertTrue(!PlateShifts.of(3, read).far().contains(ClassPlate.ofPair("p3", 1)), "seed " + seed);
        }
    }
}
