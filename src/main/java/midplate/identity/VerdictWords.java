package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.words.Message;

/** A verdict with its reasons in sentences. */
final class VerdictWords {
    private static final double SMALLEST_TOLD = 0.1;

    private final String reference;
    private final PairEvidence evidence;

    private VerdictWords(String reference, PairEvidence evidence) {
        this.reference = reference;
        this.evidence = evidence;
    }

    static Verdict said(String reference, PairEvidence evidence) {
        return new VerdictWords(reference, evidence).verdict();
    }

    private Verdict verdict() {
        Verdict.Outcome outcome = evidence.outcome();
        if (evidence.telling().isEmpty()) {
            return new Verdict(
                    reference,
                    outcome,
                    Message.of("same.undecided", "reference", reference),
                    List.of(silence()),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
        }
        double gap = evidence.gapRf();
        double half = PlateComparison.halfBand(evidence.deviationRf());
        return new Verdict(
                reference,
                outcome,
                inWords(outcome),
                reasons(outcome),
                Optional.of(new RfRange(gap, gap - half, gap + half)),
                OptionalDouble.of(evidence.chanceOfOne()),
                OptionalDouble.of(evidence.leastToldRf()),
                OptionalDouble.of(evidence.rf()));
    }

    private Message silence() {
        return Message.of(
                evidence.all().isEmpty() ? "same.no-plate-together" : "same.at-a-line", "reference", reference);
    }

    private Message inWords(Verdict.Outcome outcome) {
        boolean several = evidence.telling().stream().anyMatch(plate -> plate.ofSample() > 1);
        return switch (outcome) {
            case DIFFERENT -> Message.of(several ? "same.different-several" : "same.different", "reference", reference);
            case NOT_TOLD_APART ->
                Message.of(several ? "same.not-told-apart-several" : "same.not-told-apart", "reference", reference);
            case UNDECIDED -> Message.of("same.undecided", "reference", reference);
        };
    }

    private List<Message> reasons(Verdict.Outcome outcome) {
        List<Message> reasons = new ArrayList<>();
        for (PlateEvidence plate : evidence.telling()) {
            gap(plate, reasons);
            plate.ofSampleUnlike().ifPresent(lanes -> reasons.add(unlike("same.lanes-of-sample", plate, lanes)));
            plate.ofReferenceUnlike().ifPresent(lanes -> reasons.add(unlike("same.lanes-of-reference", plate, lanes)));
            plate.coSpot()
                    .ifPresent(coSpot ->
                            reasons.add(Message.of("same.co-" + word(coSpot.kind()), "reference", reference)));
            if (plate.ofReference() > 1) {
                reasons.add(Message.of(
                        "same.several-of-reference",
                        "reference",
                        reference,
                        "count",
                        plate.ofReference(),
                        "rf",
                        plate.other().rf()));
            }
        }
        boolean coSpotted =
                evidence.telling().stream().anyMatch(plate -> plate.coSpot().isPresent());
        boolean several = evidence.telling().size() > 1 || coSpotted;
        if (several && !evidence.contradicts() && !isAlways(evidence.chanceOfOne())) {
            reasons.add(Message.of("same.together", "times", times(evidence.chanceOfOne())));
        }
        if (outcome == Verdict.Outcome.UNDECIDED && !evidence.contradicts()) {
            reasons.add(Message.of("same.in-between"));
        }
        if (!coSpotted) {
            reasons.add(Message.of("same.no-co-spot", "reference", reference));
        }
        if (!coSpotted && outcome != Verdict.Outcome.NOT_TOLD_APART) {
            reasons.add(Message.of("same.edges"));
        }
        double least = evidence.leastToldRf();
        // beside a gap as large that was not called different the sentence would be wrong
        if (outcome != Verdict.Outcome.DIFFERENT && Math.abs(evidence.gapRf()) < least) {
            reasons.add(Message.of("same.least", "gap", least));
        }
        return reasons;
    }

    private Message unlike(String key, PlateEvidence plate, List<ReadSpot> lanes) {
        return Message.of(
                key,
                "plate",
                plate.plate().number(),
                "reference",
                reference,
                "low",
                lanes.get(0).rf(),
                "high",
                lanes.get(1).rf());
    }

    /** Whether one compound looks so on about 100 of 100 plates, which says nothing. */
    private static boolean isAlways(double chance) {
        return Math.round(100 * chance) >= 100;
    }

    private void gap(PlateEvidence plate, List<Message> reasons) {
        reasons.add(Message.of(
                isAlways(plate.chanceOfGap()) ? "same.gap-none" : "same.gap",
                "plate",
                plate.plate().number(),
                "one",
                plate.one().rf(),
                "other",
                plate.other().rf(),
                "reference",
                reference,
                "gap",
                Math.abs(plate.gapRf()),
                "times",
                times(plate.chanceOfGap())));
        boolean streak =
                plate.one().shape() == SpotShape.STREAK || plate.other().shape() == SpotShape.STREAK;
        if (streak) {
            reasons.add(Message.of("same.streak"));
        }
    }

    /** How often of a hundred plates, or that it is less than one in a thousand. */
    private static Message times(double chance) {
        return 100 * chance < SMALLEST_TOLD
                ? Message.of("same.times-fewer")
                : Message.of(100 * chance < 10 ? "same.times-tenths" : "same.times", "times", 100 * chance);
    }

    private static String word(CoSpotFinding.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
