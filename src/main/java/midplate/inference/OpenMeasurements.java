package midplate.inference;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The open measurements of Rf on silica plates, read from a folder that holds {@code tlc.csv}.
 *
 * <p>Structures whose series contradict each other are left out and listed. Rows keep the order of the file; tables have an
 * order of their own.
 *
 * @see "Xu2022"
 * @see "XuProtocol2022"
 */
public final class OpenMeasurements {
    /** A structure is left out when its series differ by more than this on average [Rf]. */
    static final double LARGEST_MEAN_SPREAD = 0.15;

    private final String sha256;
    private final int rowsRead;
    private final List<Measurement> rows;
    private final List<Contradiction> contradictions;

    private OpenMeasurements(String sha256, int rowsRead, List<Measurement> rows, List<Contradiction> contradictions) {
        this.sha256 = sha256;
        this.rowsRead = rowsRead;
        this.rows = List.copyOf(rows);
        this.contradictions = contradictions;
    }

    /**
     * Reads a folder.
     *
     * @param folder holds {@code tlc.csv}
     * @throws BadMeasurements when the file is missing or a cell cannot be used
     */
    public static OpenMeasurements read(Path folder) {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(folder.resolve(MeasurementReader.FILE));
        } catch (IOException e) {
            throw new BadMeasurements(
                            MeasurementReader.FILE,
                            "-",
                            "-",
                            String.valueOf(e.getMessage()),
                            "a readable file in the folder given",
                            "Give the folder that holds " + MeasurementReader.FILE + ".")
                    .because(e);
        }
        List<Measurement> all = MeasurementReader.read(bytes);
        List<Contradiction> contradictions = contradictions(all);
        Set<String> out = contradictions.stream().map(Contradiction::smiles).collect(Collectors.toSet());
        List<Measurement> kept =
                all.stream().filter(row -> !out.contains(row.series().smiles())).toList();
        return new OpenMeasurements(Digest.sha256Text(bytes), all.size(), kept, contradictions);
    }

    private static List<Contradiction> contradictions(List<Measurement> rows) {
        Map<String, List<Repeat>> byStructure = repeats(rows).stream()
                .collect(Collectors.groupingBy(Repeat::smiles, TreeMap::new, Collectors.toList()));
        List<Contradiction> found = new ArrayList<>();
        byStructure.forEach((smiles, repeats) -> {
            double mean = repeats.stream().mapToDouble(Repeat::spread).average().orElse(0);
            if (mean > LARGEST_MEAN_SPREAD) {
                found.add(new Contradiction(smiles, mean));
            }
        });
        return List.copyOf(found);
    }

    static List<Repeat> repeats(List<Measurement> rows) {
        record Place(String smiles, List<Double> fractions) {}
        Map<Place, List<Measurement>> places = rows.stream()
                .collect(Collectors.groupingBy(row -> new Place(row.series().smiles(), row.fractions())));
        List<Repeat> repeats = new ArrayList<>();
        places.forEach((place, measured) -> {
            if (measured.size() > 1) {
                List<Double> rfs = measured.stream()
                        .sorted((a, b) -> a.series().compareTo(b.series()))
                        .map(Measurement::rf)
                        .toList();
                repeats.add(new Repeat(place.smiles(), place.fractions(), rfs));
            }
        });
        repeats.sort((a, b) -> {
            int bySmiles = a.smiles().compareTo(b.smiles());
            return bySmiles != 0 ? bySmiles : compare(a.fractions(), b.fractions());
        });
        return List.copyOf(repeats);
    }

    private static int compare(List<Double> one, List<Double> other) {
        for (int i = 0; i < one.size(); i++) {
            int order = Double.compare(one.get(i), other.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    /** The structures inside or outside of a fold; what was left out stays listed. */
    public OpenMeasurements select(Fold fold, Fold.Part part) {
        List<Measurement> kept = rows.stream()
                .filter(row -> fold.holds(row.series().smiles()) == (part == Fold.Part.INSIDE))
                .toList();
        return new OpenMeasurements(sha256, rowsRead, kept, contradictions);
    }

    /** All but some structures; what was left out for its contradictions stays listed. */
    public OpenMeasurements without(Set<String> structures) {
        List<Measurement> kept = rows.stream()
                .filter(row -> !structures.contains(row.series().smiles()))
                .toList();
        return new OpenMeasurements(sha256, rowsRead, kept, contradictions);
    }

    /** Other rows in place of those read, such as drawn ones; the digest stays that of the file. */
    public OpenMeasurements withRows(List<Measurement> others) {
        return new OpenMeasurements(sha256, rowsRead, others, contradictions);
    }

    /** The readings of a pair. Hexane alone belongs to both pairs with hexane: leave it out with {@code above(0)}. */
    public ReadingTable table(PairName pair) {
        return ReadingTable.of(pair, rows);
    }

    /** The rows in use, in the order of the file. */
    public List<Measurement> rows() {
        return rows;
    }

    /** How many rows the file has, those left out included. */
    public int rowsRead() {
        return rowsRead;
    }

    /** The series in use, sorted. */
    public List<Series> series() {
        return List.copyOf(new TreeSet<>(rows.stream().map(Measurement::series).toList()));
    }

    /** The structures in use, sorted. */
    public List<String> structures() {
        return List.copyOf(
                new TreeSet<>(rows.stream().map(row -> row.series().smiles()).toList()));
    }

    /** What was measured more than once, by structure and eluent: it tells the repeat error. */
    public List<Repeat> repeats() {
        return repeats(rows);
    }

    /** The structures left out because their series contradict each other, sorted. */
    public List<Contradiction> contradictions() {
        return contradictions;
    }

    /** SHA-256 of the file, in hexadecimal digits. */
    public String sha256() {
        return sha256;
    }
}
