package midplate.lesson;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A mistake of measuring that moves all spots of a plate by one rule: what is read is {@code a + b·Rf}.
 *
 * <p>Geometry, exact: with the start line at s and the front at f above the plate's edge and σ = s/f, distances that were taken from the edge
 * give {@code σ + (1 − σ)·Rf}; heights taken from the start line, from which the start line was subtracted once more, {@code (Rf − σ)/(1 − σ)},
 * where σ is s over what was called the front; another line in place of the front gives {@code Rf·φ}, φ the true run over the one used.
 */
enum MeasuringSlip {
    /** Distances were taken from the plate's edge and not from the start line. */
    EDGE(0.05),
    /** Another line than the front was taken for it. */
    FRONT(0.03),
    /** Heights were taken from the start line and are treated as if from the edge. */
    LINE(0.05);

    /** Parts σ where the lines are not known [1]: start lines at 8 to 15 mm, fronts at 50 to 80 mm (common practice, no source). */
    private static final double[] PARTS = {0.10, 0.12, 0.14, 0.16, 0.18, 0.20, 0.22, 0.24, 0.26};
    /** Runs over the one used φ [1] (own choice): nearer to 1 nobody tells it from a plate that ran otherwise. */
    private static final double[] RUNS = {0.70, 0.75, 0.80, 0.85, 0.90, 1.1, 1.15, 1.2, 1.3, 1.4};

    private final double prior;

    MeasuringSlip(double prior) {
        this.prior = prior;
    }

    /** What is read of an Rf: {@code a + b·Rf}. */
    record Rule(double a, double b) {
        /** No mistake. */
        static final Rule NONE = new Rule(0, 1);

        double read(double rf) {
            return a + b * rf;
        }

        /** The Rf behind a reading [1], kept between the lines. */
        double behind(double read) {
            return Math.max(0, Math.min(1, (read - a) / b));
        }
    }

    /** How likely a pair makes it before anything is read [1] (own choice). */
    double prior() {
        return prior;
    }

    /** Whether it can happen where Rf come about in that way. */
    boolean isPossible(HowRead how) {
        return switch (this) {
            case EDGE -> how.by() == HowRead.By.PAIR;
            case LINE -> how.by() == HowRead.By.PROGRAM && how.startPart().isPresent();
            case FRONT -> true;
        };
    }

    /** The forms it may have where the lines are known or not, each as likely. */
    List<Rule> rules(OptionalDouble startPart) {
        return switch (this) {
            case EDGE ->
                Arrays.stream(startPart.isPresent() ? new double[] {startPart.getAsDouble()} : PARTS)
                        .mapToObj(part -> new Rule(part, 1 - part))
                        .toList();
            case LINE -> {
                double part = startPart.orElseThrow();
                yield List.of(new Rule(-part / (1 - part), 1 / (1 - part)));
            }
            case FRONT -> Arrays.stream(RUNS).mapToObj(run -> new Rule(0, run)).toList();
        };
    }
}
