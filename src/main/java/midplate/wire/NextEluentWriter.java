package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import midplate.identity.NextEluent;
import midplate.words.Texts;

/** Writes the eluents in which compounds may come apart. */
final class NextEluentWriter {
    /** Decimals of a chance and of a distance in Rf. */
    private static final int DECIMALS = 4;

    private final Texts texts;

    NextEluentWriter(Texts texts) {
        this.texts = texts;
    }

    /** The list {@code next} of an answer. */
    ArrayNode write(List<NextEluent> eluents) {
        ArrayNode list = JsonWriting.array();
        for (NextEluent eluent : eluents) {
            ObjectNode node = list.addObject();
            node.put("weak", eluent.weak().id()).put("strong", eluent.strong().id());
            node.set("percentStrong", JsonWriting.number(eluent.ratio().percentStrong(), DECIMALS));
            node.put("ratio", eluent.ratio().toString())
                    .put("basis", eluent.basis().id());
            node.set("chanceApart", JsonWriting.number(eluent.chanceApart(), DECIMALS));
            node.set("expectedGap", JsonWriting.number(eluent.expectedGap(), DECIMALS));
            node.set("text", JsonWriting.message(eluent.text(), texts));
        }
        return list;
    }
}
