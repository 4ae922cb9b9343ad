package midplate.benchmark;

import java.util.Set;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;

/** Makes contenders, one for each fold, each tuned on what it may see and nothing else. */
public interface ContenderFactory {
    /** What its contenders are called. */
    String name();

    /** A contender that has seen these measurements; may be called by several threads at once. */
    Contender trainedOn(OpenMeasurements training);

    /** The same for which a pair was not measured; not for contenders that are not asked {@link Further#THEORY}. */
    default Contender trainedWithout(PairName pair, OpenMeasurements training) {
        throw new UnsupportedOperationException(name() + " takes no pair as not measured.");
    }

    /** What its contenders are asked beyond the usual; nothing unless said otherwise. */
    default Set<Further> further() {
        return Set.of();
    }
}
