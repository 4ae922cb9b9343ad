package midplate.advice;

import midplate.chemistry.FrontMigration;

/**
 * How fast a front climbs, as its velocity coefficient κ in {@code z² = κ·t}, with what the theory leaves open.
 *
 * @param slow at the slowest [mm²/s], above 0
 * @param middle in between [mm²/s]
 * @param fast at the fastest [mm²/s]
 * @see FrontMigration
 */
public record FrontSpeed(double slow, double middle, double fast) {
    /** A coefficient from published figures, widened by what the theory leaves open. */
    static FrontSpeed of(double coefficient) {
        return new FrontSpeed(
                (1 - FrontMigration.UNCERTAINTY) * coefficient,
                coefficient,
                (1 + FrontMigration.UNCERTAINTY) * coefficient);
    }
}
