package midplate.lesson;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What stands on a worksheet, and how many different ones are made. In a code: 5 bits for the questions, 3 for how many, 2 for the pair.
 *
 * @param kinds the questions, in the order of {@link WorksheetKind}, at least one
 * @param variants how many different sheets, 1 to {@value #MOST_VARIANTS}
 * @param pair the two solvents
 */
public record WorksheetChoices(List<WorksheetKind> kinds, int variants, WorksheetPair pair) {
    /** The most sheets of one code. */
    public static final int MOST_VARIANTS = 6;

    private static final int VARIANT_BITS = 3;
    private static final int PAIR_BITS = 2;

    /** Keeps the questions in their order, each once. */
    public WorksheetChoices {
        kinds = Arrays.stream(WorksheetKind.values()).filter(kinds::contains).toList();
        if (kinds.isEmpty() || variants < 1 || variants > MOST_VARIANTS) {
            throw new IllegalArgumentException(kinds + ", variants " + variants);
        }
    }

    /** As a code holds it. */
    public int bits() {
        int questions = 0;
        for (WorksheetKind kind : kinds) {
            questions |= 1 << kind.ordinal();
        }
        return (questions << VARIANT_BITS | variants - 1) << PAIR_BITS | pair.ordinal();
    }

    /** What a code holds; empty where no worksheet is made so. */
    public static Optional<WorksheetChoices> of(int bits) {
        int pair = bits & (1 << PAIR_BITS) - 1;
        int variants = (bits >> PAIR_BITS & (1 << VARIANT_BITS) - 1) + 1;
        int questions = bits >> PAIR_BITS + VARIANT_BITS;
        List<WorksheetKind> kinds = Arrays.stream(WorksheetKind.values())
                .filter(kind -> (questions >> kind.ordinal() & 1) == 1)
                .toList();
        return kinds.isEmpty() || variants > MOST_VARIANTS || pair >= WorksheetPair.values().length
                ? Optional.empty()
                : Optional.of(new WorksheetChoices(kinds, variants, WorksheetPair.values()[pair]));
    }
}
