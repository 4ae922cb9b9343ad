package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import midplate.advice.ClosestSpots;
import midplate.advice.OtherEluent;
import midplate.advice.Ratio;
import midplate.advice.Replacements;
import midplate.advice.Rung;
import midplate.advice.SpotForecast;
import midplate.words.Texts;

/** Writes which other eluents may take the place of a mixture. */
final class OthersWriter {
    /** Decimals of an Rf, a chance and a percentage. */
    private static final int DECIMALS = 4;
    /** Decimals of a percentage that nobody pours as it stands. */
    private static final int COARSE = 2;

    private final Texts texts;

    OthersWriter(Texts texts) {
        this.texts = texts;
    }

    String write(Asked asked, Replacements found) {
        ObjectNode answer = JsonWriting.object();
        answer.set("id", JsonWriting.id(asked.id()));
        ObjectNode of = answer.putObject("of");
        of.set("weak", JsonWriting.solvent(asked.question().weak(), texts));
        of.set("strong", JsonWriting.solvent(asked.question().strong(), texts));
        of.set("percentStrong", JsonWriting.number(found.of().percentStrong(), DECIMALS));
        found.of().ratio().map(Ratio::toString).ifPresent(ratio -> of.put("ratio", ratio));
        of.put("basis", found.of().basis().id());
        of.set("rf", JsonWriting.number(found.of().rf(), DECIMALS));
        found.of().aim().ifPresent(aim -> of.set("aim", JsonWriting.number(aim, DECIMALS)));
        closest(of, found.of().closest());
        of.set("chance", JsonWriting.number(found.of().chance(), DECIMALS));
        of.set("goal", JsonWriting.number(found.of().goal(), DECIMALS));
        answer.put("rank", found.rank().id());
        ArrayNode others = answer.putArray("others");
        found.others().forEach(other -> others.add(other(other)));
        answer.set("rungs", rungs(found.ladder()));
        answer.set("notes", JsonWriting.messages(found.notes(), texts));
        return JsonWriting.text(answer);
    }

    private ObjectNode other(OtherEluent other) {
        ObjectNode node = JsonWriting.object();
        node.set("weak", JsonWriting.solvent(other.weak(), texts));
        node.set("strong", JsonWriting.solvent(other.strong(), texts));
        node.put("basis", other.basis().id());
        node.put("class", other.kind().name().toLowerCase(Locale.ROOT));
        other.equal().ifPresent(equal -> {
            ObjectNode share = node.putObject("equal");
            share.set("percentStrong", JsonWriting.number(equal.percentStrong(), COARSE));
            share.set("low", JsonWriting.number(equal.low(), COARSE));
            share.set("high", JsonWriting.number(equal.high(), COARSE));
            pour(share, other.pour());
        });
        other.nearest().ifPresent(nearest -> {
            ObjectNode share = node.putObject("nearest");
            share.set("percentStrong", JsonWriting.number(nearest.percentStrong(), COARSE));
            share.set("rf", JsonWriting.number(nearest.rf(), DECIMALS));
            share.put("side", nearest.side().name().toLowerCase(Locale.ROOT));
            pour(share, other.pour());
        });
        node.set("chance", JsonWriting.number(other.chance(), DECIMALS));
        node.set("goal", JsonWriting.number(other.goal(), DECIMALS));
        closest(node, other.closest());
        ObjectNode spots = node.putObject("spots");
        for (SpotForecast spot : other.spots()) {
            ObjectNode each = spots.putObject(spot.spot());
            each.set("rf", JsonWriting.number(spot.rf(), DECIMALS));
            each.set("low", JsonWriting.number(spot.low(), DECIMALS));
            each.set("high", JsonWriting.number(spot.high(), DECIMALS));
        }
        other.boilingPoint().ifPresent(celsius -> node.set("boilingPoint", JsonWriting.number(celsius, COARSE)));
        ArrayNode flags = node.putArray("flags");
        other.flags().forEach(flag -> flags.add(flag.id()));
        node.set("rungs", rungs(other.ladder()));
        node.set("reasons", JsonWriting.messages(other.reasons(), texts));
        return node;
    }

    private static void pour(ObjectNode node, OtherEluent.Pour pour) {
        node.put("ratio", pour.ratio().toString());
        node.set("weakMl", JsonWriting.number(pour.weakMl(), DECIMALS));
        node.set("strongMl", JsonWriting.number(pour.strongMl(), DECIMALS));
    }

    private static void closest(ObjectNode node, Optional<ClosestSpots> closest) {
        closest.ifPresent(two -> {
            ObjectNode apart = node.putObject("apart");
            apart.putArray("spots").add(two.one()).add(two.other());
            apart.set("chance", JsonWriting.number(two.chance(), DECIMALS));
            apart.set("gap", JsonWriting.number(two.gap(), DECIMALS));
        });
    }

    private static ArrayNode rungs(List<Rung> ladder) {
        ArrayNode rungs = JsonWriting.array();
        for (Rung rung : ladder) {
            ObjectNode node = rungs.addObject();
            node.set("percentStrong", JsonWriting.number(rung.percentStrong(), COARSE));
            node.set("rf", JsonWriting.number(rung.rf(), DECIMALS));
        }
        return rungs;
    }
}
