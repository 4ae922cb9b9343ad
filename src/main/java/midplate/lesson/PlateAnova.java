package midplate.lesson;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.FDistribution;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Scatter within plates and between plates of a spot that was read more than once on some plate: the unbalanced one-way analysis of
 * variance with random effects.
 *
 * <p>With a plates of n_i readings, N in all, the mean squares are {@code MSB = Σ n_i·(x̄_i − x̄)²/(a − 1)} and {@code MSW = ΣΣ (x_ij −
 * x̄_i)²/(N − a)}; with {@code n₀ = (N − Σ n_i²/N)/(a − 1)} the variance within plates is MSW and that between them {@code (MSB −
 * MSW)/n₀}, which may come out below 0. All in Rf², from memory with high confidence.
 *
 * @param msBetween MSB [Rf²]
 * @param freeBetween its degrees of freedom, a − 1
 * @param msWithin MSW [Rf²]
 * @param freeWithin its degrees of freedom, N − a
 * @param n0 n₀ [1]
 * @see "Searle1992"
 */
record PlateAnova(double msBetween, int freeBetween, double msWithin, int freeWithin, double n0) {
    /** Share of cases left out at each end of an interval [1]. */
    private static final double TAIL = 0.05;
    /** Mean squares below this are none [Rf²]: readings alike to the last digit. */
    private static final double NOTHING = 1e-12;

    /** Of the readings of each plate; empty with one plate, or no plate read twice. */
    static Optional<PlateAnova> of(List<double[]> plates) {
        int a = plates.size();
        int all = plates.stream().mapToInt(each -> each.length).sum();
        if (a < 2 || all <= a) {
            return Optional.empty();
        }
        double grand = plates.stream().mapToDouble(StatUtils::sum).sum() / all;
        double between = 0;
        double within = 0;
        double squares = 0;
        for (double[] plate : plates) {
            double mean = StatUtils.mean(plate);
            between += plate.length * (mean - grand) * (mean - grand);
            for (double each : plate) {
                within += (each - mean) * (each - mean);
            }
            squares += (double) plate.length * plate.length;
        }
        return Optional.of(
                new PlateAnova(between / (a - 1), a - 1, within / (all - a), all - a, (all - squares / all) / (a - 1)));
    }

    /**
     * Several spots taken together: mean squares and n₀ averaged by their freedom. What is between plates moves the spots alike, so that more
     * spots give it no more freedom than the spot with most.
     *
     * @param each one or more
     */
    static PlateAnova pooled(List<PlateAnova> each) {
        int between = each.stream().mapToInt(PlateAnova::freeBetween).sum();
        int within = each.stream().mapToInt(PlateAnova::freeWithin).sum();
        double ms = each.stream()
                .mapToDouble(one -> one.msBetween * one.freeBetween)
                .sum();
        double msWithin =
                each.stream().mapToDouble(one -> one.msWithin * one.freeWithin).sum();
        double n0 = each.stream().mapToDouble(one -> one.n0 * one.freeBetween).sum();
        int most = each.stream().mapToInt(PlateAnova::freeBetween).max().orElseThrow();
        return new PlateAnova(ms / between, most, msWithin / within, within, n0 / between);
    }

    /** Variance between plates [Rf²]; below 0 where plates differ less than chance alone lets them. */
    double between() {
        return (msBetween - msWithin) / n0;
    }

    /** How likely the means of plates differ as much if plates do not differ: the F test [1]. */
    double chance() {
        if (msWithin < NOTHING) {
            return msBetween < NOTHING ? 1 : 0;
        }
        return 1 - new FDistribution(null, freeBetween, freeWithin).cumulativeProbability(msBetween / msWithin);
    }

    /** The standard deviation within plates, in 90 of 100 cases: exact for normal errors. */
    Spread within() {
        ChiSquaredDistribution chi = new ChiSquaredDistribution(null, freeWithin);
        double sum = freeWithin * msWithin;
        return Spread.of(
                msWithin,
                sum / chi.inverseCumulativeProbability(1 - TAIL),
                sum / chi.inverseCumulativeProbability(TAIL));
    }

    /**
     * The standard deviation between plates, in about 90 of 100 cases: the interval of Williams and of Tukey with n₀ for the number of
     * readings, near enough where plates were read about equally often; from memory, medium confidence, and measured in a test.
     *
     * @see "Searle1992"
     */
    Spread betweenPlates() {
        ChiSquaredDistribution chi = new ChiSquaredDistribution(null, freeBetween);
        FDistribution f = new FDistribution(null, freeBetween, freeWithin);
        double low = freeBetween * (msBetween - f.inverseCumulativeProbability(1 - TAIL) * msWithin);
        double high = freeBetween * (msBetween - f.inverseCumulativeProbability(TAIL) * msWithin);
        return Spread.of(
                between(),
                low / (n0 * chi.inverseCumulativeProbability(1 - TAIL)),
                high / (n0 * chi.inverseCumulativeProbability(TAIL)));
    }
}
