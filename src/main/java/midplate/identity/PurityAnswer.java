package midplate.identity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.words.Message;

/**
 * What a plate says of purity; never that something is pure.
 *
 * @param seen how many compounds were seen, by which means
 * @param couldHide what could be there unseen
 * @param amounts what was put on and what of it would have been seen; empty where volume or concentration was not said
 * @param next eluents in which a hidden compound is most likely to show, the likeliest first
 * @param secondWays other ways to look
 * @param warnings what makes the plate say less
 * @param cautions what to mind, the safety data sheet first
 */
public record PurityAnswer(
        Message seen,
        List<Hidden> couldHide,
        Optional<Amounts> amounts,
        List<NextEluent> next,
        List<Message> secondWays,
        List<Message> warnings,
        List<Message> cautions) {
    /** Keeps its own copies. */
    public PurityAnswer {
        couldHide = List.copyOf(couldHide);
        next = List.copyOf(next);
        secondWays = List.copyOf(secondWays);
        warnings = List.copyOf(warnings);
        cautions = List.copyOf(cautions);
    }

    /** How a compound can be there unseen. */
    public enum Kind {
        /** It lies where the spot lies. */
        COINCIDING,
        /** The ways used do not show it. */
        BLIND,
        /** It stays at the start line. */
        BASELINE,
        /** It runs with the front. */
        FRONT,
        /** It leaves the plate before it is looked at. */
        VOLATILE;

        /** The word in answers: {@code coinciding}. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * What could hide.
     *
     * @param kind how
     * @param chance of it for a compound of the kind measured [1], where a model says it
     * @param text in words
     */
    public record Hidden(Kind kind, OptionalDouble chance, Message text) {}

    /**
     * Amounts on the plate.
     *
     * @param appliedUg what was put on [µg]
     * @param leastPercent the least share that would have been seen [%]; empty where no way of looking was said
     * @param text in words
     */
    public record Amounts(double appliedUg, Optional<Shares> leastPercent, Message text) {
        /** One per cent of what was put on [µg]. */
        public double onePercentUg() {
            return appliedUg / 100;
        }
    }

    /**
     * A range of shares, an order of magnitude.
     *
     * @param low for compounds that are seen well [%], at most 100
     * @param high for those that are seen badly [%], at most 100
     */
    public record Shares(double low, double high) {}
}
