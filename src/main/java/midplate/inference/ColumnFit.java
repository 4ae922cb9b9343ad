package midplate.inference;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * The law of columns under which the middles of bands are most likely, each compound's traits summed over what its plates say: first
 * the law by itself, as if compounds did not differ beyond their plates, then τ, by how much they do, summed over δ, with what is left
 * from run to run. Fitted together, δ would take up what plates say of a compound and leave the law to say only how one compound goes
 * from eluent to eluent: compounds that were not on a column yet were foretold far worse so.
 *
 * <p>One thread, arithmetic of Java alone, fixed order: the same measurements give the same numbers on every machine.
 *
 * @param terms what the law has beyond void and hold
 * @param law its numbers and scatter
 * @param logLikelihood of the measurements, its logarithm
 */
record ColumnFit(Set<ColumnTerm> terms, ColumnLikelihood law, double logLikelihood) {
    /** Keeps its own copy. */
    ColumnFit {
        terms = Set.copyOf(terms);
    }

    /** A term must make the measurements so much more likely [ln units]: the 95 % point of χ² with one degree of freedom, halved. */
    static final double ENOUGH = 1.92;

    private static final int MOST_STEPS = 6_000;
    private static final int ROUNDS = 2;
    /** Parts in which compounds are kept out to choose terms. */
    private static final int PARTS = 5;

    private static final double CONVERGED = 1e-7;

    /** The numbers as they are searched, in their order. */
    private enum Number {
        LOG_OUTSIDE(2, 0.2),
        LOG_VOID(0.5, 0.1),
        LOG_HOLD(1.3, 0.2),
        LOG_STEEPNESS(0, 0.1),
        DRIFT(0, 0.1),
        LOG_SPOT(-1.4, 0.3),
        LOG_SCATTER(-2.2, 0.2),
        LOG_FREEDOM(1, 0.3);

        private final double start;
        private final double step;

        Number(double start, double step) {
            this.start = start;
            this.step = step;
        }
    }

    /**
     * The fit with those of the allowed terms that the measurements call for: γ and λ where they foretell compounds better that were kept
     * out of the fit, δ where it makes all runs enough likelier.
     */
    static ColumnFit chosen(List<ColumnCompound> compounds, Set<ColumnTerm> allowed) {
        Set<ColumnTerm> best = EnumSet.noneOf(ColumnTerm.class);
        double least = Double.POSITIVE_INFINITY;
        for (Set<ColumnTerm> terms : List.of(
                EnumSet.noneOf(ColumnTerm.class),
                EnumSet.of(ColumnTerm.DRIFT),
                EnumSet.of(ColumnTerm.STEEPNESS),
                EnumSet.of(ColumnTerm.STEEPNESS, ColumnTerm.DRIFT))) {
            if (allowed.containsAll(terms)) {
                double error = foretellingError(compounds, terms);
                if (error < least) {
                    least = error;
                    best = terms;
                }
            }
        }
        ColumnFit plain = of(compounds, best);
        if (!allowed.contains(ColumnTerm.SPOT)) {
            return plain;
        }
        best.add(ColumnTerm.SPOT);
        ColumnFit differing = of(compounds, best);
        return differing.logLikelihood > plain.logLikelihood + ENOUGH ? differing : plain;
    }

    /** Mean over compounds of how far the middles of each lie from what a fit to others says [ln units]. */
    private static double foretellingError(List<ColumnCompound> compounds, Set<ColumnTerm> terms) {
        double sum = 0;
        for (int i = 0; i < PARTS; i++) {
            Fold part = new Fold(i, PARTS);
            List<ColumnCompound> asked =
                    compounds.stream().filter(each -> part.holds(each.smiles())).toList();
            List<ColumnCompound> others = compounds.stream()
                    .filter(each -> !part.holds(each.smiles()))
                    .toList();
            if (!asked.isEmpty()) {
                ColumnLikelihood fitted = of(others, terms).law();
                for (ColumnCompound compound : asked) {
                    sum += fitted.error(compound);
                }
            }
        }
        return sum / compounds.size();
    }

    /** The fit with all of these terms. */
    static ColumnFit of(List<ColumnCompound> compounds, Set<ColumnTerm> terms) {
        double[] numbers =
                Arrays.stream(Number.values()).mapToDouble(each -> each.start).toArray();
        numbers[Number.LOG_SPOT.ordinal()] = Double.NEGATIVE_INFINITY;
        Set<Number> law = EnumSet.complementOf(EnumSet.of(Number.LOG_SPOT));
        if (!terms.contains(ColumnTerm.STEEPNESS)) {
            law.remove(Number.LOG_STEEPNESS);
        }
        if (!terms.contains(ColumnTerm.DRIFT)) {
            law.remove(Number.DRIFT);
        }
        double logLikelihood = climb(compounds, numbers, law);
        if (terms.contains(ColumnTerm.SPOT)) {
            numbers[Number.LOG_SPOT.ordinal()] = Number.LOG_SPOT.start;
            logLikelihood =
                    climb(compounds, numbers, EnumSet.of(Number.LOG_SPOT, Number.LOG_SCATTER, Number.LOG_FREEDOM));
        }
        return new ColumnFit(terms, likelihood(numbers), logLikelihood);
    }

    /** Puts the best values into the numbers that are free, and says how likely the measurements are with them. */
    private static double climb(List<ColumnCompound> compounds, double[] numbers, Set<Number> free) {
        int[] places = free.stream().mapToInt(Number::ordinal).toArray();
        double[] steps = free.stream().mapToDouble(each -> each.step).toArray();
        double[] start = IntStream.of(places).mapToDouble(i -> numbers[i]).toArray();
        PointValuePair found = new PointValuePair(start, 0.0);
        // a simplex that has shrunk too early is set up anew where it stopped
        for (int round = 0; round < ROUNDS; round++) {
            found = new SimplexOptimizer(CONVERGED, CONVERGED)
                    .optimize(
                            new MaxEval(MOST_STEPS),
                            new ObjectiveFunction(point -> -likelihood(put(point, places, numbers.clone()))
                                    .logLikelihood(compounds)),
                            GoalType.MINIMIZE,
                            new InitialGuess(found.getPoint()),
                            new NelderMeadSimplex(steps));
        }
        put(found.getPoint(), places, numbers);
        return -found.getValue();
    }

    private static double[] put(double[] point, int[] places, double[] into) {
        for (int i = 0; i < places.length; i++) {
            into[places[i]] = point[i];
        }
        return into;
    }

    private static ColumnLikelihood likelihood(double[] numbers) {
        return ColumnLikelihood.of(
                exp(numbers, Number.LOG_OUTSIDE),
                exp(numbers, Number.LOG_VOID),
                exp(numbers, Number.LOG_HOLD),
                exp(numbers, Number.LOG_STEEPNESS),
                numbers[Number.DRIFT.ordinal()],
                exp(numbers, Number.LOG_SPOT),
                exp(numbers, Number.LOG_SCATTER),
                exp(numbers, Number.LOG_FREEDOM));
    }

    private static double exp(double[] numbers, Number number) {
        return StrictMath.exp(numbers[number.ordinal()]);
    }
}
