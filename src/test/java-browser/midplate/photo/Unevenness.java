package midplate.photo;

/**
 * A field that wanders smoothly about zero (mostly within −1…1): random values on a lattice, joined smoothly.
 *
 * @param seed which of all such fields
 * @param sizeMm the distance of the lattice's points [mm]
 */
record Unevenness(long seed, double sizeMm) {
    double at(double x, double y) {
        double u = x / sizeMm;
        double v = y / sizeMm;
        double left = Math.floor(u);
        double low = Math.floor(v);
        double a = smooth(u - left);
        double b = smooth(v - low);
        long i = (long) left;
        long j = (long) low;
        double below = value(i, j) * (1 - a) + value(i + 1, j) * a;
        double above = value(i, j + 1) * (1 - a) + value(i + 1, j + 1) * a;
        return below * (1 - b) + above * b;
    }

    private static double smooth(double t) {
        return t * t * (3 - 2 * t);
    }

    private double value(long i, long j) {
        long mixed = seed ^ (i * 0x9E3779B97F4A7C15L) ^ (j * 0xC2B2AE3D27D4EB4FL);
        mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return ((mixed ^ (mixed >>> 31)) >> 11) * 0x1.0p-52;
    }
}
