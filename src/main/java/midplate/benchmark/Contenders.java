package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import midplate.benchmark.AdviserContender.UnlabelledSpots;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.PairCalibration;

/** Who runs in the benchmark: the program first, then the same without an area of its own for each compound, then peers. */
final class Contenders {
    private Contenders() {}

    static List<ContenderFactory> all() {
        SolventCatalogue catalogue = SolventCatalogue.builtIn();
        List<ContenderFactory> all = new ArrayList<>();
        all.add(AdviserContender.factory("Midplate", catalogue, PairCalibration.Areas.OWN, UnlabelledSpots.ASKED));
        all.add(AdviserContender.factory(
                "Measured curve, one slope", catalogue, PairCalibration.Areas.ALIKE, UnlabelledSpots.LEFT_OUT));
        all.addAll(Peers.uncalibrated(catalogue));
        return all;
    }
}
