package midplate.wire;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.chemistry.Solvent;
import midplate.notebook.Entered;
import midplate.notebook.JarAdditive;
import midplate.notebook.StudyPlate.Given;
import midplate.words.Message;
import midplate.words.Refusal;
import org.jspecify.annotations.Nullable;

/** A plate while its rows are read: each row adds what it tells, and may not say otherwise than one above. */
final class DraftPlate {
    private static final double SAME_SHARE = 0.05;

    /** As the table calls it; empty where it does not. */
    final String called;
    /** Lanes by what the table calls them, from left to right. */
    final Map<String, List<Seen>> lanes = new LinkedHashMap<>();

    final Map<RunColumn, Entered> lengths = new EnumMap<>(RunColumn.class);
    final Set<String> notSeen = new LinkedHashSet<>();

    /** How far the front ran from the start line, where a row said so. */
    Entered frontDistance = Entered.NOTHING;

    /** Its eluent in the words of the file. */
    String said = "";

    @Nullable
    Solvent weak;

    @Nullable
    Solvent strong;

    @Nullable
    String eluent;

    OptionalDouble percentStrong = OptionalDouble.empty();

    @Nullable
    JarAdditive additive;

    DraftPlate(String called) {
        this.called = called;
    }

    /** A spot seen in a lane, compounds by their names. */
    record Seen(
            List<String> spots,
            Given given,
            Entered place,
            Optional<Entered> sizeMm,
            Optional<Entered> errorMm,
            Optional<String> shape,
            Optional<String> seen) {}

    /** Whether the place of any spot hangs on the lines of the plate. */
    boolean needsLines() {
        return lanes.values().stream().flatMap(List::stream).anyMatch(seen -> seen.given() == Given.CENTRE_MM);
    }

    /** Refuses a row that says otherwise than the plate. */
    void check(RunJar jar, Map<RunColumn, Entered> told) {
        jar.weak().ifPresent(solvent -> same(RunColumn.WEAK, weak == null ? null : weak.name(), solvent.name()));
        jar.strong()
                .ifPresent(solvent -> same(RunColumn.STRONG, strong == null ? null : strong.name(), solvent.name()));
        jar.additive().ifPresent(other -> {
            if (additive != null && !additive.equals(other)) {
                throw otherwise(RunColumn.ADDITIVE, said(additive), said(other));
            }
        });
        jar.typed().ifPresent(text -> {
            boolean far = percentStrong.isPresent()
                    && jar.percentStrong().isPresent()
                    && Math.abs(percentStrong.getAsDouble()
                                    - jar.percentStrong().getAsDouble())
                            > SAME_SHARE;
            boolean unlike = percentStrong.isPresent() != jar.percentStrong().isPresent()
                    || (percentStrong.isEmpty() && !text.equals(eluent));
            if (eluent != null && (far || unlike)) {
                throw otherwise(RunColumn.ELUENT, eluent, text);
            }
        });
        told.forEach((column, entered) -> {
            Entered before = lengths.get(column);
            if (before != null && !before.equals(entered) && !sameNumber(before, entered)) {
                throw otherwise(column, before.typed(), entered.typed());
            }
        });
    }

    private static boolean sameNumber(Entered one, Entered other) {
        return one.value().isPresent() && one.value().equals(other.value());
    }

    private static String said(JarAdditive additive) {
        return additive.text().isEmpty() ? additive.kind() : additive.text();
    }

    private void same(RunColumn column, @Nullable String before, String now) {
        if (before != null && !before.equals(now)) {
            throw otherwise(column, before, now);
        }
    }

    private Refusal otherwise(RunColumn column, String before, String now) {
        return new Refusal(
                column.id(),
                Message.of("import.says-otherwise", "before", ShownText.of(before), "came", ShownText.of(now)),
                ShownText.of(now),
                Message.of("allowed.words", "words", ShownText.of(before)),
                Message.of("todo.one-plate-one-eluent"));
    }

    /** Takes over what a row tells, after {@link #check}. */
    void take(RunJar jar, Map<RunColumn, Entered> told) {
        weak = weak == null ? jar.weak().orElse(null) : weak;
        strong = strong == null ? jar.strong().orElse(null) : strong;
        additive = additive == null ? jar.additive().orElse(null) : additive;
        if (eluent == null && jar.typed().isPresent()) {
            eluent = jar.typed().get();
            percentStrong = jar.percentStrong();
        }
        said = said.isEmpty() ? jar.said() : said;
        told.forEach(lengths::putIfAbsent);
    }

    /** The lane for a row: by its name; where it has none the first nameless lane in which none of these compounds stands yet. */
    List<Seen> lane(String called, List<String> spots) {
        if (!called.isEmpty()) {
            return lanes.computeIfAbsent("named " + called, key -> new ArrayList<>());
        }
        for (int i = 1; ; i++) {
            List<Seen> lane = lanes.computeIfAbsent("nameless " + i, key -> new ArrayList<>());
            if (lane.stream().flatMap(each -> each.spots().stream()).noneMatch(spots::contains)) {
                return lane;
            }
        }
    }

    /** Whether a row for a lane of that name would begin a new lane. */
    boolean isNewLane(String called) {
        return !called.isEmpty() && !lanes.containsKey("named " + called);
    }

    Entered length(RunColumn column) {
        return Objects.requireNonNullElse(lengths.get(column), Entered.NOTHING);
    }
}
