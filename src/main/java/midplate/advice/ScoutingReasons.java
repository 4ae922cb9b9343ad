package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import midplate.words.Message;

/** The sentences of why to scout, or not. */
final class ScoutingReasons {
    private static final double IN_A_HUNDRED = 100;

    private final Question question;
    private final ScoutingPlan plan;
    private final int asked;

    ScoutingReasons(Question question, ScoutingPlan plan, int asked) {
        this.question = question;
        this.plan = plan;
        this.asked = asked;
    }

    /** The plan with its reasons. */
    ScoutingPlan told() {
        List<Message> reasons = new ArrayList<>();
        reasons.add(worth());
        if (!isStraight()) {
            reasons.add(Message.of(
                    "scouting.plates",
                    "plates",
                    plan.round().plates(),
                    "straight",
                    plan.straight().round().plates()));
        }
        if (plan.jars().size() < asked) {
            reasons.add(Message.of("scouting.fewer", "jars", plan.jars().size(), "asked", asked));
        }
        plan.habit()
                .ifPresent(habit -> reasons.add(Message.of(
                        "scouting.habit",
                        "strong",
                        question.strong().said(),
                        "times",
                        Reasons.times(habit.round().chance()))));
        reasons.add(Message.of(
                "scouting.simulated",
                "samples",
                plan.samples(),
                "error",
                IN_A_HUNDRED * plan.round().standardError()));
        return new ScoutingPlan(
                plan.jars(),
                plan.round(),
                plan.straight(),
                plan.habit(),
                plan.worth(),
                plan.gain(),
                plan.gainError(),
                plan.samples(),
                reasons);
    }

    /** Whether no round beats the likeliest ratio, so that it is all the round there is. */
    private boolean isStraight() {
        return plan.jars().size() == 1
                && plan.jars().get(0).ratio().equals(plan.straight().ratio());
    }

    private Message worth() {
        if (isStraight()) {
            return Message.of(
                    "scouting.worth-straight-alone",
                    "ratio",
                    plan.straight().ratio().toString(),
                    "straight",
                    Reasons.times(plan.straight().round().chance()),
                    "asked",
                    asked);
        }
        return Message.of(
                plan.worth() == ScoutingPlan.Worth.SCOUT ? "scouting.worth-scout" : "scouting.worth-straight",
                "jars",
                plan.jars().size(),
                "times",
                Reasons.times(plan.round().chance()),
                "ratio",
                plan.straight().ratio().toString(),
                "straight",
                Reasons.times(plan.straight().round().chance()));
    }
}
