package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import midplate.advice.Adviser;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import midplate.inference.Series;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Compounds as the model expects them")
class ExpectedCompoundsTest {
    private static final SolventCatalogue CATALOGUE = SolventCatalogue.builtIn();
    private static final Contender PROGRAM =
            new AdviserContender("program", CATALOGUE, Adviser.of(CATALOGUE, MeasuredPairs.builtIn(CATALOGUE)));

    @TempDir
    Path folder;

    private OpenMeasurements drawn(int number) throws IOException {
        return PROGRAM.expected(Invented.measurements(folder, 5), number).orElseThrow();
    }

    @Test
    void areMeasuredAtTheSameRatiosAndNoTwoDrawingsShareOne() throws IOException {
        OpenMeasurements like = Invented.measurements(folder, 5);
        OpenMeasurements one = drawn(1);
        for (PairName pair : List.of(PairName.HEXANE_ETHYL_ACETATE, PairName.DICHLOROMETHANE_METHANOL)) {
            assertArrayEquals(like.table(pair).percents(), one.table(pair).percents());
        }
        assertEquals(one.rows(), drawn(1).rows());
        List<Series> both = new ArrayList<>(one.series());
        both.retainAll(drawn(2).series());
        assertEquals(List.of(), both);
        assertNotEquals(
                one.rows().stream().map(row -> row.rf()).toList(),
                drawn(2).rows().stream().map(row -> row.rf()).toList());
    }

    // 90 % was said by the model that made them, and a little more is held where a band reaches a line;
    // with five drawings of 40 compounds the standard error is near 0.01
    @Test
    void arePredictedAsSurelyAsIsSaid() throws IOException {
        Samples all = new Samples();
        for (int number = 1; number <= 5; number++) {
            all.addAll(Benchmark.ask(PROGRAM, RatioTasks.of(drawn(number)), List.of()));
        }
        Map<String, Sample> samples = all.byName();
        for (String kind : List.of("one-trial-informative", "two-trials", "methanol-one-trial-informative")) {
            double cover = samples.get(kind + ".cover90").mean();
            assertTrue(cover > 0.87 && cover < 0.94, kind + " " + cover);
        }
    }
}
