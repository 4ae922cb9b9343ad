package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.MersenneTwister;

/**
 * Chance that is the same on every machine: draws from a seed and a place in it, by the Mersenne Twister of the library, whose
 * algorithm is fixed. Draws of one place do not move those of another, so that a further question changes none before it.
 * Not for secrets; for one thread.
 *
 * @see "Matsumoto1998"
 */
public final class SeededDraws {
    private final MersenneTwister twister;

    private SeededDraws(MersenneTwister twister) {
        this.twister = twister;
    }

    /**
     * Draws of a seed.
     *
     * @param seed any number
     * @param place for what they are drawn, such as the kind of thing and its number
     */
    public static SeededDraws of(int seed, int... place) {
        int[] all = new int[place.length + 1];
        all[0] = seed;
        System.arraycopy(place, 0, all, 1, place.length);
        return new SeededDraws(new MersenneTwister(all));
    }

    /** A number from low to high, ends included, each as likely as the other. */
    public int whole(int low, int high) {
        return low + twister.nextInt(high - low + 1);
    }

    /** A number from low up to high, evenly. */
    public double even(double low, double high) {
        return low + (high - low) * twister.nextDouble();
    }

    /** A number of the standard normal distribution. */
    public double normal() {
        return twister.nextGaussian();
    }

    /** Some of a list, none twice, in the order drawn. */
    public <T> List<T> some(List<T> list, int count) {
        List<T> left = new ArrayList<>(list);
        List<T> drawn = new ArrayList<>();
        while (drawn.size() < count) {
            drawn.add(left.remove(whole(0, left.size() - 1)));
        }
        return List.copyOf(drawn);
    }
}
