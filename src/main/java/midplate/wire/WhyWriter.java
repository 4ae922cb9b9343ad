package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import midplate.catalogue.Basis;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.StrengthInputs;
import midplate.chemistry.Solvent;
import midplate.lesson.SoluteSums;
import midplate.lesson.SurfaceLaw;
import midplate.lesson.SurfacePicture;
import midplate.lesson.SurfaceReasons;
import midplate.words.Message;
import midplate.words.Texts;

/** Writes a picture of the surface, each number with where it comes from. */
final class WhyWriter {
    private static final int DECIMALS = 4;
    private static final int ENERGY_DECIMALS = 2;

    private final Speech speech;
    private final Texts texts;

    WhyWriter(Speech speech) {
        this.speech = speech;
        this.texts = speech.texts();
    }

    /** The whole answer. */
    String write(SurfacePicture picture) {
        ObjectNode answer = JsonWriting.object();
        SurfaceLaw law = picture.law();
        answer.set("strong", JsonWriting.solvent(picture.sample().strong(), texts));
        answer.set("weak", JsonWriting.solvent(picture.sample().weak(), texts));
        answer.set(
                "series", JsonWriting.message(law.series().said(picture.sample().sorbent()), texts));
        ObjectNode activity = answer.putObject("activity");
        activity.set("value", JsonWriting.number(law.activity(), DECIMALS));
        activity.put("source", "Midplate").put("basis", Basis.OWN.id());
        activity.set("said", JsonWriting.message(Message.of("lesson.why-activity"), texts));
        ArrayNode inputs = answer.putArray("inputs");
        for (StrengthInputs one : List.of(law.weak(), law.strong())) {
            one.values().forEach(value -> inputs.add(PublishedWriter.value(one.solvent(), value, speech)));
        }
        answer.set("percents", numbers(picture, SurfacePicture.Share::percentStrong));
        answer.set("coverage", numbers(picture, SurfacePicture.Share::coverage));
        answer.set("strength", numbers(picture, SurfacePicture.Share::strength));
        ArrayNode compounds = answer.putArray("compounds");
        picture.solutes().forEach(solute -> compounds.add(solute(picture, solute)));
        SurfaceReasons reasons = SurfaceReasons.of(picture);
        answer.set("sentences", JsonWriting.messages(reasons.sentences(), texts));
        reasons.caution().ifPresent(caution -> {
            ObjectNode node = answer.putObject("caution");
            node.set("said", JsonWriting.message(caution, texts));
            node.put("value", "1").put("unit", "% w/w").put("source", "Scott").put("basis", Basis.READ.id());
        });
        ArrayNode notes = answer.putArray("notes");
        calculatedAs(picture.sample().weak(), law.weak(), notes);
        calculatedAs(picture.sample().strong(), law.strong(), notes);
        notes.add(JsonWriting.message(
                Message.of("lesson.why-area", "carbon", SoluteSums.CARBON_AREA, "group", SoluteSums.GROUP_AREA),
                texts));
        return JsonWriting.text(answer);
    }

    private void calculatedAs(Solvent solvent, StrengthInputs used, ArrayNode notes) {
        if (!used.solvent().equals(solvent)) {
            Message as = Message.of(
                    "note.calculated-as",
                    "solvent",
                    solvent.said(),
                    "standIn",
                    used.solvent().said());
            notes.add(JsonWriting.message(as, texts));
        }
    }

    private static ArrayNode numbers(SurfacePicture picture, ToDoubleFunction<SurfacePicture.Share> value) {
        return JsonWriting.numbers(
                picture.shares().stream()
                        .map(share -> value.applyAsDouble(share))
                        .toList(),
                DECIMALS);
    }

    private ObjectNode solute(SurfacePicture picture, SurfacePicture.Solute solute) {
        ObjectNode node = JsonWriting.object().put("name", solute.name());
        SoluteSums sums = solute.sums();
        ArrayNode groups = node.putArray("groups");
        sums.groups().forEach(counted -> groups.add(group(counted)));
        sums.strongest()
                .ifPresent(counted -> node.put("strongest", counted.group().id()));
        solute.heldBy().ifPresent(id -> node.put("heldBy", id));
        sums.energy().ifPresent(sum -> {
            SurfaceLaw law = picture.law();
            double area = sums.area().orElseThrow();
            double strength = law.strength(picture.now());
            node.set("energySum", JsonWriting.number(sum, ENERGY_DECIMALS));
            node.set("area", JsonWriting.number(area, ENERGY_DECIMALS));
            node.set("hold", JsonWriting.number(law.activity() * sum, ENERGY_DECIMALS));
            node.set("push", JsonWriting.number(law.activity() * area * strength, ENERGY_DECIMALS));
            node.set("balance", numbers(picture, share -> sum - area * share.strength()));
        });
        node.set(
                "adsorbed",
                JsonWriting.numbers(
                        IntStream.range(0, picture.shares().size())
                                .mapToObj(place -> solute.adsorbed(place))
                                .toList(),
                        DECIMALS));
        return node;
    }

    private ObjectNode group(SoluteSums.Counted counted) {
        FunctionalGroup group = counted.group();
        ObjectNode node = JsonWriting.object()
                .put("id", group.id())
                .put("name", texts.render(Compounds.said(group.id())))
                .put("count", counted.count());
        node.set("energy", JsonWriting.number(group.energy(), ENERGY_DECIMALS));
        return node.put("source", group.source().key())
                .put("basis", group.basis().id())
                .put("confidence", group.confidence())
                .put("note", speech.said(group.note()));
    }
}
