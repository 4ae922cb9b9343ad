package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import midplate.catalogue.HrfSystem;
import midplate.identity.HrfAnswer;

/** Writes corrected hRf, and the systems by whose reference spots they are corrected. */
final class HrfWriter {
    /** Decimals of a value that was worked out. */
    private static final int DECIMALS = 2;

    private final Speech speech;

    HrfWriter(Speech speech) {
        this.speech = speech;
    }

    /** The answer. */
    String write(HrfAnswer found) {
        ObjectNode answer = JsonWriting.object();
        ArrayNode corrected = answer.putArray("corrected");
        for (HrfAnswer.Corrected spot : found.corrected()) {
            ObjectNode node = corrected.addObject().put("name", spot.name());
            node.set("hrf", JsonWriting.number(spot.hrf(), DECIMALS));
            node.set("low", JsonWriting.number(spot.low(), DECIMALS));
            node.set("high", JsonWriting.number(spot.high(), DECIMALS));
            node.set("text", JsonWriting.message(spot.text(), speech.texts()));
        }
        found.system().ifPresent(system -> answer.set("system", system(system)));
        answer.set("text", JsonWriting.message(found.text(), speech.texts()));
        answer.set("warnings", JsonWriting.messages(found.warnings(), speech.texts()));
        answer.set("cautions", JsonWriting.messages(found.cautions(), speech.texts()));
        return JsonWriting.text(answer);
    }

    /** All systems. */
    ArrayNode systems(List<HrfSystem> systems) {
        ArrayNode list = JsonWriting.array();
        systems.forEach(system -> list.add(system(system)));
        return list;
    }

    private ObjectNode system(HrfSystem system) {
        ObjectNode node = JsonWriting.object()
                .put("id", system.id())
                .put("eluent", speech.said(system.eluent()))
                .put("conditions", speech.said(system.conditions()))
                .put("source", system.source().key());
        ArrayNode standards = node.putArray("standards");
        for (HrfSystem.HrfStandard standard : system.standards()) {
            ObjectNode each = standards.addObject().put("name", standard.name());
            each.set("hrf", JsonWriting.exact(standard.hrf()));
            each.put("basis", standard.basis().id());
        }
        return node;
    }
}
