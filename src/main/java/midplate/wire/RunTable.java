package midplate.wire;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import midplate.catalogue.EluentRules;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;
import midplate.notebook.Entered;
import midplate.notebook.JarAdditive;
import midplate.notebook.Study;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudyPlate.Lane;
import midplate.notebook.StudyPlate.SpotSeen;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Reads a table of runs, as other programs and people write them, into plates of a study. */
final class RunTable {
    private static final String USUAL_WEAK = "hexane";
    private static final String USUAL_STRONG = "ethyl-acetate";
    /** A plate as many are cut [mm]; common practice, no source. The page begins with the same. */
    private static final Map<RunColumn, String> USUAL_MM =
            Map.of(RunColumn.HEIGHT, "70", RunColumn.WIDTH, "40", RunColumn.START, "10", RunColumn.FRONT, "62");

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
     * The runs of a table.
     *
     * @throws Refusal where there is no row at all
     */
    Imported.Runs read(String text, Asked asked, Optional<Study> study) {
        char delimiter = asked.delimiter().orElseGet(() -> SheetRows.delimiter(text));
        SheetRows rows = SheetRows.of(text, delimiter);
        if (rows.rows().isEmpty()) {
            throw rows.openQuote().isPresent() ? openQuote() : empty();
        }
        checkWidth(rows.rows());
        ColumnPlan plan = ColumnPlan.of(rows.rows(), asked.columns(), words, delimiter);
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
                plan, numbers, new RunJar.Reader(plan, numbers, words, rules, sorbent), rules, sorbent, pair, into);
        boolean hasPlace = plan.has(RunColumn.RF) || plan.has(RunColumn.CENTRE);
        Set<Message> notes = new LinkedHashSet<>(plan.notes());
        if (!hasPlace) {
            notes.add(Message.of("import.no-place"));
        } else if (plan.body().isEmpty()) {
            notes.add(Message.of("import.no-rows"));
        } else {
            read.read();
        }
        rows.openQuote().ifPresent(line -> read.reject(line, "", openQuote()));
        List<StudyPlate> plates = new ArrayList<>();
        read.plates().forEach(draft -> plates.add(plate(draft, plan, pair, into, notes)));
        if (!plan.has(RunColumn.PLATE) && !plates.isEmpty()) {
            notes.add(Message.of("import.plates-by-eluent"));
        }
        notes.addAll(read.notes());
        return new Imported.Runs(plan, numbers.decimal(), delimiter, into.spots(), plates, read, List.copyOf(notes));
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

    private StudyPlate plate(
            DraftPlate draft, ColumnPlan plan, SolventWords.Two pair, IntoStudy into, Set<Message> notes) {
        String id = into.id('p', draft.called);
        if (draft.weak == null || draft.strong == null) {
            notes.add(Message.of(
                    "import.usual-pair",
                    "weak",
                    Optional.ofNullable(draft.weak).orElse(pair.first()).said(),
                    "strong",
                    Optional.ofNullable(draft.strong).orElse(pair.second()).said()));
        }
        String eluent = Objects.requireNonNullElse(draft.eluent, "");
        if (!eluent.isEmpty() && draft.percentStrong.isEmpty()) {
            notes.add(Message.of("import.no-ratio", "came", ShownText.of(eluent)));
        }
        List<Lane> lanes = new ArrayList<>();
        draft.lanes.values().forEach(seen -> lanes.add(lane(seen, into)));
        if (lanes.isEmpty()) {
            lanes.add(lane(List.of(), into));
        }
        return new StudyPlate(
                id,
                length(draft, RunColumn.HEIGHT, plan, into, notes),
                length(draft, RunColumn.WIDTH, plan, into, notes),
                length(draft, RunColumn.START, plan, into, notes),
                length(draft, RunColumn.FRONT, plan, into, notes),
                Optional.ofNullable(draft.weak).orElse(pair.first()).id(),
                Optional.ofNullable(draft.strong).orElse(pair.second()).id(),
                eluent,
                draft.percentStrong,
                Objects.requireNonNullElse(draft.additive, JarAdditive.NONE),
                Optional.empty(),
                lanes,
                notSeen(draft, into));
    }

    private static Lane lane(List<DraftPlate.Seen> seen, IntoStudy into) {
        String id = into.id('l', "");
        List<SpotSeen> readings = seen.stream()
                .map(each -> new SpotSeen(
                        into.id('r', ""),
                        each.spots().stream().map(into::spot).toList(),
                        each.given(),
                        each.place(),
                        each.sizeMm(),
                        each.shape(),
                        each.seen()))
                .toList();
        return new Lane(id, readings);
    }

    /** What was looked for and not seen; what was seen on the plate after all no longer counts as that. */
    private static List<String> notSeen(DraftPlate draft, IntoStudy into) {
        Set<String> names = new LinkedHashSet<>(draft.notSeen);
        draft.lanes.values().forEach(lane -> lane.forEach(seen -> names.removeAll(seen.spots())));
        return names.stream().map(into::spot).toList();
    }

    /**
     * A length that the table has no column for is that of the last plate, or the usual one; the lines only where no height of a spot
     * hangs on them, since an Rf stays what it is.
     */
    private static Entered length(
            DraftPlate draft, RunColumn column, ColumnPlan plan, IntoStudy into, Set<Message> notes) {
        boolean isLine = column == RunColumn.START || column == RunColumn.FRONT;
        if (plan.has(column)) {
            return draft.length(column);
        }
        if (isLine && draft.needsLines()) {
            notes.add(Message.of("import.no-lines"));
            return Entered.NOTHING;
        }
        if (plan.has(RunColumn.FRONT) != plan.has(RunColumn.START) && isLine) {
            return Entered.NOTHING;
        }
        Entered put = into.lastPlate().map(last -> of(last, column)).orElseGet(() -> usual(column));
        boolean tooLow = column == RunColumn.HEIGHT
                && draft.length(RunColumn.FRONT).value().orElse(0) > put.value().orElse(0);
        if (tooLow) {
            return Entered.NOTHING;
        }
        notes.add(Message.of("import.put-in", "column", Allowed.words(column.id()), "mm", put.typed()));
        return put;
    }

    private static Entered usual(RunColumn column) {
        String mm = Objects.requireNonNullElse(USUAL_MM.get(column), "");
        return Entered.number(mm, Double.parseDouble(mm));
    }

    private static Entered of(StudyPlate plate, RunColumn column) {
        return switch (column) {
            case HEIGHT -> plate.heightMm();
            case WIDTH -> plate.widthMm();
            case START -> plate.startMm();
            default -> plate.frontMm();
        };
    }
}
