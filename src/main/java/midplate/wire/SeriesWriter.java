package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import midplate.advice.Curves;
import midplate.advice.SpotForecast;
import midplate.advice.Window;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.lesson.EqualPlates;
import midplate.lesson.LessonSample;
import midplate.lesson.OtherLayer;
import midplate.lesson.PlateSeries;
import midplate.lesson.PublishedStrength;
import midplate.lesson.SeriesPlate;
import midplate.words.Message;

/** Writes a series of plates. */
final class SeriesWriter {
    private static final int RF = 3;
    private static final int PERCENT = 2;
    /** Of the shares of a grid [% v/v]. */
    private static final int GRID = 4;

    private static final int STRENGTH = 3;

    private final SolventCatalogue catalogue;
    private final Speech speech;

    SeriesWriter(SolventCatalogue catalogue, Speech speech) {
        this.catalogue = catalogue;
        this.speech = speech;
    }

    String write(PlateSeries series) {
        LessonSample sample = series.sample();
        ObjectNode body = JsonWriting.object();
        pair(body, sample.weak(), sample.strong());
        body.put("sorbent", sample.sorbent().id());
        body.put("basis", series.advice().basis().id());
        body.set(
                "basisSaid",
                JsonWriting.message(
                        Message.of(
                                "lesson.series-basis-" + series.advice().basis().id()),
                        speech.texts()));
        body.putObject("window").put("low", Window.USUAL.low()).put("high", Window.USUAL.high());
        body.set("curves", curves(series.curves()));
        body.set("plates", plates(series));
        body.set("strengths", strengths(sample.sorbent(), List.of(sample.weak(), sample.strong())));
        body.set("clouds", clouds(series));
        ObjectNode best =
                body.putObject("best").put("ratio", series.advice().ratio().toString());
        best.set("percentStrong", JsonWriting.number(series.advice().ratio().percentStrong(), PERCENT));
        best.set("chance", JsonWriting.number(series.advice().forecast().chance(), RF));
        body.set("sentences", JsonWriting.messages(series.sentences(), speech.texts()));
        series.against().ifPresent(other -> body.set("against", against(sample, other)));
        series.otherLayer().ifPresent(other -> body.set("otherLayer", layer(sample, other)));
        return JsonWriting.text(body);
    }

    private void pair(ObjectNode node, Solvent weak, Solvent strong) {
        node.set("weak", JsonWriting.solvent(weak, speech.texts()));
        node.set("strong", JsonWriting.solvent(strong, speech.texts()));
    }

    private static ObjectNode curves(Curves curves) {
        ObjectNode node = JsonWriting.object();
        node.set("percentStrong", JsonWriting.numbers(curves.percentStrong(), GRID));
        ObjectNode spots = node.putObject("spots");
        curves.spots().forEach((name, curve) -> {
            ObjectNode spot = spots.putObject(name);
            spot.set("rf", JsonWriting.numbers(curve.rf(), RF));
            spot.set("low", JsonWriting.numbers(curve.low(), RF));
            spot.set("high", JsonWriting.numbers(curve.high(), RF));
        });
        return node;
    }

    private ArrayNode plates(PlateSeries series) {
        ArrayNode list = JsonWriting.array();
        for (int i = 0; i < series.plates().size(); i++) {
            SeriesPlate plate = series.plates().get(i);
            ObjectNode node = list.addObject();
            node.set("percentStrong", JsonWriting.number(plate.percentStrong(), PERCENT));
            plate.ratio().ifPresent(ratio -> node.put("ratio", ratio.toString()));
            plate.strength().ifPresent(strength -> node.set("strength", JsonWriting.number(strength, STRENGTH)));
            ObjectNode spots = node.putObject("spots");
            plate.spots().forEach(spot -> spots.set(spot.spot(), spot(spot)));
            ArrayNode order = node.putArray("order");
            plate.upwards().forEach(spot -> order.add(spot.spot()));
            plate.closest().ifPresent(closest -> {
                node.set("smallestGap", JsonWriting.number(closest.gap(), RF));
                node.putArray("closest")
                        .add(closest.lower().spot())
                        .add(closest.upper().spot());
            });
            node.put("inWindow", plate.inWindow());
            node.set("changed", JsonWriting.messages(series.changed().get(i), speech.texts()));
        }
        return list;
    }

    private static ObjectNode spot(SpotForecast spot) {
        ObjectNode node = JsonWriting.object();
        node.set("rf", JsonWriting.number(spot.rf(), RF));
        node.set("low", JsonWriting.number(spot.low(), RF));
        node.set("high", JsonWriting.number(spot.high(), RF));
        return node;
    }

    /** By which table and law the strengths are told, and the values used with their sources. */
    private ObjectNode strengths(Sorbent sorbent, List<Solvent> solvents) {
        ObjectNode node = JsonWriting.object();
        node.put("series", PublishedStrength.series().condition(sorbent));
        node.put("seriesText", speech.texts().render(PublishedStrength.printed(sorbent)));
        node.set("activity", JsonWriting.exact(PublishedStrength.theory().activity()));
        ArrayNode values = node.putArray("values");
        for (PublishedStrength.Used used : PublishedStrength.used(catalogue, sorbent, solvents)) {
            ObjectNode value = values.addObject().put("solvent", used.solvent().id());
            value.setAll(PublishedWriter.value(used.value(), speech));
        }
        return node;
    }

    private static ObjectNode clouds(PlateSeries series) {
        ObjectNode node = JsonWriting.object();
        node.set("percentStrong", JsonWriting.numbers(series.grid(), GRID));
        ObjectNode spots = node.putObject("spots");
        List<List<List<Double>>> drawn = series.clouds().curves(series.grid());
        for (int spot = 0; spot < drawn.size(); spot++) {
            ArrayNode samples =
                    spots.putArray(series.sample().compounds().get(spot).name());
            drawn.get(spot).forEach(curve -> samples.add(JsonWriting.numbers(curve, RF)));
        }
        return node;
    }

    private ObjectNode against(LessonSample sample, EqualPlates other) {
        ObjectNode node = JsonWriting.object();
        pair(node, other.eluent().weak(), other.eluent().strong());
        node.put("basis", other.basis().id());
        node.set("percentStrong", JsonWriting.numbers(other.percentStrong(), GRID));
        maybe(node.putArray("equalPercent"), other.equal(), PERCENT);
        node.set("curves", curves(other.curves()));
        ArrayNode partings = node.putArray("partings");
        for (EqualPlates.Parting parting : other.partings()) {
            ObjectNode each = partings.addObject()
                    .put("one", sample.compounds().get(parting.one()).name())
                    .put("other", sample.compounds().get(parting.other()).name());
            maybe(each.putArray("wider"), parting.wider(), RF);
        }
        node.set(
                "strengths",
                strengths(
                        sample.sorbent(),
                        List.of(other.eluent().weak(), other.eluent().strong())));
        node.set("sentences", JsonWriting.messages(other.sentences(catalogue, sample), speech.texts()));
        return node;
    }

    private static void maybe(ArrayNode list, List<Optional<Double>> values, int decimals) {
        for (Optional<Double> value : values) {
            value.ifPresentOrElse(number -> list.add(JsonWriting.number(number, decimals)), list::addNull);
        }
    }

    private ObjectNode layer(LessonSample sample, OtherLayer other) {
        ObjectNode node =
                JsonWriting.object().put("sorbent", other.sorbent().id()).put("basis", "illustration");
        node.put("sorbentText", speech.texts().render(other.sorbent().said()));
        node.set("percentStrong", JsonWriting.numbers(other.percentStrong(), GRID));
        node.set("strengthHere", JsonWriting.numbers(other.here(), STRENGTH));
        node.set("strengthThere", JsonWriting.numbers(other.there(), STRENGTH));
        ObjectNode spots = node.putObject("spots");
        for (OtherLayer.Spot spot : other.spots()) {
            ObjectNode each = spots.putObject(spot.name());
            each.set("soluteArea", JsonWriting.number(spot.soluteArea(), 1));
            each.set("rf", JsonWriting.numbers(spot.rf(), RF));
        }
        node.set("strengths", strengths(other.sorbent(), List.of(sample.weak(), sample.strong())));
        node.set("sentences", JsonWriting.messages(other.sentences(sample), speech.texts()));
        return node;
    }
}
