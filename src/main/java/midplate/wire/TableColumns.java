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
import java.util.stream.Stream;
import midplate.chemistry.Solvent;
import midplate.words.Message;

/** Which column of a table holds what: by its headers, by what its cells look like where it has none, or as it was asked for. */
final class TableColumns {
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
    private final int width;
    private List<Solvent> shared = List.of();
    private Optional<SolventWords.Two> pair = Optional.empty();
    private Optional<CompoundColumns> compounds = Optional.empty();

    private TableColumns(
            List<SheetRows.Row> rows, Map<RunColumn, OptionalInt> asked, SolventWords words, char delimiter) {
        this.delimiter = delimiter;
        OptionalInt head = Headers.row(rows, asked, words);
        headers = head.isPresent() ? rows.get(head.getAsInt()).cells() : List.of();
        List<SheetRows.Row> below = rows.subList(head.isPresent() ? head.getAsInt() + 1 : 0, rows.size());
        width = Math.max(headers.size(), widest(below));
        asked.forEach((column, place) -> place.ifPresent(index -> places.put(column, index)));
        if (head.orElse(0) > 0) {
            notes.add(Message.of("import.title-lines", "count", head.getAsInt()));
        }
        if (head.isPresent()) {
            byHeaders(asked, words);
            frontFromStart(asked);
            compounds = compounds(below);
        } else {
            notes.add(Message.of("import.no-header"));
            if (asked.isEmpty()) {
                byLooks(below);
            }
        }
        body = compounds.map(columns -> oneRowASpot(columns, below)).orElse(below);
    }

    /**
     * The plan.
     *
     * @param rows at least one
     * @param asked where each column is to be looked for; nowhere where the number is empty
     * @param delimiter what parts the cells
     */
    static TableColumns of(
            List<SheetRows.Row> rows, Map<RunColumn, OptionalInt> asked, SolventWords words, char delimiter) {
        return new TableColumns(rows, asked, words, delimiter);
    }

    private void byHeaders(Map<RunColumn, OptionalInt> asked, SolventWords words) {
        for (int i = 0; i < headers.size(); i++) {
            String header = headers.get(i);
            Optional<Headers.Meaning> meaning = Headers.meaning(header);
            List<Solvent> named = meaning.isEmpty() ? words.shared(header) : List.of();
            Optional<SolventWords.Two> two =
                    meaning.isEmpty() && named.isEmpty() ? words.pairIn(header) : Optional.empty();
            Optional<RunColumn> column = meaning.map(Headers.Meaning::column)
                    .or(() -> named.isEmpty() ? Optional.empty() : Optional.of(RunColumn.PERCENT_STRONG))
                    .or(() -> two.map(names -> RunColumn.ELUENT));
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
                pair = two.isEmpty() ? pair : two;
            }
        }
        asked.forEach((column, place) -> place.ifPresent(index -> inCentimetres(column, index)));
    }

    /** A length that was asked for under a header that means something else, or nothing, is in the unit of that header. */
    private void inCentimetres(RunColumn column, int place) {
        String header = header(place).orElse("");
        if (column.isLength() && !factors.containsKey(place) && Headers.isInCentimetres(header)) {
            factor(new Headers.Meaning(column, BigDecimal.TEN), header);
        }
    }

    /** Beside distances from the start line, and without that line, the front is a distance from it as well. */
    private void frontFromStart(Map<RunColumn, OptionalInt> asked) {
        boolean fromStart = has(RunColumn.DISTANCE) && has(RunColumn.FRONT) && !has(RunColumn.START);
        if (fromStart && !has(RunColumn.FRONT_DISTANCE) && !asked.containsKey(RunColumn.FRONT)) {
            Optional.ofNullable(places.remove(RunColumn.FRONT))
                    .ifPresent(place -> places.put(RunColumn.FRONT_DISTANCE, place));
            notes.add(Message.of("import.front-from-start"));
        }
    }

    /** The columns of compounds, where no column is known to hold their names or places. */
    private Optional<CompoundColumns> compounds(List<SheetRows.Row> below) {
        boolean told = Stream.of(RunColumn.RF, RunColumn.CENTRE, RunColumn.DISTANCE, RunColumn.SPOT)
                .anyMatch(this::has);
        boolean ofPlates = Stream.of(RunColumn.ELUENT, RunColumn.PERCENT_STRONG, RunColumn.PLATE)
                .anyMatch(this::has);
        return told || !ofPlates ? Optional.empty() : CompoundColumns.of(headers, places.values(), below);
    }

    private List<SheetRows.Row> oneRowASpot(CompoundColumns columns, List<SheetRows.Row> below) {
        places.put(RunColumn.SPOT, headers.size());
        places.put(RunColumn.RF, headers.size() + 1);
        notes.add(columns.said());
        return columns.rows(below);
    }

    private void factor(Headers.Meaning meaning, String header) {
        if (meaning.factor().compareTo(BigDecimal.ONE) != 0) {
            factors.put(places.get(meaning.column()), meaning.factor());
            String key = meaning.column() == RunColumn.RF ? "import.hundredfold" : "import.centimetres";
            notes.add(Message.of(key, "header", ShownText.of(header)));
        }
    }

    /** Without headers: the only column of numbers between 0 and 1 is the Rf, the only one of words the spot. */
    private void byLooks(List<SheetRows.Row> below) {
        List<Integer> rf = new ArrayList<>();
        List<Integer> words = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            List<String> cells = filled(below, i);
            if (cells.stream().allMatch(TableNumbers::mayBeRf) && cells.stream().anyMatch(cell -> cell.length() > 1)) {
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

    /** The cells of a column that are not empty, of the first rows. */
    static List<String> filled(List<SheetRows.Row> rows, int index) {
        return rows.stream()
                .limit(LOOKED_AT)
                .map(row -> row.cell(index))
                .filter(cell -> !cell.isEmpty())
                .toList();
    }

    private static int widest(List<SheetRows.Row> rows) {
        return rows.stream()
                .limit(LOOKED_AT)
                .mapToInt(row -> row.cells().size())
                .max()
                .orElse(0);
    }

    /** How many columns the file has. */
    int width() {
        return width;
    }

    /** Whether a row is longer than the header, as where commas part the cells and stand before decimals as well. */
    boolean isCutAtDecimals(SheetRows.Row row) {
        List<String> cells = row.cells();
        boolean longer = delimiter == COMMA
                && compounds.isEmpty()
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

    /** The rows below the header, one a spot. */
    List<SheetRows.Row> body() {
        return body;
    }

    /** The header of a column, where there are headers. */
    Optional<String> header(int index) {
        return headers.isEmpty() ? Optional.empty() : Optional.of(index < headers.size() ? headers.get(index) : "");
    }

    /** What a kind of column is called in the table; its id where it has no name there. */
    String called(RunColumn column) {
        return Optional.ofNullable(places.get(column))
                .flatMap(this::header)
                .filter(header -> !header.isEmpty())
                .map(ShownText::of)
                .orElse(column.id());
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
        return filled(body, index).stream()
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

    /** The solvents that the header of the eluent names, in the order of the ratios below. */
    Optional<SolventWords.Two> pair() {
        return pair;
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
