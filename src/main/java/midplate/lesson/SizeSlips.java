package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Slips in which the size of a spot stands against a distance. */
final class SizeSlips {
    private SizeSlips() {}

    static SlipPlates of(SlipCase slip) {
        return slip.question().slip() == Slip.EDGE_TOO_NEAR ? edge(slip) : neighbours(slip);
    }

    /** A round spot whose middle lies nearer to the side than half its width is cut by it: it has no sound middle, and is left out. */
    private static SlipPlates edge(SlipCase slip) {
        SeenPlate plain = slip.right();
        List<SeenSpot> spots = new ArrayList<>(plain.spots());
        SeenSpot first = spots.get(0).from(Math.min(spots.get(0).leftMm(), slip.size()));
        double radius = first.acrossMm() / 2;
        boolean cut = first.leftMm() < radius;
        CutCircle lost = CutCircle.beyond(first.leftMm() / radius);
        spots.set(0, cut ? first.looking(SeenSpot.Look.CUT, 1 - lost.share()) : first);
        return SlipPlates.noted(slip, plain.showing(spots));
    }

    /**
     * Two spots next to each other in height are put a apart. Two equal normal curves of σ = w/4 have one peak, midway, where their middles
     * are at most 2σ apart (own algebra; with σ² the mean of both); the pair then takes the patch's middle for both.
     */
    private static SlipPlates neighbours(SlipCase slip) {
        SeenPlate plain = slip.right();
        if (slip.spots() < 2) {
            return SlipPlates.noted(slip, plain);
        }
        int[] pair = nearest(plain.spots());
        SeenSpot one = plain.spots().get(pair[0]);
        SeenSpot other = plain.spots().get(pair[1]);
        double middle = (one.leftMm() + other.leftMm()) / 2;
        double apart = Math.min(slip.size(), Math.abs(one.leftMm() - other.leftMm()));
        double side = Math.signum(other.leftMm() - one.leftMm()) * apart / 2;
        one = one.from(middle - side);
        other = other.from(middle + side);
        if (Math.hypot(apart, one.mm() - other.mm()) <= mergedWithin(one, other)) {
            double height = (one.mm() + other.mm()) / 2;
            one = one.at(height).looking(SeenSpot.Look.MERGED, 1);
            other = other.at(height).looking(SeenSpot.Look.MERGED, 1);
        }
        List<SeenSpot> spots = new ArrayList<>(plain.spots());
        spots.set(pair[0], one);
        spots.set(pair[1], other);
        return SlipPlates.noted(slip, plain.showing(spots));
    }

    /** Middles that lie no farther apart make one patch [mm]. */
    static double mergedWithin(SeenSpot one, SeenSpot other) {
        return Math.sqrt((one.acrossMm() * one.acrossMm() + other.acrossMm() * other.acrossMm()) / 2) / 2;
    }

    /** The two spots that lie nearest in height. */
    static int[] nearest(List<SeenSpot> spots) {
        return IntStream.range(0, spots.size())
                .boxed()
                .flatMap(i -> IntStream.range(i + 1, spots.size()).mapToObj(j -> new int[] {i, j}))
                .min(Comparator.comparingDouble(pair ->
                        Math.abs(spots.get(pair[0]).mm() - spots.get(pair[1]).mm())))
                .orElseThrow();
    }
}
