package midplate.wire;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import midplate.notebook.Entered;
import midplate.notebook.JarAdditive;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudyPlate.Lane;
import midplate.notebook.StudyPlate.SpotSeen;
import midplate.words.Allowed;
import midplate.words.Message;

/** Makes plates of a study out of what the rows of a table told; what no row told is assumed and said. */
final class RunPlates {
    /** A plate as many are cut [mm]; common practice, no source. The page begins with the same. */
    private static final Map<RunColumn, String> USUAL_MM =
            Map.of(RunColumn.HEIGHT, "70", RunColumn.WIDTH, "40", RunColumn.START, "10", RunColumn.FRONT, "62");

    private static final String MONTHS = "(?:jan|feb|m[aä]r|apr|ma[iy]|jun|jul|aug|sep|o[ck]t|nov|de[cz])\\p{L}*";

    /** What spreadsheets make of a ratio: 04:01:00, 4. Jan, Apr-01, 2026-01-04, 04.01.2026. */
    private static final Pattern BY_SPREADSHEET =
            Pattern.compile("(?iu)\\d{1,2}:\\d{2}:\\d{2}(?: [ap]m)?|\\d{1,2}:\\d{2} [ap]m"
                    + "|\\d{1,2}[. /-]{1,2}" + MONTHS + "\\.?(?:[ -]\\d{2,4})?|" + MONTHS + "[. -]{1,2}\\d{1,4}"
                    + "|\\d{4}-\\d{2}-\\d{2}(?:[ T][\\d:.]+)?|\\d{1,2}[./-]\\d{1,2}[./-]\\d{2,4}");

    private final TableColumns plan;
    private final SolventWords.Two pair;
    private final IntoStudy into;
    private final Set<Message> notes = new LinkedHashSet<>();
    private final Map<RunColumn, Entered> assumed = new EnumMap<>(RunColumn.class);
    private boolean mattersMm;

    RunPlates(TableColumns plan, SolventWords.Two pair, IntoStudy into) {
        this.plan = plan;
        this.pair = pair;
        this.into = into;
    }

    /** What was assumed and what to look at; sizes only where any length was told, since an Rf hangs on none. */
    Set<Message> notes() {
        Set<Message> all = new LinkedHashSet<>(notes);
        if (mattersMm && !assumed.isEmpty()) {
            all.add(Message.of(
                    "import.assumed",
                    "sizes",
                    Allowed.list(assumed.entrySet().stream()
                            .map(each -> assumed(each.getKey(), each.getValue()))
                            .toList())));
        }
        return all;
    }

    private static Message assumed(RunColumn column, Entered put) {
        Message mm = Allowed.figure(ShownText.of(put.typed()));
        return switch (column) {
            case HEIGHT -> Message.of("import.assumed-height", "mm", mm);
            case WIDTH -> Message.of("import.assumed-width", "mm", mm);
            case START -> Message.of("import.assumed-start", "mm", mm);
            default -> Message.of("import.assumed-front", "mm", mm);
        };
    }

    /** The plate. */
    StudyPlate of(DraftPlate draft) {
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
            String key = BY_SPREADSHEET.matcher(eluent).matches() ? "import.time-or-date" : "import.no-ratio";
            notes.add(Message.of(key, "came", ShownText.of(eluent)));
        }
        List<Lane> lanes = new ArrayList<>();
        draft.lanes.values().forEach(seen -> lanes.add(lane(seen)));
        if (lanes.isEmpty()) {
            lanes.add(lane(List.of()));
        }
        mattersMm |= draft.needsLines() || !draft.lengths.isEmpty();
        return new StudyPlate(
                id,
                length(draft, RunColumn.HEIGHT),
                length(draft, RunColumn.WIDTH),
                length(draft, RunColumn.START),
                length(draft, RunColumn.FRONT),
                Optional.ofNullable(draft.weak).orElse(pair.first()).id(),
                Optional.ofNullable(draft.strong).orElse(pair.second()).id(),
                eluent,
                draft.percentStrong,
                Objects.requireNonNullElse(draft.additive, JarAdditive.NONE),
                Optional.empty(),
                lanes,
                notSeen(draft),
                Optional.empty());
    }

    private Lane lane(List<DraftPlate.Seen> seen) {
        String id = into.id('l', "");
        List<SpotSeen> readings = seen.stream()
                .map(each -> new SpotSeen(
                        into.id('r', ""),
                        each.spots().stream().map(into::spot).toList(),
                        each.given(),
                        each.place(),
                        each.sizeMm(),
                        each.errorMm(),
                        each.shape(),
                        each.seen()))
                .toList();
        return new Lane(id, readings);
    }

    /** What was looked for and not seen; what was seen on the plate after all no longer counts as that. */
    private List<String> notSeen(DraftPlate draft) {
        Set<String> names = new LinkedHashSet<>(draft.notSeen);
        draft.lanes.values().forEach(lane -> lane.forEach(seen -> names.removeAll(seen.spots())));
        return names.stream().map(into::spot).toList();
    }

    /**
     * A length that the table has no column for is that of the last plate, or the usual one; the lines only where no height of a spot
     * hangs on them, since an Rf stays what it is.
     */
    private Entered length(DraftPlate draft, RunColumn column) {
        boolean isLine = column == RunColumn.START || column == RunColumn.FRONT;
        boolean isTold = plan.has(column) || !draft.length(column).equals(Entered.NOTHING);
        if (isTold) {
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
        if (!put.typed().isEmpty()) {
            assumed.put(column, put);
        }
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
