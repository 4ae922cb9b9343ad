package midplate.inference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.SolventCatalogue;
import midplate.plate.Reading;
import midplate.plate.Setting;

/** Plates and what is known after them, with the curves packed with the program; all readings are invented. */
final class Plates {
    static final String ACETATE = "silica-hexane-ethyl-acetate";
    static final String ETHER = "silica-hexane-diethyl-ether";
    static final String METHANOL = "silica-dichloromethane-methanol";
    static final MeasuredPairs CURVES = MeasuredPairs.builtIn(SolventCatalogue.builtIn());
    static final PlateModels BUILT_IN = PlateModels.of(CURVES, FunctionalGroups.builtIn());

    private Plates() {}

    static PlateRun run(String pair, double percent, Map<String, Double> rf) {
        Map<String, Reading> readings = new LinkedHashMap<>();
        rf.forEach((spot, each) -> readings.put(spot, Reading.of(each)));
        return new PlateRun(pair, percent, readings);
    }

    static PlateRun bound(String pair, double percent, String spot, Reading reading) {
        return new PlateRun(pair, percent, Map.of(spot, reading));
    }

    static Outlook outlook(String pair, Setting setting, List<String> spots, List<PlateRun> runs) {
        return outlook(BUILT_IN, pair, setting, spots, runs, 0.2, 0.8);
    }

    static Outlook outlook(
            PlateModels models,
            String pair,
            Setting setting,
            List<String> spots,
            List<PlateRun> runs,
            double low,
            double high) {
        return models.outlook(models.learn(pair, setting, spots, runs), setting, low, high);
    }

    /** From where 5 of 100 readings of the first spot lie below to where 5 lie above. */
    static double width(Outlook outlook, double percent) {
        Outlook.Spot spot = outlook.spot(0, percent);
        return spot.percentile95() - spot.percentile5();
    }
}
