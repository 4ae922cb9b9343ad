package midplate.benchmark;

import java.util.Locale;
import midplate.inference.PairName;

/** The kinds of question about one compound: told some of its readings, foretell others. */
enum RatioKind {
    /** Hexane/ethyl acetate: each reading in turn tells all others. */
    ONE_TRIAL(PairName.HEXANE_ETHYL_ACETATE),
    /** Hexane/ethyl acetate: each two readings with Rf above 0.05 and below 0.95 tell all others. */
    TWO_TRIALS(PairName.HEXANE_ETHYL_ACETATE),
    /** Dichloromethane/methanol: each reading in turn tells all others. */
    METHANOL_ONE_TRIAL(PairName.DICHLOROMETHANE_METHANOL),
    /** One reading in hexane/ethyl acetate at Rf 0.2 to 0.8 tells hexane/ether at 33 and 50 %. */
    SWITCH_TO_ETHER(PairName.HEXANE_DIETHYL_ETHER),
    /** One reading in hexane/ethyl acetate at Rf 0.2 to 0.8 tells dichloromethane/methanol. */
    SWITCH_TO_METHANOL(PairName.DICHLOROMETHANE_METHANOL),
    /** One reading in hexane/ether at Rf 0.2 to 0.8 tells hexane/ethyl acetate. */
    SWITCH_TO_ACETATE(PairName.HEXANE_ETHYL_ACETATE);

    private final PairName pair;

    RatioKind(PairName pair) {
        this.pair = pair;
    }

    /** The pair that is asked about. */
    PairName pair() {
        return pair;
    }

    /** Its name in the results: {@code one-trial}. */
    String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
