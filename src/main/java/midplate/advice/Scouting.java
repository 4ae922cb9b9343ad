package midplate.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import midplate.inference.Outlook;
import midplate.inference.PairModel;
import midplate.inference.PreposteriorAnalysis;
import midplate.inference.RoundValue;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * Which plates to run at once when one, two or three jars are free, and whether that beats going straight to the likeliest ratio.
 *
 * <p>A round of plates is worth {@code V(R)}, the chance that every spot reads inside the window (named pairs apart) on one of its
 * plates or on the next one after them, whose ratio is advised by what they showed ({@link PreposteriorAnalysis}). One plate,
 * three at once and going straight all cost one round of waiting, so V compares equal time; plates are counted beside it. Rounds
 * are searched on some simulated samples and valued on others, so that the best of many is not praised for its luck.
 */
public final class Scouting {
    /** The most plates of a round. */
    public static final int MOST_JARS = 3;

    /**
     * A gain in the chance below which a round is not worth its plates [1]. Our own choice: two in a hundred are about what the
     * chances themselves are true to, and one more plate costs silica, solvent and a spot of the sample.
     */
    public static final double WORTH_ITS_PLATES = 0.02;

    /** A further plate that adds less to the chance is left out [1]; our own choice, above the error of the simulation. */
    private static final double ADDS = 0.005;

    /** Spots times samples: for the search, and for the value. */
    private static final int SEARCHED = 1024;

    private static final int VALUED = 6144;
    private static final int FEWEST = 128;
    private static final int FEWEST_SEARCHED = 32;
    private static final int MOST_SEARCHED = 384;
    private static final int MOST_VALUED = 2048;
    private static final int SEARCH_SEED = 11;
    private static final int VALUE_SEED = 29;

    /** 9:1, 1:1 and the pure strong solvent: what is run first where nothing is known; common practice, no source. */
    private static final List<Ratio> HABIT = List.of(new Ratio(9, 1), new Ratio(1, 1), new Ratio(0, 1));

    private final Question question;
    private final Aim aim;
    private final List<Ratio> ratios;
    private final List<Double> percents;
    private final PreposteriorAnalysis valuing;
    private final int samples;

    Scouting(Question question, Aim aim) {
        this.question = question;
        this.aim = aim;
        PairModel model = aim.outlook().knowledge().model();
        this.ratios = PourableRatios.between(model.lowestPercent(), model.highestPercent()).stream()
                .filter(question.glassware()::measures)
                .toList();
        this.percents = ratios.stream().map(Ratio::percentStrong).toList();
        this.samples = Math.max(FEWEST, Math.min(MOST_VALUED, VALUED / spots()));
        this.valuing = analysis(percents, samples, VALUE_SEED);
    }

    /** Refuses a number of jars that is none of 1, 2 and 3, before anything is worked out for it. */
    static void check(int jars) {
        if (jars < 1 || jars > MOST_JARS) {
            throw new Refusal(
                    "jars",
                    Message.of("scouting.jars-out-of-range", "jars", jars, "most", MOST_JARS),
                    Integer.toString(jars),
                    Allowed.closed(1, MOST_JARS),
                    Message.of("todo.give-jars"));
        }
    }

    private int spots() {
        return aim.spots().size();
    }

    private PreposteriorAnalysis analysis(List<Double> next, int count, int seed) {
        Outlook outlook = aim.outlook();
        return outlook.preposterior(aim.parting(), next, new PreposteriorAnalysis.Draws(count, seed));
    }

    /** For the search every other ratio is enough for the plate after the round: neighbours differ little. */
    private PreposteriorAnalysis searching() {
        List<Double> next = IntStream.range(0, percents.size())
                .filter(i -> i % 2 == 0)
                .mapToObj(percents::get)
                .toList();
        return analysis(next, Math.max(FEWEST_SEARCHED, Math.min(MOST_SEARCHED, SEARCHED / spots())), SEARCH_SEED);
    }

    /**
     * The plan for so many jars.
     *
     * @param jars 1 to 3, as {@link #check} lets pass
     * @param likeliest the ratio advised when one plate is run after the other
     */
    ScoutingPlan plan(int jars, Ratio likeliest) {
        RoundValue straight = value(List.of(likeliest));
        List<Ratio> best = List.of(likeliest);
        RoundValue value = straight;
        for (List<Ratio> round : new Rounds(searching(), ratios).upTo(jars)) {
            RoundValue its = value(round);
            if (its.above(value) >= ADDS) {
                best = round;
                value = its;
            }
        }
        double gain = value.above(straight);
        ScoutingPlan.Worth worth = gain > WORTH_ITS_PLATES ? ScoutingPlan.Worth.SCOUT : ScoutingPlan.Worth.STRAIGHT;
        ScoutingPlan plan = new ScoutingPlan(
                jars(best),
                round(value, best.size()),
                new ScoutingPlan.Straight(likeliest, round(straight, 1)),
                habit(),
                worth,
                gain,
                value.errorAbove(straight),
                samples,
                List.of());
        return new ScoutingReasons(question, plan, jars).told();
    }

    private List<ScoutingPlan.Jar> jars(List<Ratio> round) {
        List<ScoutingPlan.Jar> jars = new ArrayList<>();
        round.stream().sorted(Comparator.comparingDouble(Ratio::percentStrong)).forEach(ratio -> {
            Pour pour = Pouring.of(ratio, question.glassware(), aim);
            jars.add(new ScoutingPlan.Jar(ratio, pour, aim.chance(ratio.percentStrong())));
        });
        return jars;
    }

    private Optional<ScoutingPlan.Habit> habit() {
        return ratios.containsAll(HABIT)
                ? Optional.of(new ScoutingPlan.Habit(HABIT, round(value(HABIT), HABIT.size())))
                : Optional.empty();
    }

    private RoundValue value(List<Ratio> round) {
        return valuing.value(round.stream().map(Ratio::percentStrong).toList());
    }

    private static ScoutingPlan.Round round(RoundValue value, int plates) {
        return new ScoutingPlan.Round(value.chance(), value.standardError(), value.now(), plates + 1 - value.now());
    }
}
