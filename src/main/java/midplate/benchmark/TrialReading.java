package midplate.benchmark;

import java.util.Comparator;
import midplate.inference.PairName;

/**
 * What a contender is told of one spot on one plate.
 *
 * @param pair the solvents of that plate
 * @param percent share of the stronger one [% v/v]
 * @param rf the Rf read [1], 0 to 1
 */
public record TrialReading(PairName pair, double percent, double rf) implements Comparable<TrialReading> {
    private static final Comparator<TrialReading> ORDER = Comparator.comparing(TrialReading::pair)
            .thenComparingDouble(TrialReading::percent)
            .thenComparingDouble(TrialReading::rf);

    /** By pair, percentage and Rf. */
    @Override
    public int compareTo(TrialReading other) {
        return ORDER.compare(this, other);
    }
}
