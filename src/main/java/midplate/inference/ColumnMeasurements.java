package midplate.inference;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The open measurements of columns, read from a folder that holds {@code column.csv}. A row whose end is not after its start, or
 * whose start is not above 0, cannot be used and is left out.
 *
 * @see "Wu2024"
 */
public final class ColumnMeasurements {
    private final String sha256;
    private final int rowsRead;
    private final List<ColumnMeasurement> runs;

    private ColumnMeasurements(String sha256, int rowsRead, List<ColumnMeasurement> runs) {
        this.sha256 = sha256;
        this.rowsRead = rowsRead;
        this.runs = List.copyOf(runs);
    }

    /**
     * Reads a folder; empty where it holds no such file.
     *
     * @throws BadMeasurements when the file cannot be read or a cell cannot be used
     */
    public static Optional<ColumnMeasurements> read(Path folder) {
        Path file = folder.resolve(ColumnReader.FILE);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (IOException e) {
            throw new BadMeasurements(
                            ColumnReader.FILE,
                            "-",
                            "-",
                            String.valueOf(e.getMessage()),
                            "a readable file",
                            "Make it readable, or take it out of the folder.")
                    .because(e);
        }
        List<ColumnMeasurement> all = ColumnReader.read(bytes);
        List<ColumnMeasurement> usable =
                all.stream().filter(ColumnMeasurement::isUsable).toList();
        return Optional.of(new ColumnMeasurements(Digest.sha256Text(bytes), all.size(), usable));
    }

    /** The runs of structures inside or outside of a fold. */
    public ColumnMeasurements select(Fold fold, Fold.Part part) {
        List<ColumnMeasurement> kept = runs.stream()
                .filter(run -> fold.holds(run.smiles()) == (part == Fold.Part.INSIDE))
                .toList();
        return new ColumnMeasurements(sha256, rowsRead, kept);
    }

    /** The runs that can be used, in the order of the file. */
    public List<ColumnMeasurement> runs() {
        return runs;
    }

    /** The runs of one structure, in the order of the file. */
    public List<ColumnMeasurement> runs(String smiles) {
        return runs.stream().filter(run -> run.smiles().equals(smiles)).toList();
    }

    /** How many rows the file has, those left out included. */
    public int rowsRead() {
        return rowsRead;
    }

    /** The structures, sorted. */
    public List<String> structures() {
        return List.copyOf(
                new TreeSet<>(runs.stream().map(ColumnMeasurement::smiles).toList()));
    }

    /** SHA-256 of the file, in hexadecimal digits. */
    public String sha256() {
        return sha256;
    }
}
