package midplate.identity;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** What keeps a question of identity from being answered, each with its place in the request. */
public final class IdentityFaults {
    /** A metre, far above any plate, so that a wrong unit is noticed [mm]. */
    private static final double LONGEST_MM = 1000;
    /** The shortest run from which an Rf is worked out [mm]; common practice, no source. */
    private static final double LEAST_RUN_MM = 5;
    /** A centre so far outside the lines may be a slip of the ruler [mm] (own choice). */
    private static final double SLIP_MM = 1;

    private final IdentityQuestion question;
    private final List<Refusal> faults = new ArrayList<>();
    private final Set<String> names = new HashSet<>();

    private IdentityFaults(IdentityQuestion question) {
        this.question = question;
    }

    /** All of them; empty where nothing is wrong. */
    public static List<Refusal> in(IdentityQuestion question) {
        IdentityFaults finder = new IdentityFaults(question);
        finder.references();
        for (int i = 0; i < question.plates().size(); i++) {
            finder.plate("plates[" + i + "]", question.plates().get(i));
        }
        finder.candidates();
        if (finder.faults.isEmpty()) {
            finder.lanesMissing();
        }
        return List.copyOf(finder.faults);
    }

    private void fault(String field, String reason, String came, Message allowed, String todo) {
        faults.add(new Refusal(field, Message.of(reason), came, allowed, Message.of(todo)));
    }

    private void references() {
        if (question.references().isEmpty()) {
            fault("references", "same.no-reference", "[]", Message.of("allowed.one-or-more"), "same.todo-reference");
        }
        for (int i = 0; i < question.references().size(); i++) {
            String name = question.references().get(i).name();
            if (name.isBlank() || !names.add(name)) {
                fault(
                        "references[" + i + "].name",
                        "same.reference-name",
                        name,
                        Message.of("allowed.own-name"),
                        "same.todo-name");
            }
        }
    }

    private void plate(String at, ComparedPlate plate) {
        boolean lines = lines(at, plate);
        for (int i = 0; i < plate.lanes().size(); i++) {
            String lane = at + ".lanes[" + i + "]";
            ComparedLane each = plate.lanes().get(i);
            if (each.role() != LaneRole.UNKNOWN
                    && each.reference().filter(names::contains).isEmpty()) {
                fault(
                        lane + ".reference",
                        "same.unknown-reference",
                        each.reference().orElse(""),
                        Allowed.words(names.stream().sorted().toList()),
                        "same.todo-lane-reference");
            }
            if (each.spots().isEmpty()) {
                fault(
                        lane + ".spots",
                        "same.lane-without-spots",
                        "[]",
                        Message.of("allowed.one-or-more"),
                        "same.todo-lane-spots");
            }
            for (int j = 0; lines && j < each.spots().size(); j++) {
                spot(lane + ".spots[" + j + "]", each.spots().get(j), plate);
            }
        }
    }

    /** Whether the lines are good enough to place spots between them. */
    private boolean lines(String at, ComparedPlate plate) {
        int before = faults.size();
        length(at + ".startMm", plate.startMm());
        length(at + ".frontMm", plate.frontMm());
        if (faults.size() > before) {
            return false;
        }
        if (plate.startMm().isPresent() != plate.frontMm().isPresent()) {
            fault(
                    at + (plate.startMm().isPresent() ? ".frontMm" : ".startMm"),
                    "same.one-line-only",
                    "",
                    Allowed.mm(Allowed.closed(0, LONGEST_MM)),
                    "todo.give-both-heights");
            return false;
        }
        double start = plate.startMm().orElse(0);
        if (plate.frontMm().isPresent() && !(plate.frontMm().getAsDouble() - start >= LEAST_RUN_MM)) {
            fault(
                    at + ".frontMm",
                    "same.front-not-above-start",
                    Allowed.number(plate.frontMm().getAsDouble()),
                    Allowed.mm(Allowed.closed(Allowed.number(start + LEAST_RUN_MM), Allowed.number(LONGEST_MM))),
                    "todo.give-both-heights");
            return false;
        }
        return true;
    }

    private void length(String field, OptionalDouble mm) {
        mm.ifPresent(given -> number(field, given, 0, LONGEST_MM));
    }

    private void spot(String at, LaneSpot spot, ComparedPlate plate) {
        if (spot.centreMm().isPresent() == spot.rf().isPresent()) {
            fault(at + ".centreMm", "same.height-or-rf", "", Message.of("allowed.height-or-rf"), "same.todo-height");
            return;
        }
        spot.rf().ifPresent(rf -> number(at + ".rf", rf, 0, 1));
        spot.sizeMm().ifPresent(mm -> {
            if (!(mm > 0 && mm <= ReadSpot.runMm(plate))) {
                fault(
                        at + ".sizeMm",
                        "same.number-out-of-range",
                        Allowed.number(mm),
                        Allowed.mm(Allowed.leftOpen("0", Allowed.number(ReadSpot.runMm(plate)))),
                        "todo.give-number-inside");
            }
        });
        if (spot.centreMm().isPresent()) {
            if (plate.startMm().isEmpty()) {
                fault(
                        at + ".centreMm",
                        "same.height-without-lines",
                        Allowed.number(spot.centreMm().getAsDouble()),
                        Message.of("allowed.height-or-rf"),
                        "todo.give-both-heights");
                return;
            }
            double slack = Math.max(SLIP_MM, spot.sizeMm().orElse(0) / 2);
            double low = plate.startMm().getAsDouble() - slack;
            double high = plate.frontMm().orElseThrow() + slack;
            double mm = spot.centreMm().getAsDouble();
            if (!(mm >= low && mm <= high)) {
                fault(
                        at + ".centreMm",
                        mm > high ? "same.spot-above-front" : "same.spot-below-start",
                        Allowed.number(mm),
                        Allowed.mm(Allowed.closed(
                                Allowed.number(plate.startMm().getAsDouble()),
                                Allowed.number(plate.frontMm().orElseThrow()))),
                        "todo.measure-from-edge");
            }
        }
    }

    private void number(String field, double given, double low, double high) {
        if (!(given >= low && given <= high)) {
            fault(
                    field,
                    "same.number-out-of-range",
                    Allowed.number(given),
                    Allowed.closed(low, high),
                    "todo.give-number-inside");
        }
    }

    private void candidates() {
        for (int i = 0; i < question.candidates().size(); i++) {
            String at = "candidates[" + i + "].";
            Candidate candidate = question.candidates().get(i);
            candidate.rf().ifPresent(rf -> number(at + "rf", rf, 0, 1));
            candidate.hrf().ifPresent(hrf -> number(at + "hrf", hrf, 0, 100));
        }
        question.unknownHrf().ifPresent(hrf -> number("unknown.hrf", hrf, 0, 100));
    }

    /** A sample nobody spotted, or a reference. */
    private void lanesMissing() {
        List<ComparedLane> lanes = question.plates().stream()
                .flatMap(plate -> plate.lanes().stream())
                .toList();
        if (lanes.stream().noneMatch(lane -> lane.role() == LaneRole.UNKNOWN)) {
            boolean coSpot = lanes.stream().anyMatch(lane -> lane.role() == LaneRole.CO_SPOT);
            fault(
                    "plates",
                    coSpot ? "same.co-spot-alone" : "same.no-unknown",
                    Integer.toString(lanes.size()),
                    Message.of("allowed.lane-of-unknown"),
                    "same.todo-unknown");
            return;
        }
        for (int i = 0; i < question.references().size(); i++) {
            String name = question.references().get(i).name();
            if (lanes.stream()
                    .noneMatch(lane -> lane.role() == LaneRole.REFERENCE
                            && lane.reference().filter(name::equals).isPresent())) {
                fault(
                        "references[" + i + "]",
                        "same.reference-not-spotted",
                        name,
                        Message.of("allowed.lane-of-reference"),
                        "same.todo-spot-reference");
            }
        }
    }
}
