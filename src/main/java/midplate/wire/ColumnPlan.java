package midplate.wire;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import midplate.chemistry.Solvent;
import midplate.words.Message;

/** Which column of a table holds what: by its headers, by what its cells look like where it has none, or as it was asked for. */
final class ColumnPlan {
    /** So many different cells of a column are shown as examples. */
    private static final int EXAMPLES = 3;

    private static final int LOOKED_AT = 200;
    private static final char COMMA = ',';
    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d+");
    private static final Pattern DIGITS = Pattern.compile("\\d+");
    private static final Pattern CONTROL = Pattern.compile("[\\x00-\\x1f\\x7f-\\x9f]+");

    private final List<SheetRows.Row> body;
    private final List<String> headers;
    private final Map<RunColumn, Integer> places = new EnumMap<>(RunColumn.class);
    private final Map<Integer, BigDecimal> factors = new HashMap<>();
    private final List<Message> notes = new ArrayList<>();
    private final char delimiter;
    private List<Solvent> shared = List.of();

    private ColumnPlan(
            List<SheetRows.Row> rows, Map<RunColumn, OptionalInt> asked, SolventWords words, char delimiter) {
        this.delimiter = delimiter;
        boolean header = hasHeader(rows, asked, words);
        headers = header ? rows.get(0).cells() : List.of();
        body = header ? rows.subList(1, rows.size()) : rows;
        asked.forEach((column, place) -> place.ifPresent(index -> places.put(column, index)));
        if (header) {
            byHeaders(asked, words);
        } else {
            notes.add(Message.of("import.no-header"));
            if (asked.isEmpty()) {
                byLooks();
            }
        }
    }

    /**
     * The plan.
     *
     * @param rows at least one
     * @param asked where each column is to be looked for; nowhere where the number is empty
     * @param delimiter what parts the cells
     */
    static ColumnPlan of(
            List<SheetRows.Row> rows, Map<RunColumn, OptionalInt> asked, SolventWords words, char delimiter) {
        return new ColumnPlan(rows, asked, words, delimiter);
    }

    private static boolean hasHeader(List<SheetRows.Row> rows, Map<RunColumn, OptionalInt> asked, SolventWords words) {
        SheetRows.Row first = rows.get(0);
        long known = first.cells().stream()
                .filter(cell ->
                        Headers.meaning(cell).isPresent() || !words.shared(cell).isEmpty())
                .count();
        boolean noNumber = first.cells().stream().noneMatch(TableNumbers::looksLikeOne);
        if (known > 1
                || (known == 1 && noNumber)) { // a compound may be called "Probe" or "start": one word beside numbers
            return true;
        }
        List<OptionalInt> numbers = asked.entrySet().stream()
                .filter(each -> each.getKey().isNumber())
                .map(Map.Entry::getValue)
                .toList();
        if (!numbers.isEmpty()) {
            return numbers.stream().allMatch(place -> place.isEmpty() || isWord(first.cell(place.getAsInt())));
        }
        boolean numberBelow = rows.stream()
                .skip(1)
                .limit(LOOKED_AT)
                .anyMatch(row -> row.cells().stream().anyMatch(TableNumbers::looksLikeOne));
        return noNumber && numberBelow;
    }

    private static boolean isWord(String cell) {
        return !cell.isEmpty() && !TableNumbers.looksLikeOne(cell);
    }

    private void byHeaders(Map<RunColumn, OptionalInt> asked, SolventWords words) {
        for (int i = 0; i < headers.size(); i++) {
            String header = headers.get(i);
            Optional<Headers.Meaning> meaning = Headers.meaning(header);
            List<Solvent> named = meaning.isEmpty() ? words.shared(header) : List.of();
            Optional<RunColumn> column = meaning.map(Headers.Meaning::column)
                    .or(() -> named.isEmpty() ? Optional.empty() : Optional.of(RunColumn.PERCENT_STRONG));
            if (column.isEmpty()) {
                continue;
            }
            boolean free = !asked.containsKey(column.get()) && !places.containsValue(i);
            if (free) {
                places.putIfAbsent(column.get(), i);
            }
            if (Integer.valueOf(i).equals(places.get(column.get()))) {
                meaning.ifPresent(known -> factor(known, header));
                shared = named.isEmpty() ? shared : named;
            }
        }
    }

    private void factor(Headers.Meaning meaning, String header) {
        if (meaning.factor().compareTo(BigDecimal.ONE) != 0) {
            factors.put(places.get(meaning.column()), meaning.factor());
            String key = meaning.column() == RunColumn.RF ? "import.hundredfold" : "import.centimetres";
            notes.add(Message.of(key, "header", ShownText.of(header)));
        }
    }

    /** Without headers: the only column of numbers between 0 and 1 is the Rf, the only one of words the spot. */
    private void byLooks() {
        List<Integer> rf = new ArrayList<>();
        List<Integer> words = new ArrayList<>();
        for (int i = 0; i < width(); i++) {
            List<String> cells = filled(i);
            if (cells.stream().allMatch(ColumnPlan::mayBeRf) && cells.stream().anyMatch(cell -> cell.length() > 1)) {
                rf.add(i);
            } else if (cells.stream().noneMatch(TableNumbers::looksLikeOne)
                    && cells.stream().allMatch(cell -> TypedEluent.percent(cell).isEmpty())) {
                words.add(i);
            }
        }
        if (rf.size() == 1) {
            places.put(RunColumn.RF, rf.get(0));
            if (words.size() == 1) {
                places.put(RunColumn.SPOT, words.get(0));
            }
        }
    }

    private static boolean mayBeRf(String cell) {
        return cell.matches("[01]?[.,]\\d+|0|1");
    }

    private List<String> filled(int index) {
        return body.stream()
                .limit(LOOKED_AT)
                .map(row -> row.cell(index))
                .filter(cell -> !cell.isEmpty())
                .toList();
    }

    /** How many columns there are. */
    int width() {
        int widest = body.stream()
                .limit(LOOKED_AT)
                .mapToInt(row -> row.cells().size())
                .max()
                .orElse(0);
        return Math.max(headers.size(), widest);
    }

    /** Whether a row is longer than the header, as where commas part the cells and stand before decimals as well. */
    boolean isCutAtDecimals(SheetRows.Row row) {
        List<String> cells = row.cells();
        boolean longer = delimiter == COMMA
                && !headers.isEmpty()
                && cells.stream().skip(headers.size()).anyMatch(cell -> !cell.isEmpty());
        for (int i = 1; longer && i < cells.size(); i++) {
            if (WHOLE.matcher(cells.get(i - 1)).matches()
                    && DIGITS.matcher(cells.get(i)).matches()) {
                return true;
            }
        }
        return false;
    }

    /** The rows below the header. */
    List<SheetRows.Row> body() {
        return body;
    }

    /** The header of a column, where there are headers. */
    Optional<String> header(int index) {
        return headers.isEmpty() ? Optional.empty() : Optional.of(index < headers.size() ? headers.get(index) : "");
    }

    /** What a column holds, if it is known. */
    Optional<RunColumn> meaning(int index) {
        return places.entrySet().stream()
                .filter(each -> each.getValue() == index)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** A few cells of a column. */
    List<String> examples(int index) {
        return filled(index).stream()
                .distinct()
                .limit(EXAMPLES)
                .map(ShownText::of)
                .toList();
    }

    /** Whether the table has a column. */
    boolean has(RunColumn column) {
        return places.containsKey(column);
    }

    /** The cell of a column, on one line: a line break in it becomes a blank; empty where there is none. */
    String cell(SheetRows.Row row, RunColumn column) {
        Integer place = places.get(column);
        return place == null
                ? ""
                : CONTROL.matcher(SafeCell.in(row.cell(place))).replaceAll(" ").strip();
    }

    /** By what the numbers of a column are to be multiplied. */
    BigDecimal factor(RunColumn column) {
        return factors.getOrDefault(places.getOrDefault(column, -1), BigDecimal.ONE);
    }

    /** All cells that are numbers by their column. */
    List<String> numbers() {
        return body.stream()
                .flatMap(row ->
                        places.keySet().stream().filter(RunColumn::isNumber).map(column -> cell(row, column)))
                .toList();
    }

    /** The solvents that the header of the share names, the strong one first; none, one or two. */
    List<Solvent> shared() {
        return shared;
    }

    /** What was found worth telling. */
    List<Message> notes() {
        return notes;
    }
}
