package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import midplate.inference.Series;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Standard errors by resampling compounds")
class BootstrapTest {
    private static final List<Series> COMPOUNDS =
            IntStream.range(0, 200).mapToObj(Invented::series).toList();

    @Test
    void whatIsTheSameForAllCompoundsHasNoError() {
        Sample sample = new Sample();
        COMPOUNDS.forEach(series -> sample.add(List.of(series), 0.3));
        sample.add(COMPOUNDS.subList(0, 3), 0.3);
        Figure figure = bootstrap(1).figure(sample);
        assertEquals(0.3, figure.value(), 1e-12);
        assertEquals(0, figure.standardError(), 1e-9);
        assertEquals(201, figure.count());
    }

    // Own algebra: the standard error of a mean of n independent values with standard deviation σ is σ/√n, here
    // 1/√200 = 0.0707; 400 resamples know it to 1/√800 = 3.5 %, the draw of the values to 5 %.
    @Test
    void oneValueEachGivesTheErrorOfTheMean() {
        Random random = new Random(8);
        Sample sample = new Sample();
        COMPOUNDS.forEach(series -> sample.add(List.of(series), random.nextGaussian()));
        assertEquals(Math.sqrt(1 / 200.0), bootstrap(1).figure(sample).standardError(), 0.2 * Math.sqrt(1 / 200.0));
    }

    // Own algebra: ten equal values of a compound tell no more than one.
    @Test
    void repeatingAValueWithinACompoundGainsNothing() {
        Random random = new Random(9);
        Sample once = new Sample();
        Sample often = new Sample();
        for (Series series : COMPOUNDS) {
            double value = random.nextGaussian();
            once.add(List.of(series), value);
            IntStream.range(0, 10).forEach(i -> often.add(List.of(series), value));
        }
        Bootstrap bootstrap = bootstrap(2);
        assertEquals(
                bootstrap.figure(once).standardError(), bootstrap.figure(often).standardError(), 1e-9);
    }

    // Own algebra: the mean over random sets of three of (a_i + a_j + a_k)/3 is about the mean of a over compounds, so
    // its error is about σ/√n, however many sets are drawn.
    @Test
    void manySetsOfFewCompoundsDoNotLookLikeManyCompounds() {
        Random random = new Random(10);
        List<Series> few = COMPOUNDS.subList(0, 50);
        double[] trait = random.doubles(50).toArray();
        Sample sample = new Sample();
        List<Integer> places = new ArrayList<>(IntStream.range(0, 50).boxed().toList());
        for (int i = 0; i < 5000; i++) {
            Collections.shuffle(places, random);
            List<Integer> drawn = places.subList(0, 3);
            sample.add(
                    drawn.stream().map(few::get).toList(),
                    drawn.stream().mapToDouble(place -> trait[place]).average().orElseThrow());
        }
        double error = new Bootstrap(few, 400, 3).figure(sample).standardError();
        double expected = Math.sqrt(1 / 12.0 / 50);
        assertTrue(error > 0.7 * expected && error < 1.4 * expected, error + " against " + expected);
    }

    @Test
    void theSameSeedGivesTheSameAndTheOrderOfValuesDoesNotMatter() {
        List<Series> shuffled = new ArrayList<>(COMPOUNDS);
        Collections.shuffle(shuffled, new Random(4));
        Sample one = new Sample();
        Sample other = new Sample();
        COMPOUNDS.forEach(series -> one.add(List.of(series), series.compound() % 7));
        shuffled.forEach(series -> other.add(List.of(series), series.compound() % 7));
        assertEquals(bootstrap(5).figure(one), bootstrap(5).figure(other));
        assertNotEquals(
                bootstrap(5).figure(one).standardError(),
                bootstrap(6).figure(one).standardError());
        assertEquals(bootstrap(5).figure(one), new Bootstrap(shuffled, 400, 5).figure(other));
    }

    @Test
    void aDifferenceIsPairedValueByValue() {
        Random random = new Random(12);
        Sample one = new Sample();
        Sample other = new Sample();
        for (Series series : COMPOUNDS) {
            double value = random.nextGaussian();
            one.add(List.of(series), value);
            other.add(List.of(series), value - 0.25);
        }
        Figure figure = bootstrap(1).figure(one.minus(other));
        assertEquals(0.25, figure.value(), 1e-12);
        assertEquals(0, figure.standardError(), 1e-9);
    }

    @Test
    void samplesOfDifferentQuestionsAreNotPaired() {
        Sample one = new Sample();
        Sample other = new Sample();
        one.add(List.of(COMPOUNDS.get(0)), 1);
        other.add(List.of(COMPOUNDS.get(1)), 1);
        assertThrows(IllegalArgumentException.class, () -> one.minus(other));
        other.add(List.of(COMPOUNDS.get(0)), 1);
        one.add(List.of(COMPOUNDS.get(1)), 1);
        one.add(List.of(COMPOUNDS.get(1)), 1);
        assertThrows(IllegalArgumentException.class, () -> one.minus(other));
    }

    @Test
    void oneCompoundAloneTellsNoError() {
        Sample sample = new Sample();
        sample.add(List.of(COMPOUNDS.get(0)), 0.5);
        Figure figure = new Bootstrap(COMPOUNDS.subList(0, 1), 400, 1).figure(sample);
        assertEquals(0.5, figure.value(), 0);
        assertEquals(0, figure.standardError(), 0);
        assertThrows(
                IllegalArgumentException.class, () -> new Bootstrap(COMPOUNDS.subList(1, 9), 400, 1).figure(sample));
    }

    private static Bootstrap bootstrap(long seed) {
        return new Bootstrap(COMPOUNDS, 400, seed);
    }
}
