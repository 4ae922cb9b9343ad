package midplate.words;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Finds English that was left in a text of another language, by the small words that no English sentence does without. */
public final class EnglishWords {
    /** None of these is a word of German too, as "in", "so", "an", "am", "war", "was", "die", "also", "will" are. */
    private static final Set<String> SMALL = Set.of(
            "the",
            "of",
            "and",
            "with",
            "from",
            "is",
            "are",
            "for",
            "to",
            "or",
            "that",
            "this",
            "these",
            "those",
            "than",
            "it",
            "its",
            "be",
            "by",
            "as",
            "at",
            "on",
            "if",
            "not",
            "no",
            "which",
            "where",
            "when",
            "how",
            "each",
            "every",
            "you",
            "your",
            "both",
            "between",
            "only",
            "but",
            "they",
            "them",
            "have",
            "has",
            "does",
            "do",
            "can",
            "cannot",
            "may",
            "should",
            "would",
            "there",
            "here",
            "about",
            "above",
            "below",
            "into",
            "out",
            "more",
            "most",
            "less",
            "without",
            "one",
            "two",
            "any",
            "other",
            "same",
            "give",
            "take",
            "leave",
            "name",
            "spot",
            "spots",
            "plate",
            "plates",
            "solvent",
            "solvents",
            "silica",
            "eluent",
            "strength",
            "reading",
            "readings");

    /** The words of requests, which are the same in every language, and German words written alike. */
    private static final Set<String> ALIKE = Set.of("name");

    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{Nd}-]+");

    private EnglishWords() {}

    /** The first such word of a text; its places for values do not count. */
    public static Optional<String> in(String text) {
        String plain = text.replaceAll("\\{[^}]*}", " ").toLowerCase(Locale.ROOT);
        return BETWEEN.splitAsStream(plain)
                .filter(word -> SMALL.contains(word) && !ALIKE.contains(word))
                .findFirst();
    }
}
