package midplate.inference;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import midplate.catalogue.ColumnLaw;

/** Writes the law of columns as {@link CalibrationFiles} writes curves. */
public final class ColumnLawFile {
    private ColumnLawFile() {}

    /** Writes {@value ColumnLaw#FILE} into a folder that is there. */
    public static void write(ColumnLaw law, Path folder) throws IOException {
        ObjectNode node = CalibrationFiles.object();
        node.put("pair", law.pair());
        ObjectNode measured = node.putObject("measured");
        CalibrationFiles.numbers(measured.putArray("grams"), law.sizes());
        put(measured, "lowestPercent", law.lowestPercent());
        put(measured, "highestPercent", law.highestPercent());
        put(measured, "meanPlace", law.meanPlace());
        put(measured, "placeSpread", law.placeSpread());
        put(node, "outsideMl", law.outsideMl());
        put(node, "voidMlPerGram", law.voidMlPerGram());
        put(node, "holdMlPerGram", law.holdMlPerGram());
        put(node, "steepness", law.steepness());
        put(node, "drift", law.drift());
        put(node, "spotSpread", law.spotSpread());
        put(node, "runScatter", law.runScatter());
        put(node, "runFreedom", law.runFreedom());
        put(node, "sizeSpread", law.sizeSpread());
        put(node, "idealSpread", law.idealSpread());
        width(node.putObject("width"), law.width());
        ObjectNode fit = node.putObject("fit");
        fit.put("compounds", law.fit().compounds());
        fit.put("runs", law.fit().runs());
        fit.put("widthRuns", law.fit().widthRuns());
        ObjectNode provenance = node.putObject("provenance");
        law.provenance().sources().forEach(provenance.putArray("sources")::add);
        provenance.put("columnsSha256", law.provenance().columnsSha256());
        provenance.put("platesSha256", law.provenance().platesSha256());
        provenance.put("leftOut", law.provenance().leftOut());
        provenance.put("command", law.provenance().command());
        CalibrationFiles.write(node, folder.resolve(ColumnLaw.FILE));
    }

    private static void width(ObjectNode node, ColumnLaw.Width width) {
        put(node, "first", width.first());
        put(node, "perLogLoad", width.perLogLoad());
        put(node, "leastLoad", width.leastLoad());
        put(node, "mostLoad", width.mostLoad());
        put(node, "perPlace", width.perPlace());
        put(node, "perPlaceSquared", width.perPlaceSquared());
        put(node, "mostPlace", width.mostPlace());
        put(node, "spotSpread", width.spotSpread());
        put(node, "spread", width.spread());
    }

    private static void put(ObjectNode node, String field, double value) {
        node.put(field, CalibrationFiles.rounded(value));
    }
}
