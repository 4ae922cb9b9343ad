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
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Turns the rows of a table into plates. A row that cannot be taken is told, and the rest goes on. */
final class RunRows {
    static final int MOST_PLATES = 200;
    static final int MOST_LANES = 50;
    static final int MOST_READINGS = 2000;
    static final int MOST_SPOTS = 200;
    static final int LONGEST_NAME = 200;
    static final int LONGEST_TEXT = 1000;

    private static final List<RunColumn> LENGTHS =
            List.of(RunColumn.HEIGHT, RunColumn.WIDTH, RunColumn.START, RunColumn.FRONT);

    private final TableColumns plan;
    private final RunPlace.Reader places;
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
    record Rejected(long line, String row, Refusal why) {
        private boolean isSame(long otherLine, Refusal other) {
            return line == otherLine
                    && why.field().equals(other.field())
                    && why.reason().equals(other.reason())
                    && why.came().equals(other.came());
        }
    }

    RunRows(
            TableColumns plan,
            RunPlace.Reader places,
            RunJar.Reader jars,
            EluentRules rules,
            Sorbent sorbent,
            SolventWords.Two usualPair,
            IntoStudy into) {
        this.plan = plan;
        this.places = places;
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
        return readings >= MOST_READINGS && rejected.size() >= FaultList.MOST && places.isTold(row);
    }

    /** Tells of a row that was not taken; the first {@value FaultList#MOST} one by one. */
    void reject(long line, String row, Refusal refusal) {
        if (!rejected.isEmpty() && rejected.get(rejected.size() - 1).isSame(line, refusal)) {
            return; // a row with several compounds is read once for each
        }
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
        String called = plate(row);
        String key = plan.has(RunColumn.PLATE) ? called : sameEluent(row);
        DraftPlate known = plates.get(key);
        DraftPlate plate = known == null ? new DraftPlate(called) : known;
        Entered start = lengths.getOrDefault(RunColumn.START, plate.length(RunColumn.START));
        Entered frontDistance = frontDistance(row, plate);
        if (!plan.has(RunColumn.FRONT)
                && start.value().isPresent()
                && frontDistance.value().isPresent()) {
            lengths.put(RunColumn.FRONT, RunPlace.sum(start, frontDistance));
        }
        Optional<DraftPlate.Seen> seen = seen(row, start, frontDistance);
        List<String> names = names(row, RunColumn.SPOT);
        List<String> notSeen = names(row, RunColumn.NOT_SEEN);
        boolean unread = seen.isEmpty() && !names.isEmpty();
        plate.check(jar, lengths);
        checkPair(plate, jar);
        String lane = text(row, RunColumn.LANE, LONGEST_NAME);
        List<String> all = new ArrayList<>(unread ? List.of() : names);
        all.addAll(notSeen);
        limits(known == null, plate, lane, all, seen.isPresent());

        plates.putIfAbsent(key, plate);
        above = key;
        plate.take(jar, lengths);
        plate.frontDistance = frontDistance;
        plate.notSeen.addAll(notSeen);
        all.forEach(into::spot);
        if (seen.isPresent()) {
            plate.lane(lane, names).add(seen.get());
            readings++;
        } else if (!lane.isEmpty()) {
            plate.lane(lane, names);
        }
        if (unread) {
            throw unread(names);
        }
    }

    /** What such a row says of its plate is taken all the same: rows below may rely on it. */
    private static Refusal unread(List<String> names) {
        String spot = ShownText.of(String.join(", ", names));
        return new Refusal(
                RunColumn.RF.id(),
                Message.of("import.no-reading", "spot", spot),
                "",
                Allowed.closed(0, 1),
                Message.of("todo.give-rf-or-not-seen", "spot", spot));
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
        LENGTHS.forEach(column -> places.length(row, column).ifPresent(length -> told.put(column, length)));
        return told;
    }

    /** How far the front ran: as the row says, or one above it for the same plate. */
    private Entered frontDistance(SheetRows.Row row, DraftPlate plate) {
        String cell = plan.cell(row, RunColumn.FRONT_DISTANCE);
        return cell.isEmpty() ? plate.frontDistance : places.millimetres(RunColumn.FRONT_DISTANCE, cell);
    }

    private Optional<DraftPlate.Seen> seen(SheetRows.Row row, Entered start, Entered frontDistance) {
        if (!places.isTold(row)) {
            return Optional.empty();
        }
        RunPlace place = places.of(row, start, frontDistance);
        return Optional.of(new DraftPlate.Seen(
                names(row, RunColumn.SPOT),
                place.given(),
                place.place(),
                millimetresIfAny(row, RunColumn.SIZE),
                millimetresIfAny(row, RunColumn.ERROR),
                textIfAny(row, RunColumn.SHAPE),
                textIfAny(row, RunColumn.SEEN)));
    }

    private Optional<Entered> millimetresIfAny(SheetRows.Row row, RunColumn column) {
        String cell = plan.cell(row, column);
        return cell.isEmpty() ? Optional.empty() : Optional.of(places.millimetres(column, cell));
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
        notes.addAll(places.notes());
        return notes;
    }
}
