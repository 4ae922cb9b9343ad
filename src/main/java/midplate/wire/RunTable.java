package midplate.wire;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import midplate.catalogue.EluentRules;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;
import midplate.notebook.Study;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudySpot;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Reads a table of runs, as other programs and people write them, into plates of a study. */
final class RunTable {
    private static final String USUAL_WEAK = "hexane";
    private static final String USUAL_STRONG = "ethyl-acetate";
    private static final List<RunColumn> PLACES = List.of(RunColumn.RF, RunColumn.CENTRE, RunColumn.DISTANCE);
    private static final String EXAMPLE_HEAD = "plate;eluent;spot;Rf";
    private static final String EXAMPLE_ROW = "1;9:1;A;0.35";

    private final SolventCatalogue catalogue;
    private final SolventWords words;

    RunTable(SolventCatalogue catalogue) {
        this.catalogue = catalogue;
        this.words = new SolventWords(catalogue);
    }

    /**
     * How a table is to be read, as far as it was asked for.
     *
     * @param columns where each column is; nowhere where the number is empty
     * @param decimal what stands before decimals
     * @param delimiter what parts the cells
     */
    record Asked(
            Map<RunColumn, OptionalInt> columns,
            Optional<TableNumbers.Decimal> decimal,
            Optional<Character> delimiter) {
        static final Asked NOTHING = new Asked(Map.of(), Optional.empty(), Optional.empty());
    }

    /**
     * A plate.
     *
     * @param plate as it is to stand in the study
     * @param said its eluent in the words of the file; empty where it says nothing of it
     */
    record Plate(StudyPlate plate, String said) {}

    /**
     * Plates out of a table.
     *
     * @param plan which column holds what
     * @param decimal what stands before decimals
     * @param delimiter what parts the cells
     * @param spots those of the study they are read into, then the new ones
     * @param plates the plates
     * @param read the rows, with those that were not taken
     * @param notes what to know of them
     */
    record Runs(
            TableColumns plan,
            TableNumbers.Decimal decimal,
            char delimiter,
            List<StudySpot> spots,
            List<Plate> plates,
            RunRows read,
            List<Message> notes) {}

    /**
     * The runs of a table.
     *
     * @throws Refusal where there is no row at all
     */
    Runs read(String text, Asked asked, Optional<Study> study) {
        char delimiter = asked.delimiter().orElseGet(() -> SheetRows.delimiter(text));
        SheetRows rows = SheetRows.of(text, delimiter);
        if (rows.rows().isEmpty()) {
            throw rows.openQuote().isPresent() ? openQuote() : empty();
        }
        checkWidth(rows.rows());
        TableColumns plan = TableColumns.of(rows.rows(), asked.columns(), words, delimiter);
        TableNumbers numbers =
                new TableNumbers(asked.decimal().orElseGet(() -> TableNumbers.decimal(plan.numbers(), delimiter)));
        Sorbent sorbent = study.flatMap(into -> Sorbent.byId(into.sorbent())).orElse(Sorbent.SILICA);
        SolventWords.Two pair = new SolventWords.Two(
                words.find(study.map(into -> into.next().weak()).orElse(USUAL_WEAK))
                        .orElseThrow(),
                words.find(study.map(into -> into.next().strong()).orElse(USUAL_STRONG))
                        .orElseThrow());
        EluentRules rules = EluentRules.of(catalogue);
        IntoStudy into = new IntoStudy(study);
        RunRows read = new RunRows(
                plan,
                new RunPlace.Reader(plan, numbers),
                new RunJar.Reader(plan, numbers, words, rules, sorbent, pair),
                rules,
                sorbent,
                pair,
                into);
        Set<Message> notes = new LinkedHashSet<>(plan.notes());
        if (!PLACES.stream().anyMatch(plan::has)) {
            notes.add(Message.of("import.no-place"));
            notes.add(Message.of("import.example", "head", EXAMPLE_HEAD, "row", EXAMPLE_ROW));
        } else if (plan.body().isEmpty()) {
            notes.add(Message.of("import.no-rows"));
        } else {
            read.read();
        }
        rows.openQuote().ifPresent(line -> read.reject(line, "", openQuote()));
        RunPlates plates = new RunPlates(plan, pair, into);
        List<Plate> made = read.plates().stream()
                .map(draft -> new Plate(plates.of(draft), draft.said))
                .toList();
        if (!plan.has(RunColumn.PLATE) && !made.isEmpty()) {
            notes.add(Message.of("import.plates-by-eluent"));
        }
        notes.addAll(plates.notes());
        notes.addAll(read.notes());
        return new Runs(plan, numbers.decimal(), delimiter, into.spots(), made, read, List.copyOf(notes));
    }

    private static void checkWidth(List<SheetRows.Row> rows) {
        for (SheetRows.Row row : rows) {
            int width = row.cells().size();
            if (width > ImportQuestion.MOST_COLUMNS) {
                throw new Refusal(
                        ImportQuestion.FILE,
                        Message.of(
                                "import.too-many-columns",
                                "line",
                                (int) row.line(),
                                "most",
                                ImportQuestion.MOST_COLUMNS),
                        Integer.toString(width),
                        Allowed.closed(1, ImportQuestion.MOST_COLUMNS),
                        Message.of("todo.fewer-columns"));
            }
        }
    }

    private static Refusal empty() {
        return new Refusal(
                ImportQuestion.FILE,
                Message.of("import.empty"),
                "",
                Message.of("allowed.table-or-study"),
                Message.of("todo.choose-other-file"));
    }

    private static Refusal openQuote() {
        return new Refusal(
                "row",
                Message.of("import.open-quote"),
                "\"",
                Message.of("allowed.closed-quotes"),
                Message.of("todo.close-quote"));
    }
}
