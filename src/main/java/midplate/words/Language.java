package midplate.words;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A language in which the program speaks; a further one is a constant here and its text files. */
public enum Language {
    /** English, which every door speaks unless it is asked otherwise. */
    ENGLISH("en"),
    /** German. */
    GERMAN("de");

    private final String tag;

    Language(String tag) {
        this.tag = tag;
    }

    /** Its tag, as on the web: {@code en}. */
    public String tag() {
        return tag;
    }

    /** Where its texts are packed with the program. */
    public String file() {
        return "texts/" + tag + ".json";
    }

    /** The language of a tag with or without a region, upper and lower case alike: {@code de}, {@code de-AT}. */
    public static Optional<Language> byTag(String tag) {
        String primary = tag.strip().split("-", 2)[0].toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(language -> language.tag.equals(primary))
                .findFirst();
    }
}
