package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import midplate.column.FractionAnswer;
import midplate.column.FractionAnswer.Pool;
import midplate.column.FractionAnswer.SeenBand;
import midplate.words.Texts;

/** Writes which tubes to pour together, and what a run says. */
final class FractionsWriter {
    /** Decimals of a share. */
    private static final int DECIMALS = 4;
    /** Decimals of a volume [ml] and of a mass that was weighed [mg]. */
    private static final int COARSE = 2;

    private final Texts texts;

    FractionsWriter(Texts texts) {
        this.texts = texts;
    }

    /** The whole answer. */
    String write(FractionsReader.Run run, FractionAnswer found) {
        ObjectNode answer = JsonWriting.object();
        ArrayNode pools = answer.putArray("pools");
        found.pools().forEach(pool -> pools.add(pool(pool)));
        found.balance().ifPresent(balance -> {
            ObjectNode node = answer.putObject("balance");
            node.set("foundMg", JsonWriting.number(balance.foundMg(), COARSE));
            node.set("ofLoaded", JsonWriting.number(balance.ofLoaded(), DECIMALS));
            node.set("targetPureMg", JsonWriting.number(balance.targetPureMg(), COARSE));
            node.set("text", JsonWriting.message(balance.text(), texts));
        });
        ArrayNode observed = answer.putArray("observed");
        found.observed().forEach(band -> observed.add(observed(run, band)));
        answer.set("warnings", JsonWriting.messages(found.warnings(), texts));
        answer.set("notes", JsonWriting.messages(found.notes(), texts));
        return JsonWriting.text(answer);
    }

    private ObjectNode pool(Pool pool) {
        ObjectNode node = JsonWriting.object().put("kind", pool.kind().id());
        ArrayNode spots = node.putArray("spots");
        pool.spots().forEach(spots::add);
        node.put("fromTube", pool.fromTube()).put("toTube", pool.toTube());
        node.set("volumeMl", JsonWriting.number(pool.volumeMl(), COARSE));
        pool.massMg().ifPresent(mass -> node.set("massMg", JsonWriting.number(mass, COARSE)));
        node.set("reason", JsonWriting.message(pool.reason(), texts));
        return node;
    }

    /** As the request for the next plan takes it, where bed and steps were said. */
    private static ObjectNode observed(FractionsReader.Run run, SeenBand band) {
        ObjectNode node = JsonWriting.object().put("spot", band.spot());
        run.bed().ifPresent(bed -> node.set("bed", ColumnPlanWriter.bed(bed)));
        run.program().ifPresent(program -> node.set("steps", ColumnPlanWriter.steps(program)));
        node.set("startMl", JsonWriting.exact(band.startMl()));
        node.set("endMl", JsonWriting.exact(band.endMl()));
        node.set("errorMl", JsonWriting.exact(band.errorMl()));
        return node;
    }
}
