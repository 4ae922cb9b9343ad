package midplate.identity;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.WayOfSeeing;
import midplate.catalogue.WayOfSeeing.Row;
import midplate.catalogue.WayOfSeeing.Sureness;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.GroupCounts.Detail;
import midplate.words.Message;

/**
 * What one way of seeing does with one compound, from the groups that are known of it.
 *
 * <p>Blind is said only where everything that the way answers to was looked for and not found.
 */
final class Eye {
    /** Groups that a list of functional groups may leave out, as they carry the others. */
    private static final List<String> CARBONS = List.of("aromatic-carbon", "alkene", "alkyne");

    private Eye() {}

    /**
     * What it does, and why.
     *
     * @param sight what it does
     * @param because why
     */
    record Look(Sight sight, Message because) {}

    static Look at(WayOfSeeing way, Optional<GroupCounts> structure) {
        if (structure.isEmpty()) {
            return answering(way, WayOfSeeing.ANY, Sureness.MAY_SHOW)
                    ? new Look(Sight.MAY_SHOW, Message.of("seeing.because-any"))
                    : new Look(Sight.NOT_KNOWN, Message.of("seeing.because-unknown"));
        }
        GroupCounts counts = structure.get();
        return first(way, counts, Sureness.SHOWS)
                .map(row -> new Look(Sight.SHOWS, Message.of("seeing.because-shows", "group", said(row))))
                .or(() -> first(way, counts, Sureness.MAY_SHOW)
                        .map(row -> new Look(
                                Sight.MAY_SHOW,
                                row.group().equals(WayOfSeeing.ANY)
                                        ? Message.of("seeing.because-any")
                                        : Message.of("seeing.because-may", "group", said(row)))))
                .orElseGet(() -> unseen(way, counts));
    }

    /** The first group of the way that is there; one that answers to every compound comes last. */
    private static Optional<Row> first(WayOfSeeing way, GroupCounts counts, Sureness sureness) {
        Stream<Row> named = way.groups().stream()
                .filter(row -> !row.group().equals(WayOfSeeing.ANY))
                .filter(row -> counts.of(row.group()) >= row.least());
        Stream<Row> any = way.groups().stream().filter(row -> row.group().equals(WayOfSeeing.ANY));
        return Stream.concat(named, any)
                .filter(row -> row.sureness() == sureness)
                .findFirst();
    }

    private static boolean answering(WayOfSeeing way, String group, Sureness sureness) {
        return way.groups().stream().anyMatch(row -> row.group().equals(group) && row.sureness() == sureness);
    }

    private static Look unseen(WayOfSeeing way, GroupCounts counts) {
        if (counts.of(FunctionalGroups.UNRECOGNISED) > 0) {
            return new Look(Sight.NOT_KNOWN, Message.of("seeing.because-unrecognised"));
        }
        if (counts.detail() == Detail.CLASS) {
            return new Look(Sight.NOT_KNOWN, Message.of("seeing.because-class"));
        }
        boolean carbonsLeftOut =
                counts.detail() == Detail.GROUPS && CARBONS.stream().allMatch(group -> counts.of(group) == 0);
        if (carbonsLeftOut && way.groups().stream().anyMatch(row -> CARBONS.contains(row.group()))) {
            return new Look(Sight.NOT_KNOWN, Message.of("seeing.because-carbons"));
        }
        return new Look(Sight.BLIND, Message.of("seeing.because-blind"));
    }

    private static Message said(Row row) {
        return WayNames.group(row.group());
    }
}
