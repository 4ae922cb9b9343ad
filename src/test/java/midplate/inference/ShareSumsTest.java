package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import midplate.inference.TraitGrid.Trait;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One reading of a compound whose traits are known, so that a step of scoring can be undone by hand: score = information·step.
 * The score must be the slope of ln likelihood, taken here by differences of what {@link Noise} and {@link Stretch} say.
 */
@DisplayName("A step of the fit at one share")
class ShareSumsTest {
    private static final TraitGrid GRID = TraitGrid.fit(Trait.OWN, Trait.OWN);
    private static final PlateShape SHAPE = new PlateShape(0.1, new Stretch(0.015, 0.02));
    private static final double AT_LINES = 0.005;
    private static final double H = 1e-5;
    private static final double NU = 5;

    /** One compound at one share: a reading, the eluent and σ₀. */
    private record Case(double read, int node, Climb climb, double scale) {
        double eta(Climb other) {
            return other.eta(GRID.c(node), GRID.s(node), GRID.t(node));
        }

        double logLikelihood(Climb other, double otherScale) {
            double logistic = 1 / (1 + Math.exp(-eta(other)));
            double rf = SHAPE.stretch().rf(logistic);
            double sigma = otherScale * Math.sqrt(0.1 + 0.9 * 4 * rf * (1 - rf));
            return Math.log(Noise.likelihood(read, SHAPE.stretch().beyond(logistic), sigma, AT_LINES));
        }

        double slope(DoubleUnaryOperator logLikelihood) {
            return (logLikelihood.applyAsDouble(H) - logLikelihood.applyAsDouble(-H)) / (2 * H);
        }

        double slopeInG() {
            return slope(h -> logLikelihood(new Climb(climb.hold(), climb.strength() + h, climb.early()), scale));
        }

        double slopeInEarly() {
            return slope(h -> logLikelihood(new Climb(climb.hold(), climb.strength(), climb.early() + h), scale));
        }

        double slopeInHold() {
            return slope(h -> logLikelihood(new Climb(climb.hold() + h, climb.strength(), climb.early()), scale));
        }

        double slopeInScale() {
            return slope(h -> logLikelihood(climb, scale * Math.exp(h)));
        }

        boolean isAtLine() {
            return read <= AT_LINES || read >= 1 - AT_LINES;
        }

        ShareSums sums(ShareKind kind) {
            FitTables tables = FitTables.of(GRID, new Climb[] {climb}, new double[] {scale}, SHAPE, AT_LINES);
            double[] prior = new double[GRID.size()];
            prior[node] = 1;
            double[][] rf = {{read}};
            return ShareSums.of(0, kind, List.of(Weights.of(prior, tables, rf[0], 0)), rf, tables);
        }

        /** Information on η: the expected one of a number; the square of the score at a line. */
        double information() {
            double logistic = 1 / (1 + Math.exp(-eta(climb)));
            double rf = SHAPE.stretch().rf(logistic);
            double sigma = scale * Math.sqrt(0.1 + 0.9 * 4 * rf * (1 - rf));
            double inEta = slopeInG() / GRID.s(node);
            double steep = 1.035 * logistic * (1 - logistic) / sigma;
            return isAtLine() ? inEta * inEta : (NU + 1) / (NU + 3) * steep * steep;
        }
    }

    private static int node(double c, double s, double t) {
        int nearest = 0;
        for (int node = 0; node < GRID.size(); node++) {
            nearest = away(node, c, s, t) < away(nearest, c, s, t) ? node : nearest;
        }
        return nearest;
    }

    private static double away(int node, double c, double s, double t) {
        return Math.abs(GRID.c(node) - c) + Math.abs(GRID.s(node) - s) + Math.abs(GRID.t(node) - t);
    }

    private static Case of(double read, double c, double t) {
        return new Case(read, node(c, 1.1, t), new Climb(1.2, -0.4, 0.3), 0.06);
    }

    // Numbers near and far from where the model has them; then readings at both lines of spots near them.
    private static final String READINGS = """
            0.4, 0, 1.4
            0.47, 0.3, -1.4
            0.2, -1, 1.4
            0.6, 1.2, -1.4
            0.85, 2, 1.4
            0.03, -3, -1.4
            0.006, -3.4, 1.4
            0.99, 4.6, 1.4
            0, -4.5, 1.4
            0.004, -3, -1.4
            0.005, -2.6, 1.4
            0.005, -1.5, 1.4
            0.002, -2, 1.4
            1, 4.3, -1.4
            0.997, 2.5, 1.4
            0.996, 3.8, 1.4
            """;

    @ParameterizedTest
    @CsvSource(textBlock = READINGS)
    void theStrengthMovesByTheSlopeOfTheLikelihood(double read, double c, double t) {
        Case one = of(read, c, t);
        double step = one.sums(ShareKind.PLAIN).moved(one.climb()).strength()
                - one.climb().strength();
        double s = GRID.s(one.node());
        double expected = one.slopeInG() / (one.information() * s * s);
        assertEquals(Math.max(-0.5, Math.min(0.5, expected)), step, 1e-4 * Math.max(1, Math.abs(expected)));
    }

    @ParameterizedTest
    @CsvSource(textBlock = READINGS)
    void theScatterMovesByTheSlopeOfTheLikelihood(double read, double c, double t) {
        Case one = of(read, c, t);
        double slope = one.slopeInScale();
        double information = one.isAtLine() ? slope * slope : 2 * NU / (NU + 3);
        double expected = slope / information;
        assertEquals(
                Math.max(-0.5, Math.min(0.5, expected)),
                one.sums(ShareKind.PLAIN).scaleStep(),
                1e-4);
    }

    // Undone by hand: with I the information on η and the usual size of L of 0.5, of a − 1 of 0.2.
    @ParameterizedTest
    @CsvSource({"0.4, 0, 1.4", "0.45, 0.1, -1.4", "0.3, -0.2, 1.4", "0.55, 0.5, -1.4"})
    void earlyAndHoldMoveByTheSlopeOfTheLikelihood(double read, double c, double t) {
        Case one = of(read, c, t);
        double s = GRID.s(one.node());
        for (ShareKind kind : new ShareKind[] {ShareKind.EARLY, ShareKind.BARE}) {
            Climb moved = one.sums(kind).moved(one.climb());
            double stepG = moved.strength() - one.climb().strength();
            boolean early = kind == ShareKind.EARLY;
            double step = early
                    ? moved.early() - one.climb().early()
                    : moved.hold() - one.climb().hold();
            double x = early ? GRID.t(one.node()) : GRID.c(one.node());
            double usual = early ? 0.25 : 0.04;
            double pull = -(early ? one.climb().early() : one.climb().hold() - 1) / usual;
            double slope = early ? one.slopeInEarly() : one.slopeInHold();
            double information = one.information();
            assertTrue(Math.abs(stepG) < 0.5 && Math.abs(step) < 0.5, "not held: " + stepG + ", " + step);
            assertEquals(
                    one.slopeInG(), information * s * (s * stepG + x * step), 1e-4 * (1 + Math.abs(one.slopeInG())));
            assertEquals(
                    slope + pull,
                    information * x * (s * stepG + x * step) + step / usual,
                    1e-4 * (1 + Math.abs(slope)));
        }
    }

    @Test
    void whatIsNotReadMovesNothing() {
        Climb climb = new Climb(1.2, -0.4, 0.3);
        Case none = new Case(Double.NaN, node(0, 1, 0), climb, 0.06);
        for (ShareKind kind : ShareKind.values()) {
            assertEquals(climb, none.sums(kind).moved(climb));
            assertEquals(0, none.sums(kind).scaleStep());
        }
    }
}
