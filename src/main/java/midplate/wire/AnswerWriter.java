package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import midplate.advice.Advice;
import midplate.advice.Alternative;
import midplate.advice.Curves;
import midplate.advice.Forecast;
import midplate.advice.Pour;
import midplate.advice.SpotForecast;
import midplate.inference.SpotGuess;
import midplate.words.Texts;

/** Writes an answer: the fields of the batch contract first, what is added to them after. */
final class AnswerWriter {
    /** Decimals of an Rf, a chance and a percentage. */
    private static final int DECIMALS = 4;

    private final Texts texts;

    AnswerWriter(Texts texts) {
        this.texts = texts;
    }

    String write(
            Asked asked,
            Advice advice,
            List<Note> notes,
            List<Forecast> forecasts,
            Optional<Curves> curves,
            List<SpotGuess> whichIsWhich,
            List<ObjectNode> structures) {
        ObjectNode answer = JsonWriting.object();
        answer.set("id", JsonWriting.id(asked.id()));
        answer.set("advice", advice(asked, advice));
        ArrayNode predictions = answer.putArray("predictions");
        forecasts.forEach(forecast -> predictions.add(prediction(forecast)));
        answer.set("notes", JsonWriting.notes(notes, texts));
        curves.ifPresent(every -> answer.set("curves", curves(every)));
        if (!whichIsWhich.isEmpty()) {
            answer.set("whichIsWhich", GuessWriter.write(whichIsWhich));
        }
        if (!structures.isEmpty()) {
            answer.putArray("structures").addAll(structures);
        }
        return JsonWriting.text(answer);
    }

    private ObjectNode advice(Asked asked, Advice advice) {
        ObjectNode node = JsonWriting.object();
        node.set("percentStrong", JsonWriting.number(advice.ratio().percentStrong(), DECIMALS));
        node.put("ratio", advice.ratio().toString());
        node.set("probabilityAllInWindow", JsonWriting.number(advice.forecast().chance(), DECIMALS));
        node.set("bestPercentStrong", JsonWriting.number(advice.bestPercentStrong(), DECIMALS));
        node.set("bestProbability", JsonWriting.number(advice.bestChance(), DECIMALS));
        node.set("probabilityNoRatioWorks", JsonWriting.number(advice.chanceNoRatioWorks(), DECIMALS));
        node.set(
                "probabilityInWords",
                JsonWriting.message(
                        new ChanceWords(texts)
                                .of(asked.question(), advice.goal().chance()),
                        texts));
        node.put("basis", advice.basis().id());
        node.put("sorbent", asked.question().sorbent().id());
        node.set("weak", JsonWriting.solvent(asked.question().weak(), texts));
        node.set("strong", JsonWriting.solvent(asked.question().strong(), texts));
        node.set("pour", pour(advice.pour()));
        ArrayNode spots = node.putArray("spots");
        advice.forecast().spots().forEach(spot -> spots.add(spot(spot)));
        node.set("why", JsonWriting.messages(advice.why(), texts));
        ArrayNode alternatives = node.putArray("alternatives");
        advice.alternatives().forEach(alternative -> alternatives.add(alternative(alternative)));
        node.set("probabilityGoal", JsonWriting.number(advice.goal().chance(), DECIMALS));
        if (!advice.goal().apart().isEmpty()) {
            node.set("apart", CardWriter.apart(advice.goal()));
        }
        node.set("card", new CardWriter(texts).card(advice.card()));
        return node;
    }

    private static ObjectNode pour(Pour pour) {
        ObjectNode node = JsonWriting.object();
        node.set("weakMl", JsonWriting.number(pour.weakMl(), DECIMALS));
        node.set("strongMl", JsonWriting.number(pour.strongMl(), DECIMALS));
        node.set("percentStrong", JsonWriting.number(pour.percentStrong(), DECIMALS));
        node.set("lowPercent", JsonWriting.number(pour.lowPercent(), DECIMALS));
        node.set("highPercent", JsonWriting.number(pour.highPercent(), DECIMALS));
        node.set("lowProbability", JsonWriting.number(pour.lowChance(), DECIMALS));
        node.set("highProbability", JsonWriting.number(pour.highChance(), DECIMALS));
        return node;
    }

    private static ObjectNode spot(SpotForecast spot) {
        ObjectNode node = JsonWriting.object().put("spot", spot.spot());
        band(node, spot);
        node.set("below", JsonWriting.number(spot.below(), DECIMALS));
        node.set("above", JsonWriting.number(spot.above(), DECIMALS));
        return node;
    }

    private static void band(ObjectNode node, SpotForecast spot) {
        node.set("rf", JsonWriting.number(spot.rf(), DECIMALS));
        node.set("low", JsonWriting.number(spot.low(), DECIMALS));
        node.set("high", JsonWriting.number(spot.high(), DECIMALS));
    }

    private ObjectNode alternative(Alternative alternative) {
        ObjectNode node = JsonWriting.message(alternative.what(), texts);
        node.set("probability", JsonWriting.number(alternative.chance(), DECIMALS));
        return node;
    }

    private static ObjectNode prediction(Forecast forecast) {
        ObjectNode node = JsonWriting.object();
        node.set("percentStrong", JsonWriting.exact(forecast.percentStrong()));
        ObjectNode spots = node.putObject("spots");
        for (SpotForecast spot : forecast.spots()) {
            band(spots.putObject(spot.spot()), spot);
        }
        node.set("probabilityAllInWindow", JsonWriting.number(forecast.chance(), DECIMALS));
        return node;
    }

    private static ObjectNode curves(Curves curves) {
        ObjectNode node = JsonWriting.object();
        node.set("percentStrong", JsonWriting.numbers(curves.percentStrong(), DECIMALS));
        ObjectNode spots = node.putObject("spots");
        curves.spots().forEach((name, curve) -> {
            ObjectNode spot = spots.putObject(name);
            spot.set("rf", JsonWriting.numbers(curve.rf(), DECIMALS));
            spot.set("low", JsonWriting.numbers(curve.low(), DECIMALS));
            spot.set("high", JsonWriting.numbers(curve.high(), DECIMALS));
        });
        node.set("chance", JsonWriting.numbers(curves.chance(), DECIMALS));
        node.set("smallestGap", JsonWriting.numbers(curves.smallestGap(), DECIMALS));
        node.set("smallestResolution", JsonWriting.numbers(curves.smallestResolution(), DECIMALS));
        if (!curves.goal().isEmpty()) {
            node.set("goal", JsonWriting.numbers(curves.goal(), DECIMALS));
        }
        return node;
    }
}
