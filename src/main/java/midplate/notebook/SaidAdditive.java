package midplate.notebook;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import midplate.words.Language;
import midplate.words.Message;
import midplate.words.Texts;

/** What was added to an eluent, in words and back: advices and tables keep the words, in whatever language; plates keep the id. */
public final class SaidAdditive {
    private static final String KEY = "page.additive-";
    private static final String NONE = "none";
    private static final String OWN = "own";
    private static final List<Texts> SPOKEN =
            Arrays.stream(Language.values()).map(Texts::of).toList();
    /** Those against streaking: solvents that have words as an additive, too. */
    private static final List<String> KINDS = SPOKEN.get(0).keys().stream()
            .filter(key -> key.startsWith(KEY))
            .map(key -> key.substring(KEY.length()))
            .filter(kind -> SPOKEN.get(0).keys().contains("solvent." + kind))
            .toList();

    private SaidAdditive() {}

    /** In the words of a language; empty where nothing is added. */
    public static String words(JarAdditive additive, Texts texts) {
        return switch (additive.kind()) {
            case NONE -> "";
            case OWN -> additive.text().strip();
            default ->
                KINDS.contains(additive.kind()) ? texts.render(Message.of(KEY + additive.kind())) : additive.kind();
        };
    }

    /** The additive of these words, known where they name it in any language. */
    public static JarAdditive of(String words) {
        String said = plain(words);
        if (said.isEmpty() || isSaid(NONE, said)) {
            return JarAdditive.NONE;
        }
        return KINDS.stream()
                .filter(kind -> isSaid(kind, said))
                .findFirst()
                .map(kind -> new JarAdditive(kind, ""))
                .orElseGet(() -> new JarAdditive(OWN, words.strip()));
    }

    /** Whether a plate was run with what an advice added; upper and lower case, blanks, point and comma alike. */
    static boolean same(JarAdditive additive, String words) {
        boolean inOwnWords = additive.kind().equals(OWN) && !additive.text().isBlank();
        JarAdditive one = inOwnWords ? of(additive.text()) : additive;
        JarAdditive other = of(words);
        return one.kind().equals(other.kind())
                && (!one.kind().equals(OWN) || plain(one.text()).equals(plain(other.text())));
    }

    private static boolean isSaid(String kind, String said) {
        return plain(kind).equals(said)
                || SPOKEN.stream()
                        .anyMatch(texts ->
                                plain(texts.render(Message.of(KEY + kind))).equals(said));
    }

    private static String plain(String words) {
        return words.toLowerCase(Locale.ROOT).replace(',', '.').replaceAll("[\\s\\u00a0]+", "");
    }
}
