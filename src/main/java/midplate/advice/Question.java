package midplate.advice;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.inference.Parting;
import midplate.inference.SpotPair;
import midplate.plate.Run;
import midplate.plate.Setting;

/**
 * What is asked: which mixture of two solvents to run next.
 *
 * @param sorbent the layer
 * @param weak the weaker solvent
 * @param strong the stronger solvent
 * @param additive what else will be in the eluent, if anything; only runs with the same additive count
 * @param spots names of the spots, at least one, all different
 * @param runs plates already run, in any order, in this pair or another; may be empty
 * @param window where every spot should lie
 * @param setting how much plates scatter here
 * @param glassware what the eluent is measured with
 * @param wishes what is wished beyond the window
 * @param structures what spots are made of, by name, as far as it is known
 */
public record Question(
        Sorbent sorbent,
        Solvent weak,
        Solvent strong,
        Optional<String> additive,
        List<String> spots,
        List<Run> runs,
        Window window,
        Setting setting,
        Glassware glassware,
        Wishes wishes,
        Map<String, GroupCounts> structures) {
    /** Keeps its own copies. */
    public Question {
        spots = List.copyOf(spots);
        runs = List.copyOf(runs);
        structures = Map.copyOf(structures);
    }

    /** A question without further wishes, about compounds of which nothing is known. */
    public Question(
            Sorbent sorbent,
            Solvent weak,
            Solvent strong,
            Optional<String> additive,
            List<String> spots,
            List<Run> runs,
            Window window,
            Setting setting,
            Glassware glassware) {
        this(sorbent, weak, strong, additive, spots, runs, window, setting, glassware, Wishes.NONE, Map.of());
    }

    /** The same question with these wishes. */
    public Question wishing(Wishes wished) {
        return new Question(
                sorbent, weak, strong, additive, spots, runs, window, setting, glassware, wished, structures);
    }

    /** The same question about compounds of which this is known. */
    public Question knowing(Map<String, GroupCounts> known) {
        return new Question(sorbent, weak, strong, additive, spots, runs, window, setting, glassware, wishes, known);
    }

    /** The pairs to be kept apart, by the places of their spots. */
    Parting parting() {
        return Parting.of(wishes.apart().stream()
                .map(pair -> new SpotPair(spots.indexOf(pair.one()), spots.indexOf(pair.other())))
                .toList());
    }
}
