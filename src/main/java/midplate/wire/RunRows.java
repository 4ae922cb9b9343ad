package midplate.wire;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import midplate.catalogue.EluentRules;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.notebook.Entered;
import midplate.notebook.StudyPlate.Given;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Turns the rows of a table into plates. A row that cannot be taken changes nothing, is told, and the rest goes on. */
final class RunRows {
    static final int MOST_PLATES = 200;
    static final int MOST_LANES = 50;
    static final int MOST_READINGS = 2000;
    static final int MOST_SPOTS = 200;
    static final int LONGEST_NAME = 200;
    static final int LONGEST_TEXT = 1000;

    private static final List<RunColumn> LENGTHS =
            List.of(RunColumn.HEIGHT, RunColumn.WIDTH, RunColumn.START, RunColumn.FRONT);
    private static final Message MM = Allowed.mm(Allowed.closed("0", "1000"));
    private static final double LONGEST_MM = 1000;

    private final ColumnPlan plan;
    private final TableNumbers numbers;
    private final RunJar.Reader jars;
    private final EluentRules rules;
    private final Sorbent sorbent;
    private final SolventWords.Two usualPair;
    private final IntoStudy into;
    private final Map<String, DraftPlate> plates = new LinkedHashMap<>();
    private final List<Rejected> rejected = new ArrayList<>();
    private final Set<Message> notes = new LinkedHashSet<>();
    private String above = "";
    private int readings;
    private int rejectedInAll;

    /**
     * A row that was not taken.
     *
     * @param line of the file in which it begins
     * @param row what stands there, cut
     * @param why what is wrong; its field is the name of a column
     */
    record Rejected(long line, String row, Refusal why) {}

    RunRows(
            ColumnPlan plan,
            TableNumbers numbers,
            RunJar.Reader jars,
            EluentRules rules,
            Sorbent sorbent,
            SolventWords.Two usualPair,
            IntoStudy into) {
        this.plan = plan;
        this.numbers = numbers;
        this.jars = jars;
        this.rules = rules;
        this.sorbent = sorbent;
        this.usualPair = usualPair;
        this.into = into;
    }

    /** Reads all rows. */
    void read() {
        for (SheetRows.Row row : plan.body()) {
            if (isBeyondTelling(row)) {
                rejectedInAll++;
                continue;
            }
            try {
                take(row);
            } catch (Refusal refusal) {
                reject(row.line(), String.join(" | ", row.cells()), refusal);
            }
        }
    }

    /** A row with a spot, after as many as a study takes and as many faults as are told: it would be one more of these. */
    private boolean isBeyondTelling(SheetRows.Row row) {
        return readings >= MOST_READINGS
                && rejected.size() >= FaultList.MOST
                && !(plan.cell(row, RunColumn.RF).isEmpty()
                        && plan.cell(row, RunColumn.CENTRE).isEmpty());
    }

    /** Tells of a row that was not taken; the first {@value FaultList#MOST} one by one. */
    void reject(long line, String row, Refusal refusal) {
        rejectedInAll++;
        if (rejected.size() < FaultList.MOST) {
            rejected.add(new Rejected(line, ShownText.of(row, 200), refusal));
        }
    }

    private void take(SheetRows.Row row) {
        if (plan.isCutAtDecimals(row)) {
            throw cutAtDecimals(row);
        }
        RunJar jar = jars.of(row);
        Map<RunColumn, Entered> lengths = lengths(row);
        Optional<DraftPlate.Seen> seen = seen(row);
        List<String> names = names(row, RunColumn.SPOT);
        List<String> notSeen = names(row, RunColumn.NOT_SEEN);
        String called = plate(row);
        String key = plan.has(RunColumn.PLATE) ? called : sameEluent(row);
        DraftPlate known = plates.get(key);
        DraftPlate plate = known == null ? new DraftPlate(called) : known;
        plate.check(jar, lengths);
        checkPair(plate, jar);
        String lane = text(row, RunColumn.LANE, LONGEST_NAME);
        List<String> all = new ArrayList<>(names);
        all.addAll(notSeen);
        limits(known == null, plate, lane, all, seen.isPresent());

        plates.putIfAbsent(key, plate);
        above = key;
        plate.take(jar, lengths);
        plate.notSeen.addAll(notSeen);
        all.forEach(into::spot);
        if (seen.isPresent()) {
            plate.lane(lane, names).add(seen.get());
            readings++;
        } else if (!lane.isEmpty()) {
            plate.lane(lane, names);
        }
    }

    private static Refusal cutAtDecimals(SheetRows.Row row) {
        return new Refusal(
                "row",
                Message.of("import.cut-at-decimals"),
                ShownText.of(String.join(",", row.cells())),
                Message.of("allowed.as-many-cells"),
                Message.of("todo.save-with-semicolons"));
    }

    /** The plate as the row calls it; without a word that of the row above, as where cells were joined. */
    private String plate(SheetRows.Row row) {
        String called = text(row, RunColumn.PLATE, LONGEST_NAME);
        if (called.isEmpty() && plan.has(RunColumn.PLATE) && !plates.isEmpty()) {
            notes.add(Message.of("import.filled-down"));
            return above;
        }
        return called;
    }

    /** What makes rows belong to one plate where no column says it: what the jar holds. */
    private String sameEluent(SheetRows.Row row) {
        List<RunColumn> jar = List.of(
                RunColumn.WEAK, RunColumn.STRONG, RunColumn.ELUENT, RunColumn.PERCENT_STRONG, RunColumn.ADDITIVE);
        List<String> cells = jar.stream().map(column -> plan.cell(row, column)).toList();
        boolean silent = cells.stream().allMatch(String::isEmpty);
        return silent && !plates.isEmpty() ? above : String.join("\n", cells);
    }

    private void checkPair(DraftPlate plate, RunJar jar) {
        Solvent weak = Optional.ofNullable(plate.weak).or(jar::weak).orElse(usualPair.first());
        Solvent strong = Optional.ofNullable(plate.strong).or(jar::strong).orElse(usualPair.second());
        rules.against(RunColumn.STRONG.id(), sorbent, weak, strong).ifPresent(refusal -> {
            throw refusal;
        });
    }

    private void limits(boolean newPlate, DraftPlate plate, String lane, List<String> names, boolean reading) {
        if (newPlate && plates.size() >= MOST_PLATES) {
            throw tooMany("import.too-many-plates", RunColumn.PLATE, MOST_PLATES);
        }
        if (plate.isNewLane(lane) && plate.lanes.size() >= MOST_LANES) {
            throw tooMany("import.too-many-lanes", RunColumn.LANE, MOST_LANES);
        }
        if (reading && (readings >= MOST_READINGS)) {
            throw tooMany("import.too-many-readings", RunColumn.RF, MOST_READINGS);
        }
        if (reading && lane.isEmpty() && plate.lanes.size() >= MOST_LANES) {
            throw tooMany("import.too-many-lanes", RunColumn.LANE, MOST_LANES);
        }
        if (into.countWith(names) > Math.max(MOST_SPOTS, into.countWith(List.of()))) {
            throw tooMany("import.too-many-spots", RunColumn.SPOT, MOST_SPOTS);
        }
    }

    private static Refusal tooMany(String key, RunColumn column, int most) {
        return new Refusal(
                column.id(),
                Message.of(key, "most", most),
                Integer.toString(most + 1),
                Allowed.closed(0, most),
                Message.of("todo.several-tables"));
    }

    private Map<RunColumn, Entered> lengths(SheetRows.Row row) {
        Map<RunColumn, Entered> told = new EnumMap<>(RunColumn.class);
        for (RunColumn column : LENGTHS) {
            String cell = plan.cell(row, column);
            if (!cell.isEmpty()) {
                told.put(column, length(column, cell));
            }
        }
        return told;
    }

    /** A length that is none is kept as it was typed: the sheet marks it. */
    private Entered length(RunColumn column, String cell) {
        try {
            return numbers.read(column, cell, plan.factor(column), MM);
        } catch (Refusal refusal) {
            String typed = ShownText.of(cell);
            notes.add(Message.of("import.no-length", "column", column.id(), "came", typed));
            return Entered.text(typed);
        }
    }

    private Optional<DraftPlate.Seen> seen(SheetRows.Row row) {
        String mm = plan.cell(row, RunColumn.CENTRE);
        String rf = plan.cell(row, RunColumn.RF);
        if (mm.isEmpty() && rf.isEmpty()) {
            return Optional.empty();
        }
        boolean lines = plan.has(RunColumn.START) && plan.has(RunColumn.FRONT);
        boolean byRf = mm.isEmpty() || (!rf.isEmpty() && !lines);
        if (!mm.isEmpty() && !rf.isEmpty()) {
            notes.add(Message.of(lines ? "import.both-places" : "import.both-places-no-lines"));
        }
        Given given = byRf ? Given.RF : Given.CENTRE_MM;
        Entered place = byRf ? rf(rf) : millimetres(RunColumn.CENTRE, mm);
        String size = plan.cell(row, RunColumn.SIZE);
        return Optional.of(new DraftPlate.Seen(
                names(row, RunColumn.SPOT),
                given,
                place,
                size.isEmpty() ? Optional.empty() : Optional.of(millimetres(RunColumn.SIZE, size)),
                textIfAny(row, RunColumn.SHAPE),
                textIfAny(row, RunColumn.SEEN)));
    }

    private Entered rf(String cell) {
        Message allowed = Allowed.closed(0, 1);
        Entered rf = numbers.read(RunColumn.RF, cell, plan.factor(RunColumn.RF), allowed);
        double value = rf.value().orElseThrow();
        if (!(value >= 0 && value <= 1)) {
            throw new Refusal(
                    RunColumn.RF.id(),
                    Message.of("plate.rf-out-of-range", "rf", value),
                    ShownText.of(cell),
                    allowed,
                    value > 1 && value <= 100 ? Message.of("todo.hundredfold") : Message.of("todo.divide-distances"));
        }
        return rf;
    }

    private Entered millimetres(RunColumn column, String cell) {
        Entered mm = numbers.read(column, cell, plan.factor(column), MM);
        double value = mm.value().orElseThrow();
        boolean fits = column == RunColumn.SIZE ? value > 0 : value >= 0;
        if (!(fits && value <= LONGEST_MM)) {
            throw new Refusal(
                    column.id(),
                    Message.of("plate.length-out-of-range"),
                    ShownText.of(cell),
                    MM,
                    Message.of("todo.measure-from-edge"));
        }
        return mm;
    }

    private List<String> names(SheetRows.Row row, RunColumn column) {
        List<String> names =
                JoinedNames.split(plan.cell(row, column)).stream().distinct().toList();
        names.forEach(name -> checkLength(column, name, LONGEST_NAME));
        return names;
    }

    private Optional<String> textIfAny(SheetRows.Row row, RunColumn column) {
        return Optional.of(text(row, column, LONGEST_TEXT)).filter(text -> !text.isEmpty());
    }

    private String text(SheetRows.Row row, RunColumn column, int longest) {
        String text = plan.cell(row, column);
        checkLength(column, text, longest);
        return text;
    }

    /** Refuses a text that no study takes. */
    static void checkLength(RunColumn column, String text, int longest) {
        if (text.codePointCount(0, text.length()) > longest) {
            throw new Refusal(
                    column.id(),
                    Message.of("fault.text-too-long", "longest", longest),
                    ShownText.of(text),
                    Message.of("allowed.signs-at-most", "longest", longest),
                    Message.of("todo.shorten"));
        }
    }

    List<DraftPlate> plates() {
        return List.copyOf(plates.values());
    }

    List<Rejected> rejected() {
        return rejected;
    }

    int rejectedInAll() {
        return rejectedInAll;
    }

    Set<Message> notes() {
        return notes;
    }
}
