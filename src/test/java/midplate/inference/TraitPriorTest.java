package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import midplate.catalogue.PlatePair.Bell;
import midplate.catalogue.PlatePair.Traits;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Own algebra: p(c, s, t) = p(c, s)·p(t | c, s), of which a link exchanges the first. */
@DisplayName("What is known of traits before a reading")
class TraitPriorTest {
    /** Two classes of compounds and a wide curve; in the second class s and t are larger. */
    private static final TraitPrior PRIOR = TraitPrior.of(new Traits(List.of(
            new Bell(0.6, -1, 0.8, -0.8, 0.2, 0.01, 0.05, 0.01, 0.01, 0.6),
            new Bell(0.39, 1.5, 1.2, 0.9, 0.2, 0.01, -0.05, 0.01, 0.01, 0.6),
            new Bell(0.01, 0, 1, 0, 12, 0, 0, 0.16, 0, 1))));

    @Test
    void otherWeightsOfTheColumnsKeepHowTIsSpreadInEach() {
        double[] weights = new double[PRIOR.grid().cCount() * PRIOR.grid().sCount()];
        for (int column = 0; column < weights.length; column++) {
            double c = PRIOR.grid().cAt(column % PRIOR.grid().cCount());
            double s = PRIOR.grid().sAt(column / PRIOR.grid().cCount());
            weights[column] = 3 * Math.exp(-0.5 * (c - 0.7) * (c - 0.7) - 50 * (s - 1.1) * (s - 1.1));
        }
        TraitPrior other = PRIOR.withColumns(weights.clone());
        assertEquals(0.7, other.cloud().meanC(), 0.01);
        assertEquals(1, Math.sqrt(other.varianceC()), 0.01);
        assertEquals(1.1, other.cloud().meanS(), 0.01);
        double sum = Arrays.stream(weights).sum();
        double[] columns = other.columnWeights();
        for (int column = 0; column < columns.length; column++) {
            assertEquals(weights[column] / sum, columns[column], 1e-12);
        }
    }

    // A compound at c = −1 or 1.5, s = 0.8 or 1.2 is of the first or the second class, whose t lie at −0.8 and 0.9.
    @Test
    void aLinkLeadsToTheTOfTheClassItLeadsTo() {
        LinkedPair link = new LinkedPair(
                new double[][] {{0.5}, {0.08}}, new double[] {0.25, 1}, new double[][] {{0.04, 0}, {0, 0.0025}});
        TraitPrior first = link.prior(at(-2.5), PRIOR);
        TraitPrior second = link.prior(at(2.5), PRIOR);
        assertEquals(-1, first.cloud().meanC(), 0.02);
        assertEquals(1.5, second.cloud().meanC(), 0.02);
        assertEquals(0.2, Math.sqrt(first.varianceC()), 0.01, "the link's own scatter");
        assertEquals(0.8, first.cloud().meanS(), 0.02);
        assertEquals(1.2, second.cloud().meanS(), 0.02);
        assertEquals(-0.8, meanT(first.cloud()), 0.05);
        assertEquals(0.9, meanT(second.cloud()), 0.05);
    }

    private static TraitCloud at(double c) {
        return TraitCloud.of(
                new TraitCloud.Points(new double[] {c}, new double[] {1}, new double[] {0}, new double[] {1}));
    }

    private static double meanT(TraitCloud cloud) {
        double mean = 0;
        for (int i = 0; i < cloud.size(); i++) {
            mean += cloud.weight(i) * cloud.t(i);
        }
        return mean;
    }
}
