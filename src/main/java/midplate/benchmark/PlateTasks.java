package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;

/** Draws samples and trial plates, the same for every contender. */
final class PlateTasks {
    /** Ethyl acetate of the trial plates [% v/v]. */
    static final double[] TRIAL_PERCENTS = {2, 5, 10, 20, 33.3, 50, 75, 100};

    private static final int MOST_SPOTS = 3;

    private PlateTasks() {}

    /**
     * Tasks drawn from the compounds with readings enough; none when there are fewer than three of them.
     *
     * @param count how many
     * @param seed of the draw
     */
    static List<PlateTask> of(OpenMeasurements measurements, int count, long seed) {
        List<TrueCurve> pool = TrueCurve.of(measurements.table(PairName.HEXANE_ETHYL_ACETATE));
        List<PlateTask> tasks = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < count && pool.size() >= MOST_SPOTS; i++) {
            List<TrueCurve> spots = draw(pool, 1 + random.nextInt(MOST_SPOTS), random);
            tasks.add(new PlateTask(spots, TRIAL_PERCENTS[random.nextInt(TRIAL_PERCENTS.length)]));
        }
        return List.copyOf(tasks);
    }

    /** So many different compounds. */
    static List<TrueCurve> draw(List<TrueCurve> pool, int count, SplittableRandom random) {
        List<TrueCurve> drawn = new ArrayList<>();
        while (drawn.size() < count) {
            TrueCurve next = pool.get(random.nextInt(pool.size()));
            if (!drawn.contains(next)) {
                drawn.add(next);
            }
        }
        return drawn;
    }
}
