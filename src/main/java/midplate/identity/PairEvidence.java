package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * What all plates say of the sample and one reference. Each plate is compared within itself only; then the chances of its gap and of
 * its co-spot are taken together with those of the other plates.
 *
 * <p>The product of n chances of one compound, independent and even over 0 to 1, is at least as small as it is with probability
 * P = Q(χ² = −2·Σ ln p, 2n degrees of freedom); for two it is P = p₁p₂·(1 − ln p₁p₂) (Fisher's method).
 *
 * @param all one for each plate on which both ran, with what it says
 * @see "Fisher1932"
 */
record PairEvidence(List<PlateEvidence> all) {
    private static final double SMALLEST = 1e-12;

    PairEvidence {
        all = List.copyOf(all);
    }

    static PairEvidence of(List<ReadPlate> plates, String reference) {
        return new PairEvidence(plates.stream()
                .flatMap(plate -> PlateEvidence.of(plate, reference).stream())
                .toList());
    }

    /** The plates that say something. */
    List<PlateEvidence> telling() {
        return all.stream().filter(plate -> !plate.isSilent()).toList();
    }

    /** The chance that one compound would look at least so different [1]; 1 where no plate says anything. */
    double chanceOfOne() {
        List<Double> chances = new ArrayList<>();
        for (PlateEvidence plate : telling()) {
            chances.add(plate.chanceOfGap());
            plate.coSpot().ifPresent(coSpot -> coSpot.chance().ifPresent(chances::add));
        }
        return together(chances);
    }

    static double together(List<Double> chances) {
        if (chances.isEmpty()) {
            return 1;
        }
        double statistic = -2
                * chances.stream()
                        .mapToDouble(chance -> Math.log(Math.max(SMALLEST, chance)))
                        .sum();
        return Math.min(1, 1 - new ChiSquaredDistribution(null, 2.0 * chances.size()).cumulativeProbability(statistic));
    }

    /** The mean gap, each plate by its weight [1 in Rf]. */
    double gapRf() {
        return telling().stream()
                        .mapToDouble(plate -> weight(plate) * plate.gapRf())
                        .sum()
                / weights();
    }

    /** Its standard deviation [1 in Rf]. */
    double deviationRf() {
        return 1 / Math.sqrt(weights());
    }

    /** The least gap that would have been told with the usual power [1 in Rf]. */
    double leastToldRf() {
        return PlateComparison.leastTold(deviationRf(), stated());
    }

    /** Where the sample's spot lies, the mean [1]. */
    double rf() {
        return telling().stream()
                        .mapToDouble(plate -> weight(plate) * plate.one().rf())
                        .sum()
                / weights();
    }

    private double weights() {
        return telling().stream().mapToDouble(PairEvidence::weight).sum();
    }

    private static double weight(PlateEvidence plate) {
        return 1 / (plate.deviationRf() * plate.deviationRf());
    }

    boolean contradicts() {
        return telling().stream().anyMatch(PlateEvidence::contradicts);
    }

    /** Below this chance of one compound the two are called different [1]. */
    double stated() {
        boolean alone = telling().stream()
                .flatMap(plate -> plate.coSpot().stream())
                .allMatch(coSpot -> coSpot.chance().isEmpty());
        return alone ? PlateComparison.STATED_ALONE : PlateComparison.STATED;
    }

    Verdict.Outcome outcome() {
        if (telling().isEmpty()) {
            return Verdict.Outcome.UNDECIDED;
        }
        double chance = chanceOfOne();
        if (chance < stated() && !contradicts()) {
            return Verdict.Outcome.DIFFERENT;
        }
        return chance > PlateComparison.UNREMARKABLE && !contradicts()
                ? Verdict.Outcome.NOT_TOLD_APART
                : Verdict.Outcome.UNDECIDED;
    }
}
