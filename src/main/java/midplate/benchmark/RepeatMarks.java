package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import midplate.inference.ReadingTable;
import midplate.inference.Series;

/**
 * What a second series of the same structure says of the first one: the error that no model can undercut, since it is told the
 * compound itself. {@code repeat.error} is the mean absolute difference in Rf between every two series of a structure at the
 * same eluent, {@code repeat.PAIR.error} the same in one pair of solvents. Hexane alone counts once. Structures left out for
 * their contradictions are left out here as well, so it is what good repeats do. Values belong to the first series of their
 * structure, so that resampling compounds resamples structures.
 */
final class RepeatMarks {
    private static final String NAME = "repeat";

    private final Samples samples = new Samples();
    private final Map<String, Series> firsts = new TreeMap<>();

    private RepeatMarks() {}

    static RepeatMarks of(OpenMeasurements measurements) {
        RepeatMarks marks = new RepeatMarks();
        measurements.series().forEach(series -> marks.firsts.putIfAbsent(series.smiles(), series));
        for (PairName pair : PairName.values()) {
            ReadingTable table = measurements.table(pair);
            marks.mark(NAME + "." + pair.name().toLowerCase(Locale.ROOT).replace('_', '-'), table);
            boolean shared = pair == PairName.HEXANE_DIETHYL_ETHER;
            marks.mark(NAME, shared ? table.above(0) : table);
        }
        return marks;
    }

    /** How many structures have two or more series that {@link TrueCurve} takes: whose plates a repeat could foretell. */
    static long structuresWithTwoCurves(OpenMeasurements measurements) {
        return TrueCurve.of(measurements.table(PairName.HEXANE_ETHYL_ACETATE)).stream()
                .collect(Collectors.groupingBy(curve -> curve.series().smiles(), Collectors.counting()))
                .values()
                .stream()
                .filter(count -> count > 1)
                .count();
    }

    /** The figures: errors, and beside each how many structures stand behind it; the error of one structure has no error. */
    Map<String, Figure> figures(int resamples, long seed) {
        Bootstrap bootstrap = new Bootstrap(firsts.values(), resamples, seed);
        Map<String, Figure> figures = new TreeMap<>();
        samples.byName().forEach((name, sample) -> {
            int structures = sample.sums().size();
            Figure figure = bootstrap.figure(sample);
            double error = structures > 1 ? figure.standardError() : Double.NaN;
            figures.put(name + ".error", new Figure(figure.value(), error, figure.count()));
            figures.put(name + ".structures", new Figure(structures, Double.NaN, figure.count()));
        });
        return figures;
    }

    private void mark(String figure, ReadingTable table) {
        Map<String, List<double[]>> rows = new TreeMap<>();
        for (int row = 0; row < table.series().size(); row++) {
            String smiles = table.series().get(row).smiles();
            rows.computeIfAbsent(smiles, key -> new ArrayList<>()).add(table.row(row));
        }
        rows.forEach((smiles, series) -> {
            for (int one = 0; one < series.size(); one++) {
                for (int other = one + 1; other < series.size(); other++) {
                    differences(figure, smiles, series.get(one), series.get(other));
                }
            }
        });
    }

    private void differences(String figure, String smiles, double[] one, double[] other) {
        Series member = firsts.get(smiles);
        for (int column = 0; column < one.length && member != null; column++) {
            double difference = Math.abs(one[column] - other[column]);
            if (!Double.isNaN(difference)) {
                samples.add(figure, List.of(member), difference);
            }
        }
    }
}
