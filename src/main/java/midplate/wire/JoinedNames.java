package midplate.wire;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Several names in one cell: {@code A + B}. A plus sign between blanks that belongs to a name is doubled, so that every name comes back
 * as it was, up to blanks at its ends.
 */
final class JoinedNames {
    private static final String BETWEEN = " + ";
    /** Plus signs that stand alone: between blanks or the ends of the name. */
    private static final Pattern ALONE = Pattern.compile("(?<=^| )(\\++)(?= |$)");

    private static final Pattern DOUBLED = Pattern.compile("(?<=^| )\\+(\\++)(?= |$)");

    private JoinedNames() {}

    static String joined(List<String> names) {
        return names.stream()
                .map(name -> ALONE.matcher(name.strip()).replaceAll("+$1"))
                .collect(Collectors.joining(BETWEEN));
    }

    static List<String> split(String cell) {
        return Arrays.stream(cell.split(Pattern.quote(BETWEEN), -1))
                .map(name -> DOUBLED.matcher(name.strip()).replaceAll("$1").strip())
                .filter(name -> !name.isEmpty())
                .toList();
    }
}
