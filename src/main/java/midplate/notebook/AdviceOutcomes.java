package midplate.notebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import midplate.notebook.GivenAdvice.Foretold;
import midplate.notebook.ScoredAdvice.Outcome;
import midplate.notebook.ScoredAdvice.SpotOutcome;
import midplate.plate.Reading;
import midplate.words.Message;

/**
 * What came of the advices of a study.
 *
 * <p>An advice is scored by the first plate, in the order of the study, that it did not rest on and that ran its pair, additive and
 * ratio; a plate on which nothing was entered yet gives way to one on which something was. It came true when every spot was read in
 * the window, both ends included, and the two that were to be kept apart lie at least {@value #APART_RF} apart in Rf. Where one plate
 * would score several advices, only the latest counts, as the others gave way to it.
 *
 * <p>The ratio was run when p lies within min({@value #MOST_OFF}, max({@value #LEAST_OFF}, {@value #PART_OFF}·p)) of the advised p
 * [% v/v]: what people pour differs from what they read on a card by about that (common practice, no source).
 */
public final class AdviceOutcomes {
    /** Two spots closer than this were not kept apart [1]. */
    static final double APART_RF = 0.1;

    private static final double LEAST_OFF = 0.2;
    private static final double PART_OFF = 0.02;
    private static final double MOST_OFF = 0.5;
    private static final double ROUNDING = 1e-9;

    private final Study study;

    private AdviceOutcomes(Study study) {
        this.study = study;
    }

    /** Each advice of a study beside what came of it, in the order given. */
    public static List<ScoredAdvice> of(Study study) {
        return new AdviceOutcomes(study).all();
    }

    private List<ScoredAdvice> all() {
        List<ScoredAdvice> scored = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (int i = study.advices().size() - 1; i >= 0; i--) {
            GivenAdvice advice = study.advices().get(i);
            Optional<StudyPlate> plate = plate(advice);
            boolean first = plate.map(each -> taken.add(each.id())).orElse(true);
            scored.add(0, first ? scored(i, advice, plate) : notRun(i, advice, Message.of("outcome.given-again")));
        }
        return List.copyOf(scored);
    }

    /** The plate that ran an advice. */
    private Optional<StudyPlate> plate(GivenAdvice advice) {
        List<StudyPlate> same =
                study.plates().stream().filter(plate -> isSame(plate, advice)).toList();
        return same.stream()
                .filter(SeenPlate::hasAnything)
                .findFirst()
                .or(() -> same.stream().findFirst());
    }

    private static boolean isSame(StudyPlate plate, GivenAdvice advice) {
        if (advice.after().contains(plate.id())
                || !isSamePair(plate, advice)
                || !SaidAdditive.same(plate.additive(), advice.additive())) {
            return false;
        }
        return isSameRatio(plate, advice);
    }

    static boolean isSamePair(StudyPlate plate, GivenAdvice advice) {
        return plate.weak().equals(advice.weak()) && plate.strong().equals(advice.strong());
    }

    static boolean isSameRatio(StudyPlate plate, GivenAdvice advice) {
        if (plate.percentStrong().isEmpty()) {
            return false;
        }
        double off = Math.abs(plate.percentStrong().getAsDouble() - advice.percentStrong());
        return off <= Math.min(MOST_OFF, Math.max(LEAST_OFF, PART_OFF * advice.percentStrong())) + ROUNDING;
    }

    private ScoredAdvice scored(int number, GivenAdvice advice, Optional<StudyPlate> plate) {
        if (plate.isEmpty()) {
            return notRun(number, advice, new NearlyRun(study).of(advice));
        }
        StudyPlate run = plate.get();
        if (!SeenPlate.hasAnything(run)) {
            return notTold(number, advice, run, Map.of(), Message.of("outcome.not-read"));
        }
        SeenPlate seen = SeenPlate.of(study, run);
        if (seen.fault().isPresent()) {
            Message why = Message.of("outcome.unreadable", "fault", seen.fault().get());
            return notTold(number, advice, run, Map.of(), why);
        }
        Optional<String> missed = advice.spots().stream()
                .map(Foretold::spot)
                .filter(run.notSeen()::contains)
                .findFirst();
        if (missed.isPresent()) {
            Message why = Message.of("outcome.not-seen", "spot", name(missed.get()));
            return notTold(number, advice, run, seen.readings(), why);
        }
        return new SpotsAccounted(advice, seen)
                .whole()
                .map(all -> judged(number, advice, run, all, seen))
                .orElseGet(() -> notTold(number, advice, run, seen.readings(), Message.of("outcome.unaccounted")));
    }

    private ScoredAdvice judged(
            int number, GivenAdvice advice, StudyPlate run, SpotsAccounted.All all, SeenPlate seen) {
        Judgement inside = all.inside();
        Judgement apart = all.apart();
        if (inside == Judgement.NO || apart == Judgement.NO) {
            Message why = inside == Judgement.NO
                    ? Message.of("outcome.outside")
                    : Message.of("outcome.together", "least", APART_RF);
            return scored(number, advice, run, Outcome.MISSED, why, all);
        }
        if (inside == Judgement.YES && apart == Judgement.YES) {
            return scored(number, advice, run, Outcome.CAME_TRUE, cameTrue(advice, all, seen), all);
        }
        return scored(number, advice, run, Outcome.NOT_TOLD, Message.of("outcome.unsure"), all);
    }

    private static Message cameTrue(GivenAdvice advice, SpotsAccounted.All all, SeenPlate seen) {
        int more = new SpotsAccounted(advice, seen).more();
        if (more > 0) {
            return more == 1
                    ? Message.of("outcome.came-true-one-more")
                    : Message.of("outcome.came-true-more", "count", more);
        }
        return Message.of(all.unlabelled().isEmpty() ? "outcome.came-true" : "outcome.came-true-unlabelled");
    }

    private static ScoredAdvice scored(
            int number, GivenAdvice advice, StudyPlate run, Outcome outcome, Message why, SpotsAccounted.All all) {
        return new ScoredAdvice(
                number, advice, Optional.of(run.id()), outcome, why, spots(advice, all.known()), all.unlabelled());
    }

    private static ScoredAdvice notTold(
            int number, GivenAdvice advice, StudyPlate run, Map<String, Reading> read, Message why) {
        return new ScoredAdvice(
                number, advice, Optional.of(run.id()), Outcome.NOT_TOLD, why, spots(advice, read), List.of());
    }

    private static ScoredAdvice notRun(int number, GivenAdvice advice, Message why) {
        return new ScoredAdvice(
                number, advice, Optional.empty(), Outcome.NOT_RUN, why, spots(advice, Map.of()), List.of());
    }

    private static List<SpotOutcome> spots(GivenAdvice advice, Map<String, Reading> read) {
        return advice.spots().stream()
                .map(spot -> new SpotOutcome(spot, Optional.ofNullable(read.get(spot.spot()))))
                .toList();
    }

    private String name(String id) {
        return study.spots().stream()
                .filter(spot -> spot.id().equals(id) && !spot.name().isBlank())
                .map(StudySpot::name)
                .findFirst()
                .orElse(id);
    }
}
