package midplate.inference;

import java.util.List;
import java.util.Map;
import java.util.Set;
import midplate.plate.Reading;
import midplate.plate.UnlabelledLane;

/**
 * A plate that was run, in terms of the models: which pair, at which share, and what was read.
 *
 * @param pair id of the pair's model
 * @param percent share of the strong solvent [% v/v], in [0, 100]
 * @param readings by the spots' names
 * @param number by which whoever asks knows the plate; nothing is worked out from it
 * @param unlabelled lanes with spots that nobody named
 * @param notSeen spots that none of the unlabelled ones on this plate can be
 */
public record PlateRun(
        String pair,
        double percent,
        Map<String, Reading> readings,
        int number,
        List<UnlabelledLane> unlabelled,
        Set<String> notSeen) {
    /** Keeps its own copies. */
    public PlateRun {
        readings = Map.copyOf(readings);
        unlabelled = List.copyOf(unlabelled);
        notSeen = Set.copyOf(notSeen);
    }

    /** A plate on which every spot seen has its name. */
    public PlateRun(String pair, double percent, Map<String, Reading> readings) {
        this(pair, percent, readings, 0, List.of(), Set.of());
    }
}
