package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import midplate.catalogue.PlatePair.Bell;
import midplate.inference.TraitGrid.Trait;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected values: what was put in, by the definitions of mean and covariance. */
@DisplayName("A normal curve over the traits")
class BellsTest {
    private static final TraitGrid GRID = TraitGrid.spots(Trait.OWN, Trait.OWN);
    private static final Bell WIDE = new Bell(0.7, 0.33, 1.07, -0.2, 0.3, 0.02, -0.15, 0.012, 0.02, 0.5);

    private static double sum(double[] weights) {
        return Arrays.stream(weights).sum();
    }

    private static double mean(double[] weights, IntToDoubleFunction quantity) {
        double sum = 0;
        for (int node = 0; node < weights.length; node++) {
            sum += weights[node] * quantity.applyAsDouble(node);
        }
        return sum / sum(weights);
    }

    private static double covariance(double[] weights, IntToDoubleFunction one, IntToDoubleFunction other) {
        double meanOne = mean(weights, one);
        double meanOther = mean(weights, other);
        return mean(weights, node -> (one.applyAsDouble(node) - meanOne) * (other.applyAsDouble(node) - meanOther));
    }

    @Test
    void hasTheMeanAndTheCovarianceThatWerePutIn() {
        double[] weights = new Bells(GRID).summed(List.of(WIDE));
        assertEquals(WIDE.weight(), sum(weights), 1e-12);
        assertEquals(WIDE.c(), mean(weights, GRID::c), 1e-3);
        assertEquals(WIDE.s(), mean(weights, GRID::s), 1e-3);
        assertEquals(WIDE.t(), mean(weights, GRID::t), 1e-2);
        assertEquals(WIDE.varianceC(), covariance(weights, GRID::c, GRID::c), 2e-3);
        assertEquals(WIDE.covarianceCS(), covariance(weights, GRID::c, GRID::s), 5e-4);
        assertEquals(WIDE.covarianceCT(), covariance(weights, GRID::c, GRID::t), 3e-3);
        assertEquals(WIDE.varianceS(), covariance(weights, GRID::s, GRID::s), 1e-4);
        assertEquals(WIDE.covarianceST(), covariance(weights, GRID::s, GRID::t), 5e-4);
        assertEquals(WIDE.varianceT(), covariance(weights, GRID::t, GRID::t), 1e-2);
    }

    // Half of the third lies beyond the end of the grid in c, and the fourth is narrower than the steps of the grid.
    @Test
    void eachAddsItsWeight() {
        List<Bell> bells = List.of(
                WIDE,
                new Bell(0.1, -3, 0.8, 1, 0.1, 0, 0, 0.01, 0, 1),
                new Bell(0.15, 10, 1, 0, 1, 0, 0, 0.04, 0, 1),
                new Bell(0.05, 0.05, 1.02, 0.4, 1e-4, 0, 0, 1e-4, 0, 2.5e-3));
        Bells on = new Bells(GRID);
        double before = 0;
        double[] weights = new double[GRID.size()];
        for (Bell bell : bells) {
            on.add(bell, weights);
            assertEquals(bell.weight(), sum(weights) - before, 1e-12, bell.toString());
            before = sum(weights);
        }
        assertTrue(Arrays.stream(weights).allMatch(weight -> weight >= 0));
        assertEquals(sum(weights), sum(on.summed(bells)), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"30, 1", "-14.6, 1", "0, 3", "0, -0.2"})
    void outOfReachGivesNothing(double c, double s) {
        assertEquals(0, sum(new Bells(GRID).summed(List.of(new Bell(1, c, s, 0, 1, 0, 0, 0.01, 0, 1)))));
    }

    @Test
    void aTraitInWhichCompoundsDoNotDifferIsLeftOut() {
        TraitGrid plain = TraitGrid.spots(Trait.OWN, Trait.ALIKE);
        double[] two = new Bells(plain).summed(List.of(WIDE));
        assertEquals(WIDE.weight(), sum(two), 1e-12);
        assertEquals(WIDE.varianceC(), covariance(two, plain::c, plain::c), 2e-3);
        assertEquals(WIDE.covarianceCS(), covariance(two, plain::c, plain::s), 5e-4);
        double[] same = new Bells(plain).summed(List.of(new Bell(0.7, 0.33, 1.07, 9, 0.3, 0.02, 0, 0.012, 0, 0)));
        for (int node = 0; node < two.length; node++) {
            assertEquals(two[node], same[node], 1e-15);
        }
        TraitGrid one = TraitGrid.spots(Trait.ALIKE, Trait.ALIKE);
        double[] alone = new Bells(one).summed(List.of(WIDE));
        assertEquals(WIDE.weight(), sum(alone), 1e-12);
        assertEquals(WIDE.c(), mean(alone, one::c), 1e-3);
        assertEquals(WIDE.varianceC(), covariance(alone, one::c, one::c), 2e-3);
        assertEquals(1, mean(alone, one::s), 1e-15);
    }
}
