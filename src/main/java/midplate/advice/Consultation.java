package midplate.advice;

import java.util.List;
import midplate.inference.Knowledge;
import midplate.inference.SpotGuess;

/** Everything that can be asked about one sample, once its plates were learned from. */
public interface Consultation {
    /** What to pour next and why. */
    Advice advice();

    /** What plates would show at some shares of the strong solvent [% v/v, 0 to 100]. */
    List<Forecast> at(List<Double> percentStrong);

    /** What happens at every ratio. */
    Curves curves();

    /** Which plates to run at once when so many jars are free, 1 to 3, and whether that beats going straight. */
    ScoutingPlan scout(int jars);

    /** Which other pairs of solvents may take the place of a mixture, at which ratio, and how sure that is. */
    Replacements others(OthersWish wish);

    /** What is known of the spots in the pair asked about. */
    Knowledge knowledge();

    /** What the spots without a label may be, by plate, lane and place; empty where every spot seen has its name. */
    default List<SpotGuess> whichIsWhich() {
        return List.of();
    }
}
