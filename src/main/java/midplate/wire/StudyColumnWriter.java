package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import midplate.notebook.ColumnFlask;
import midplate.notebook.ColumnRun;
import midplate.notebook.ColumnStep;
import midplate.notebook.ColumnTube;
import midplate.notebook.StudyBed;
import midplate.notebook.StudyColumn;

/** Writes the column of a study. */
final class StudyColumnWriter {
    private StudyColumnWriter() {}

    /** The tree of a column. */
    static ObjectNode tree(StudyColumn column) {
        ObjectNode node = JsonWriting.object();
        column.target().ifPresent(target -> node.put("target", target));
        node.set("massMg", StudyWriter.entered(column.massMg()));
        node.set("bed", bed(column.bed()));
        node.put("loading", ColumnParts.word(column.loading()));
        node.set("loadMl", StudyWriter.entered(column.loadMl()));
        node.set("flowMlMin", StudyWriter.entered(column.flowMlMin()));
        node.set("fractionMl", StudyWriter.entered(column.fractionMl()));
        node.put("elution", ColumnParts.word(column.elution()));
        node.set("steps", steps(column.steps()));
        ArrayNode runs = node.putArray("runs");
        column.runs().forEach(run -> runs.add(run(run)));
        return node;
    }

    private static ObjectNode bed(StudyBed bed) {
        ObjectNode node = JsonWriting.object().put("kind", ColumnParts.word(bed.kind()));
        StudyWriter.ifEntered(node, "grams", bed.grams());
        StudyWriter.ifEntered(node, "diameterMm", bed.diameterMm());
        StudyWriter.ifEntered(node, "bedMm", bed.bedMm());
        return node;
    }

    private static ArrayNode steps(List<ColumnStep> steps) {
        ArrayNode list = JsonWriting.array();
        for (ColumnStep step : steps) {
            ObjectNode node = list.addObject().put("eluent", step.eluent());
            step.percentStrong().ifPresent(percent -> node.set("percentStrong", JsonWriting.exact(percent)));
            node.set("volumeMl", StudyWriter.entered(step.volumeMl()));
        }
        return list;
    }

    private static ObjectNode run(ColumnRun run) {
        ObjectNode node =
                JsonWriting.object().put("id", run.id()).put("weak", run.weak()).put("strong", run.strong());
        node.set("additive", StudyWriter.additive(run.additive()));
        node.set("bed", bed(run.bed()));
        node.set("steps", steps(run.steps()));
        node.put("loading", ColumnParts.word(run.loading()));
        node.set("massMg", StudyWriter.entered(run.massMg()));
        node.set("fractionMl", StudyWriter.entered(run.fractionMl()));
        node.set("collectedFromMl", StudyWriter.entered(run.collectedFromMl()));
        ArrayNode tubes = node.putArray("tubes");
        run.tubes().forEach(tube -> tubes.add(tube(tube)));
        ArrayNode flasks = node.putArray("flasks");
        run.flasks().forEach(flask -> flasks.add(flask(flask)));
        return node;
    }

    private static ObjectNode tube(ColumnTube tube) {
        ObjectNode node = JsonWriting.object().put("id", tube.id());
        tube.marks().ifPresent(seen -> {
            ArrayNode marks = node.putArray("marks");
            seen.forEach(mark -> marks.addObject().put("spot", mark.spot()).put("strength", mark.strength()));
        });
        return node;
    }

    private static ObjectNode flask(ColumnFlask flask) {
        ObjectNode node = JsonWriting.object().put("id", flask.id());
        node.set("fromTube", StudyWriter.entered(flask.fromTube()));
        node.set("toTube", StudyWriter.entered(flask.toTube()));
        node.set("tareGrams", StudyWriter.entered(flask.tareGrams()));
        node.set("grossGrams", StudyWriter.entered(flask.grossGrams()));
        return node;
    }
}
