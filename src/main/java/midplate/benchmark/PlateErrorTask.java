package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import midplate.inference.OpenMeasurements;

/**
 * A sample whose plates do not repeat: every plate, the trial and the next one, has an error of its own, shared by its spots,
 * that moves ln(Rf/(1 − Rf)) of all of them by {@code 4·d·z}. d is the standard deviation in Rf midway up the plate, z
 * standard normal. Spots at Rf 0 and 1 stay there.
 *
 * @param plate sample and trial ratio
 * @param trialError z of the trial plate [1]
 * @param nextError z of the next plate [1]
 */
record PlateErrorTask(PlateTask plate, double trialError, double nextError) {
    /** The sizes of the error that are tried: d [1 in Rf]. */
    static final double[] SIZES = {0, 0.03, 0.05};

    private static final double LOGITS_FOR_ONE_RF = 4;
    private static final double LOW = 0.2;
    private static final double HIGH = 0.8;
    /** So far from the seed of the samples that their draws have nothing in common. */
    private static final int ERROR_SEED = 500_009;

    /** Samples drawn as in {@link PlateTasks}, each with two errors. */
    static List<PlateErrorTask> of(OpenMeasurements measurements, int count, long seed) {
        SplittableRandom random = new SplittableRandom(seed + ERROR_SEED);
        List<PlateErrorTask> tasks = new ArrayList<>();
        for (PlateTask plate : PlateTasks.of(measurements, count, seed)) {
            // Box and Muller: two independent normal numbers of two even ones
            double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()));
            double angle = 2 * Math.PI * random.nextDouble();
            tasks.add(new PlateErrorTask(plate, radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
        }
        return List.copyOf(tasks);
    }

    /** What is told: each spot's Rf on the moved trial plate, rounded to 0.01 and sorted. */
    List<List<TrialReading>> trials(double size) {
        return plate.told(rf -> moved(rf, size * trialError));
    }

    /** Whether all spots lie at 0.2 to 0.8 on the moved next plate. */
    boolean hitAt(double percent, double size) {
        return plate.spots().stream()
                .mapToDouble(spot -> moved(spot.rf(percent), size * nextError))
                .allMatch(rf -> rf >= LOW && rf <= HIGH);
    }

    private static double moved(double rf, double shift) {
        if (shift == 0) {
            return rf;
        }
        double odds = rf * StrictMath.exp(LOGITS_FOR_ONE_RF * shift);
        return odds / (1 - rf + odds);
    }
}
