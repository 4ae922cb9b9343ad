package midplate.lesson;

import java.util.List;

/**
 * A slip as plates.
 *
 * @param right what a careful pair sees
 * @param rightly what it notes
 * @param seen what is seen this time
 * @param notings what is noted this time; two where the ruler's error is what counts
 */
record SlipPlates(SeenPlate right, SlipNoting rightly, SeenPlate seen, List<SlipNoting> notings) {
    SlipPlates {
        notings = List.copyOf(notings);
    }

    /** What a slip makes of a plate. */
    static SlipPlates of(SlipCase slip) {
        return switch (slip.question().slip().kind()) {
            case EXACT -> GeometrySlips.of(slip);
            case MODEL -> noted(slip, slip.then());
            case SIZE -> SizeSlips.of(slip);
            case ILLUSTRATION -> IllustratedSlips.of(slip);
        };
    }

    /** Something seen this time, and noted as it is. */
    static SlipPlates noted(SlipCase slip, SeenPlate seen) {
        return of(slip, seen, slip.noted(seen));
    }

    static SlipPlates of(SlipCase slip, SeenPlate seen, SlipNoting... notings) {
        SeenPlate right = slip.right();
        return new SlipPlates(right, slip.noted(right), seen, List.of(notings));
    }
}
