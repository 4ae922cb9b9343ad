package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.words.Message;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Which candidates that did not run beside the sample these plates leave.
 *
 * <p>Where d is the place expected of a candidate minus that of the sample, with standard deviation σ of both together, it stays
 * possible where |d| is at most 1.645·σ, the 90 % band. The chance that it lies within what the plates tell apart, from δ₁ below the
 * sample to δ₂ above, is Φ((δ₂ − d)/σ) − Φ((−δ₁ − d)/σ) [1]. Printed places are compared on the scale of Rf, foretold ones on that of
 * ln(Rf/(1 − Rf)) (own algebra).
 */
final class CandidateComparison {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final double BAND = NORMAL.inverseCumulativeProbability(0.95);

    private final Foretelling foretelling;
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
    CandidateComparison(Foretelling foretelling, IdentityQuestion question, double rf, double deviation, double told) {
        this.foretelling = foretelling;
        this.question = question;
        this.rf = rf;
        this.deviation = deviation;
        this.told = told;
    }

    /** The scale on which a place is expected. */
    private enum Scale {
        RF {
            @Override
            double of(double rf) {
                return rf;
            }

            @Override
            double back(double place) {
                return Math.min(1, Math.max(0, place));
            }
        },
        LOGIT {
            @Override
            double of(double rf) {
                return Foretelling.logit(rf);
            }

            @Override
            double back(double place) {
                return Foretelling.rf(place);
            }
        };

        abstract double of(double rf);

        abstract double back(double place);
    }

    /** Where a candidate is expected on a scale, its deviation there, where that comes from, and the sample's own Rf [1]. */
    private record Expected(Scale scale, double place, double deviation, CandidatesWithin.From from, double sample) {}

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
                .filter(one -> one.standing() == CandidatesWithin.Standing.LEFT)
                .count();
        return Optional.of(new CandidatesWithin(each.size(), within, text(each.size(), within), each));
    }

    private Message text(int of, int within) {
        int left = question.candidates().size() - of;
        Message counted = Message.of("same.candidates", "of", of, "within", within, "gap", told, "rf", rf);
        return left == 0 ? counted : Message.of("same.candidates-some", "counted", counted, "left", left);
    }

    private CandidatesWithin.Each compared(String name, Expected expected) {
        Scale scale = expected.scale();
        double sample = scale.of(expected.sample());
        double below = scale.of(expected.sample() - told) - sample;
        double above = scale.of(expected.sample() + told) - sample;
        // the error of the sample, carried over to the scale
        double own = deviation * (above - below) / (2 * told);
        double spread = Math.hypot(expected.deviation(), own);
        double d = expected.place() - sample;
        double chance =
                NORMAL.cumulativeProbability((above - d) / spread) - NORMAL.cumulativeProbability((below - d) / spread);
        double half = BAND * expected.deviation();
        RfRange range = new RfRange(
                scale.back(expected.place()), scale.back(expected.place() - half), scale.back(expected.place() + half));
        CandidatesWithin.Standing standing =
                Math.abs(d) <= BAND * spread ? CandidatesWithin.Standing.LEFT : CandidatesWithin.Standing.OUT;
        return new CandidatesWithin.Each(name, range, chance, expected.from(), standing);
    }

    private Optional<Expected> expected(Candidate candidate) {
        Optional<Foretelling.Reading> beside = candidate.sameAs().flatMap(foretelling::read);
        if (beside.isPresent()) {
            return Optional.of(new Expected(
                    Scale.RF, beside.get().rf(), beside.get().deviation(), CandidatesWithin.From.REFERENCE, rf));
        }
        if (candidate.hrf().isPresent()) {
            // without reference spots beside it the sample's own Rf is off by as much as between laboratories
            boolean corrected = question.unknownHrf().isPresent();
            return Optional.of(new Expected(
                    Scale.RF,
                    candidate.hrf().getAsDouble() / 100,
                    corrected ? PlateComparison.AFTER_CORRECTION : PlateComparison.BETWEEN_LABORATORIES,
                    corrected ? CandidatesWithin.From.CORRECTED : CandidatesWithin.From.PRINTED,
                    corrected ? question.unknownHrf().getAsDouble() / 100 : rf));
        }
        OptionalDouble printed = candidate.rf();
        if (printed.isPresent()) {
            return Optional.of(new Expected(
                    Scale.RF,
                    printed.getAsDouble(),
                    PlateComparison.BETWEEN_LABORATORIES,
                    CandidatesWithin.From.PRINTED,
                    rf));
        }
        return candidate
                .structure()
                .flatMap(foretelling::expected)
                .map(told ->
                        new Expected(Scale.LOGIT, told.logit(), told.deviation(), CandidatesWithin.From.MODEL, rf));
    }
}
