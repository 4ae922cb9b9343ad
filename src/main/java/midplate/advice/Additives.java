package midplate.advice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.Streaker;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Solvent;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * What to add to the eluent for spots whose structure tends to streak on silica; common practice, no source. An eluent with an
 * additive is a system of its own: plates with and without it are never counted together ({@link UsedRuns}). For a zwitterion and
 * for what stays an ion nothing is to be added: against these neither acid nor base helps.
 */
final class Additives {
    /** A hydroxyl that holds on to a neighbour in its own molecule hardly streaks. */
    private static final String HELD_INSIDE = "inner-h-bond";

    private static final String PHENOL = "phenol";
    private static final String METHANOL = "methanol";
    /** A charge that no proton takes away. */
    private static final String ION = "onium-ion";
    /** Acids that are no {@link Streaker} of their own, but make a zwitterion with an amine. */
    private static final List<String> STRONG_ACIDS = List.of("sulfonic-acid", "phosphonic-acid");

    private static final Set<Streaker.Kind> WEAK = Set.of(Streaker.Kind.WEAK_ACID, Streaker.Kind.WEAK_BASE);

    private static final String AMMONIA = "ammonia";
    /** How to handle what is added. */
    private static final Map<String, Message> HANDLING = Map.of(
            "acetic-acid",
            Message.of("advice.handle-acetic-acid"),
            "triethylamine",
            Message.of("advice.handle-triethylamine"),
            AMMONIA,
            Message.of("advice.handle-ammonia"));

    private final Question question;
    private final List<Streaker> streakers;

    Additives(Question question, SolventCatalogue catalogue) {
        this.question = question;
        this.streakers = catalogue.streakers();
    }

    /**
     * One note for each kind of streaking, with the spots it is about, none where an additive is in the eluent already; then
     * what is true of every additive, and how to handle each, once. One for each zwitterion.
     */
    List<Message> notes() {
        List<Message> zwitterions = new ArrayList<>();
        Map<Streaker.Kind, Set<String>> spots = new EnumMap<>(Streaker.Kind.class);
        Map<Streaker.Kind, Streaker> found = new EnumMap<>(Streaker.Kind.class);
        for (String spot : question.spots()) {
            GroupCounts counts = question.structures().get(spot);
            if (counts == null || counts.of(ION) > 0) {
                continue;
            }
            Map<Streaker.Kind, Streaker> kinds = kinds(counts);
            if (isZwitterion(counts)) {
                zwitterions.add(Message.of("note.of-spot", "spot", spot, "note", Message.of("structure.zwitterion")));
                continue;
            }
            kinds.forEach((kind, streaker) -> {
                spots.computeIfAbsent(kind, any -> new LinkedHashSet<>()).add(spot);
                found.put(kind, streaker);
            });
        }
        List<Message> all = new ArrayList<>(zwitterions);
        if (question.additive().isEmpty()) {
            Set<String> named = new LinkedHashSet<>();
            found.forEach((kind, streaker) -> all.add(note(kind, spots.getOrDefault(kind, Set.of()), streaker, named)));
            both(spots).ifPresent(all::add);
            if (!named.isEmpty()) {
                all.add(Message.of("advice.additive-system"));
            }
            named.stream().map(HANDLING::get).filter(Objects::nonNull).forEach(all::add);
        }
        return all;
    }

    private boolean isZwitterion(GroupCounts counts) {
        Map<Streaker.Kind, Streaker> kinds = kinds(counts);
        boolean acid =
                kinds.containsKey(Streaker.Kind.ACID) || STRONG_ACIDS.stream().anyMatch(id -> counts.of(id) > 0);
        return acid && kinds.containsKey(Streaker.Kind.BASE);
    }

    /** Whether an acid or a base in the eluent may help a spot to climb; also where nothing is known of it. */
    boolean mayHelp(String spot) {
        GroupCounts counts = question.structures().get(spot);
        return counts == null
                || !isIon(spot)
                        && (STRONG_ACIDS.stream().anyMatch(id -> counts.of(id) > 0)
                                || kinds(counts).values().stream()
                                        .anyMatch(streaker -> streaker.help().isPresent()));
    }

    /** Whether a spot is an ion, or acid and base in one. */
    boolean isIon(String spot) {
        GroupCounts counts = question.structures().get(spot);
        return counts != null && (counts.of(ION) > 0 || isZwitterion(counts));
    }

    /** How a compound streaks; a weak reason is not told beside a strong one. */
    private Map<Streaker.Kind, Streaker> kinds(GroupCounts counts) {
        Map<Streaker.Kind, Streaker> kinds = new EnumMap<>(Streaker.Kind.class);
        for (Streaker streaker : streakers) {
            boolean held = streaker.group().equals(PHENOL) && counts.of(HELD_INSIDE) >= counts.of(PHENOL);
            if (counts.of(streaker.group()) > 0 && !held) {
                kinds.putIfAbsent(streaker.kind(), streaker);
            }
        }
        if (kinds.containsKey(Streaker.Kind.ACID) || kinds.containsKey(Streaker.Kind.BASE)) {
            kinds.keySet().removeAll(WEAK);
        }
        return kinds;
    }

    /** What to add for some spots; what that is goes to those named. */
    private Message note(Streaker.Kind kind, Set<String> spots, Streaker streaker, Set<String> named) {
        Message names = Allowed.list(spots.stream().map(Additives::name).toList());
        Optional<Streaker.Help> help = streaker.help();
        String key = "advice.streaks-" + kind.id();
        if (help.isEmpty()) {
            return Message.of(key, "spots", names);
        }
        Solvent additive = help.get().additive();
        if (question.wishes().shelf().lacks("additive", additive).isPresent()) {
            return Message.of("advice.streaks-shelf-none", "spots", names);
        }
        boolean told = question.wishes().shelf().isTold();
        if (!told && kind == Streaker.Kind.BASE && question.strong().id().equals(METHANOL)) {
            key += "-methanol";
            named.add(AMMONIA);
        }
        named.add(additive.id());
        return Message.of(
                key,
                "spots",
                names,
                "additive",
                additive.said(),
                "least",
                help.get().leastPercent(),
                "most",
                help.get().mostPercent());
    }

    private static Message name(String spot) {
        return Message.of("allowed.words", "words", spot);
    }

    /** Where one spot wants an acid and another a base. */
    private static Optional<Message> both(Map<Streaker.Kind, Set<String>> spots) {
        boolean acid = spots.containsKey(Streaker.Kind.ACID);
        boolean base = spots.containsKey(Streaker.Kind.BASE);
        return acid && base ? Optional.of(Message.of("advice.streaks-both")) : Optional.empty();
    }
}
