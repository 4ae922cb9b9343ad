package midplate.wire;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;

/** What a header says that a column holds. */
final class Headers {
    private static final Set<String> HUNDREDFOLD =
            Set.of("hrf", "hrfvalue", "hrfwert", "rf%", "rfx100", "100rf", "rf100", "rfmal100");
    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");

    /** A header stands in one of the first rows, below lines that say what the table is. */
    static final int LOOKED_AT = 10;

    /** So many rows say what stands below a header. */
    private static final int SPOKEN_FOR = 200;

    private Headers() {}

    /**
     * A meaning.
     *
     * @param column which
     * @param factor by which its numbers become those of the column: 10 where they are centimetres, 0.01 for hRf
     */
    record Meaning(RunColumn column, BigDecimal factor) {
        static Meaning plain(RunColumn column) {
            return new Meaning(column, BigDecimal.ONE);
        }
    }

    /** What a header means by itself; empty where it is none that is known. */
    static Optional<Meaning> meaning(String header) {
        String plain = RunColumn.plain(header);
        if (plain.isEmpty()) {
            return Optional.empty();
        }
        if (HUNDREDFOLD.contains(plain)) {
            return Optional.of(new Meaning(RunColumn.RF, HUNDREDTH));
        }
        return RunColumn.called(plain)
                .map(Meaning::plain)
                .or(() -> length(plain, "mm", BigDecimal.ONE))
                .or(() -> length(plain, "cm", BigDecimal.TEN));
    }

    /** Whether a header, whatever it means, says that its numbers are centimetres. */
    static boolean isInCentimetres(String header) {
        return RunColumn.plain(header).endsWith("cm");
    }

    private static Optional<Meaning> length(String plain, String unit, BigDecimal factor) {
        if (!plain.endsWith(unit)) {
            return Optional.empty();
        }
        String name = plain.substring(0, plain.length() - unit.length());
        String bare = name.endsWith("in") ? name.substring(0, name.length() - 2) : name;
        return RunColumn.called(name)
                .or(() -> RunColumn.called(bare))
                .filter(RunColumn::isLength)
                .map(column -> new Meaning(column, factor));
    }

    /**
     * The row of headers: the one of the first with the most cells that are known; empty where there is none. One known word may be the
     * name of a compound or stand in a title.
     */
    static OptionalInt row(List<SheetRows.Row> rows, Predicate<String> isKnown) {
        int best = -1;
        long most = 0;
        boolean numbersAbove = false;
        for (int i = 0; i < Math.min(LOOKED_AT, rows.size()); i++) {
            List<String> cells = rows.get(i).cells();
            boolean numbers = cells.stream().anyMatch(TableNumbers::looksLikeOne);
            long known = cells.stream().filter(isKnown).count();
            boolean wide = cells.stream().filter(cell -> !cell.isEmpty()).count() > 1;
            boolean one = known == 1 && !numbers && (i == 0 || (wide && !numbersAbove));
            boolean more = known > 1 && (i == 0 || !numbers);
            long merit = 2 * known + (wide ? 1 : 0);
            if ((one || more) && merit > most) {
                most = merit;
                best = i;
            }
            numbersAbove |= numbers;
        }
        return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
    }

    /** The row of headers, with solvents whose share it tells; the first row where it has words over numbers. */
    static OptionalInt row(List<SheetRows.Row> rows, Map<RunColumn, OptionalInt> asked, SolventWords words) {
        OptionalInt named = row(
                rows,
                cell -> meaning(cell).isPresent()
                        || !words.shared(cell).isEmpty()
                        || words.pairIn(cell).isPresent());
        return named.isPresent() || !firstIsOfWords(rows, asked) ? named : OptionalInt.of(0);
    }

    private static boolean firstIsOfWords(List<SheetRows.Row> rows, Map<RunColumn, OptionalInt> asked) {
        SheetRows.Row first = rows.get(0);
        boolean noNumber = first.cells().stream().noneMatch(TableNumbers::looksLikeOne);
        List<OptionalInt> numbers = asked.entrySet().stream()
                .filter(each -> each.getKey().isNumber())
                .map(Map.Entry::getValue)
                .toList();
        if (!numbers.isEmpty()) {
            return numbers.stream().allMatch(place -> place.isEmpty() || isWord(first.cell(place.getAsInt())));
        }
        boolean numberBelow = rows.stream()
                .skip(1)
                .limit(SPOKEN_FOR)
                .anyMatch(row -> row.cells().stream().anyMatch(TableNumbers::looksLikeOne));
        return noNumber && numberBelow;
    }

    private static boolean isWord(String cell) {
        return !cell.isEmpty() && !TableNumbers.looksLikeOne(cell);
    }
}
