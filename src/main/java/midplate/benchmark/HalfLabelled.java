package midplate.benchmark;

import java.util.List;

/**
 * What a contender is told of a sample that was run twice in hexane and ethyl acetate: first with labels, then without.
 *
 * @param labelled what was read of each spot on the first plate, from the start line up; a spot's place here is its name
 * @param percent ethyl acetate of the second plate [% v/v]
 * @param seen where spots were seen on it [Rf], from the start line up, each once, one or more
 */
public record HalfLabelled(List<TrialReading> labelled, double percent, List<Double> seen) {
    /** Keeps its own copies. */
    public HalfLabelled {
        labelled = List.copyOf(labelled);
        seen = List.copyOf(seen);
    }
}
