package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.advice.Adviser;
import midplate.advice.Glassware;
import midplate.advice.Question;
import midplate.advice.SpotForecast;
import midplate.advice.Window;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Sorbent;
import midplate.words.Message;
import midplate.words.Refusal;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Which candidates that did not run beside the sample these plates leave.
 *
 * <p>Where d is the Rf expected of a candidate minus that of the sample, with standard deviation σ of both together, the chance that
 * it lies within what the plates tell apart, δ, is Φ((δ − d)/σ) − Φ((−δ − d)/σ) [1] (own algebra).
 */
final class CandidateComparison {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final double BAND = NORMAL.inverseCumulativeProbability(0.95);

    private final Optional<Adviser> adviser;
    private final IdentityQuestion question;
    private final double rf;
    private final double deviation;
    private final double told;

    /**
     * For a sample.
     *
     * @param rf where it lies [1]
     * @param deviation of that [1]
     * @param told the least difference that its plates tell apart [1]
     */
    CandidateComparison(
            Optional<Adviser> adviser, IdentityQuestion question, double rf, double deviation, double told) {
        this.adviser = adviser;
        this.question = question;
        this.rf = rf;
        this.deviation = deviation;
        this.told = told;
    }

    /** An Rf of a candidate: where it is expected, its deviation, where it comes from, and the sample's own on the same scale. */
    private record Expected(double rf, double deviation, CandidatesWithin.From from, double sample) {}

    /** What is left; empty where no candidate can be compared. */
    Optional<CandidatesWithin> all() {
        List<CandidatesWithin.Each> each = new ArrayList<>();
        for (Candidate candidate : question.candidates()) {
            expected(candidate).ifPresent(expected -> each.add(compared(candidate.name(), expected)));
        }
        if (each.isEmpty()) {
            return Optional.empty();
        }
        int within = (int) each.stream()
                .filter(one -> one.chanceWithin() >= PlateComparison.COUNTS_FROM)
                .count();
        return Optional.of(new CandidatesWithin(each.size(), within, text(each.size(), within), each));
    }

    private Message text(int of, int within) {
        int left = question.candidates().size() - of;
        Message counted = Message.of("same.candidates", "of", of, "within", within, "gap", told, "rf", rf);
        return left == 0 ? counted : Message.of("same.candidates-some", "counted", counted, "left", left);
    }

    private CandidatesWithin.Each compared(String name, Expected expected) {
        double spread = Math.hypot(expected.deviation(), deviation);
        double d = expected.rf() - expected.sample();
        double chance =
                NORMAL.cumulativeProbability((told - d) / spread) - NORMAL.cumulativeProbability((-told - d) / spread);
        double half = BAND * expected.deviation();
        RfRange range =
                new RfRange(expected.rf(), Math.max(0, expected.rf() - half), Math.min(1, expected.rf() + half));
        return new CandidatesWithin.Each(name, range, chance, expected.from());
    }

    private Optional<Expected> expected(Candidate candidate) {
        if (candidate.hrf().isPresent()) {
            // without reference spots beside it the sample's own Rf is off by as much as between laboratories
            boolean corrected = question.unknownHrf().isPresent();
            return Optional.of(new Expected(
                    candidate.hrf().getAsDouble() / 100,
                    corrected ? PlateComparison.AFTER_CORRECTION : PlateComparison.BETWEEN_LABORATORIES,
                    corrected ? CandidatesWithin.From.CORRECTED : CandidatesWithin.From.PRINTED,
                    corrected ? question.unknownHrf().getAsDouble() / 100 : rf));
        }
        OptionalDouble printed = candidate.rf();
        if (printed.isPresent()) {
            return Optional.of(new Expected(
                    printed.getAsDouble(), PlateComparison.BETWEEN_LABORATORIES, CandidatesWithin.From.PRINTED, rf));
        }
        return adviser.flatMap(model -> question.eluent()
                .flatMap(eluent -> candidate.structure().flatMap(structure -> foretold(model, eluent, structure))));
    }

    private Optional<Expected> foretold(Adviser model, PlateEluent eluent, GroupCounts structure) {
        if (eluent.sorbent() != Sorbent.SILICA || eluent.additive().isPresent()) {
            return Optional.empty();
        }
        Question asked = new Question(
                        eluent.sorbent(),
                        eluent.weak(),
                        eluent.strong(),
                        Optional.empty(),
                        List.of("1"),
                        List.of(),
                        Window.USUAL,
                        eluent.setting(),
                        Glassware.usual(eluent.setting()))
                .knowing(Map.of("1", structure));
        try {
            SpotForecast spot = model.predict(asked, List.of(eluent.percentStrong()))
                    .get(0)
                    .spots()
                    .get(0);
            double spread = (spot.high() - spot.low()) / (2 * BAND);
            return Optional.of(new Expected(spot.rf(), spread, CandidatesWithin.From.MODEL, rf));
        } catch (Refusal noModel) {
            // two solvents of which not even theory exists: nothing is foretold
            return Optional.empty();
        }
    }
}
