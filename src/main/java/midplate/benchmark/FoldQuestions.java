package midplate.benchmark;

import java.util.List;
import java.util.Set;
import midplate.inference.Fold;
import midplate.inference.OpenMeasurements;

/**
 * All that is asked about the structures of one fold, and what may be learned from before.
 *
 * @param number of the fold, from 1
 * @param training the other folds
 * @param neighbours structures of the training that are too like those asked about; see {@link Neighbours}
 * @param ratios questions about single compounds
 * @param wholes every reading of each compound at once, told nothing of it
 * @param plates questions about samples
 * @param unlabelled samples with a second plate without labels
 * @param moved samples whose plates are moved by errors of their own
 * @param scouting samples for rounds of plates
 */
record FoldQuestions(
        int number,
        OpenMeasurements training,
        Set<String> neighbours,
        List<RatioTask> ratios,
        List<RatioTask> wholes,
        List<PlateTask> plates,
        List<UnlabelledTask> unlabelled,
        List<PlateErrorTask> moved,
        List<ScoutingTask> scouting) {
    /** So far from the seeds of the other draws that no fold shares one. */
    private static final int UNLABELLED_SEED = 1_001;

    private static final int PLATE_ERROR_SEED = 2_001;
    private static final int EXPECTED_SEED = 4_001;
    private static final int SCOUTING_SEED = 3_001;

    static FoldQuestions of(OpenMeasurements measurements, Fold fold, Plan plan) {
        OpenMeasurements training = measurements.select(fold, Fold.Part.OUTSIDE);
        OpenMeasurements asked = measurements.select(fold, Fold.Part.INSIDE);
        long seed = plan.seed() + fold.index();
        return new FoldQuestions(
                fold.index() + 1,
                training,
                Neighbours.of(asked.structures(), training.structures()),
                RatioTasks.of(asked),
                RatioTasks.wholes(asked),
                PlateTasks.of(asked, plan.setsPerFold(), seed + 1),
                UnlabelledTasks.of(asked, plan.unlabelledPerFold(), seed + UNLABELLED_SEED),
                PlateErrorTask.of(asked, plan.plateErrorPerFold(), seed + PLATE_ERROR_SEED),
                ScoutingTask.of(asked, plan.scoutingPerFold(), seed + SCOUTING_SEED));
    }

    /** The training without those that are too like the structures asked about. */
    OpenMeasurements trainingWithoutNeighbours() {
        return training.without(neighbours);
    }

    /** Samples of other compounds, half as many as of those of the fold. */
    List<PlateTask> platesOf(OpenMeasurements others) {
        return PlateTasks.of(others, plates.size() / 2, EXPECTED_SEED + number);
    }
}
