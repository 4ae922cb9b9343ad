package midplate.catalogue;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A copy of the good data, of which a test breaks one thing. */
abstract class CopiedSolventData {
    private static final Path GOOD = Path.of("solvent-data");

    @TempDir
    Path folder;

    @BeforeEach
    void copyTheGoodData() throws IOException {
        try (Stream<Path> files = Files.list(GOOD)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }

    String fault() {
        return String.valueOf(assertThrows(BadSolventData.class, () -> SolventCatalogue.read(folder))
                .getMessage());
    }

    void edit(String file, UnaryOperator<String> change) throws IOException {
        String before = Files.readString(folder.resolve(file));
        String after = change.apply(before);
        assertTrue(!before.equals(after), "the test changed nothing in " + file);
        Files.writeString(folder.resolve(file), after);
    }

    List<List<String>> rows(String file) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        try (CSVParser parser =
                CSVParser.parse(new StringReader(Files.readString(folder.resolve(file))), CSVFormat.RFC4180)) {
            parser.forEach(line -> rows.add(new ArrayList<>(line.toList())));
        }
        return rows;
    }

    /** The first row of a solvent and property, as a spreadsheet counts. */
    int rowOf(String file, String solvent, String property) throws IOException {
        List<List<String>> rows = rows(file);
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i).get(0).equals(solvent) && rows.get(i).get(1).equals(property)) {
                return i + 1;
            }
        }
        throw new AssertionError("no row " + solvent + " " + property);
    }

    void set(String file, int row, String column, String cell) throws IOException {
        List<List<String>> rows = rows(file);
        int at = rows.get(0).indexOf(column);
        assertTrue(!rows.get(row - 1).get(at).equals(cell), "the test changed nothing");
        rows.get(row - 1).set(at, cell);
        StringWriter out = new StringWriter();
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
            printer.printRecords(rows);
        }
        Files.writeString(folder.resolve(file), out.toString());
    }
}
