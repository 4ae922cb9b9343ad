package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.OptionalDouble;
import midplate.identity.CandidatesWithin;
import midplate.identity.IdentityAnswer;
import midplate.identity.RfRange;
import midplate.identity.Verdict;
import midplate.words.Texts;

/** Writes what plates say of a sample beside its references. */
final class IdentityWriter {
    /** Decimals of an Rf and of a chance. */
    private static final int DECIMALS = 4;

    private final Texts texts;

    IdentityWriter(Texts texts) {
        this.texts = texts;
    }

    /** The answer. */
    String write(IdentityAnswer found) {
        ObjectNode answer = JsonWriting.object();
        ArrayNode verdicts = answer.putArray("verdicts");
        found.verdicts().forEach(each -> verdicts.add(verdict(each)));
        found.mixture().ifPresent(said -> answer.set("mixture", JsonWriting.message(said, texts)));
        found.unexplained().ifPresent(said -> answer.set("unexplained", JsonWriting.message(said, texts)));
        found.candidates().ifPresent(left -> answer.set("candidates", candidates(left)));
        answer.set("next", new NextEluentWriter(texts).write(found.next()));
        answer.set("secondWays", JsonWriting.messages(found.secondWays(), texts));
        answer.set("warnings", JsonWriting.messages(found.warnings(), texts));
        answer.set("cautions", JsonWriting.messages(found.cautions(), texts));
        return JsonWriting.text(answer);
    }

    private ObjectNode verdict(Verdict verdict) {
        ObjectNode node = JsonWriting.object()
                .put("reference", verdict.reference())
                .put("verdict", verdict.outcome().id());
        node.set("inWords", JsonWriting.message(verdict.inWords(), texts));
        node.set("reasons", JsonWriting.messages(verdict.reasons(), texts));
        verdict.gapRf().ifPresent(gap -> node.set("gapRf", range(gap)));
        ifKnown(node, "chanceOfOne", verdict.chanceOfOne());
        ifKnown(node, "leastToldApartRf", verdict.leastToldApartRf());
        ifKnown(node, "rf", verdict.rf());
        return node;
    }

    private static void ifKnown(ObjectNode node, String name, OptionalDouble value) {
        value.ifPresent(known -> node.set(name, JsonWriting.number(known, DECIMALS)));
    }

    private static ObjectNode range(RfRange range) {
        ObjectNode node = JsonWriting.object();
        node.set("value", JsonWriting.number(range.value(), DECIMALS));
        node.set("low", JsonWriting.number(range.low(), DECIMALS));
        node.set("high", JsonWriting.number(range.high(), DECIMALS));
        return node;
    }

    private ObjectNode candidates(CandidatesWithin left) {
        ObjectNode node = JsonWriting.object().put("of", left.of()).put("within", left.within());
        node.set("text", JsonWriting.message(left.text(), texts));
        node.set("each", each(left.each()));
        return node;
    }

    private static ArrayNode each(List<CandidatesWithin.Each> candidates) {
        ArrayNode list = JsonWriting.array();
        for (CandidatesWithin.Each candidate : candidates) {
            ObjectNode node = list.addObject().put("name", candidate.name());
            node.set("rf", range(candidate.rf()));
            node.set("chanceWithin", JsonWriting.number(candidate.chanceWithin(), DECIMALS));
            node.put("basis", candidate.from().id());
        }
        return list;
    }
}
