package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import midplate.inference.Knowledge;
import midplate.inference.PossiblePlates;

/**
 * What the samples that are possible do along a series: as a cloud of some of them to be drawn, and counted over all.
 * Each shows its true Rf, as a plate without any error does.
 */
public final class PlateClouds {
    /** Samples that are drawn: enough to see a spread, few enough to be drawn in every lane. */
    public static final int DRAWN = 24;

    private final PossiblePlates plates;
    private final int spots;

    private PlateClouds(PossiblePlates plates, int spots) {
        this.plates = plates;
        this.spots = spots;
    }

    static PlateClouds of(Knowledge knowledge) {
        return new PlateClouds(PossiblePlates.of(knowledge), knowledge.spots());
    }

    /** How many samples are counted over. */
    int samples() {
        return plates.samples();
    }

    /** Rf [1] of a spot of a sample at a share [% v/v]. */
    double rf(int sample, int spot, double percent) {
        return plates.rf(sample, spot, percent);
    }

    /** The samples that are drawn: evenly among all, whose order is that of their plausible pasts. */
    List<Integer> drawn() {
        List<Integer> drawn = new ArrayList<>();
        for (int i = 0; i < DRAWN; i++) {
            drawn.add((int) ((i + 0.5) * samples() / DRAWN));
        }
        return drawn;
    }

    /** The curves that are drawn, by spot, then by sample: Rf [1] at each share [% v/v]. */
    public List<List<List<Double>>> curves(List<Double> percents) {
        List<List<List<Double>>> curves = new ArrayList<>();
        for (int each = 0; each < spots; each++) {
            int spot = each;
            curves.add(drawn().stream()
                    .map(sample ->
                            percents.stream().map(p -> rf(sample, spot, p)).toList())
                    .toList());
        }
        return curves;
    }

    /** The share of samples in which one spot lies above another at a share of the strong solvent [1]. */
    double above(int one, int other, double percent) {
        int count = 0;
        for (int k = 0; k < samples(); k++) {
            if (rf(k, one, percent) > rf(k, other, percent)) {
                count++;
            }
        }
        return (double) count / samples();
    }

    /** The share in which one spot lies below another at the first share of the strong solvent, and above it at the second [1]. */
    double overtakes(int one, int other, double from, double to) {
        int count = 0;
        for (int k = 0; k < samples(); k++) {
            if (rf(k, one, from) < rf(k, other, from) && rf(k, one, to) > rf(k, other, to)) {
                count++;
            }
        }
        return (double) count / samples();
    }

    /** The share in which spots lie in this order, lowest first, at every share of the strong solvent [1]. */
    double inOrder(List<Integer> order, List<Double> percents) {
        int count = 0;
        for (int k = 0; k < samples(); k++) {
            int sample = k;
            if (percents.stream().allMatch(percent -> isInOrder(sample, order, percent))) {
                count++;
            }
        }
        return (double) count / samples();
    }

    private boolean isInOrder(int sample, List<Integer> order, double percent) {
        for (int i = 1; i < order.size(); i++) {
            if (rf(sample, order.get(i), percent) < rf(sample, order.get(i - 1), percent)) {
                return false;
            }
        }
        return true;
    }

    /** The share in which, of all plates of a series, this one has the closest two widest apart [1]. */
    double widest(int plate, List<Double> percents) {
        int count = 0;
        for (int k = 0; k < samples(); k++) {
            double mine = smallestGap(k, percents.get(plate));
            boolean isWidest = true;
            for (double percent : percents) {
                isWidest = isWidest && smallestGap(k, percent) <= mine;
            }
            count += isWidest ? 1 : 0;
        }
        return (double) count / samples();
    }

    private double smallestGap(int sample, double percent) {
        double smallest = Double.POSITIVE_INFINITY;
        for (int one = 0; one < spots; one++) {
            for (int other = one + 1; other < spots; other++) {
                smallest = Math.min(smallest, Math.abs(rf(sample, one, percent) - rf(sample, other, percent)));
            }
        }
        return smallest;
    }
}
