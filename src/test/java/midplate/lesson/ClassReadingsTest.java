package midplate.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import midplate.advice.SpotForecast;
import midplate.words.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a class reads, as a whole. */
class ClassReadingsTest {
    private static ClassSpot spot(String name) {
        return new ClassSpot(name, Optional.empty());
    }

    private static ClassReading read(String pair, int plate, int lane, int spot, double rf) {
        return new ClassReading(pair, ClassPlate.ofPair(pair, plate), lane, spot, rf, HowRead.UNTOLD);
    }

    // every reading stands in one step, and in that whose ends it lies between; counted here another way
    @ParameterizedTest
    @CsvSource({"0.01", "0.02", "0.05", "0.1"})
    void eachReadingCountsInItsStep(double width) {
        double[] rf = new double[200];
        Random random = new Random(4);
        Arrays.setAll(rf, i -> random.nextInt(101) / 100.0);
        ReadingHistogram histogram = ReadingHistogram.of(rf, width);
        assertEquals(
                200, histogram.counts().stream().mapToInt(Integer::intValue).sum());
        int hundredths = (int) Math.round(100 * width);
        for (int i = 0; i < histogram.counts().size(); i++) {
            int step = histogram.first() + i;
            long here = Arrays.stream(rf)
                    .mapToInt(each -> Math.min(99, (int) Math.round(100 * each)))
                    .filter(each -> each / hundredths == step)
                    .count();
            assertEquals(here, histogram.counts().get(i).intValue(), "step " + step);
        }
    }

    // by hand: 0.30 to 0.49 evenly, n = 20: quartiles 0.3475 and 0.4425, IQR 0.095, 2·0.095/∛20 = 0.070; of 0.05 and
    // 0.1 the first is nearer
    // on the scale of logarithms: 0.070/0.05 = 1.40, 0.1/0.070 = 1.43
    @Test
    void theWidthIsThatOfFreedmanAndDiaconis() {
        double[] rf = new double[20];
        Arrays.setAll(rf, i -> 0.30 + 0.01 * i);
        assertEquals(0.05, ReadingHistogram.width(List.of(rf)), 1e-12);
        assertEquals(0.01, ReadingHistogram.width(List.of(new double[] {0.4, 0.4, 0.4, 0.4})), 1e-12);
    }

    // by hand: median 0.40, distances 0.02 0.01 0 0.01 0.02 0.01 0.20; their median 0.01, scale 0.0148, taken for 0.02,
    // reach 0.07
    @Test
    void aReadingFarOffIsTold() {
        List<ClassReading> readings = new ArrayList<>();
        double[] rf = {0.38, 0.39, 0.40, 0.41, 0.42, 0.39, 0.60};
        for (int i = 0; i < rf.length; i++) {
            readings.add(read("p" + i, 1, 1, 0, rf[i]));
        }
        ClassFindings found = ClassReadings.judged(List.of(spot("A")), readings, Optional.empty());
        assertEquals(1, found.far().size());
        assertEquals("p6", found.far().get(0).reading().pair());
        assertTrue(found.scatter().isEmpty(), "one spot, once on each plate");
        assertEquals(List.of(Message.of("lesson.class-not-told")), found.sentences());
        assertEquals(0.40, found.spots().get(0).median(), 1e-12);
    }

    @Test
    void theBandCountsItsEnds() {
        ClassSpot spot = new ClassSpot("A", Optional.of(new SpotForecast("A", 0.4, 0.3, 0.5, 0, 0)));
        ClassFindings found = ClassReadings.judged(
                List.of(spot),
                List.of(read("a", 1, 1, 0, 0.3), read("b", 1, 1, 0, 0.5), read("c", 1, 1, 0, 0.51)),
                Optional.empty());
        assertEquals(Optional.of(2), found.spots().get(0).inside());
    }

    @Test
    void repeatsAreTakenWhereThereAreAnyAndElseWhatSpotsShare() {
        PretendClass pretend = new PretendClass(8, new double[] {0.3, 0.5}, 0.2, 0.8);
        List<ClassSpot> spots = List.of(spot("A"), spot("B"));
        ClassFindings twice = ClassReadings.judged(
                spots, pretend.pairs(20, 2, PretendClass.Divides.RIGHTLY, HowRead.UNTOLD), Optional.empty());
        ClassFindings once = ClassReadings.judged(
                spots, pretend.pairs(20, 1, PretendClass.Divides.RIGHTLY, HowRead.UNTOLD), Optional.empty());
        assertEquals("repeats", twice.scatter().orElseThrow().way());
        assertEquals("shared", once.scatter().orElseThrow().way());
        for (ClassFindings.Scatter each :
                List.of(twice.scatter().get(), once.scatter().get())) {
            // a ruler of 0.8 mm over 52 mm, and 0.2 in ln units at Rf 0.3 and 0.5; three standard errors of 20 plates
            assertEquals(0.0154, each.within().value(), 0.35 * 0.0154, each.toString());
            assertEquals(0.046, each.between().value(), 0.5 * 0.046, each.toString());
        }
        assertEquals(
                twice, ClassReadings.judged(spots, again(), Optional.empty()), "the same readings, the same words");
    }

    private static List<ClassReading> again() {
        return new PretendClass(8, new double[] {0.3, 0.5}, 0.2, 0.8)
                .pairs(20, 2, PretendClass.Divides.RIGHTLY, HowRead.UNTOLD);
    }

    // all spots of a plate to one side: its shift by hand, two spots at 0.5 moved by 0.1: 0.25·(0.25·0.1·2)/(2·0.0625)
    // = 0.1
    @Test
    void aPlateLiesWhereItsSpotsLie() {
        List<ClassReading> readings = new ArrayList<>();
        for (String pair : List.of("a", "b", "c")) {
            readings.add(read(pair, 1, 1, 0, pair.equals("c") ? 0.6 : 0.5));
            readings.add(read(pair, 1, 1, 1, pair.equals("c") ? 0.6 : 0.5));
        }
        ClassFindings found = ClassReadings.judged(List.of(spot("A"), spot("B")), readings, Optional.empty());
        assertEquals(0.1, found.plates().get(2).shift(), 1e-12);
        assertEquals(0, found.plates().get(0).shift(), 1e-12);
    }

    // a plate that two pairs read counts once: readings 0.30 and 0.32 are within it
    @Test
    void aPlateOfTheClassIsOnePlate() {
        List<ClassReading> readings = new ArrayList<>();
        for (int plate = 0; plate < 5; plate++) {
            for (String pair : List.of("a", "b")) {
                double rf = 0.3 + 0.05 * plate + (pair.equals("b") ? 0.02 : 0);
                readings.add(new ClassReading(pair, ClassPlate.ofClass("P" + plate), 1, 0, rf, HowRead.UNTOLD));
            }
        }
        ClassFindings found = ClassReadings.judged(List.of(spot("A")), readings, Optional.empty());
        assertEquals(5, found.plates().size());
        assertEquals(List.of("a", "b"), found.plates().get(0).pairs());
        // by hand: each plate's two readings differ by 0.02, so MSW = 0.02²/2
        assertEquals(Math.sqrt(0.0002), found.scatter().orElseThrow().within().value(), 1e-9);
    }

    // with one plate in a thousand exchanges none can come out below 1 of 1000
    @Test
    void theLeastChanceIsSaidAsFewer() {
        List<ClassReading> readings = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            readings.add(read("p" + i, 1, 1, 0, 0.2 + 0.01 * i));
            readings.add(read("p" + i, 1, 1, 1, 0.5 + 0.01 * i));
        }
        ClassFindings found = ClassReadings.judged(List.of(spot("A"), spot("B")), readings, Optional.empty());
        assertEquals(0.001, found.scatter().orElseThrow().chance(), 1e-12);
        assertTrue(found.scatter().get().sentences().contains(Message.of("lesson.class-chance-rare")));
    }
}
