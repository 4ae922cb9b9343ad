package midplate.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.Streaker;
import midplate.chemistry.Solvent;

/** Which pairs may take the place of the one asked about: all that the shelf makes, or, where none was told, the usual ones. */
final class PairsToOffer {
    /** So many are worked out; of more that a shelf makes, those that reach the strength and matter most to the order asked for. */
    static final int MOST = 12;

    private static final String HEXANE = "hexane";
    private static final String HEPTANE = "heptane";
    /** Beside the measured ones: pairs in daily use, weak and strong; common practice, no source. */
    private static final List<List<String>> USUAL = List.of(
            List.of("toluene", "ethyl-acetate"),
            List.of(HEXANE, "acetone"),
            List.of(HEXANE, "methyl-tert-butyl-ether"),
            List.of(HEXANE, "dichloromethane"),
            List.of("dichloromethane", "ethyl-acetate"),
            List.of(HEPTANE, "ethyl-acetate-ethanol-3-1"));

    private final Question question;
    private final PairChoice choice;
    private final SolventCatalogue catalogue;
    private final SolventFlags flags;
    private final OtherRank rank;

    PairsToOffer(Question question, PairChoice choice, SolventCatalogue catalogue, OtherRank rank) {
        this.question = question;
        this.choice = choice;
        this.catalogue = catalogue;
        this.flags = new SolventFlags(catalogue);
        this.rank = rank;
    }

    /** Two solvents as they stand on the shelf, and the pair of which there is a model that stands for them. */
    record Offered(Solvent weak, Solvent strong, PlatePair pair) {}

    /** Those offered, never the pair asked about. */
    List<Offered> all() {
        Shelf shelf = question.wishes().shelf();
        List<Offered> all = shelf.isTold() ? ofShelf(shelf.solvents()) : usual();
        all.removeIf(
                pair -> pair.weak().equals(question.weak()) && pair.strong().equals(question.strong()));
        return all;
    }

    private List<Offered> ofShelf(List<Solvent> shelf) {
        Set<Solvent> additives = catalogue.streakers().stream()
                .flatMap(streaker -> streaker.help().stream())
                .map(Streaker.Help::additive)
                .collect(Collectors.toSet());
        List<Offered> all = new ArrayList<>();
        for (int i = 0; i < shelf.size(); i++) {
            for (int j = i + 1; j < shelf.size(); j++) {
                if (!additives.contains(shelf.get(i)) && !additives.contains(shelf.get(j))) {
                    int before = all.size();
                    offer(shelf.get(i), shelf.get(j), all);
                    if (all.size() == before) {
                        offer(shelf.get(j), shelf.get(i), all);
                    }
                }
            }
        }
        all.sort(worthWorkingOut());
        return all;
    }

    /** What can be told of a pair before anything is worked out for it. */
    private Comparator<Offered> worthWorkingOut() {
        Comparator<Offered> basis = Comparator.comparing(pair -> pair.pair().basis());
        return switch (rank) {
            case SAFETY ->
                Comparator.comparing((Offered pair) -> OtherRanking.concern(flags.of(pair.weak(), pair.strong())))
                        .thenComparing(basis);
            case DRYING ->
                Comparator.comparingDouble((Offered pair) ->
                                flags.boilingPoint(pair.weak(), pair.strong()).orElse(Double.POSITIVE_INFINITY))
                        .thenComparing(basis);
            case APART, MEASURED -> basis;
        };
    }

    /** An alkane asked about, or wished for safety, takes the place of hexane. */
    private List<Offered> usual() {
        Set<List<Solvent>> names = new LinkedHashSet<>();
        choice.measured().forEach(pair -> names.add(List.of(alkane(pair.weak()), pair.strong())));
        USUAL.forEach(
                pair -> names.add(List.of(alkane(catalogue.solvent(pair.get(0))), catalogue.solvent(pair.get(1)))));
        List<Offered> all = new ArrayList<>();
        names.forEach(pair -> offer(pair.get(0), pair.get(1), all));
        return all;
    }

    private Solvent alkane(Solvent solvent) {
        if (!solvent.id().equals(HEXANE)) {
            return solvent;
        }
        if (rank == OtherRank.SAFETY) {
            return catalogue.solvent(HEPTANE);
        }
        return choice.standard(question.weak()).equals(solvent) ? question.weak() : solvent;
    }

    private void offer(Solvent weak, Solvent strong, List<Offered> all) {
        if (choice.allows(question.sorbent(), weak, strong)) {
            choice.find(question.sorbent(), weak, strong).ifPresent(pair -> all.add(new Offered(weak, strong, pair)));
        }
    }
}
