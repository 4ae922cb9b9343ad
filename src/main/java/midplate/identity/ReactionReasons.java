package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import midplate.words.Allowed;
import midplate.words.Message;

/** Says what a verdict on a reaction rests on: which spots, and from which plate on. */
final class ReactionReasons {
    /** No chance is told higher [1]: the model is none of the reaction itself. */
    private static final double SURE = 0.99;

    private final ReactionSight sight;

    ReactionReasons(ReactionSight sight) {
        this.sight = sight;
    }

    /** What the spots did, the starting material first. */
    List<Message> of(ReactionVerdict verdict) {
        List<Message> reasons = new ArrayList<>();
        for (SpeciesPart part : SpeciesPart.values()) {
            for (ReactionSpecies species : sight.question().of(part)) {
                List<ReactionPlate> plates = sight.with(species.name());
                if (!plates.isEmpty()) {
                    reasons.add(part == SpeciesPart.START ? start(species.name(), plates) : formed(species, plates));
                }
            }
        }
        baseline(reasons);
        double chance = verdict.chances().getOrDefault(verdict.state(), 0.0);
        if (chance > 0) {
            reasons.add(
                    chance > SURE
                            ? Message.of("done.chance-high", "chance", SURE)
                            : Message.of("done.chance", "chance", chance));
        }
        reasons.addAll(todo(verdict));
        return reasons;
    }

    private Message start(String name, List<ReactionPlate> plates) {
        ReactionPlate last = plates.get(plates.size() - 1);
        int now = grade(last, name);
        if (plates.size() == 1) {
            return Message.of("done.seen-once", "spot", name, "grade", now, "minutes", minutes(last));
        }
        ReactionPlate since = since(name, plates, now);
        int first = grade(plates.get(0), name);
        if (now == ReactionMark.UNSEEN) {
            String said = sight.isNeverSeen(name)
                    ? "done.never-seen"
                    : since == last ? "done.start-gone-last" : "done.start-gone";
            return Message.of(said, "spot", name, "minutes", minutes(sight.isNeverSeen(name) ? last : since));
        }
        if (since == plates.get(0)) {
            return Message.of("done.stays", "spot", name, "grade", now, "minutes", minutes(last));
        }
        boolean lately = since == last;
        return Message.of(
                now < first ? (lately ? "done.fell-last" : "done.fell") : (lately ? "done.rose-last" : "done.rose"),
                "spot",
                name,
                "first",
                first,
                "grade",
                now,
                "minutes",
                minutes(since));
    }

    private Message formed(ReactionSpecies species, List<ReactionPlate> plates) {
        String name = species.name();
        ReactionPlate last = plates.get(plates.size() - 1);
        int now = grade(last, name);
        int most = sight.most(name);
        if (most == ReactionMark.UNSEEN) {
            return Message.of("done.never-seen", "spot", name, "minutes", minutes(last));
        }
        if (plates.size() == 1) {
            return Message.of("done.seen-once", "spot", name, "grade", now, "minutes", minutes(last));
        }
        if (now < most) {
            ReactionPlate peak = plates.stream()
                    .filter(plate -> grade(plate, name) == most)
                    .reduce((one, next) -> next)
                    .orElse(last);
            return Message.of(
                    "done.fell-again",
                    "spot",
                    name,
                    "most",
                    most,
                    "peak",
                    minutes(peak),
                    "grade",
                    now,
                    "minutes",
                    minutes(last));
        }
        ReactionPlate first = plates.stream()
                .filter(plate -> grade(plate, name) > ReactionMark.UNSEEN)
                .findFirst()
                .orElse(last);
        return first == plates.get(0) && grade(first, name) == now
                ? Message.of("done.stays", "spot", name, "grade", now, "minutes", minutes(last))
                : Message.of("done.appeared", "spot", name, "since", minutes(first), "grade", now);
    }

    private void baseline(List<Message> reasons) {
        OptionalInt line = sight.last().baseline();
        if (line.orElse(ReactionMark.UNSEEN) > sight.firstBaseline()) {
            reasons.add(Message.of("done.baseline-rose", "grade", line.orElseThrow()));
        }
    }

    /** What follows from the verdict. */
    private List<Message> todo(ReactionVerdict verdict) {
        List<Message> todo = new ArrayList<>();
        switch (verdict.state()) {
            case FINISHED -> todo.add(Message.of("done.todo-finished"));
            case STALLED ->
                todo.add(Message.of(
                        sight.latest(sight.startName()).orElse(0) == ReactionMark.FULL
                                ? "done.todo-not-begun"
                                : "done.todo-stalled"));
            case GONE_WRONG ->
                todo.add(Message.of(
                        sight.most(sight.productName().orElse("")) == ReactionMark.UNSEEN
                                ? "done.todo-no-product"
                                : "done.todo-gone-wrong"));
            default -> {}
        }
        List<ReactionSpecies> starts = sight.question().of(SpeciesPart.START);
        for (ReactionSpecies other : starts.subList(Math.min(1, starts.size()), starts.size())) {
            if (sight.latest(other.name()).orElse(ReactionMark.FULL) == ReactionMark.UNSEEN
                    && sight.latest(sight.startName()).orElse(0) > ReactionMark.UNSEEN) {
                todo.add(Message.of("done.other-start-gone", "spot", other.name(), "start", sight.startName()));
            }
        }
        return todo;
    }

    /** The plate from which on a spot kept its grade. */
    private static ReactionPlate since(String name, List<ReactionPlate> plates, int now) {
        int at = plates.size() - 1;
        while (at > 0 && grade(plates.get(at - 1), name) == now) {
            at--;
        }
        return plates.get(at);
    }

    private static int grade(ReactionPlate plate, String name) {
        return plate.grade(name).orElseThrow();
    }

    static Message minutes(ReactionPlate plate) {
        return minutes(plate.minutes());
    }

    static Message minutes(double minutes) {
        return Allowed.figure(Allowed.number(minutes));
    }
}
