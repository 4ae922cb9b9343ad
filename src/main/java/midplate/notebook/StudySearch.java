package midplate.notebook;

/**
 * Which studies are to be listed.
 *
 * @param find words that all must occur in the title, the notes, the id or the names of the spots, in large or small letters,
 *     with or without accents; empty for every study
 * @param which those at hand, those put away, or both
 * @param from how many of the newest are left out; not below 0
 * @param most how many are listed at most; not below 0
 */
public record StudySearch(String find, Which which, int from, int most) {
    /** Whether studies put away are meant. */
    public enum Which {
        /** Those that are not put away. */
        AT_HAND,
        /** Those that are. */
        ARCHIVED,
        /** Both. */
        ALL
    }

    /**
     * Within these bounds only.
     *
     * @throws IllegalArgumentException for a negative number
     */
    public StudySearch {
        if (from < 0 || most < 0) {
            throw new IllegalArgumentException("No part of a list: " + from + ", " + most);
        }
    }

    /** Every study there is. */
    public static StudySearch everything() {
        return new StudySearch("", Which.ALL, 0, Integer.MAX_VALUE);
    }
}
