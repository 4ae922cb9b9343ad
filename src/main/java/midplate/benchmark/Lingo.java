package midplate.benchmark;

import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The substrings of four characters of a SMILES, overlapping, with how often each occurs. Digits that close rings are set
 * to 0 first, for their numbers are arbitrary; digits in brackets (isotopes, charges, hydrogens) stay. A SMILES shorter than
 * four characters is its own only substring.
 *
 * @see "VidalThormannPons2005"
 */
final class Lingo {
    private static final int LENGTH = 4;

    private final Map<String, Integer> counts;

    private Lingo(Map<String, Integer> counts) {
        this.counts = counts;
    }

    static Lingo of(String smiles) {
        String text = withoutRingNumbers(smiles);
        Map<String, Integer> counts = new TreeMap<>();
        int last = Math.max(0, text.length() - LENGTH);
        for (int start = 0; start <= last; start++) {
            counts.merge(text.substring(start, Math.min(text.length(), start + LENGTH)), 1, Integer::sum);
        }
        return new Lingo(counts);
    }

    private static String withoutRingNumbers(String smiles) {
        StringBuilder text = new StringBuilder();
        boolean inBrackets = false;
        for (int i = 0; i < smiles.length(); i++) {
            char c = smiles.charAt(i);
            inBrackets = c == '[' || (inBrackets && c != ']');
            text.append(!inBrackets && c >= '0' && c <= '9' ? '0' : c);
        }
        return text.toString();
    }

    /**
     * How alike two structures are [1], 0 to 1: {@code (1/l)·Σ (1 − |a_i − b_i|/(a_i + b_i))} over the l substrings that occur in
     * either, a_i and b_i how often each occurs. It is the Tanimoto coefficient of the two sets where no substring repeats.
     */
    double similarity(Lingo other) {
        TreeSet<String> either = new TreeSet<>(counts.keySet());
        either.addAll(other.counts.keySet());
        double sum = 0;
        for (String substring : either) {
            double a = counts.getOrDefault(substring, 0);
            double b = other.counts.getOrDefault(substring, 0);
            sum += 1 - Math.abs(a - b) / (a + b);
        }
        return sum / either.size();
    }
}
