package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import midplate.identity.PurityAnswer;
import midplate.words.Texts;

/** Writes what a plate says of purity. */
final class PurityWriter {
    /** Decimals of a chance, a share and an amount. */
    private static final int DECIMALS = 4;

    private final Texts texts;

    PurityWriter(Texts texts) {
        this.texts = texts;
    }

    /** The whole answer. */
    String write(PurityAnswer found) {
        ObjectNode answer = JsonWriting.object();
        answer.set("seen", JsonWriting.message(found.seen(), texts));
        ArrayNode hidden = answer.putArray("couldHide");
        found.couldHide().forEach(each -> hidden.add(hidden(each)));
        found.amounts().ifPresent(amounts -> answer.set("amounts", amounts(amounts)));
        answer.set("next", new NextEluentWriter(texts).write(found.next()));
        answer.set("secondWays", JsonWriting.messages(found.secondWays(), texts));
        answer.set("warnings", JsonWriting.messages(found.warnings(), texts));
        answer.set("cautions", JsonWriting.messages(found.cautions(), texts));
        return JsonWriting.text(answer);
    }

    private ObjectNode hidden(PurityAnswer.Hidden hidden) {
        ObjectNode node = JsonWriting.object().put("kind", hidden.kind().id());
        hidden.chance().ifPresent(chance -> node.set("chance", JsonWriting.number(chance, DECIMALS)));
        node.set("text", JsonWriting.message(hidden.text(), texts));
        return node;
    }

    private ObjectNode amounts(PurityAnswer.Amounts amounts) {
        ObjectNode node = JsonWriting.object();
        node.set("appliedUg", JsonWriting.number(amounts.appliedUg(), DECIMALS));
        node.set("onePercentUg", JsonWriting.number(amounts.onePercentUg(), DECIMALS));
        amounts.leastPercent().ifPresent(shares -> {
            ObjectNode least = node.putObject("leastPercent");
            least.set("low", JsonWriting.number(shares.low(), DECIMALS));
            least.set("high", JsonWriting.number(shares.high(), DECIMALS));
        });
        node.set("text", JsonWriting.message(amounts.text(), texts));
        return node;
    }
}
