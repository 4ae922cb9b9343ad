package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Supplier;
import midplate.catalogue.Caution;
import midplate.catalogue.Gap;
import midplate.catalogue.Hazard;
import midplate.catalogue.PlatePair;
import midplate.catalogue.PublishedValue;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.Source;
import midplate.catalogue.StandIn;
import midplate.chemistry.Solvent;

/** Writes the solvents and their published values; a value never goes without its source. */
final class PublishedWriter {
    private final SolventCatalogue catalogue;
    private final List<PlatePair> pairs;
    private final Supplier<List<PlatePair>> byTheory;
    private final Speech speech;

    /** @param byTheory gives the pairs of which there is theory only */
    PublishedWriter(
            SolventCatalogue catalogue, List<PlatePair> pairs, Supplier<List<PlatePair>> byTheory, Speech speech) {
        this.catalogue = catalogue;
        this.byTheory = byTheory;
        this.speech = speech;
        this.pairs = List.copyOf(pairs);
    }

    /** All solvents with all that is published here about them. */
    String library() {
        ObjectNode body = JsonWriting.object();
        ArrayNode solvents = body.putArray("solvents");
        catalogue.solvents().forEach(solvent -> solvents.add(solvent(solvent)));
        ArrayNode measured = body.putArray("pairs");
        pairs.forEach(pair -> measured.add(pair(pair)));
        ArrayNode theory = body.putArray("theoryPairs");
        for (PlatePair pair : byTheory.get()) {
            theory.addObject()
                    .put("weak", pair.weak().id())
                    .put("strong", pair.strong().id())
                    .put("basis", pair.basis().id());
        }
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
        ObjectNode node = JsonWriting.solvent(solvent, speech.texts())
                .put("cas", solvent.cas())
                .put("formula", solvent.formula());
        ArrayNode synonyms = node.putArray("synonyms");
        solvent.synonyms().forEach(synonyms::add);
        node.put("localization", catalogue.localization(solvent).id());
        catalogue.standIn(solvent).ifPresent(standIn -> node.set("standIn", standIn(standIn)));
        ArrayNode values = node.putArray("values");
        catalogue.values(solvent).forEach(value -> values.add(value(value, speech)));
        node.set("hazards", hazards(catalogue.hazards(solvent, speech.language())));
        node.set("cautions", cautions(catalogue.cautions(solvent)));
        ArrayNode gaps = node.putArray("gaps");
        for (Gap gap : catalogue.gaps()) {
            if (gap.solvent().equals(solvent)) {
                gaps.addObject()
                        .put("property", gap.property())
                        .put("condition", gap.condition())
                        .put("conditionText", speech.said(gap.condition()))
                        .put("note", speech.said(gap.note()));
            }
        }
        return node;
    }

    /** A fitted pair: what it rests on, and its strength curve with the errors of its points. */
    private ObjectNode pair(PlatePair pair) {
        ObjectNode node = JsonWriting.object()
                .put("id", pair.id())
                .put("sorbent", pair.sorbent().id());
        node.set("weak", JsonWriting.solvent(pair.weak(), speech.texts()));
        node.set("strong", JsonWriting.solvent(pair.strong(), speech.texts()));
        node.put("compounds", pair.compounds()).put("readings", pair.readings());
        node.set("meanDeviationRf", JsonWriting.number(pair.residual(), 3));
        node.set("trustedFromPercent", JsonWriting.number(pair.trustedFrom(), 2));
        node.set("trustedToPercent", JsonWriting.number(pair.trustedTo(), 2));
        numbers(node.putArray("percentStrong"), pair.percentStrong(), 2);
        numbers(node.putArray("strength"), pair.strength(), 3);
        numbers(node.putArray("strengthError"), pair.strengthError(), 3);
        ArrayNode sources = node.putArray("sources");
        pair.provenance().sources().forEach(sources::add);
        return node.put("leftOut", speech.listed(pair.provenance().leftOut()));
    }

    private static void numbers(ArrayNode node, List<Double> values, int decimals) {
        values.forEach(value -> node.add(JsonWriting.number(value, decimals)));
    }

    private ObjectNode standIn(StandIn standIn) {
        return JsonWriting.solvent(standIn.standsInFor(), speech.texts())
                .put("source", standIn.source().key())
                .put("basis", standIn.basis().id())
                .put("note", speech.said(standIn.note()));
    }

    /**
     * One value with where it stands; what is not printed is an empty text, never a zero.
     * {@code condition} and the first word of {@code use} are for programs and the same in every language.
     */
    static ObjectNode value(PublishedValue value, Speech speech) {
        return JsonWriting.object()
                .put("property", value.property())
                .put("value", speech.value(value))
                .put("unit", speech.said(value.unit()))
                .put("condition", value.condition())
                .put("conditionText", speech.said(value.condition()))
                .put("uncertainty", speech.said(value.uncertainty()))
                .put("source", value.source().key())
                .put("locator", speech.said(value.locator()))
                .put("basis", value.basis().id())
                .put("confidence", value.confidence())
                .put("derivedFrom", speech.said(value.derivedFrom()))
                .put("use", speech.use(value.use()))
                .put("note", speech.said(value.note()));
    }

    /** The same beside the solvent it is of. */
    static ObjectNode value(Solvent solvent, PublishedValue value, Speech speech) {
        ObjectNode node = JsonWriting.object().put("solvent", solvent.id());
        node.setAll(value(value, speech));
        return node;
    }

    private ArrayNode hazards(List<Hazard> hazards) {
        ArrayNode list = JsonWriting.array();
        for (Hazard hazard : hazards) {
            list.addObject()
                    .put("code", hazard.code())
                    .put("text", hazard.text())
                    .put("condition", hazard.value().condition())
                    .put("conditionText", speech.said(hazard.value().condition()))
                    .put("source", hazard.value().source().key())
                    .put("locator", speech.said(hazard.value().locator()))
                    .put("basis", hazard.value().basis().id())
                    .put("note", speech.said(hazard.value().note()));
        }
        return list;
    }

    private ArrayNode cautions(List<Caution> cautions) {
        ArrayNode list = JsonWriting.array();
        for (Caution caution : cautions) {
            list.addObject()
                    .put("key", caution.key())
                    .put("text", speech.said(caution.text()))
                    .put("source", caution.source().key())
                    .put("basis", caution.basis().id());
        }
        return list;
    }
}
