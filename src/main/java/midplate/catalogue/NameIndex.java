package midplate.catalogue;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import midplate.chemistry.Solvent;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Nearest;
import midplate.words.Refusal;

/** Finds a solvent by whatever a chemist calls it, and offers the nearest names to a slip of the pen. */
final class NameIndex {
    private static final int OFFERED = 3;
    private static final Pattern BLANKS = Pattern.compile("[\\s_\\-\\u2010-\\u2015]+");

    private final Map<String, Solvent> byName = new LinkedHashMap<>();
    private final Collection<Solvent> solvents;

    NameIndex(Collection<Solvent> solvents) {
        this.solvents = solvents;
        for (Solvent solvent : solvents) {
            names(solvent).forEach(name -> byName.putIfAbsent(plain(name), solvent));
        }
    }

    /** A name with what does not matter taken away: case, blanks at the ends, hyphens against blanks. */
    static String plain(String name) {
        return BLANKS.matcher(name.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
    }

    Optional<Solvent> find(String name) {
        Solvent asWritten = byName.get(name); // nearly all requests write it plainly
        return Optional.ofNullable(asWritten != null ? asWritten : byName.get(plain(name)));
    }

    /** The refusal of a name that no solvent has. */
    Refusal unknown(String field, String name) {
        List<Message> near = nearest(name);
        Message todo = near.isEmpty()
                ? Message.of("todo.take-from-list")
                : Message.of("todo.did-you-mean", "name", Allowed.either(near));
        Message allowed = Allowed.list(solvents.stream().map(Solvent::said).toList());
        return new Refusal(field, Message.of("catalogue.unknown-solvent", "came", name), name, allowed, todo);
    }

    /** Up to three solvents one of whose names is near: at most a third of its letters differ, two for short ones. */
    private List<Message> nearest(String name) {
        String wanted = plain(name);
        int limit = Nearest.slips(wanted);
        ToIntFunction<Solvent> distance = solvent -> names(solvent)
                .mapToInt(known -> Nearest.distance(wanted, plain(known)))
                .min()
                .orElseThrow();
        return solvents.stream()
                .filter(solvent -> distance.applyAsInt(solvent) <= limit)
                .sorted(Comparator.comparingInt(distance))
                .limit(OFFERED)
                .map(Solvent::said)
                .toList();
    }

    private static Stream<String> names(Solvent solvent) {
        return Stream.concat(Stream.of(solvent.id(), solvent.name()), solvent.synonyms().stream());
    }
}
