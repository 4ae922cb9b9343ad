package midplate.photo;

import java.util.Random;

/** Draws that depend on a seed and a name only, so that one more draw of one thing changes none of another. */
final class Chance {
    private static final long STEP = 0x9E3779B97F4A7C15L;

    private final long seed;
    private final Random random;

    private Chance(long seed) {
        this.seed = seed;
        this.random = new Random(seed);
    }

    static Chance of(long seed) {
        return new Chance(seed * STEP);
    }

    /** Draws of their own for a thing of this name. */
    Chance of(String name) {
        return new Chance((seed ^ name.hashCode()) * STEP);
    }

    double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** Evenly in the logarithm. */
    double evenlyInLog(double least, double most) {
        return least * Math.pow(most / least, random.nextDouble());
    }

    double normal(double deviation) {
        return deviation * random.nextGaussian();
    }

    boolean happens(double share) {
        return random.nextDouble() < share;
    }

    int count(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    double sign() {
        return random.nextBoolean() ? 1 : -1;
    }

    @SafeVarargs
    final <T> T any(T... of) {
        return of[random.nextInt(of.length)];
    }

    Noise noise() {
        return new Noise(random.nextLong());
    }

    Unevenness unevenness(double sizeMm) {
        return new Unevenness(random.nextLong(), sizeMm);
    }
}
