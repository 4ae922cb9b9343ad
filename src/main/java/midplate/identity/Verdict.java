package midplate.identity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.words.Message;

/**
 * What the plates say of the sample and one reference.
 *
 * @param reference its name
 * @param outcome the verdict
 * @param inWords the verdict in a sentence
 * @param reasons what it rests on
 * @param gapRf Rf of the sample's spot minus that of the reference, where both were read
 * @param chanceOfOne the chance that one compound would look at least as different as this [1], where it could be worked out
 * @param leastToldApartRf the least difference in Rf that these lanes would have shown in four cases of five [1]
 * @param rf where the sample's spot lies [1], where one was matched
 */
public record Verdict(
        String reference,
        Outcome outcome,
        Message inWords,
        List<Message> reasons,
        Optional<RfRange> gapRf,
        OptionalDouble chanceOfOne,
        OptionalDouble leastToldApartRf,
        OptionalDouble rf) {
    /** Keeps its own copy. */
    public Verdict {
        reasons = List.copyOf(reasons);
    }

    /** What plates can say: never that two samples are one compound. */
    public enum Outcome {
        /** One compound would hardly look so. */
        DIFFERENT,
        /** This eluent does not part them. */
        NOT_TOLD_APART,
        /** The plates do not say. */
        UNDECIDED;

        /** The word in answers: {@code different}, {@code not-told-apart}, {@code undecided}. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
