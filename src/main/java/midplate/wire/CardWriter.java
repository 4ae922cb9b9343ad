package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import midplate.advice.ApartChance;
import midplate.advice.Goal;
import midplate.advice.PourCard;
import midplate.words.Message;
import midplate.words.Texts;

/** Writes what an advice says of the goal and of the jar. */
final class CardWriter {
    private static final int CHANCE_DECIMALS = 4;
    /** Decimals of millimetres and of minutes. */
    private static final int DECIMALS = 1;

    private final Texts texts;

    CardWriter(Texts texts) {
        this.texts = texts;
    }

    static ArrayNode apart(Goal goal) {
        ArrayNode pairs = JsonWriting.array();
        for (ApartChance pair : goal.apart()) {
            ObjectNode node = pairs.addObject();
            node.putArray("spots").add(pair.names().one()).add(pair.names().other());
            node.set("probability", JsonWriting.number(pair.chance(), CHANCE_DECIMALS));
        }
        return pairs;
    }

    ObjectNode card(PourCard card) {
        ObjectNode node = JsonWriting.object();
        node.set("levelMm", JsonWriting.number(card.levelMm(), DECIMALS));
        node.set("startMm", JsonWriting.number(card.startMm(), DECIMALS));
        node.set("stopMm", JsonWriting.number(card.stopMm(), DECIMALS));
        node.set("runMm", JsonWriting.number(card.runMm(), DECIMALS));
        card.time().ifPresent(time -> {
            node.set("lowMinutes", JsonWriting.number(time.lowMinutes(), DECIMALS));
            node.set("highMinutes", JsonWriting.number(time.highMinutes(), DECIMALS));
            Message about = Message.of(
                    "card.time", "stopMm", card.stopMm(), "low", time.lowMinutes(), "high", time.highMinutes());
            node.set("time", JsonWriting.message(about, texts));
        });
        node.set("order", JsonWriting.message(card.order(), texts));
        node.set("paper", JsonWriting.message(card.paper(), texts));
        node.set("warnings", JsonWriting.messages(card.warnings(), texts));
        return node;
    }
}
