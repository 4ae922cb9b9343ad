package midplate.inference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import midplate.chemistry.GroupCounts;
import org.jspecify.annotations.Nullable;

/** What is thought of a spot before it was read in a pair: from its structure, from plates in other pairs, or from what compounds are like. */
final class SpotPriors {
    /** So many readings are kept with what is known of their spot, and so many with what they say about another pair; one of both up to 400 kB. */
    private static final int MOST_KEPT = 2048;
    /** One is kept for so much memory that the program may take, which is a sixth of it at most for all together [bytes]. */
    private static final long BYTES_EACH = 3L << 20;

    private final PairBook book;
    private final AcrossPairs across;
    private final KeptLatest<Known, TraitPrior> known = new KeptLatest<>(fitting());
    private final KeptLatest<Spot, TraitCloud> clouds = new KeptLatest<>(fitting());
    private final KeptLatest<ReadElsewhere, Elsewhere> priors = new KeptLatest<>(fitting());

    /** All that decides what is known of a spot where plates have no error of their own. */
    private record Spot(String pair, PlateScatter scatter, List<Trial> trials, TraitPrior prior) {}

    /** All that decides what readings in other pairs say about one. */
    private record ReadElsewhere(
            String pair, double shared, PlateScatter scatter, List<Told> told, Optional<GroupCounts> compound) {}

    /** The readings of a spot in one pair. */
    private record Told(String pair, List<Trial> trials, TraitPrior before) {}

    /** A compound in a pair; of none it is what compounds are like. */
    private record Known(String pair, double shared, Optional<GroupCounts> counts) {}

    private record Elsewhere(TraitPrior prior, double varianceC) {
        static Elsewhere of(TraitPrior prior) {
            return new Elsewhere(prior, prior.varianceC());
        }
    }

    SpotPriors(PairBook book, AcrossPairs across) {
        this.book = book;
        this.across = across;
    }

    /** How many are kept: in a long batch the same readings come again late. */
    private static int fitting() {
        return (int) Math.min(MOST_KEPT, Runtime.getRuntime().maxMemory() / BYTES_EACH);
    }

    /** What is known of one spot where plates have no error of their own; the same readings come again. */
    TraitCloud cloud(PairModel model, PlateScatter scatter, List<Trial> trials, TraitPrior prior) {
        List<Trial> sorted = PlateRuns.onAnyPlate(trials);
        return clouds.get(
                new Spot(model.id(), scatter, sorted, prior),
                () -> SpotEvidence.of(model, scatter, sorted, prior).cloud());
    }

    /** What the other pairs say in which some spots were seen without a label, each by itself. */
    Map<String, Knowledge> matchedElsewhere(
            String pair, PlateScatter scatter, List<String> spots, PlateRuns runs, Map<String, GroupCounts> compounds) {
        Map<String, Knowledge> matched = new LinkedHashMap<>();
        for (String other : others(pair, runs)) {
            List<PlateRun> sorted = runs.in(other, spots);
            if (PlateRuns.anyUnlabelled(sorted)) {
                PairModel from = book.model(other);
                matched.put(
                        other,
                        MatchedKnowledge.from(
                                from,
                                scatter.unshared(),
                                spots,
                                sorted,
                                spots.stream()
                                        .map(spot -> PlateRuns.trials(spot, sorted))
                                        .toList(),
                                spots.stream()
                                        .map(spot -> unread(book.place(other), spot, compounds))
                                        .toList()));
            }
        }
        return matched;
    }

    /** The other pairs with plates that say something about one. */
    private List<String> others(String pair, PlateRuns runs) {
        return runs.pairsBeside(pair).stream()
                .filter(other -> across.isLinked(book.place(other), book.place(pair)))
                .toList();
    }

    /**
     * What is thought of a spot before it was read in a pair: from others where it was read there, unless its structure says more.
     *
     * @param to the pair
     */
    TraitPrior prior(
            AcrossPairs.Place to,
            PlateScatter scatter,
            List<String> spots,
            int spot,
            PlateRuns runs,
            Map<String, GroupCounts> compounds,
            Map<String, Knowledge> matched) {
        String name = spots.get(spot);
        TraitPrior unread = unread(to, name, compounds);
        Optional<GroupCounts> compound = Optional.ofNullable(compounds.get(name));
        List<Told> told = new ArrayList<>();
        List<AcrossPairs.Read> guessed = new ArrayList<>();
        for (String other : others(to.id(), runs)) {
            TraitPrior before = unread(book.place(other), name, compounds);
            Knowledge knowledge = matched.get(other);
            if (knowledge != null) {
                guessed.add(new AcrossPairs.Read(book.place(other), before, knowledge.cloud(spot)));
            } else {
                List<Trial> trials = PlateRuns.trials(name, runs.in(other, spots));
                if (!trials.isEmpty()) {
                    told.add(new Told(other, PlateRuns.onAnyPlate(trials), before));
                }
            }
        }
        if (told.isEmpty() && guessed.isEmpty()) {
            return unread;
        }
        PlateScatter apart = scatter.unshared();
        Elsewhere elsewhere = guessed.isEmpty()
                ? priors.get(
                        new ReadElsewhere(to.id(), to.sharedC(), apart, told, compound),
                        () -> elsewhere(to, reads(apart, told), compound))
                : elsewhere(
                        to,
                        Stream.concat(reads(apart, told).stream(), guessed.stream())
                                .toList(),
                        compound);
        boolean isFitted = compound.isPresent() && book.structure(to.id()) != null;
        return isFitted && unread.varianceC() <= elsewhere.varianceC() ? unread : elsewhere.prior();
    }

    private List<AcrossPairs.Read> reads(PlateScatter scatter, List<Told> told) {
        return told.stream()
                .map(each -> new AcrossPairs.Read(
                        book.place(each.pair()),
                        each.before(),
                        cloud(book.model(each.pair()), scatter, each.trials(), each.before())))
                .toList();
    }

    private Elsewhere elsewhere(AcrossPairs.Place to, List<AcrossPairs.Read> reads, Optional<GroupCounts> compound) {
        return Elsewhere.of(across.prior(to, book.model(to.id()).prior(), reads, row(to, compound)));
    }

    /** The parts of a compound of which more is known than its class. */
    private double @Nullable [] row(AcrossPairs.Place place, Optional<GroupCounts> compound) {
        StructureModel structure = book.structure(place.id());
        return structure == null
                ? null
                : compound.filter(counts -> counts.detail() != GroupCounts.Detail.CLASS)
                        .map(structure::row)
                        .orElse(null);
    }

    /** What is thought of a spot before it was read: what its structure says, if that is known, or what compounds are like. */
    private TraitPrior unread(AcrossPairs.Place place, String spot, Map<String, GroupCounts> compounds) {
        TraitPrior population = book.model(place.id()).prior();
        StructureModel structure = book.structure(place.id());
        Optional<GroupCounts> compound =
                structure == null ? Optional.empty() : Optional.ofNullable(compounds.get(spot));
        boolean asMade = place.sharedC() > 0 || place.theory().isEmpty();
        if (compound.isEmpty() && asMade) {
            return population;
        }
        return known.get(new Known(place.id(), place.sharedC(), compound), () -> {
            AcrossPairs.Place from = book.place(place.base());
            TraitPrior base = structure == null || compound.isEmpty()
                    ? book.model(from.id()).prior()
                    : structure.prior(compound.get());
            if (place.theory().isEmpty()) {
                return base;
            }
            return across.isLinked(from, place)
                    ? across.prior(place, population, List.of(new AcrossPairs.Read(from, base, base.cloud())), null)
                    : population;
        });
    }
}
