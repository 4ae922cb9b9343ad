package midplate.identity;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import midplate.words.Message;

/**
 * Finds the state of a reaction, and tells it only where it is likely enough and the plates show what a chemist asks for.
 *
 * @param state the verdict
 * @param inWords in a sentence
 * @param chances the chance of each state but "not told"; empty where too little was seen
 */
record ReactionVerdict(ReactionState state, Message inWords, Map<ReactionState, Double> chances) {
    /** A state is told where its chance is at least this; own choices, the end being the dearest to be wrong about. */
    private static final double TOLD = 0.7;

    private static final double END_TOLD = 0.8;
    /** Where the starting material fell from the plate before to this one, that it runs costs least to be wrong about. */
    private static final double FALLING_TOLD = 0.6;
    /** Where the starting material kept its grade from the plate before, that it runs is told only above this. */
    private static final double RUNNING_ON_TOLD = 0.85;
    /** A stall needs two plates with the same grade, the later at least so many times as old. */
    private static final double FAR_APART = 1.9;
    /** What others that outgrow the product on two plates count as a reaction gone wrong; own choice. */
    private static final double OUTGROWN = 0.85;

    /** The verdict on a reaction with enough plates. */
    static ReactionVerdict of(ReactionSight sight, ReactionRf places, ReactionPosterior posterior) {
        Map<ReactionState, Double> chances = posterior.chances();
        if (isOutgrown(sight)) {
            chances = outgrown(chances);
        }
        ReactionState best = chances.entrySet().stream()
                .max(Comparator.comparingDouble(Map.Entry::getValue))
                .orElseThrow()
                .getKey();
        double chance = chances.getOrDefault(best, 0.0);
        if (chance < needed(best, sight)) {
            return notTold(Message.of("done.not-likely-enough", "state", name(best), "chance", chance), chances);
        }
        return switch (best) {
            case FINISHED -> finished(sight, places, chances);
            case STALLED -> stalled(sight, chances);
            case GONE_WRONG -> goneWrong(sight, chances);
            default -> running(sight, chances);
        };
    }

    private static double needed(ReactionState state, ReactionSight sight) {
        if (state == ReactionState.FINISHED) {
            return END_TOLD;
        }
        List<ReactionPlate> plates = sight.with(sight.startName());
        boolean falls = plates.get(plates.size() - 1).grade(sight.startName()).orElseThrow()
                < plates.get(plates.size() - 2).grade(sight.startName()).orElseThrow();
        if (state != ReactionState.RUNNING) {
            return TOLD;
        }
        return falls ? FALLING_TOLD : RUNNING_ON_TOLD;
    }

    /** Nothing can be told, and why. */
    static ReactionVerdict notTold(Message why, Map<ReactionState, Double> chances) {
        return new ReactionVerdict(ReactionState.NOT_TOLD, Message.of("done.not-told", "why", why), chances);
    }

    /** What a state is called. */
    static Message name(ReactionState state) {
        return Message.of("done.state-" + state.id());
    }

    private static ReactionVerdict running(ReactionSight sight, Map<ReactionState, Double> chances) {
        String start = sight.startName();
        boolean begun = sight.latest(start).orElse(ReactionMark.FULL) < sight.most(start)
                || sight.productName()
                        .filter(name -> sight.most(name) > ReactionMark.TRACE)
                        .isPresent();
        return begun
                ? new ReactionVerdict(ReactionState.RUNNING, Message.of("done.running", "start", start), chances)
                : notTold(Message.of("done.nothing-yet", "start", start), chances);
    }

    private static ReactionVerdict finished(
            ReactionSight sight, ReactionRf places, Map<ReactionState, Double> chances) {
        if (sight.productName().isEmpty()) {
            return notTold(Message.of("done.end-needs-product", "start", sight.startName()), chances);
        }
        String product = sight.productName().get();
        OptionalInt start = sight.last().grade(sight.startName());
        OptionalInt there = sight.last().grade(product);
        if (start.orElse(ReactionMark.FULL) > ReactionMark.UNSEEN) {
            return notTold(Message.of("done.end-needs-no-start", "start", sight.startName()), chances);
        }
        if (there.isEmpty()) {
            return notTold(
                    Message.of("done.end-product-not-looked-for", "start", sight.startName(), "product", product),
                    chances);
        }
        if (there.getAsInt() == ReactionMark.UNSEEN) {
            return notTold(Message.of("done.end-needs-product-seen", "product", product), chances);
        }
        Optional<String> rest = sight.plainOther();
        if (rest.isPresent()) {
            return notTold(Message.of("done.end-but-other", "start", sight.startName(), "spot", rest.get()), chances);
        }
        Optional<Message> cover = new HiddenRest(sight, places).why();
        if (cover.isPresent()) {
            return notTold(cover.get(), chances);
        }
        String said = sight.isUnseenOnce(sight.startName()) ? "done.finished-once" : "done.finished";
        return new ReactionVerdict(
                ReactionState.FINISHED, Message.of(said, "start", sight.startName(), "product", product), chances);
    }

    private static ReactionVerdict stalled(ReactionSight sight, Map<ReactionState, Double> chances) {
        List<ReactionPlate> plates = sight.with(sight.startName());
        ReactionPlate last = plates.get(plates.size() - 1);
        int now = last.grade(sight.startName()).orElseThrow();
        if (now == ReactionMark.UNSEEN) {
            return notTold(Message.of("done.stall-or-end", "start", sight.startName()), chances);
        }
        boolean stays = plates.stream()
                .anyMatch(plate -> plate.grade(sight.startName()).orElseThrow() <= now
                        && plate.minutes() > 0
                        && last.minutes() >= FAR_APART * plate.minutes());
        if (!stays) {
            return notTold(Message.of("done.stall-needs-time", "start", sight.startName()), chances);
        }
        Message said = now == ReactionMark.FULL
                ? Message.of("done.not-begun", "start", sight.startName())
                : Message.of("done.stalled", "start", sight.startName(), "grade", now);
        return new ReactionVerdict(ReactionState.STALLED, said, chances);
    }

    private static ReactionVerdict goneWrong(ReactionSight sight, Map<ReactionState, Double> chances) {
        String product = sight.productName().orElse("");
        int now = sight.latest(product).orElse(ReactionMark.UNSEEN);
        if (now == ReactionMark.UNSEEN && sight.most(product) == ReactionMark.UNSEEN) {
            return new ReactionVerdict(
                    ReactionState.GONE_WRONG,
                    Message.of("done.no-product", "start", sight.startName(), "product", product),
                    chances);
        }
        if (now < sight.most(product)) {
            return new ReactionVerdict(
                    ReactionState.GONE_WRONG, Message.of("done.product-lost", "product", product), chances);
        }
        return isOutgrown(sight)
                ? new ReactionVerdict(
                        ReactionState.GONE_WRONG, Message.of("done.outgrown", "product", product), chances)
                : notTold(
                        Message.of(
                                "done.not-likely-enough",
                                "state",
                                name(ReactionState.GONE_WRONG),
                                "chance",
                                chances.getOrDefault(ReactionState.GONE_WRONG, 0.0)),
                        chances);
    }

    /**
     * Whether on the last two plates something else stood at least a grade above the product, which does not rise any more, while the
     * starting material falls. One plate is not enough: an intermediate outgrows the product for a while too.
     */
    private static boolean isOutgrown(ReactionSight sight) {
        if (sight.productName().isEmpty()) {
            return false;
        }
        String product = sight.productName().get();
        List<ReactionPlate> plates = sight.with(product);
        if (plates.size() < 3) {
            return false;
        }
        ReactionPlate last = plates.get(plates.size() - 1);
        ReactionPlate before = plates.get(plates.size() - 2);
        int now = last.grade(product).orElseThrow();
        int then = before.grade(product).orElseThrow();
        return now <= then
                && sight.latest(sight.startName()).orElse(ReactionMark.FULL) < ReactionMark.PLAIN
                && sight.risenOther(last) >= Math.max(ReactionMark.PLAIN, now + 1)
                && sight.risenOther(before) >= Math.max(ReactionMark.PLAIN, then + 1)
                && sight.risenOther(last) >= sight.risenOther(before);
    }

    private static Map<ReactionState, Double> outgrown(Map<ReactionState, Double> chances) {
        Map<ReactionState, Double> after = new EnumMap<>(ReactionState.class);
        chances.forEach((state, chance) -> after.put(
                state,
                state == ReactionState.GONE_WRONG ? 1 - (1 - chance) * (1 - OUTGROWN) : chance * (1 - OUTGROWN)));
        return after;
    }
}
