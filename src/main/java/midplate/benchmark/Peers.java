package midplate.benchmark;

import java.util.List;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.StrengthSeries;
import midplate.inference.OpenMeasurements;

/** Models from the literature to hold the program against, each written afresh as a {@link OneTraitModel}. */
public final class Peers {
    private Peers() {}

    /** The three that need no calibration. */
    public static List<ContenderFactory> uncalibrated(SolventCatalogue catalogue) {
        return List.of(
                uncalibrated("Published strengths, older series", new SnyderLaw(catalogue, StrengthSeries.OLDER)),
                uncalibrated("Published strengths, newer series", new SnyderLaw(catalogue, StrengthSeries.NEWER)),
                uncalibrated("Log–log line, one slope", new LogLogLaw()));
    }

    private static ContenderFactory uncalibrated(String name, StrengthLaw law) {
        return new ContenderFactory() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public Contender trainedOn(OpenMeasurements training) {
                return new OneTraitModel(name, law);
            }
        };
    }
}
