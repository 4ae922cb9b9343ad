package midplate.advice;

import java.util.List;
import java.util.Optional;
import midplate.words.Message;

/**
 * Plates to run at once before deciding, beside going straight to the likeliest ratio.
 *
 * @param jars the plates of the round, the weakest eluent first; fewer than asked for where a further one adds less than 0.005
 * @param round what they are worth
 * @param straight the likeliest ratio by itself, and what it is worth
 * @param habit what the usual three plates are worth; empty where this pair or glassware cannot make them
 * @param worth whether the round is worth its plates
 * @param gain by how much the chance of the round exceeds that of going straight [1]
 * @param gainError standard error of the gain [1]
 * @param samples on how many simulated samples the chances rest
 * @param reasons the sentences of why
 */
public record ScoutingPlan(
        List<Jar> jars,
        Round round,
        Straight straight,
        Optional<Habit> habit,
        Worth worth,
        double gain,
        double gainError,
        int samples,
        List<Message> reasons) {
    /** Keeps its own copies. */
    public ScoutingPlan {
        jars = List.copyOf(jars);
        reasons = List.copyOf(reasons);
    }

    /** The shares of the strong solvent of the round [% v/v], rising. */
    public List<Double> percentsStrong() {
        return jars.stream().map(jar -> jar.ratio().percentStrong()).toList();
    }

    /** Whether a round is worth its plates. */
    public enum Worth {
        /** It leaves a chance that is better by more than {@link Scouting#WORTH_ITS_PLATES}. */
        SCOUT,
        /** It does not: pour the likeliest ratio. */
        STRAIGHT
    }

    /**
     * One plate of a round.
     *
     * @param ratio its mixture
     * @param pour what to pour for it
     * @param chance that it meets the aim by itself [1]
     */
    public record Jar(Ratio ratio, Pour pour, double chance) {}

    /**
     * What a round of plates is worth.
     *
     * @param chance that the aim is met on one of its plates or on the next one after them [1]
     * @param standardError of the chance, from simulation [1]
     * @param now that it is met on one of its plates [1]
     * @param plates how many plates that takes on average: those of the round, and the next one where none of them met the aim
     */
    public record Round(double chance, double standardError, double now, double plates) {}

    /**
     * Going straight.
     *
     * @param ratio the mixture
     * @param round what it is worth
     */
    public record Straight(Ratio ratio, Round round) {}

    /**
     * The plates that are run out of habit.
     *
     * @param ratios their mixtures
     * @param round what they are worth
     */
    public record Habit(List<Ratio> ratios, Round round) {
        /** Keeps its own copy. */
        public Habit {
            ratios = List.copyOf(ratios);
        }
    }
}
