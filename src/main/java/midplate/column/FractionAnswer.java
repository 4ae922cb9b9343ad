package midplate.column;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.words.Message;

/**
 * Which tubes to pour together, and what the run says.
 *
 * @param pools every tube in one of them, in order
 * @param balance what the flasks hold; absent without flasks
 * @param observed where each compound left, as far as both ends were seen
 * @param warnings what does not fit together
 * @param notes what to know beside it
 */
public record FractionAnswer(
        List<Pool> pools,
        Optional<Balance> balance,
        List<SeenBand> observed,
        List<Message> warnings,
        List<Message> notes) {
    /** Keeps its own copies. */
    public FractionAnswer {
        pools = List.copyOf(pools);
        observed = List.copyOf(observed);
        warnings = List.copyOf(warnings);
        notes = List.copyOf(notes);
    }

    /** What a pool holds. */
    public enum Kind {
        /** One compound. */
        PURE,
        /** More than one. */
        MIXED,
        /** None. */
        EMPTY,
        /** Nobody looked. */
        UNKNOWN;

        /** The word in answers: {@code pure}. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Neighbouring tubes to pour together.
     *
     * @param kind what is in them
     * @param spots the compounds in them, in the order asked
     * @param fromTube the first, counted from 1
     * @param toTube the last
     * @param volumeMl their volume [ml]
     * @param massMg what the flasks that hold tubes of it alone weigh [mg]; empty where there is none
     * @param reason why
     */
    public record Pool(
            Kind kind,
            List<String> spots,
            int fromTube,
            int toTube,
            double volumeMl,
            OptionalDouble massMg,
            Message reason) {
        /** Keeps its own copy. */
        public Pool {
            spots = List.copyOf(spots);
        }
    }

    /**
     * What was found of what was put on.
     *
     * @param foundMg all flasks together [mg]
     * @param ofLoaded its share of the mass put on [1]
     * @param targetPureMg flasks that hold the target alone [mg]
     * @param text what to think of it
     */
    public record Balance(double foundMg, double ofLoaded, double targetPureMg, Message text) {}

    /**
     * Where a compound left.
     *
     * @param spot its name
     * @param startMl eluent run when it began to leave [ml]
     * @param endMl eluent run when it had left [ml]
     * @param errorMl how far either may be off [ml]
     */
    public record SeenBand(String spot, double startMl, double endMl, double errorMl) {}
}
