package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import midplate.catalogue.Basis;
import midplate.catalogue.Source;
import midplate.catalogue.WayOfSeeing;
import midplate.catalogue.WaysOfSeeing;
import midplate.identity.Seeing;
import midplate.words.Message;

/** Writes ways of seeing as the table has them. */
final class WaysWriter {
    /** The source of what nobody published. */
    private static final String PRACTICE = "CommonPractice";
    /** Decimals of an amount [µg]. */
    private static final int DECIMALS = 4;

    private final Speech speech;

    WaysWriter(Speech speech) {
        this.speech = speech;
    }

    /** The whole table, with the groups that each way answers to. */
    ArrayNode table(WaysOfSeeing ways) {
        ArrayNode table = JsonWriting.array();
        for (WayOfSeeing way : ways.all()) {
            ObjectNode node = way(way);
            ArrayNode groups = node.putArray("groups");
            for (WayOfSeeing.Row row : way.groups()) {
                groups.addObject()
                        .put("group", row.group())
                        .put("answer", row.sureness().id())
                        .put("least", row.least())
                        .put("source", row.source().key())
                        .put("basis", basis(row.basis(), row.source()));
            }
            table.add(node);
        }
        return table;
    }

    /** What is said of a way whatever the compounds. */
    ObjectNode way(WayOfSeeing way) {
        ObjectNode node = JsonWriting.object().put("id", way.id());
        node.set("name", JsonWriting.message(way.said(), speech.texts()));
        node.put("leaves", way.leaves().id()).put("heat", way.heat().id());
        node.set("how", words(way.how()));
        node.set("negative", words(way.negative()));
        node.set("cautions", JsonWriting.messages(Seeing.cautions(way), speech.texts()));
        ObjectNode seen = node.putObject("seenFromUg");
        seen.set("low", JsonWriting.number(way.leastUg(), DECIMALS));
        seen.set("high", JsonWriting.number(way.mostUg(), DECIMALS));
        return node.put("source", way.source().key()).put("basis", basis(way.basis(), way.source()));
    }

    private ObjectNode words(String english) {
        return JsonWriting.message(Message.of("seeing.words", "text", speech.said(english)), speech.texts());
    }

    private static String basis(Basis basis, Source source) {
        return source.key().equals(PRACTICE) ? "practice" : basis.id();
    }
}
