package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;

/** Draws samples of two or three compounds and the ratios of their two plates. */
final class UnlabelledTasks {
    private static final int LEAST_SPOTS = 2;
    private static final int MOST_SPOTS = 3;

    private UnlabelledTasks() {}

    /**
     * Tasks drawn from the compounds with readings enough; none when there are fewer than three of them.
     *
     * @param count how many
     * @param seed of the draw
     */
    static List<UnlabelledTask> of(OpenMeasurements measurements, int count, long seed) {
        List<TrueCurve> pool = TrueCurve.of(measurements.table(PairName.HEXANE_ETHYL_ACETATE));
        double[] percents = PlateTasks.TRIAL_PERCENTS;
        List<UnlabelledTask> tasks = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < count && pool.size() >= MOST_SPOTS; i++) {
            int spots = LEAST_SPOTS + random.nextInt(MOST_SPOTS - LEAST_SPOTS + 1);
            List<TrueCurve> drawn = PlateTasks.draw(pool, spots, random);
            int first = random.nextInt(percents.length);
            int second = (first + 1 + random.nextInt(percents.length - 1)) % percents.length;
            tasks.add(new UnlabelledTask(drawn, percents[first], percents[second]));
        }
        return List.copyOf(tasks);
    }
}
