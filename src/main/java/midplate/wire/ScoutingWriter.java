package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import midplate.advice.Ratio;
import midplate.advice.ScoutingPlan;
import midplate.words.Texts;

/** Writes which plates to run at once. */
final class ScoutingWriter {
    /** Decimals of a chance and a percentage. */
    private static final int DECIMALS = 4;

    private final Texts texts;

    ScoutingWriter(Texts texts) {
        this.texts = texts;
    }

    String write(Asked asked, ScoutingPlan plan) {
        ObjectNode answer = JsonWriting.object();
        answer.set("id", JsonWriting.id(asked.id()));
        ArrayNode jars = answer.putArray("jars");
        plan.jars().forEach(jar -> jars.add(jar(jar)));
        round(answer, plan.round());
        ObjectNode straight = answer.putObject("straight");
        ratio(straight, plan.straight().ratio());
        round(straight, plan.straight().round());
        plan.habit().ifPresent(habit -> {
            ObjectNode node = answer.putObject("habit");
            node.set(
                    "percents",
                    JsonWriting.numbers(
                            habit.ratios().stream().map(Ratio::percentStrong).toList(), DECIMALS));
            round(node, habit.round());
        });
        answer.put("worth", plan.worth() == ScoutingPlan.Worth.SCOUT ? "scout" : "straight");
        answer.set("gain", JsonWriting.number(plan.gain(), DECIMALS));
        answer.set("gainError", JsonWriting.number(plan.gainError(), DECIMALS));
        answer.put("samples", plan.samples());
        answer.set("reasons", JsonWriting.messages(plan.reasons(), texts));
        return JsonWriting.text(answer);
    }

    private static ObjectNode jar(ScoutingPlan.Jar jar) {
        ObjectNode node = JsonWriting.object();
        ratio(node, jar.ratio());
        node.set("weakMl", JsonWriting.number(jar.pour().weakMl(), DECIMALS));
        node.set("strongMl", JsonWriting.number(jar.pour().strongMl(), DECIMALS));
        node.set("alone", JsonWriting.number(jar.chance(), DECIMALS));
        return node;
    }

    private static void ratio(ObjectNode node, Ratio ratio) {
        node.set("percentStrong", JsonWriting.number(ratio.percentStrong(), DECIMALS));
        node.put("ratio", ratio.toString());
    }

    private static void round(ObjectNode node, ScoutingPlan.Round round) {
        node.set("chance", JsonWriting.number(round.chance(), DECIMALS));
        node.set("standardError", JsonWriting.number(round.standardError(), DECIMALS));
        node.set("now", JsonWriting.number(round.now(), DECIMALS));
        node.set("plates", JsonWriting.number(round.plates(), DECIMALS));
    }
}
