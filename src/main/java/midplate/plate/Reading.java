package midplate.plate;

import java.util.OptionalDouble;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * One Rf as read on a plate [1].
 *
 * <p>With {@link Limit#NONE} the true value lies near {@code rf}; with {@link Limit#AT_START} it is at most {@code rf},
 * with {@link Limit#AT_FRONT} at least.
 *
 * @param rf the number or the bound [1], in [0, 1]; anything else is refused
 * @param limit whether {@code rf} is a number or a bound
 * @param standardError the ruler's standard error of {@code rf} [1], at least 0, when it was worked out from lengths
 */
public record Reading(double rf, Limit limit, OptionalDouble standardError) {
    /** Refuses an Rf outside [0, 1] and a negative or endless error. */
    public Reading {
        if (!(rf >= 0 && rf <= 1)) {
            throw new Refusal(
                    "rf",
                    Message.of("plate.rf-out-of-range", "rf", rf),
                    Double.toString(rf),
                    Allowed.closed(0, 1),
                    Message.of("todo.divide-distances"));
        }
        if (standardError.isPresent()
                && !(standardError.getAsDouble() >= 0 && Double.isFinite(standardError.getAsDouble()))) {
            throw new Refusal(
                    "standardError",
                    Message.of("plate.error-out-of-range", "error", standardError.getAsDouble()),
                    Double.toString(standardError.getAsDouble()),
                    Allowed.rightOpen("0", "∞"),
                    Message.of("todo.give-error"));
        }
    }

    /** A spot on the start line is told from one that moved above this Rf [1]; common practice, no source. */
    public static final double AT_START_RF = 0.03;
    /** And one at the front below this Rf [1]; common practice, no source. */
    public static final double AT_FRONT_RF = 0.97;

    /**
     * An Rf that a person typed. Exactly 0 or 1, where somebody saw the spot on a line ({@code bench}, {@code class}), is a bound: at most
     * {@value #AT_START_RF}, at least {@value #AT_FRONT_RF}. In {@code automated} it stays the number that it is.
     */
    public static Reading asTyped(double rf, Setting setting) {
        if (setting == Setting.AUTOMATED) {
            return of(rf);
        }
        return rf == 0 ? atStart(AT_START_RF) : rf == 1 ? atFront(AT_FRONT_RF) : of(rf);
    }

    /** An Rf that was given as such, its ruler error unknown. */
    public static Reading of(double rf) {
        return new Reading(rf, Limit.NONE, OptionalDouble.empty());
    }

    /** A spot not visibly off the start line, whose Rf is at most the bound [1]. */
    public static Reading atStart(double bound) {
        return new Reading(bound, Limit.AT_START, OptionalDouble.empty());
    }

    /** A spot not visibly behind the front, whose Rf is at least the bound [1]. */
    public static Reading atFront(double bound) {
        return new Reading(bound, Limit.AT_FRONT, OptionalDouble.empty());
    }
}
