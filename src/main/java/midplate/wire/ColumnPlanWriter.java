package midplate.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import midplate.column.Bed;
import midplate.column.Cartridge;
import midplate.column.ColumnPlan;
import midplate.column.ColumnPlan.Prediction;
import midplate.column.ColumnPlan.SpotBand;
import midplate.column.ColumnPlan.StepPour;
import midplate.column.ColumnPlan.Tried;
import midplate.column.ColumnQuestion;
import midplate.column.GlassColumn;
import midplate.column.Program;
import midplate.column.Range90;
import midplate.words.Message;
import midplate.words.Texts;

/** Writes what to do on a column. */
final class ColumnPlanWriter {
    /** Decimals of an Rf, a chance and a percentage. */
    private static final int DECIMALS = 4;
    /** Decimals of a volume, a mass and a time. */
    private static final int COARSE = 2;

    private final Texts texts;

    ColumnPlanWriter(Texts texts) {
        this.texts = texts;
    }

    /** The whole answer. */
    String write(AskedColumn asked, ColumnPlan plan, List<Prediction> predictions) {
        ObjectNode answer = JsonWriting.object();
        answer.set("id", JsonWriting.id(asked.asked().id()));
        answer.set("plan", plan(asked.question(), plan));
        ArrayNode foretold = answer.putArray("predictions");
        predictions.forEach(prediction -> foretold.add(prediction(prediction)));
        answer.set("notes", JsonWriting.notes(asked.asked().notes(), texts));
        return JsonWriting.text(answer);
    }

    private ObjectNode plan(ColumnQuestion question, ColumnPlan plan) {
        ObjectNode node = JsonWriting.object();
        node.put("target", question.target());
        ObjectNode bed = bed(plan.bed());
        bed.set("silicaGrams", rounded(plan.bed().silicaGrams()));
        bed.put("basis", ColumnParts.word(plan.bed().basis()));
        bed.set("text", JsonWriting.message(plan.bed().basis().said(), texts));
        node.set("bed", bed);
        node.put("advised", question.bed().isEmpty());
        node.set("voidMl", rounded(plan.voidMl()));
        node.set("unretainedMl", rounded(plan.unretainedMl()));
        node.set("load", load(plan.load()));
        ArrayNode steps = node.putArray("steps");
        for (int i = 0; i < plan.pours().size(); i++) {
            steps.add(step(plan.program().steps().get(i), plan.pours().get(i)));
        }
        if (plan.stopMl().isPresent()) {
            double ml = plan.stopMl().getAsDouble();
            node.set("stopMl", rounded(ml));
            node.set("stop", JsonWriting.message(Message.of("column.stop", "ml", ml), texts));
        }
        node.set("chancePure", JsonWriting.number(plan.chancePure(), DECIMALS));
        node.set("chanceInWords", JsonWriting.message(plan.chanceInWords(), texts));
        ArrayNode spots = node.putArray("spots");
        plan.bands().forEach(band -> spots.add(band(JsonWriting.object().put("spot", band.spot()), band)));
        plan.cut().ifPresent(cut -> node.set("cut", cut(cut)));
        node.set("fractionMl", rounded(plan.fractionMl()));
        node.put("fractions", plan.fractions());
        ObjectNode shares = node.putObject("shares");
        for (int i = 0; i < plan.bands().size(); i++) {
            shares.set(
                    plan.bands().get(i).spot(),
                    JsonWriting.numbers(plan.shares().get(i), DECIMALS));
        }
        node.set("flowMlMin", rounded(plan.flowMlMin()));
        node.set("minutes", rounded(plan.minutes()));
        node.set("solventMl", rounded(plan.solventMl()));
        ArrayNode tried = node.putArray("tried");
        plan.tried().forEach(other -> tried.add(tried(other)));
        node.set("reasons", JsonWriting.messages(plan.reasons(), texts));
        node.set("warnings", JsonWriting.messages(plan.warnings(), texts));
        node.set("cautions", JsonWriting.messages(plan.cautions(), texts));
        return node;
    }

    private static JsonNode rounded(double value) {
        return JsonWriting.number(value, COARSE);
    }

    /** A bed as a request names it. */
    static ObjectNode bed(Bed bed) {
        ObjectNode node = JsonWriting.object();
        if (bed instanceof Cartridge cartridge) {
            node.set("cartridgeGrams", JsonWriting.exact(cartridge.silicaGrams()));
        } else if (bed instanceof GlassColumn glass) {
            node.set("diameterMm", JsonWriting.exact(glass.diameterMm()));
            node.set("bedMm", JsonWriting.exact(glass.bedMm()));
        }
        return node;
    }

    /** Steps as a request names them. */
    static ArrayNode steps(Program program) {
        ArrayNode steps = JsonWriting.array();
        for (Program.Step step : program.steps()) {
            ObjectNode node = steps.addObject();
            node.set("percentStrong", JsonWriting.exact(step.percentStrong()));
            node.set("volumeMl", JsonWriting.exact(step.volumeMl()));
        }
        return steps;
    }

    private ObjectNode load(ColumnPlan.Load load) {
        ObjectNode node = JsonWriting.object();
        node.set("massMg", rounded(load.massMg()));
        node.set("mostMg", rounded(load.mostMg()));
        node.set("silicaGrams", rounded(load.silicaGrams()));
        node.put("loading", load.loading().name().toLowerCase(Locale.ROOT));
        node.set("loadMl", rounded(load.loadMl()));
        node.set("loadSilicaGrams", rounded(load.loadSilicaGrams()));
        node.put("runs", load.runs());
        load.portion().ifPresent(portion -> node.set("portion", JsonWriting.message(portion, texts)));
        return node;
    }

    private static ObjectNode step(Program.Step step, StepPour pour) {
        ObjectNode node = JsonWriting.object();
        node.set("percentStrong", JsonWriting.number(step.percentStrong(), DECIMALS));
        node.put("ratio", pour.ratio().toString());
        node.set("volumeMl", rounded(pour.volumeMl()));
        node.set("mixMl", rounded(pour.mixMl()));
        node.set("weakMl", rounded(pour.weakMl()));
        node.set("strongMl", rounded(pour.strongMl()));
        return node;
    }

    private static ObjectNode band(ObjectNode node, SpotBand band) {
        node.set("rf", range(band.rf(), DECIMALS));
        node.set("startMl", range(band.startMl(), COARSE));
        node.set("middleMl", range(band.middleMl(), COARSE));
        node.set("endMl", range(band.endMl(), COARSE));
        node.set("idealMl", rounded(band.idealMl()));
        return node;
    }

    private static ObjectNode range(Range90 range, int decimals) {
        ObjectNode node = JsonWriting.object();
        node.set("value", JsonWriting.number(range.value(), decimals));
        node.set("low", JsonWriting.number(range.low(), decimals));
        node.set("high", JsonWriting.number(range.high(), decimals));
        return node;
    }

    private static ObjectNode cut(ColumnPlan.Cut cut) {
        ObjectNode node =
                JsonWriting.object().put("fromFraction", cut.fromFraction()).put("toFraction", cut.toFraction());
        node.set("yield", JsonWriting.number(cut.yield(), DECIMALS));
        node.set("purity", JsonWriting.number(cut.purity(), DECIMALS));
        return node;
    }

    private static ObjectNode tried(Tried tried) {
        ObjectNode node = JsonWriting.object();
        node.set("percentStrong", JsonWriting.number(tried.percentStrong(), DECIMALS));
        node.put("steps", tried.steps());
        node.set("chancePure", JsonWriting.number(tried.chancePure(), DECIMALS));
        node.set("solventMl", rounded(tried.solventMl()));
        return node;
    }

    private static ObjectNode prediction(Prediction prediction) {
        ObjectNode node = JsonWriting.object();
        node.set("percentStrong", JsonWriting.exact(prediction.percentStrong()));
        ObjectNode spots = node.putObject("spots");
        prediction.bands().forEach(band -> band(spots.putObject(band.spot()), band));
        return node;
    }
}
