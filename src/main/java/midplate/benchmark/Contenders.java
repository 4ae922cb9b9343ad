package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import midplate.catalogue.SolventCatalogue;
import midplate.inference.Form;

/**
 * Who runs in the benchmark: the program first, then the model that it had before, the same without an area of its own for
 * each compound, then peers.
 *
 * <p>The model before is the one contender called {@link #BEFORE}; tables and charts give it a place of its own beside the
 * program as soon as it runs. Ask it {@link Further#NEIGHBOURS_LEFT_OUT} as well.
 */
final class Contenders {
    /** The name of the program. */
    static final String PROGRAM = "Midplate";
    /** The name of the program with two traits of each compound, c and s, and nothing more. */
    static final String BEFORE = "Two-trait model";
    /** The name of the program with one trait only. */
    static final String ONE_SLOPE = "Measured curve, one slope";

    private Contenders() {}

    static List<ContenderFactory> all() {
        SolventCatalogue catalogue = SolventCatalogue.builtIn();
        List<ContenderFactory> all = new ArrayList<>();
        all.add(AdviserContender.factory(PROGRAM, catalogue, Form.THREE_TRAITS, Further.values()));
        all.add(AdviserContender.factory(BEFORE, catalogue, Form.TWO_TRAITS, Further.NEIGHBOURS_LEFT_OUT));
        all.add(AdviserContender.factory(ONE_SLOPE, catalogue, Form.ONE_TRAIT));
        all.addAll(Peers.uncalibrated(catalogue));
        return all;
    }
}
