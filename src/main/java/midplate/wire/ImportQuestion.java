package midplate.wire;

import java.util.Base64;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.notebook.Study;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * A request to read a file that somebody brought.
 *
 * @param name of the file as the browser told it, made fit to be quoted; it is nothing else than that
 * @param file its bytes
 * @param asked how a table is to be read
 * @param into the study that its plates are to be read into
 */
record ImportQuestion(String name, byte[] file, RunTable.Asked asked, Optional<Study> into) {
    /** The field in which the file comes. */
    static final String FILE = "base64";

    static final List<String> FIELDS = List.of("file", FILE, "columns", "decimal", "delimiter", "into");

    private static final List<String> DECIMALS = List.of("comma", "point");
    private static final List<String> DELIMITERS =
            SheetRows.DELIMITERS.stream().map(String::valueOf).toList();
    /** So many columns may a table have. */
    static final int MOST_COLUMNS = 1000;

    private static final int LONGEST_QUOTED = 60;

    /**
     * The question in a request.
     *
     * @throws BadInput with all faults
     */
    static ImportQuestion read(Json request, SolventCatalogue catalogue, FunctionalGroups groups, FaultList faults) {
        Optional<JsonFields> object = JsonFields.of("", request, faults, FIELDS);
        faults.throwIfAny();
        JsonFields fields = object.orElseThrow();
        String name = fields.any("file")
                .map(value -> value instanceof Json.Text text ? text.value() : "")
                .orElse("");
        if (fields.any("file").filter(value -> !(value instanceof Json.Text)).isPresent()) {
            JsonFields.wrongType("file", fields.any("file").orElseThrow(), Message.of("kind.text"), faults);
        }
        byte[] file = bytes(fields, faults);
        Map<RunColumn, OptionalInt> columns = columns(fields, faults);
        Optional<TableNumbers.Decimal> decimal = fields.choice("decimal", DECIMALS)
                .map(word -> word.equals("comma") ? TableNumbers.Decimal.COMMA : TableNumbers.Decimal.POINT);
        Optional<Character> delimiter = fields.choice("delimiter", DELIMITERS).map(word -> word.charAt(0));
        Optional<Study> into = fields.any("into").flatMap(value -> into(value, catalogue, groups, faults));
        faults.throwIfAny();
        return new ImportQuestion(
                ShownText.of(name, LONGEST_QUOTED), file, new RunTable.Asked(columns, decimal, delimiter), into);
    }

    private static byte[] bytes(JsonFields fields, FaultList faults) {
        if (!fields.has(FILE)) {
            fields.missing(FILE, Message.of("allowed.base64"), Message.of("todo.choose-file"));
            return new byte[0];
        }
        Json value = fields.any(FILE).orElseThrow();
        if (!(value instanceof Json.Text text)) {
            JsonFields.wrongType(FILE, value, Message.of("kind.text"), faults);
            return new byte[0];
        }
        try {
            return Base64.getDecoder().decode(text.value());
        } catch (IllegalArgumentException e) {
            faults.add(
                    FILE,
                    Message.of("import.no-base64"),
                    value.shown(),
                    Message.of("allowed.base64"),
                    Message.of("todo.choose-file"));
            return new byte[0];
        }
    }

    private static Map<RunColumn, OptionalInt> columns(JsonFields fields, FaultList faults) {
        Map<RunColumn, OptionalInt> columns = new EnumMap<>(RunColumn.class);
        fields.any("columns")
                .flatMap(value -> JsonFields.of(fields.path("columns"), value, faults, RunColumn.ids()))
                .ifPresent(object -> {
                    for (String name : object.names()) {
                        RunColumn.byId(name)
                                .ifPresent(column -> index(
                                                object.path(name),
                                                object.any(name).orElseThrow(),
                                                faults)
                                        .ifPresent(index -> columns.put(column, index)));
                    }
                });
        long places = columns.values().stream().filter(OptionalInt::isPresent).count();
        long different = columns.values().stream()
                .filter(OptionalInt::isPresent)
                .distinct()
                .count();
        if (different < places) {
            faults.add(
                    "columns",
                    Message.of("import.column-twice"),
                    fields.any("columns").map(Json::shown).orElse(""),
                    Message.of("allowed.each-column-once"),
                    Message.of("todo.keep-one"));
        }
        return columns;
    }

    /** A column by its number from 0; none where {@code null} says that the table has none of it. */
    private static Optional<OptionalInt> index(String path, Json value, FaultList faults) {
        if (value instanceof Json.Null) {
            return Optional.of(OptionalInt.empty());
        }
        double number = JsonFields.number(path, value, faults).orElse(-1);
        if (number >= 0 && number < MOST_COLUMNS && number == Math.rint(number)) {
            return Optional.of(OptionalInt.of((int) number));
        }
        if (value instanceof Json.Numeral) {
            Message interval = Allowed.closed(0, MOST_COLUMNS - 1);
            faults.add(
                    path,
                    Message.of("fault.number-out-of-range", "allowed", interval),
                    value.shown(),
                    Message.of("allowed.whole-number", "interval", interval),
                    Message.of("todo.count-columns"));
        }
        return Optional.empty();
    }

    private static Optional<Study> into(
            Json value, SolventCatalogue catalogue, FunctionalGroups groups, FaultList faults) {
        FaultList inside = new FaultList(faults.texts());
        try {
            return Optional.of(new StudyReader(catalogue, groups, inside).read(value));
        } catch (BadInput bad) {
            bad.faults().forEach(fault -> faults.add(fault.in("into")));
            return Optional.empty();
        }
    }
}
