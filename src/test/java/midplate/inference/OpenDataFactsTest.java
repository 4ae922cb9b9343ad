package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Facts of the open measurements (Xu et al., Chem 8 (2022) 3202) come out of the file. The counts were made with pandas
 * 1.5.3 on the same table, by code that shares nothing with this.
 */
@DisplayName("Facts of the open measurements")
class OpenDataFactsTest {
    @Test
    void rowsSeriesAndStructuresAreAsTold() throws IOException {
        List<Measurement> rows = rows();
        Set<Series> series = rows.stream().map(Measurement::series).collect(Collectors.toSet());
        Set<String> structures = series.stream().map(Series::smiles).collect(Collectors.toSet());
        assertEquals(2887, rows.size());
        assertEquals(227, series.size());
        assertEquals(201, structures.size());
    }

    @Test
    void repeatsAreAsTold() throws IOException {
        double[] spreads = OpenMeasurements.repeats(rows()).stream()
                .mapToDouble(Repeat::spread)
                .sorted()
                .toArray();
        assertEquals(166, spreads.length);
        assertEquals(0.04, (spreads[82] + spreads[83]) / 2, 0.005, "median difference");
        assertTrue(spreads[165] > 0.8, "differences up to 0.9: " + spreads[165]);
    }

    @Test
    void threeStructuresContradictThemselves() {
        OpenMeasurements all = OpenData.read();
        assertEquals(3, all.contradictions().size());
        assertEquals(198, all.structures().size());
        assertTrue(all.contradictions().stream().allMatch(found -> found.meanSpread() > 0.15));
        assertTrue(all.contradictions().stream()
                .noneMatch(found -> all.structures().contains(found.smiles())));
    }

    @Test
    void percentagesAreAsTold() {
        OpenMeasurements all = OpenData.read();
        assertArrayEquals(
                new double[] {0, 2, 4.8, 16.7, 25, 50, 66.7, 100},
                oneDecimal(all.table(PairName.HEXANE_ETHYL_ACETATE)));
        assertArrayEquals(
                new double[] {0, 1, 2, 3.2, 4.8, 9.1}, oneDecimal(all.table(PairName.DICHLOROMETHANE_METHANOL)));
        ReadingTable ether = all.table(PairName.HEXANE_DIETHYL_ETHER);
        assertArrayEquals(new double[] {33.3, 50, 100}, oneDecimal(ether.above(0)));
        assertEquals(0, ether.percents()[0]);
    }

    @Test
    void pureEtherIsSaturated() throws IOException {
        double[] pure = rows().stream()
                .filter(row -> OpenSolvent.DIETHYL_ETHER.of(row.fractions()) == 1)
                .mapToDouble(Measurement::rf)
                .toArray();
        long high = Arrays.stream(pure).filter(rf -> rf > 0.95).count();
        assertEquals(0.78, high / (double) pure.length, 0.005);
    }

    @Test
    void foldsSplitTheStructures() {
        OpenMeasurements all = OpenData.read();
        Set<String> seen = new HashSet<>();
        int rows = 0;
        for (Fold fold : IntStream.range(0, 5).mapToObj(i -> new Fold(i, 5)).toList()) {
            OpenMeasurements inside = all.select(fold, Fold.Part.INSIDE);
            OpenMeasurements outside = all.select(fold, Fold.Part.OUTSIDE);
            assertEquals(
                    all.rows().size(), inside.rows().size() + outside.rows().size());
            inside.structures().forEach(smiles -> assertTrue(seen.add(smiles), smiles + " stands in two folds"));
            rows += inside.rows().size();
        }
        assertEquals(all.rows().size(), rows);
        assertEquals(198, seen.size());
    }

    // What PlateScatter says of them: pairs of series of one structure with three ratios or more in common.
    @Test
    void seriesOfOneStructureLieApartAsAWholeAndScatterAroundThat() {
        assertArrayEquals(new double[] {24, 0.0399, 0.0363}, apart(PairName.DICHLOROMETHANE_METHANOL), 0.0001);
        assertArrayEquals(new double[] {6, 0.0368, 0.0217}, apart(PairName.HEXANE_DIETHYL_ETHER), 0.0001);
    }

    /** Number of pairs of series of one structure, mean distance of their mean Rf, mean distance of their Rf around that. */
    private static double[] apart(PairName pair) {
        ReadingTable table = pair == PairName.HEXANE_DIETHYL_ETHER
                ? OpenData.read().table(pair).above(0)
                : OpenData.read().table(pair);
        List<double[]> found = new ArrayList<>();
        for (int one = 0; one < table.series().size(); one++) {
            for (int other = one + 1; other < table.series().size(); other++) {
                if (table.series()
                        .get(one)
                        .smiles()
                        .equals(table.series().get(other).smiles())) {
                    double[] first = table.row(one);
                    double[] second = table.row(other);
                    double[] away = IntStream.range(0, first.length)
                            .mapToDouble(j -> first[j] - second[j])
                            .filter(each -> !Double.isNaN(each))
                            .toArray();
                    if (away.length >= 3) {
                        double mean = Arrays.stream(away).average().orElseThrow();
                        double around = Arrays.stream(away)
                                .map(each -> Math.abs(each - mean))
                                .average()
                                .orElseThrow();
                        found.add(new double[] {Math.abs(mean), around});
                    }
                }
            }
        }
        return new double[] {
            found.size(),
            found.stream().mapToDouble(each -> each[0]).average().orElseThrow(),
            found.stream().mapToDouble(each -> each[1]).average().orElseThrow()
        };
    }

    private static List<Measurement> rows() throws IOException {
        return MeasurementReader.read(Files.readAllBytes(OpenData.folder().resolve(MeasurementReader.FILE)));
    }

    private static double[] oneDecimal(ReadingTable table) {
        return Arrays.stream(table.percents())
                .map(percent -> Math.rint(percent * 10) / 10)
                .toArray();
    }
}
