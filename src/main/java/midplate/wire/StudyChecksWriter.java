package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import midplate.notebook.CheckEluent;
import midplate.notebook.ComparedCandidate;
import midplate.notebook.ComparisonPlate;
import midplate.notebook.ReactionPlate;
import midplate.notebook.ReactionSpecies;
import midplate.notebook.StudyChecks;
import midplate.notebook.StudyComparison;
import midplate.notebook.StudyHrf;
import midplate.notebook.StudyPlate.Given;
import midplate.notebook.StudyPurity;
import midplate.notebook.StudyReaction;

/** Writes the checks of a study. */
final class StudyChecksWriter {
    private StudyChecksWriter() {}

    /** The tree of checks. */
    static ObjectNode tree(StudyChecks checks) {
        ObjectNode node = JsonWriting.object();
        checks.identity().ifPresent(identity -> node.set("identity", comparison(identity)));
        checks.purity().ifPresent(purity -> node.set("purity", purity(purity)));
        checks.hrf().ifPresent(hrf -> node.set("hrf", hrf(hrf)));
        checks.reaction().ifPresent(reaction -> node.set("reaction", reaction(reaction)));
        return node;
    }

    private static ObjectNode comparison(StudyComparison comparison) {
        ObjectNode node = JsonWriting.object();
        ArrayNode references = node.putArray("references");
        comparison.references().forEach(each -> references.add(StudyWriter.spot(each)));
        ArrayNode candidates = node.putArray("candidates");
        for (ComparedCandidate each : comparison.candidates()) {
            ObjectNode candidate = StudyWriter.spot(each.compound());
            StudyWriter.ifEntered(candidate, "rf", each.rf());
            StudyWriter.ifEntered(candidate, "hrf", each.hrf());
            candidates.add(candidate);
        }
        ArrayNode plates = node.putArray("plates");
        comparison.plates().forEach(each -> plates.add(plate(each)));
        return node;
    }

    private static void eluent(ObjectNode node, CheckEluent eluent) {
        node.put("weak", eluent.weak()).put("strong", eluent.strong()).put("eluent", eluent.typed());
        eluent.percentStrong().ifPresent(percent -> node.set("percentStrong", JsonWriting.exact(percent)));
        node.set("additive", StudyWriter.additive(eluent.additive()));
    }

    private static ObjectNode plate(ComparisonPlate plate) {
        ObjectNode node = JsonWriting.object().put("id", plate.id());
        eluent(node, plate.eluent());
        node.set("startMm", StudyWriter.entered(plate.startMm()));
        node.set("frontMm", StudyWriter.entered(plate.frontMm()));
        ArrayNode lanes = node.putArray("lanes");
        for (ComparisonPlate.Lane lane : plate.lanes()) {
            ObjectNode each = lanes.addObject()
                    .put("id", lane.id())
                    .put("role", lane.role().id());
            lane.reference().ifPresent(id -> each.put("reference", id));
            ArrayNode readings = each.putArray("readings");
            lane.readings().forEach(seen -> readings.add(reading(seen)));
        }
        return node;
    }

    private static ObjectNode reading(ComparisonPlate.Reading seen) {
        ObjectNode node = JsonWriting.object().put("id", seen.id());
        node.set(seen.given() == Given.RF ? "rf" : "centreMm", StudyWriter.entered(seen.place()));
        StudyWriter.ifEntered(node, "sizeMm", seen.sizeMm());
        seen.shape().ifPresent(shape -> node.put("shape", shape.id()));
        return node;
    }

    private static ObjectNode purity(StudyPurity purity) {
        ObjectNode node = JsonWriting.object();
        spot(node, purity.spot());
        node.set("rf", StudyWriter.entered(purity.rf()));
        node.set("spotsSeen", StudyWriter.entered(purity.spotsSeen()));
        node.set("seenBy", StudyWriter.texts(purity.seenBy()));
        node.set("volumeUl", StudyWriter.entered(purity.volumeUl()));
        node.set("concentrationPercent", StudyWriter.entered(purity.concentrationPercent()));
        node.set("touches", StudyWriter.entered(purity.touches()));
        purity.atStart().ifPresent(left -> node.put("startSpot", left.id()));
        return node;
    }

    private static void spot(ObjectNode node, Optional<String> spot) {
        spot.ifPresent(id -> node.put("spot", id));
    }

    private static ObjectNode hrf(StudyHrf hrf) {
        ObjectNode node = JsonWriting.object().put("system", hrf.system());
        ObjectNode measured = node.putObject("measured");
        hrf.measured().forEach((name, value) -> measured.set(name, StudyWriter.entered(value)));
        ArrayNode spots = node.putArray("spots");
        for (StudyHrf.Spot spot : hrf.spots()) {
            spots.addObject().put("id", spot.id()).put("name", spot.name()).set("hrf", StudyWriter.entered(spot.hrf()));
        }
        return node;
    }

    private static ObjectNode reaction(StudyReaction reaction) {
        ObjectNode node = JsonWriting.object();
        node.set("expectedMinutes", StudyWriter.entered(reaction.expectedMinutes()));
        eluent(node, reaction.eluent());
        ArrayNode species = node.putArray("species");
        for (ReactionSpecies each : reaction.species()) {
            ObjectNode one = StudyWriter.spot(each.compound());
            one.put("part", each.part().id());
            spot(one, each.spot());
            species.add(one);
        }
        ArrayNode plates = node.putArray("plates");
        reaction.plates().forEach(plate -> plates.add(plate(plate)));
        return node;
    }

    private static ObjectNode plate(ReactionPlate plate) {
        ObjectNode node = JsonWriting.object().put("id", plate.id());
        node.set("minutes", StudyWriter.entered(plate.minutes()));
        node.set("marks", marks(plate.marks()));
        plate.baseline().ifPresent(left -> node.put("baseline", left));
        return node;
    }

    private static ArrayNode marks(List<ReactionPlate.Mark> marks) {
        ArrayNode list = JsonWriting.array();
        for (ReactionPlate.Mark mark : marks) {
            ObjectNode node = list.addObject().put("species", mark.species()).put("strength", mark.strength());
            StudyWriter.ifEntered(node, "rf", mark.rf());
        }
        return list;
    }
}
