package midplate.notebook;

import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The title in a file that no longer reads as a whole: it stands near the beginning, where a torn file is often still good. */
final class TornTitle {
    /** The title is looked for in so many bytes; it comes fifth in the object. */
    private static final int HEAD = 4096;

    private static final int LONGEST = 120;
    /** A quotation mark inside it is written with a backslash; what was torn or has other such signs is not worth guessing at. */
    private static final Pattern TITLE =
            Pattern.compile("\"title\"\\s*:\\s*\"((?:[^\"\\\\\\p{Cntrl}\ufffd]|\\\\[\"\\\\/])*)\"");

    private TornTitle() {}

    /** The title; empty where none can be read. */
    static String in(byte[] file) {
        String head = new String(file, 0, Math.min(HEAD, file.length), StandardCharsets.UTF_8);
        Matcher found = TITLE.matcher(head);
        if (!found.find()) {
            return "";
        }
        String title = found.group(1).replaceAll("\\\\(.)", "$1").strip();
        return title.length() <= LONGEST
                ? title
                : title.substring(0, title.offsetByCodePoints(0, title.codePointCount(0, LONGEST))) + "…";
    }
}
