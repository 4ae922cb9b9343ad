package midplate.column;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.Streaker;
import midplate.chemistry.GroupCounts;
import midplate.words.Allowed;
import midplate.words.Message;

/** What the structures of the spots say of their lot on silica; common practice, no source. */
final class SampleWarnings {
    /** Groups that the acid silica may cleave or change. */
    private static final Set<String> ACID_SENSITIVE =
            Set.of("acetal", "silyl-ether", "epoxide", "boronic-ester", "enol");
    /** Groups that water and silica take apart. */
    private static final Set<String> REACTIVE = Set.of("acyl-halide", "anhydride", "isocyanate", "sulfonyl-chloride");

    private static final Set<Streaker.Kind> STRONG =
            Set.of(Streaker.Kind.ACID, Streaker.Kind.BASE, Streaker.Kind.CHELATOR, Streaker.Kind.ACCEPTOR);

    private final ColumnQuestion question;
    private final SolventCatalogue catalogue;

    SampleWarnings(ColumnQuestion question, SolventCatalogue catalogue) {
        this.question = question;
        this.catalogue = catalogue;
    }

    List<Message> all() {
        List<Message> all = new ArrayList<>();
        streaks(all);
        List<String> sensitive = spots(counts -> ACID_SENSITIVE.stream().anyMatch(group -> counts.of(group) > 0));
        if (!sensitive.isEmpty()) {
            all.add(Message.of("column.acid-sensitive", "spots", names(sensitive)));
        }
        List<String> reactive = spots(counts -> REACTIVE.stream().anyMatch(group -> counts.of(group) > 0));
        if (!reactive.isEmpty()) {
            all.add(Message.of("column.reacts", "spots", names(reactive)));
        }
        return all;
    }

    private void streaks(List<Message> all) {
        Set<String> helped = new LinkedHashSet<>();
        Set<String> unhelped = new LinkedHashSet<>();
        for (Streaker streaker : catalogue.streakers()) {
            if (STRONG.contains(streaker.kind())) {
                Set<String> found = streaker.help().isPresent() ? helped : unhelped;
                found.addAll(spots(counts -> counts.of(streaker.group()) > 0));
            }
        }
        unhelped.removeAll(helped);
        if (!helped.isEmpty() && question.sample().additive().isEmpty()) {
            all.add(Message.of("column.streaks", "spots", names(List.copyOf(helped))));
        }
        if (!unhelped.isEmpty()) {
            all.add(Message.of("column.streaks-anyway", "spots", names(List.copyOf(unhelped))));
        }
    }

    private List<String> spots(Predicate<GroupCounts> wanted) {
        return question.sample().spots().stream()
                .filter(spot -> {
                    GroupCounts counts = question.sample().structures().get(spot);
                    return counts != null && wanted.test(counts);
                })
                .toList();
    }

    private static Message names(List<String> spots) {
        return Allowed.list(spots.stream().map(Allowed::words).toList());
    }
}
