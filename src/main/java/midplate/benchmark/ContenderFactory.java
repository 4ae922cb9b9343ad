package midplate.benchmark;

import java.util.Set;
import midplate.inference.OpenMeasurements;

/** Makes contenders, one for each fold, each tuned on what it may see and nothing else. */
public interface ContenderFactory {
    /** What its contenders are called. */
    String name();

    /** A contender that has seen these measurements; may be called by several threads at once. */
    Contender trainedOn(OpenMeasurements training);

    /** What its contenders are asked beyond the usual; nothing unless said otherwise. */
    default Set<Further> further() {
        return Set.of();
    }
}
