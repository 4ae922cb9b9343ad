package midplate.wire;

/** A text from outside, such as the name of a file, made fit to be quoted: one line, no signs that do something, cut. */
final class ShownText {
    private static final int LONGEST = 80;

    private ShownText() {}

    static String of(String text) {
        return of(text, LONGEST);
    }

    static String of(String text, int longest) {
        StringBuilder shown = new StringBuilder();
        int signs = 0;
        for (int sign : text.codePoints().limit(4L * longest).toArray()) {
            if (signs == longest) {
                return shown.append('…').toString();
            }
            int type = Character.getType(sign);
            boolean acts = Character.isISOControl(sign)
                    || type == Character.FORMAT
                    || type == Character.SURROGATE
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR;
            if (!acts) {
                shown.appendCodePoint(sign);
                signs++;
            } else if (!shown.isEmpty() && shown.charAt(shown.length() - 1) != ' ') {
                shown.append(' ');
                signs++;
            }
        }
        return shown.toString().strip();
    }
}
