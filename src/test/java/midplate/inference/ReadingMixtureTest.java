package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import midplate.plate.Setting;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The readings to expect")
class ReadingMixtureTest {
    // Reference: Student's t in Apache Commons Math. The quantile lies on a straight line between marks 1/512 apart, so
    // what is
    // below it misses by no more than the curve bends in between.
    @ParameterizedTest
    @CsvSource({"0.3, 0.7, 0.5", "0.02, 0.98, 0.5", "0.5, 0.52, 0.9", "0.1, 0.9, 0.05", "0, 1, 0.97"})
    void halfTheTailsLieBeyondTheQuantiles(double one, double other, double share) {
        Knowledge knowledge = Plates.BUILT_IN.learn(Plates.ACETATE, Setting.BENCH, List.of("A"), List.of());
        double[] bins = ReadingMixture.bins();
        bins[ReadingMixture.bin(one)] += share;
        bins[ReadingMixture.bin(other)] += 1 - share;
        ReadingMixture mixture = ReadingMixture.of(bins, knowledge, 20);
        for (double probability : new double[] {0.03, 0.05, 0.4, 0.6, 0.95}) {
            double quantile = mixture.quantile(probability);
            double below = share * below(knowledge, quantile, one) + (1 - share) * below(knowledge, quantile, other);
            if (quantile == 0) {
                assertEquals(Math.max(below, probability), below, 1e-8);
            } else if (quantile == 1) {
                assertEquals(Math.min(below, probability), below, 1e-8);
            } else {
                assertEquals(probability, below, 0.002, "quantile " + quantile);
            }
        }
    }

    private static double below(Knowledge knowledge, double reading, double rf) {
        double sigma =
                knowledge.model().noise().sigma(20, rf, knowledge.scatter().readingError());
        return new TDistribution(5).cumulativeProbability((reading - rf) / sigma);
    }
}
