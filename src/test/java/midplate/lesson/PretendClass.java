package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Classes made up by a law of their own, which knows nothing of the model: each plate's eluent, layer and air move the ratio of the times
 * that a compound spends in the two phases by a common factor, and a ruler errs by tenths of millimetres.
 */
final class PretendClass {
    /** Where the front stands above the start line [mm]. */
    static final double RUN_MM = 52;
    /** Height of the start line [mm]. */
    static final double START_MM = 10;

    private final Random random;
    private final double[] truth;
    private final double plateFactor;
    private final double rulerMm;

    /**
     * A class.
     *
     * @param truth the Rf of each spot
     * @param plateFactor standard deviation of the logarithm of that factor
     * @param rulerMm standard deviation of a height of a spot [mm]
     */
    PretendClass(long seed, double[] truth, double plateFactor, double rulerMm) {
        this.random = new Random(seed);
        this.truth = truth.clone();
        this.plateFactor = plateFactor;
        this.rulerMm = rulerMm;
    }

    /** What a pair divides. */
    enum Divides {
        /** As it should. */
        RIGHTLY,
        /** Distances from the edge. */
        FROM_EDGE,
        /** Distances by that to the top of a plate of 70 mm. */
        BY_TOP
    }

    /** One plate, each spot in so many lanes, to two decimals. */
    List<ClassReading> plate(String pair, int plate, int lanes, Divides divides, HowRead how) {
        List<ClassReading> read = new ArrayList<>();
        double factor = Math.exp(plateFactor * random.nextGaussian());
        for (int spot = 0; spot < truth.length; spot++) {
            double stays = (1 / truth[spot] - 1) / factor;
            for (int lane = 1; lane <= lanes; lane++) {
                double mm = RUN_MM / (1 + stays) + rulerMm * random.nextGaussian();
                double rf = switch (divides) {
                    case RIGHTLY -> mm / RUN_MM;
                    case FROM_EDGE -> (mm + START_MM) / (RUN_MM + START_MM);
                    case BY_TOP -> mm / (70 - START_MM);
                };
                double written = Math.round(100 * Math.max(0, Math.min(1, rf))) / 100.0;
                read.add(new ClassReading(pair, ClassPlate.ofPair(pair, plate), lane, spot, written, how));
            }
        }
        return read;
    }

    /** A class of so many pairs, the last of which divides in its own way. */
    List<ClassReading> pairs(int count, int lanes, Divides last, HowRead ofLast) {
        List<ClassReading> all = new ArrayList<>();
        for (int pair = 1; pair < count; pair++) {
            all.addAll(plate("p" + pair, 1, lanes, Divides.RIGHTLY, HowRead.UNTOLD));
        }
        all.addAll(plate("last", 1, lanes, last, ofLast));
        return all;
    }
}
