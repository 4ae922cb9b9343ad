package midplate.wire;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;
import midplate.words.Language;
import midplate.words.Texts;

/** Solvents in the words of a table: by id, name or abbreviation, in any language; two of them in one text. */
final class SolventWords {
    private static final Pattern BETWEEN =
            Pattern.compile("\\s*[/:+\\u2013\\u2014|]\\s*|\\s+(?:with|and|mit|und|-)\\s+|-");
    private static final Pattern SHARE_OF = Pattern.compile(
            "(?iu)%|\\b(?:vol|v/v|v|percent|percentage|prozent|anteil|share|of|an|von)\\b\\.?|[()\\[\\]]");
    private static final Pattern SAYS_SHARE = Pattern.compile("(?iu).*(?:%|percent|prozent|anteil|share).*");
    private static final Pattern INSIDE = Pattern.compile("(?iu)\\s+in\\s+");

    /** No header is as long; what is looked for here takes time that grows with the square of a run of blanks. */
    private static final int LONGEST = 200;

    /** What German laboratories write on their bottles. */
    private static final Map<String, String> SHORT = Map.of(
            "ee",
            "ethyl-acetate",
            "essigester",
            "ethyl-acetate",
            "essigsäureethylester",
            "ethyl-acetate",
            "petrolether",
            "petroleum-ether-40-60",
            "ether",
            "diethyl-ether");

    /** Names have hyphens and commas, but not more than that. */
    private static final int MOST_STROKES = 20;

    private final SolventCatalogue catalogue;
    private final Map<String, Solvent> said = new HashMap<>();

    SolventWords(SolventCatalogue catalogue) {
        this.catalogue = catalogue;
        SHORT.forEach((word, id) -> catalogue.find(id).ifPresent(solvent -> said.put(word, solvent)));
        for (Texts texts : Arrays.stream(Language.values()).map(Texts::of).toList()) {
            for (Solvent solvent : catalogue.solvents()) {
                said.putIfAbsent(texts.render(solvent.said()).toLowerCase(Locale.ROOT), solvent);
            }
        }
    }

    /** Two solvents as they stand one after the other. */
    record Two(Solvent first, Solvent second) {}

    /** A solvent. */
    Optional<Solvent> find(String words) {
        String plain = words.strip();
        return catalogue.find(plain).or(() -> Optional.ofNullable(said.get(plain.toLowerCase(Locale.ROOT))));
    }

    /** The solvent; a refusal with the nearest names where there is none. */
    Solvent solvent(RunColumn column, String words) {
        return find(words).orElseGet(() -> catalogue.solventIn(column.id(), words));
    }

    /** Two solvents with a stroke, a colon or a word between them. */
    Optional<Two> two(String words) {
        Matcher between = BETWEEN.matcher(words);
        for (int i = 0; i < MOST_STROKES && between.find(); i++) {
            Optional<Solvent> first = find(words.substring(0, between.start()));
            Optional<Solvent> second = find(words.substring(between.end()));
            if (first.isPresent() && second.isPresent()) {
                return Optional.of(new Two(first.get(), second.get()));
            }
        }
        return Optional.empty();
    }

    /** The two solvents whose ratio a header says its cells hold: {@code hexane/EtOAc}, {@code Laufmittel (PE:EE)}, {@code % EtOAc/Hex}. */
    Optional<Two> pairIn(String header) {
        if (header.length() > LONGEST) {
            return Optional.empty();
        }
        String line = header.replace('[', '(').replace(']', ')').strip();
        int open = line.indexOf('(');
        int close = line.indexOf(')', open + 1);
        String inside = open >= 0 && close > open ? line.substring(open + 1, close) : "";
        String outside = open > 0 ? line.substring(0, open) : line;
        String rest = outside.substring(outside.indexOf(' ') + 1);
        return Stream.of(outside, rest, inside)
                .flatMap(text -> two(text).stream())
                .findFirst();
    }

    /** The solvents whose share a header tells: {@code % EtOAc}, {@code EtOAc in hexane (vol%)}; the strong one first. */
    List<Solvent> shared(String header) {
        if (header.length() > LONGEST || !SAYS_SHARE.matcher(header).matches()) {
            return List.of();
        }
        String[] names = INSIDE.split(SHARE_OF.matcher(header).replaceAll(" ").strip(), 2);
        List<Solvent> found =
                Arrays.stream(names).flatMap(name -> find(name).stream()).toList();
        return found.size() == names.length ? found : List.of();
    }
}
