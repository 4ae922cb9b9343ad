package midplate.words;

import java.util.Map;

/**
 * The phrases of the published data in one language: what files of data say in English by the way, such as a note or the
 * place in a publication.
 *
 * <p>A file of phrases is one flat JSON object from the English phrase to its translation. A phrase that is not in it, as of
 * a file that somebody brought, stays as it is.
 */
public final class Phrases {
    private final Map<String, String> translations;

    private Phrases(Map<String, String> translations) {
        this.translations = Map.copyOf(translations);
    }

    /**
     * The phrases of a language, as packed with the program.
     *
     * @throws IllegalStateException when the file is missing or cannot be read
     */
    public static Phrases of(Language language) {
        if (language == Language.ENGLISH) {
            return new Phrases(Map.of());
        }
        String file = "texts/phrases." + language.tag() + ".json";
        return new Phrases(FlatJson.read(file, Texts.read(file)));
    }

    /** A phrase in this language. */
    public String said(String english) {
        return translations.getOrDefault(english, english);
    }
}
