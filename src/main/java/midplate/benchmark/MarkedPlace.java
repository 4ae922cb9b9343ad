package midplate.benchmark;

/** The place of the tables in a document: between two marks, which stay. */
final class MarkedPlace {
    /** The line above the tables. */
    static final String BEGIN = "<!-- accuracy:begin -->";
    /** The line below the tables. */
    static final String END = "<!-- accuracy:end -->";

    private MarkedPlace() {}

    /**
     * A document with these tables between the two marks.
     *
     * @throws IllegalArgumentException when the marks are not there once each, in their order
     */
    static String placed(String document, String tables) {
        int begin = once(document, BEGIN) + BEGIN.length();
        int end = once(document, END);
        if (end < begin) {
            throw new IllegalArgumentException(END + " stands before " + BEGIN + "; swap them.");
        }
        return document.substring(0, begin) + "\n" + tables + document.substring(end);
    }

    /** What stands between the two marks of a document. */
    static String found(String document) {
        int begin = once(document, BEGIN) + BEGIN.length();
        int end = once(document, END);
        return document.substring(Math.min(begin, end), end).strip() + "\n";
    }

    private static int once(String document, String mark) {
        int at = document.indexOf(mark);
        if (at < 0 || document.indexOf(mark, at + 1) >= 0) {
            throw new IllegalArgumentException("The document must hold " + mark + " exactly once; add or remove it.");
        }
        return at;
    }
}
