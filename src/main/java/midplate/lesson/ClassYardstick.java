package midplate.lesson;

import java.util.function.DoubleUnaryOperator;
import midplate.advice.Consultation;
import midplate.inference.PossiblePlates;
import org.apache.commons.math3.stat.StatUtils;

/**
 * What the model expects a class of some setting to scatter by, in the same parts as {@link SharedShift} tells apart.
 *
 * @param own standard deviation of a spot by itself [Rf] at an Rf [1]: its reading, and what a plate does to that spot alone
 * @param shared standard deviation of what a plate does to all its spots [ln units]
 */
public record ClassYardstick(DoubleUnaryOperator own, double shared) {
    /** Of what is known of a sample, at a share of the strong solvent [% v/v]. */
    public static ClassYardstick of(Consultation consultation, double percent) {
        PossiblePlates plates = PossiblePlates.of(consultation.knowledge());
        return new ClassYardstick(rf -> plates.ownScatter(percent, rf), plates.sharedScatter());
    }

    /**
     * Both parts [Rf], over all spots.
     *
     * @param own of a spot by itself
     * @param between of plates, as it moves these spots
     */
    record Expected(double own, double between) {}

    /** The root of the mean squares over the spots that tell anything, each counted by its plates. */
    Expected at(ClassTable table) {
        double ownSquares = 0;
        double betweenSquares = 0;
        int count = 0;
        for (int s = 0; s < table.spots(); s++) {
            double mean = StatUtils.mean(table.all(s));
            if (SharedShift.isTold(mean)) {
                int plates = table.of(s).size();
                ownSquares += plates * Math.pow(own.applyAsDouble(mean), 2);
                betweenSquares += plates * Math.pow(SharedShift.slope(mean) * shared, 2);
                count += plates;
            }
        }
        return new Expected(Math.sqrt(ownSquares / count), Math.sqrt(betweenSquares / count));
    }
}
