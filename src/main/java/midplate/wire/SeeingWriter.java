package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import midplate.identity.SeeingAnswer;
import midplate.words.Texts;

/** Writes how to see compounds. */
final class SeeingWriter {
    private final Texts texts;
    private final WaysWriter ways;

    SeeingWriter(Speech speech) {
        this.texts = speech.texts();
        this.ways = new WaysWriter(speech);
    }

    /** The whole answer. */
    String write(SeeingAnswer found) {
        ObjectNode answer = JsonWriting.object();
        ArrayNode all = answer.putArray("ways");
        for (SeeingAnswer.Way way : found.ways()) {
            ObjectNode node = ways.way(way.way());
            ArrayNode answers = node.putArray("answers");
            for (SeeingAnswer.Seen seen : way.answers()) {
                ObjectNode each = answers.addObject()
                        .put("name", seen.name())
                        .put("answer", seen.sight().id());
                each.set("because", JsonWriting.message(seen.because(), texts));
            }
            all.add(node);
        }
        ArrayNode enough = answer.putArray("enough");
        found.enough().forEach(way -> enough.add(way.id()));
        answer.set("order", JsonWriting.message(found.order(), texts));
        answer.set("cautions", JsonWriting.messages(found.cautions(), texts));
        return JsonWriting.text(answer);
    }
}
