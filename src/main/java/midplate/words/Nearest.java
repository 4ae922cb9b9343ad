package midplate.words;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that a slip of the pen probably meant. */
public final class Nearest {
    private static final int SHORT = 3;

    private Nearest() {}

    /** The nearest of the known names; empty when more than a third of the letters (see {@link #slips}) differ. */
    public static Optional<String> to(String came, Collection<String> known) {
        if (came.length() > 100) {
            return Optional.empty();
        }
        String wanted = came.toLowerCase(Locale.ROOT);
        int limit = slips(wanted);
        return known.stream()
                .min(Comparator.comparingInt(name -> distance(wanted, name.toLowerCase(Locale.ROOT))))
                .filter(name -> distance(wanted, name.toLowerCase(Locale.ROOT)) <= limit);
    }

    /** How many letters of a name may differ from a near one: a third, at least two; of three letters one. */
    public static int slips(String name) {
        return name.length() <= SHORT ? Math.max(0, name.length() - 2) : Math.max(2, name.length() / 3);
    }

    /** The edit distance of Levenshtein: the fewest letters to insert, remove or change. */
    public static int distance(String one, String other) {
        int[] above = new int[other.length() + 1];
        Arrays.setAll(above, i -> i);
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[other.length() + 1];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(above[j - 1] + change, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[other.length()];
    }
}
