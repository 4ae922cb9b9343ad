package midplate.benchmark;

import java.util.List;
import java.util.Optional;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import midplate.plate.Setting;

/** A model under test: told trials, it foretells spots and advises a ratio. The same question gets the same answer. */
public interface Contender {
    /** What it is called in the tables. */
    String name();

    /** Whether it foretells plates of one pair from trials in another, or in the same one. */
    default boolean foretells(PairName pair, PairName trials) {
        return true;
    }

    /**
     * What one spot will read in a pair, one guess for each percentage.
     *
     * @param pair the solvents of the plates to foretell
     * @param trials what was read of this spot, one or more, sorted
     * @param percents shares of the stronger solvent [% v/v]
     */
    List<Guess> guesses(PairName pair, List<TrialReading> trials, double[] percents);

    /** What one spot will read on one plate; see {@link #guesses}. */
    default Guess guess(PairName pair, List<TrialReading> trials, double percent) {
        return guesses(pair, trials, new double[] {percent}).get(0);
    }

    /**
     * The ratio of hexane and ethyl acetate at which all spots of a sample lie at Rf 0.2 to 0.8, and its chance.
     *
     * @param spots what was read of each spot on one trial plate, spots in an order that says nothing
     */
    Choice choose(List<List<TrialReading>> spots);

    /**
     * The same for plates run in a setting; nothing from a model that knows no settings, as the published laws.
     *
     * @param spots as above
     * @param setting where the plates are run
     */
    default Optional<Choice> choose(List<List<TrialReading>> spots, Setting setting) {
        return Optional.empty();
    }

    /**
     * Which plates to run at once before anything was read; nothing from a model that plans no rounds.
     *
     * @param spots how many compounds the sample has
     * @param way how the plates are to be come by
     */
    default Optional<Scouted> scout(int spots, Scouted.Way way) {
        return Optional.empty();
    }

    /**
     * Which compound is which on a second plate without labels, and what comes next; nothing from a model that knows no
     * unlabelled spots, as the published laws.
     *
     * @param plates what is told of the two plates
     * @param percents at which each compound is to be foretold [% v/v of ethyl acetate]
     */
    default Optional<Matched> match(HalfLabelled plates, double[] percents) {
        return Optional.empty();
    }

    /**
     * Measurements of compounds that are as the model expects compounds to be, read with the scatter that it expects, at the ratios of
     * other measurements; nothing from a model that expects none.
     *
     * @param like pairs and ratios
     * @param number a number that no other drawing of this benchmark has; the compounds of two drawings differ by their series
     */
    default Optional<OpenMeasurements> expected(OpenMeasurements like, int number) {
        return Optional.empty();
    }
}
