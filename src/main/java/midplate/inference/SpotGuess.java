package midplate.inference;

import java.util.List;
import midplate.plate.Reading;

/**
 * Which spots of the sample an unlabelled spot may be.
 *
 * @param run number of the plate, as it was given
 * @param lane number of the lane on the plate
 * @param index place of the spot in its list
 * @param reading where it lies
 * @param possibilities what it may be, the likeliest first, at least one; what hardly any way of matching says is left out
 */
public record SpotGuess(int run, int lane, int index, Reading reading, List<Possibility> possibilities) {
    /** Keeps its own copy. */
    public SpotGuess {
        possibilities = List.copyOf(possibilities);
    }

    /**
     * What a spot may be.
     *
     * @param spots names of all spots that lie there together; empty for none of those asked about
     * @param probability how likely that is, as far as ways of matching were looked at [1]
     */
    public record Possibility(List<String> spots, double probability) {
        /** Keeps its own copy. */
        public Possibility {
            spots = List.copyOf(spots);
        }
    }

    /** The likeliest. */
    public Possibility guess() {
        return possibilities.get(0);
    }
}
