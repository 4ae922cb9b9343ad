package midplate.inference;

/**
 * A key for a share of the strong solvent [% v/v] in a map. Most shares are short binary fractions, whose own hashes fall on few
 * places; these are spread evenly. Different numbers have different keys: an odd factor loses nothing.
 */
final class ShareKey {
    /** 2⁶⁴ over the golden ratio, made odd. */
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private ShareKey() {}

    static Long of(double percent) {
        return Double.doubleToLongBits(percent) * SPREAD;
    }
}
