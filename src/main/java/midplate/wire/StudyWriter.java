package midplate.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.POJONode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import midplate.notebook.Entered;
import midplate.notebook.GivenAdvice;
import midplate.notebook.JarAdditive;
import midplate.notebook.NextJar;
import midplate.notebook.Study;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudyPlate.Given;
import midplate.notebook.StudyPlate.Lining;
import midplate.notebook.StudySpot;

/** Writes a study in the newest version: the same study gives the same bytes, and a number the digits it was typed in. */
final class StudyWriter {
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?");

    private StudyWriter() {}

    /** The tree of a study. */
    static ObjectNode tree(Study study) {
        ObjectNode node = JsonWriting.object()
                .put("format", StudyUpgrades.FORMAT)
                .put("version", StudyUpgrades.NEWEST)
                .put("id", study.id().value())
                .put("title", study.title())
                .put("created", study.created().toString())
                .put("modified", study.modified().toString())
                .put("archived", study.keeping() == Study.Keeping.ARCHIVED)
                .put("origin", StudyReader.word(study.origin()))
                .put("sorbent", study.sorbent())
                .put("setting", study.setting());
        node.set("shelf", texts(study.shelf()));
        ArrayNode spots = node.putArray("spots");
        study.spots().forEach(spot -> spots.add(spot(spot)));
        ArrayNode plates = node.putArray("plates");
        study.plates().forEach(plate -> plates.add(plate(plate)));
        node.set("next", next(study.next()));
        ArrayNode advices = node.putArray("advices");
        study.advices().forEach(advice -> advices.add(advice(advice)));
        study.column().ifPresent(column -> node.set("column", StudyColumnWriter.tree(column)));
        study.checks().ifPresent(checks -> node.set("checks", StudyChecksWriter.tree(checks)));
        return node.put("notes", study.notes());
    }

    /** A compound. */
    static ObjectNode spot(StudySpot spot) {
        ObjectNode node = JsonWriting.object().put("id", spot.id()).put("name", spot.name());
        spot.what().ifPresent(what -> {
            node.put("by", what.by().name().toLowerCase(Locale.ROOT));
            ifAny(node, "smiles", what.smiles());
            if (!what.groups().isEmpty()) {
                ObjectNode groups = node.putObject("groups");
                what.groups().forEach((group, count) -> groups.set(group, entered(count)));
            }
            ifAny(node, "class", what.compoundClass());
        });
        return node;
    }

    private static void ifAny(ObjectNode node, String name, String text) {
        if (!text.isEmpty()) {
            node.put(name, text);
        }
    }

    /** A plate. */
    static ObjectNode plate(StudyPlate plate) {
        ObjectNode node = JsonWriting.object().put("id", plate.id());
        node.set("heightMm", entered(plate.heightMm()));
        node.set("widthMm", entered(plate.widthMm()));
        node.set("startMm", entered(plate.startMm()));
        node.set("frontMm", entered(plate.frontMm()));
        node.put("weak", plate.weak()).put("strong", plate.strong()).put("eluent", plate.eluent());
        plate.percentStrong().ifPresent(percent -> node.set("percentStrong", JsonWriting.exact(percent)));
        node.set("additive", additive(plate.additive()));
        plate.conditions().ifPresent(conditions -> node.set("conditions", conditions(conditions)));
        ArrayNode lanes = node.putArray("lanes");
        plate.lanes().forEach(lane -> {
            ArrayNode readings = lanes.addObject().put("id", lane.id()).putArray("readings");
            lane.readings().forEach(seen -> readings.add(reading(seen)));
        });
        node.set("notSeen", texts(plate.notSeen()));
        plate.photo()
                .ifPresent(photo -> node.putObject("photo")
                        .put("sha256", photo.name().sha256())
                        .put("light", photo.light().id()));
        return node;
    }

    private static ObjectNode reading(StudyPlate.SpotSeen seen) {
        ObjectNode node = JsonWriting.object().put("id", seen.id());
        node.set("spots", texts(seen.spots()));
        node.set(seen.given() == Given.RF ? "rf" : "centreMm", entered(seen.place()));
        ifEntered(node, "sizeMm", seen.sizeMm());
        ifEntered(node, "errorMm", seen.errorMm());
        seen.shape().ifPresent(shape -> node.put("shape", shape));
        seen.seen().ifPresent(how -> node.put("seen", how));
        return node;
    }

    private static ObjectNode conditions(StudyPlate.RunConditions conditions) {
        ObjectNode node = JsonWriting.object();
        conditions.lot().ifPresent(lot -> node.put("lot", lot));
        ifEntered(node, "humidity", conditions.humidity());
        conditions.lined().ifPresent(lined -> node.put("lined", lined == Lining.LINED));
        ifEntered(node, "minutesEquilibrated", conditions.minutesEquilibrated());
        ifEntered(node, "temperatureC", conditions.temperatureC());
        conditions.eluentAge().ifPresent(age -> node.put("eluentAge", age));
        return node;
    }

    /** A number, or what was typed in its place, where there is either. */
    static void ifEntered(ObjectNode node, String name, Optional<Entered> entered) {
        entered.ifPresent(value -> node.set(name, entered(value)));
    }

    private static ObjectNode next(NextJar next) {
        ObjectNode node = JsonWriting.object().put("weak", next.weak()).put("strong", next.strong());
        node.set("additive", additive(next.additive()));
        node.putArray("window").add(entered(next.windowLow())).add(entered(next.windowHigh()));
        node.put("windowKind", next.windowKind());
        node.set("apart", texts(next.apart()));
        node.set("amountMl", entered(next.amountMl()));
        node.set("jarDiameterMm", entered(next.jarDiameterMm()));
        return node;
    }

    /** What is added to an eluent. */
    static ObjectNode additive(JarAdditive additive) {
        return JsonWriting.object().put("kind", additive.kind()).put("text", additive.text());
    }

    private static ObjectNode advice(GivenAdvice advice) {
        ObjectNode node =
                JsonWriting.object().put("given", advice.given().toString()).put("program", advice.program());
        node.set("after", texts(advice.after()));
        node.put("weak", advice.weak()).put("strong", advice.strong());
        node.set("percentStrong", JsonWriting.exact(advice.percentStrong()));
        node.put("additive", advice.additive());
        node.putArray("window").add(JsonWriting.exact(advice.windowLow())).add(JsonWriting.exact(advice.windowHigh()));
        node.set("apart", texts(advice.apart()));
        ArrayNode spots = node.putArray("spots");
        for (GivenAdvice.Foretold foretold : advice.spots()) {
            ObjectNode spot = spots.addObject().put("spot", foretold.spot());
            spot.set("rf", JsonWriting.exact(foretold.rf()));
            spot.set("low", JsonWriting.exact(foretold.low()));
            spot.set("high", JsonWriting.exact(foretold.high()));
        }
        node.set("probability", JsonWriting.exact(advice.probability()));
        return node.put("basis", advice.basis());
    }

    /** Texts in a list. */
    static ArrayNode texts(List<String> texts) {
        ArrayNode list = JsonWriting.array();
        texts.forEach(list::add);
        return list;
    }

    /** A number as it was written where JSON can write it so; else by its value, since a text would no longer be a number. */
    static JsonNode entered(Entered entered) {
        if (entered.value().isEmpty()) {
            return JsonWriting.object().textNode(entered.typed());
        }
        double value = entered.value().getAsDouble();
        boolean asTyped = NUMBER.matcher(entered.typed()).matches()
                && Double.compare(Double.parseDouble(entered.typed()), value) == 0;
        return asTyped ? new POJONode(new RawValue(entered.typed())) : JsonWriting.exact(value);
    }
}
