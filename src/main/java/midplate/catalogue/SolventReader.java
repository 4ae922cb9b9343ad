package midplate.catalogue;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import midplate.chemistry.Solvent;

/** Reads {@code solvents.csv}: who the solvents are and what they are called. */
final class SolventReader {
    static final String FILE = "solvents.csv";

    private static final List<String> COLUMNS = List.of("id", "name", "cas", "formula", "synonyms");
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final Pattern CAS = Pattern.compile("([0-9]{2,7}-[0-9]{2}-[0-9])?");
    private static final Pattern FORMULA = Pattern.compile("([A-Z][a-z]?[0-9]*)*");

    private SolventReader() {}

    static Map<String, Solvent> read(DataFolder folder) {
        Map<String, Solvent> solvents = new LinkedHashMap<>();
        Map<String, String> owners = new LinkedHashMap<>();
        for (CsvRow row : CsvTable.read(folder, FILE, COLUMNS)) {
            Solvent solvent = solvent(row);
            if (solvents.put(solvent.id(), solvent) != null) {
                throw row.bad("id", "an id that no other row has", "Remove one of the two rows.");
            }
            claim(row, "id", solvent.id(), solvent, owners);
            claim(row, "name", solvent.name(), solvent, owners);
            solvent.synonyms().forEach(synonym -> claim(row, "synonyms", synonym, solvent, owners));
        }
        return Collections.unmodifiableMap(solvents);
    }

    private static Solvent solvent(CsvRow row) {
        String id = row.matching("id", ID, "lower case with hyphens, like ethyl-acetate");
        String cas = row.matching("cas", CAS, "a CAS number, or nothing for a mixture");
        if (!cas.isEmpty() && !checkDigitFits(cas)) {
            throw row.bad("cas", "a CAS number whose last digit checks the others", "Look it up again.");
        }
        String formula = row.matching("formula", FORMULA, "a molecular formula, or nothing for a mixture");
        List<String> synonyms = Arrays.stream(row.text("synonyms").split(";"))
                .map(String::strip)
                .filter(synonym -> !synonym.isEmpty())
                .toList();
        return new Solvent(id, row.filled("name"), cas, formula, synonyms);
    }

    /** A name may be claimed twice by one solvent, never by two. */
    private static void claim(CsvRow row, String column, String name, Solvent solvent, Map<String, String> owners) {
        String owner = owners.putIfAbsent(NameIndex.plain(name), solvent.id());
        if (owner != null && !owner.equals(solvent.id())) {
            throw row.bad(
                    column, "names of this solvent alone; \"" + name + "\" also means " + owner, "Remove it from one.");
        }
    }

    /** The last digit of a CAS number is the sum of the others, each times its place counted from the right, modulo 10. */
    private static boolean checkDigitFits(String cas) {
        String digits = cas.replace("-", "");
        int sum = 0;
        for (int place = 1; place < digits.length(); place++) {
            sum += place * Character.digit(digits.charAt(digits.length() - 1 - place), 10);
        }
        return sum % 10 == Character.digit(digits.charAt(digits.length() - 1), 10);
    }
}
