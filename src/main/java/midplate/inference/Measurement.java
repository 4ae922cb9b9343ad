package midplate.inference;

import java.util.List;

/**
 * One row of the open measurements.
 *
 * @param series of which series
 * @param fractions volume fractions [1] of hexane, ethyl acetate, diethyl ether, dichloromethane, methanol; sum 1
 * @param rf Rf [1], 0 to 1, the median of repeated automated plates
 */
public record Measurement(Series series, List<Double> fractions, double rf) {
    /** Keeps its own copy. */
    public Measurement {
        fractions = List.copyOf(fractions);
    }
}
