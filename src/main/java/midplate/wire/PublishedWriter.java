package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import midplate.catalogue.Caution;
import midplate.catalogue.Gap;
import midplate.catalogue.Hazard;
import midplate.catalogue.MeasuredPair;
import midplate.catalogue.PublishedValue;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.Source;
import midplate.catalogue.StandIn;
import midplate.chemistry.Solvent;

/** Writes the solvents and their published values; a value never goes without its source. */
final class PublishedWriter {
    private final SolventCatalogue catalogue;
    private final List<MeasuredPair> pairs;

    PublishedWriter(SolventCatalogue catalogue, List<MeasuredPair> pairs) {
        this.catalogue = catalogue;
        this.pairs = List.copyOf(pairs);
    }

    /** All solvents with all that is published here about them. */
    String library() {
        ObjectNode body = JsonWriting.object();
        ArrayNode solvents = body.putArray("solvents");
        catalogue.solvents().forEach(solvent -> solvents.add(solvent(solvent)));
        ArrayNode measured = body.putArray("pairs");
        pairs.forEach(pair -> measured.add(pair(pair)));
        body.set("cautions", cautions(catalogue.generalCautions()));
        return JsonWriting.text(body);
    }

    /** All publications. */
    String sources() {
        ObjectNode body = JsonWriting.object();
        ArrayNode list = body.putArray("sources");
        for (Source source : catalogue.sources().values()) {
            ObjectNode node = list.addObject()
                    .put("key", source.key())
                    .put("citation", source.citation())
                    .put("year", source.year());
            source.address().ifPresent(address -> node.put("address", address));
        }
        return JsonWriting.text(body);
    }

    private ObjectNode solvent(Solvent solvent) {
        ObjectNode node = JsonWriting.solvent(solvent).put("cas", solvent.cas()).put("formula", solvent.formula());
        ArrayNode synonyms = node.putArray("synonyms");
        solvent.synonyms().forEach(synonyms::add);
        node.put("localization", catalogue.localization(solvent).id());
        catalogue.standIn(solvent).ifPresent(standIn -> node.set("standIn", standIn(standIn)));
        ArrayNode values = node.putArray("values");
        catalogue.values(solvent).forEach(value -> values.add(value(value)));
        node.set("hazards", hazards(catalogue.hazards(solvent)));
        node.set("cautions", cautions(catalogue.cautions(solvent)));
        ArrayNode gaps = node.putArray("gaps");
        for (Gap gap : catalogue.gaps()) {
            if (gap.solvent().equals(solvent)) {
                gaps.addObject()
                        .put("property", gap.property())
                        .put("condition", gap.condition())
                        .put("note", gap.note());
            }
        }
        return node;
    }

    /** A fitted pair: what it rests on, and its strength curve with the errors of its points. */
    private static ObjectNode pair(MeasuredPair pair) {
        ObjectNode node = JsonWriting.object()
                .put("id", pair.id())
                .put("sorbent", pair.sorbent().id());
        node.set("weak", JsonWriting.solvent(pair.weak()));
        node.set("strong", JsonWriting.solvent(pair.strong()));
        node.put("compounds", pair.compounds()).put("readings", pair.readings());
        node.set("meanDeviationRf", JsonWriting.number(pair.residual(), 3));
        node.set("trustedFromPercent", JsonWriting.number(pair.trustedFrom(), 2));
        node.set("trustedToPercent", JsonWriting.number(pair.trustedTo(), 2));
        numbers(node.putArray("percentStrong"), pair.percentStrong(), 2);
        numbers(node.putArray("strength"), pair.strength(), 3);
        numbers(node.putArray("strengthError"), pair.strengthError(), 3);
        ArrayNode sources = node.putArray("sources");
        pair.provenance().sources().forEach(sources::add);
        return node.put("leftOut", pair.provenance().leftOut());
    }

    private static void numbers(ArrayNode node, List<Double> values, int decimals) {
        values.forEach(value -> node.add(JsonWriting.number(value, decimals)));
    }

    private static ObjectNode standIn(StandIn standIn) {
        return JsonWriting.solvent(standIn.standsInFor())
                .put("source", standIn.source().key())
                .put("basis", standIn.basis().id())
                .put("note", standIn.note());
    }

    /** One value with where it stands; what is not printed is an empty text, never a zero. */
    static ObjectNode value(PublishedValue value) {
        return JsonWriting.object()
                .put("property", value.property())
                .put("value", value.value())
                .put("unit", value.unit())
                .put("condition", value.condition())
                .put("uncertainty", value.uncertainty())
                .put("source", value.source().key())
                .put("locator", value.locator())
                .put("basis", value.basis().id())
                .put("confidence", value.confidence())
                .put("derivedFrom", value.derivedFrom())
                .put("use", value.use())
                .put("note", value.note());
    }

    private static ArrayNode hazards(List<Hazard> hazards) {
        ArrayNode list = JsonWriting.array();
        for (Hazard hazard : hazards) {
            list.addObject()
                    .put("code", hazard.code())
                    .put("text", hazard.text())
                    .put("condition", hazard.value().condition())
                    .put("source", hazard.value().source().key())
                    .put("locator", hazard.value().locator())
                    .put("basis", hazard.value().basis().id())
                    .put("note", hazard.value().note());
        }
        return list;
    }

    private static ArrayNode cautions(List<Caution> cautions) {
        ArrayNode list = JsonWriting.array();
        for (Caution caution : cautions) {
            list.addObject()
                    .put("key", caution.key())
                    .put("text", caution.text())
                    .put("source", caution.source().key())
                    .put("basis", caution.basis().id());
        }
        return list;
    }
}
