package midplate.wire;

import java.util.List;
import java.util.regex.Pattern;
import midplate.catalogue.PublishedValue;
import midplate.words.Allowed;
import midplate.words.Language;
import midplate.words.Phrases;
import midplate.words.Texts;

/**
 * How one language is spoken: its texts, and the phrases of the published data in it.
 *
 * @param language which
 * @param texts its texts
 * @param phrases its phrases
 */
record Speech(Language language, Texts texts, Phrases phrases) {
    /** Before the reason: whether a value is taken among several. Programs read these words. */
    private static final List<String> USES = List.of("preferred: ", "kept: ");
    /** Properties whose values are words for programs. */
    private static final List<String> CODES = List.of("localization_class", "selectivity_group", "hazard_statements");

    private static final Pattern FIGURE = Pattern.compile("(?<=\\()\\d+\\.\\d+(?=\\))");

    /** As packed with the program. */
    static Speech in(Language language) {
        return new Speech(language, Texts.of(language), Phrases.of(language));
    }

    /** A phrase in this language. */
    String said(String phrase) {
        return phrases.said(phrase);
    }

    /** The value as printed; a word in this language. */
    String value(PublishedValue value) {
        return CODES.contains(value.property()) ? value.value() : said(value.value());
    }

    /** The reason in this language behind the word for programs. */
    String use(String use) {
        return USES.stream()
                .filter(use::startsWith)
                .findFirst()
                .map(word -> word + said(use.substring(word.length())))
                .orElse(use);
    }

    /** What comes before a colon in this language, and after it a list with figures in brackets. */
    String listed(String listed) {
        int colon = listed.indexOf(": ");
        if (colon < 0) {
            return said(listed);
        }
        String list = FIGURE.matcher(listed.substring(colon))
                .replaceAll(figure -> texts.render(Allowed.figure(figure.group())));
        return said(listed.substring(0, colon)) + list;
    }
}
