package midplate.notebook;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Texts made alike for searching: small letters, no accents, no doubled blanks. */
final class SearchWords {
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    private SearchWords() {}

    /** All that a search looks in of a study. */
    static String of(Study study) {
        Stream<String> texts = Stream.of(study.title(), study.id().value(), study.notes());
        Stream<String> spots = study.spots().stream().map(StudySpot::name);
        Stream<String> compared = study.checks().stream().flatMap(StudyChecks::names);
        return alike(Stream.of(texts, spots, compared).flatMap(each -> each).collect(Collectors.joining(" ")));
    }

    /** Whether all the words that are looked for occur in what {@link #of} gave. */
    static Predicate<String> allOf(String find) {
        List<String> wanted = List.of(alike(find).split(" ", -1));
        return words -> wanted.stream().allMatch(words::contains);
    }

    private static String alike(String text) {
        String plain = ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
                .replaceAll("");
        return BLANKS.matcher(plain.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
    }
}
