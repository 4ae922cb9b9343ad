package midplate.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import midplate.inference.ColumnMeasurement;
import midplate.inference.ColumnMeasurements;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import midplate.inference.TableText;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What was foretold of columns is marked")
class ColumnMarksTest {
    @TempDir
    Path folder;

    private final Samples samples = new Samples();
    private final ColumnMarks marks = new ColumnMarks(samples, "CC");

    private static ColumnMeasurement run(double grams) {
        return new ColumnMeasurement("CC", grams, 10, 0.1, 80, 120);
    }

    private double mean(String figure) {
        Sample sample = samples.byName().get(figure);
        return sample == null ? Double.NaN : sample.mean();
    }

    // own arithmetic: the middle of 80 and 120 ml is 100 ml; 124 is within 25 %, 74 within 35 %, 136 within neither
    @Test
    void bySharesOfTheMiddleSeen() {
        marks.middle("all", run(4), 124);
        marks.middle("all", run(4), 74);
        marks.middle("all", run(4), 136);
        marks.middle("all", run(25), 100);
        assertEquals(1.0 / 3, mean("all.4g.within25"), 1e-12);
        assertEquals(2.0 / 3, mean("all.4g.within35"), 1e-12);
        assertEquals((Math.log(1.24) - Math.log(0.74) + Math.log(1.36)) / 3, mean("all.4g.error"), 1e-12);
        assertEquals(1, mean("all.other.within25"));
        assertEquals(3, samples.byName().get("all.4g.error").size());
    }

    @Test
    void byWhetherBandsHoldStartMiddleAndEnd() {
        marks.bands(
                "all", run(4), new ColumnAnswers.Foretold(100, Math.log(1.5), new double[] {81, 90, 100}, new double[] {
                    90, 110, 120
                }));
        assertEquals(0, mean("all.cover90.start"));
        assertEquals(1, mean("all.cover90.middle"));
        assertEquals(1, mean("all.cover90.end"));
        assertEquals(0, mean("all.width-error"), 1e-12);
        assertEquals(Math.log(110.0 / 90), mean("all.narrow"), 1e-12);
    }

    @Test
    void compoundsJoinByStructureAndRatiosByTheirFirstDigits() throws Exception {
        OpenMeasurements plates = new TableText()
                .row(1, "CC", PairName.HEXANE_ETHYL_ACETATE, 16.67, 0.3)
                .row(2, "CC", PairName.HEXANE_ETHYL_ACETATE, 16.67, 0.4)
                .row(3, "CCC", PairName.HEXANE_ETHYL_ACETATE, 25, 0.5)
                .read(folder);
        Files.writeString(folder.resolve("column.csv"), """
                cas,name,smiles,cartridge,petroleum_ether_parts,ethyl_acetate_parts,flow_ml_min,load_ul,start_ml,end_ml
                ,,CC,4g,5,1,10,100,20,30
                ,,CO,4g,5,1,10,100,20,30
                """);
        List<ColumnTask> tasks =
                ColumnTask.of(plates, ColumnMeasurements.read(folder).orElseThrow());
        assertEquals(1, tasks.size());
        assertEquals("CC", tasks.get(0).smiles());
        Map<Double, Double> same = tasks.get(0).plateAt(100.0 / 6);
        assertEquals(0.35, same.values().iterator().next(), 1e-12);
        assertTrue(tasks.get(0).plateAt(25).isEmpty());
    }

    @Test
    void theTableTellsTheProgramBesideTheIdealLawAndRepeatsWithTheirNumber() {
        Figure figure = new Figure(0.732, 0.047, 269);
        Map<String, Map<String, Figure>> columns = Map.of(
                ColumnBenchmark.PROGRAM, Map.of("all.4g.within25", figure),
                ColumnBenchmark.IDEAL, Map.of("all.4g.within25", new Figure(0.6, 0.05, 269)),
                ColumnBenchmark.REPEAT, Map.of("all.4g.within25", new Figure(0.9, 0.05, 31)));
        Accuracy accuracy = new Accuracy(
                Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), columns, Map.of(),
                Map.of());
        String[] lines = ColumnTable.of(accuracy).orElseThrow().split("\n");
        assertEquals("| columns | Midplate | Ideal law | A second run | runs |", lines[0]);
        assertTrue(lines[2].endsWith("| 73.2 ± 4.7 % | 60.0 ± 5.0 % | 90.0 ± 5.0 % (n = 31) | 269 |"), lines[2]);
        assertEquals(accuracy, AccuracyFile.read(AccuracyFile.write(accuracy)));
    }
}
