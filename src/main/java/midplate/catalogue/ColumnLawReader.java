package midplate.catalogue;

import java.util.List;

/** Reads the law of columns from {@value ColumnLaw#FILE}. */
final class ColumnLawReader {
    private static final double FAR = 50;
    private static final double LEAST = 1e-6;

    private ColumnLawReader() {}

    static ColumnLaw read(DataFolder folder, String prefix, SolventCatalogue catalogue) {
        CurveJson json = CurveJson.read(folder, prefix + ColumnLaw.FILE);
        CurveJson measured = json.object("measured");
        double lowest = measured.number("lowestPercent", 0, 100);
        return new ColumnLaw(
                json.text("pair"),
                measured.rising("grams", LEAST, 1e6),
                lowest,
                measured.number("highestPercent", lowest, 100),
                json.number("outsideMl", 0, 1000),
                json.number("voidMlPerGram", LEAST, FAR),
                json.number("holdMlPerGram", LEAST, FAR),
                json.number("steepness", 0.1, 10),
                json.number("drift", -10, 10),
                measured.number("meanPlace", 0, FAR),
                measured.number("placeSpread", 0, FAR),
                json.number("spotSpread", 0, 10),
                json.number("runScatter", LEAST, 10),
                json.number("runFreedom", 1, 1000),
                json.number("sizeSpread", 0, 10),
                json.number("idealSpread", 0, 10),
                width(json.object("width")),
                fit(json.object("fit")),
                provenance(json.object("provenance"), catalogue));
    }

    private static ColumnLaw.Width width(CurveJson json) {
        double leastLoad = json.number("leastLoad", LEAST, FAR);
        return new ColumnLaw.Width(
                json.number("first", -FAR, FAR),
                json.number("perLogLoad", -FAR, FAR),
                leastLoad,
                json.number("mostLoad", leastLoad, FAR),
                json.number("perPlace", -FAR, FAR),
                json.number("perPlaceSquared", -FAR, FAR),
                json.number("mostPlace", 0, FAR),
                json.number("spotSpread", 0, 10),
                json.number("spread", LEAST, 10));
    }

    private static ColumnLaw.Fit fit(CurveJson json) {
        return new ColumnLaw.Fit(json.count("compounds"), json.count("runs"), json.count("widthRuns"));
    }

    private static ColumnLaw.Provenance provenance(CurveJson json, SolventCatalogue catalogue) {
        List<String> sources = json.texts("sources");
        for (String key : sources) {
            if (!catalogue.sources().containsKey(key)) {
                throw json.fault("sources", key, "keys of sources.json");
            }
        }
        return new ColumnLaw.Provenance(
                sources,
                json.text("columnsSha256"),
                json.text("platesSha256"),
                json.text("leftOut"),
                json.text("command"));
    }
}
