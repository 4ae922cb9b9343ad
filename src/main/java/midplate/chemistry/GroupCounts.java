package midplate.chemistry;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * How often each functional group stands in a compound.
 *
 * @param counts by the id of the group, each at least 1; a group that is not there is left out
 * @param detail how much of the compound was counted
 */
public record GroupCounts(Map<String, Integer> counts, Detail detail) {
    /** How much of a compound was counted. */
    public enum Detail {
        /** Every group and every carbon, as from a structural formula. */
        WHOLE,
        /** The groups, but not how many carbons carry them. */
        GROUPS,
        /** Only which class of compounds it belongs to: other groups may be there. */
        CLASS
    }

    /**
     * Keeps its own copy, sorted by id.
     *
     * @throws IllegalArgumentException when a count is below 1
     */
    public GroupCounts {
        TreeMap<String, Integer> sorted = new TreeMap<>(counts);
        sorted.forEach((group, count) -> {
            if (!(count >= 1)) {
                throw new IllegalArgumentException(group + ": came " + count + "; allowed is 1 or more.");
            }
        });
        counts = Collections.unmodifiableMap(sorted);
    }

    /** How often a group is there; 0 where it is not. */
    public int of(String group) {
        return counts.getOrDefault(group, 0);
    }
}
