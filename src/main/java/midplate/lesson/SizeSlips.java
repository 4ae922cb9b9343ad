package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Slips in which the size of a spot stands against a distance. */
final class SizeSlips {
    /** Widths apart at which two equal spots still have one peak [1]. */
    static final double ONE_PEAK = 0.5;

    private SizeSlips() {}

    static SlipPlates of(SlipCase slip) {
        return slip.question().slip() == Slip.EDGE_TOO_NEAR ? edge(slip) : neighbours(slip);
    }

    /**
     * A spot whose middle lies nearer to the side than half its width across is cut by it: it has no sound middle, and is left out. What is
     * cut off an ellipse is the same share as of the circle that it is drawn out from.
     */
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
     * Two spots next to each other in height are put a apart. Where they make one patch ({@link #apart}), the pair takes its middle for both.
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
        if (apart(one, other) <= ONE_PEAK) {
            double height = (one.mm() + other.mm()) / 2;
            one = one.at(height).looking(SeenSpot.Look.MERGED, 1);
            other = other.at(height).looking(SeenSpot.Look.MERGED, 1);
        }
        List<SeenSpot> spots = new ArrayList<>(plain.spots());
        spots.set(pair[0], one);
        spots.set(pair[1], other);
        return SlipPlates.noted(slip, plain.showing(spots));
    }

    /**
     * How far two spots lie apart, in their widths: {@code √((Δx/w)² + (Δy/l)²)}, w across and l along the roots of the mean squares of
     * both. Two equal normal curves have one peak where their Mahalanobis distance is at most 2 (own algebra); with w = 4σ that is {@value
     * #ONE_PEAK}.
     */
    static double apart(SeenSpot one, SeenSpot other) {
        return Math.hypot((one.leftMm() - other.leftMm()) / across(one, other), heights(one, other));
    }

    /** In lanes no farther apart they make one patch [mm]; empty where their heights alone keep them apart. */
    static OptionalDouble mergedWithin(SeenSpot one, SeenSpot other) {
        double left = ONE_PEAK * ONE_PEAK - heights(one, other) * heights(one, other);
        return left < 0 ? OptionalDouble.empty() : OptionalDouble.of(across(one, other) * Math.sqrt(left));
    }

    /** Half their length: farther apart in height, two spots are two in whatever lanes [mm]. */
    static double clearFrom(SeenSpot one, SeenSpot other) {
        return ONE_PEAK * meanSquare(one.alongMm(), other.alongMm());
    }

    private static double heights(SeenSpot one, SeenSpot other) {
        return (one.mm() - other.mm()) / meanSquare(one.alongMm(), other.alongMm());
    }

    private static double across(SeenSpot one, SeenSpot other) {
        return meanSquare(one.acrossMm(), other.acrossMm());
    }

    private static double meanSquare(double one, double other) {
        return Math.sqrt((one * one + other * other) / 2);
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
