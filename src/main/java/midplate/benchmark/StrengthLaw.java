package midplate.benchmark;

import midplate.inference.PairName;

/** What a {@link OneTraitModel} takes as given: how strong each mixture is, and how far readings scatter. */
@FunctionalInterface
public interface StrengthLaw {
    /** The scatter of readings when nothing better is known [Rf]. */
    double USUAL_NOISE = 0.035;

    /**
     * The strength of a mixture [ln units]: what is added to ln(Rf/(1 − Rf)) of every compound.
     *
     * @param pair the solvents
     * @param percent share of the stronger one [% v/v], 0 to 100
     */
    double strength(PairName pair, double percent);

    /** The standard deviation of a reading there [Rf], above 0. */
    default double noise(PairName pair, double percent) {
        return USUAL_NOISE;
    }

    /**
     * What is added to the trait of a compound in the pair asked about to give its trait in the pair of a trial [ln units]; 0
     * where both strengths are on one scale.
     */
    default double shift(PairName asked, PairName trial) {
        return 0;
    }
}
