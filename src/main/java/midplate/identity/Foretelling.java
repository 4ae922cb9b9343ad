package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * Where a compound is expected in the eluent at hand by what it is made of, as the references on the plate teach it.
 *
 * <p>On the scale of l = ln(Rf/(1 − Rf)) the model expects l_m with standard deviation s. References of which the structure is known
 * were read at l_m + r; their mean residual r̄ shifts every other compound: l = l_m + r̄ with deviation √(s² + (q·r̄)²), q the share
 * {@link PlateComparison#OWN_SHARE} (own algebra). Without such a reference it is l_m with s. Rf beyond 0.005 and 0.995 count as these.
 */
final class Foretelling {
    /** Nearer to a line nothing is read [1]. */
    private static final double LEAST_RF = 0.005;

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final double BAND = NORMAL.inverseCumulativeProbability(0.95);
    /** Where a band begins at a line up to a tenth lies beyond its other end. */
    private static final double BESIDE_LINE = NORMAL.inverseCumulativeProbability(0.9);

    private final Optional<Adviser> adviser;
    private final Optional<PlateEluent> eluent;
    private final Map<String, PairEvidence> evidence;
    private final List<Message> contradictions = new ArrayList<>();
    private double shift;

    private Foretelling(Optional<Adviser> adviser, Optional<PlateEluent> eluent, Map<String, PairEvidence> evidence) {
        this.adviser = adviser;
        this.eluent = eluent;
        this.evidence = evidence;
    }

    /** An expectation on the scale of ln(Rf/(1 − Rf)). */
    record Expectation(double logit, double deviation) {}

    /**
     * Taught by the references.
     *
     * @param evidence what the plates say, by reference
     */
    static Foretelling of(Optional<Adviser> adviser, IdentityQuestion question, Map<String, PairEvidence> evidence) {
        Foretelling foretelling = new Foretelling(adviser, question.eluent(), evidence);
        List<Double> residuals = new ArrayList<>();
        for (Compound reference : question.references()) {
            Optional<Reading> read = foretelling.read(reference.name());
            if (read.isPresent()) {
                reference
                        .structure()
                        .flatMap(foretelling::byModel)
                        .ifPresent(model -> residuals.add(foretelling.residual(reference.name(), read.get(), model)));
            }
        }
        foretelling.shift =
                residuals.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        return foretelling;
    }

    /** Where a reference was read, and its deviation there [1]. */
    record Reading(double rf, double deviation) {}

    /** Where a reference was read between the lines, the mean over its plates. */
    Optional<Reading> read(String reference) {
        List<ReadSpot> spots = Optional.ofNullable(evidence.get(reference)).stream()
                .flatMap(pair -> pair.telling().stream())
                .filter(plate -> plate.ofReferenceUnlike().isEmpty())
                .map(PlateEvidence::other)
                .filter(spot -> spot.place() == ReadSpot.Place.BETWEEN)
                .toList();
        if (spots.isEmpty()) {
            return Optional.empty();
        }
        double rf = spots.stream().mapToDouble(ReadSpot::rf).average().orElseThrow();
        double variance = spots.stream()
                .mapToDouble(spot -> spot.variance() / (spot.runMm() * spot.runMm()))
                .sum();
        return Optional.of(new Reading(rf, Math.sqrt(variance) / spots.size()));
    }

    private double residual(String name, Reading read, Expectation model) {
        double residual = logit(read.rf()) - model.logit();
        double half = BAND * model.deviation();
        if (Math.abs(residual) > half) {
            contradictions.add(Message.of(
                    "same.reading-against-structure",
                    "reference",
                    name,
                    "rf",
                    read.rf(),
                    "low",
                    rf(model.logit() - half),
                    "high",
                    rf(model.logit() + half)));
        }
        return residual;
    }

    /** Where a compound is expected; empty where there is no model for the eluent. */
    Optional<Expectation> expected(GroupCounts structure) {
        return byModel(structure)
                .map(model -> new Expectation(
                        model.logit() + shift, Math.hypot(model.deviation(), PlateComparison.OWN_SHARE * shift)));
    }

    /** One for each reference that was read where its structure does not lead one to expect it. */
    List<Message> contradictions() {
        return List.copyOf(contradictions);
    }

    private Optional<Expectation> byModel(GroupCounts structure) {
        return adviser.flatMap(model -> eluent.flatMap(known -> foretold(model, known, structure)));
    }

    private static Optional<Expectation> foretold(Adviser model, PlateEluent eluent, GroupCounts structure) {
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
            // both ends, since near a line one of them says nothing: the wider side counts
            double middle = logit(spot.rf());
            double up = (logit(spot.high()) - middle) / (spot.low() > 0 ? BAND : BESIDE_LINE);
            double down = (middle - logit(spot.low())) / (spot.high() < 1 ? BAND : BESIDE_LINE);
            return Optional.of(new Expectation(middle, Math.max(up, down)));
        } catch (Refusal noModel) {
            // two solvents of which not even theory exists: nothing is foretold
            return Optional.empty();
        }
    }

    static double logit(double rf) {
        double inside = Math.min(1 - LEAST_RF, Math.max(LEAST_RF, rf));
        return Math.log(inside / (1 - inside));
    }

    static double rf(double logit) {
        return 1 / (1 + Math.exp(-logit));
    }
}
