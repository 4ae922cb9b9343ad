package midplate.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.GroupEffects;
import midplate.catalogue.MeasuredPair;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PairLink;
import midplate.chemistry.GroupCounts;
import midplate.plate.Reading;
import midplate.plate.Setting;

/** The models of all pairs and what they say about each other; immutable but for what it keeps, and shared between threads. */
public final class PlateModels {
    /** What is known of a spot is kept for so many readings; about 50 kB each. */
    private static final int MOST_CLOUDS = 256;
    /** The same of what they say about another pair; about 200 kB each. */
    private static final int MOST_PRIORS = 64;

    private final Map<String, PairModel> models;
    private final List<LinkedPair> links;
    private final Map<String, StructureModel> structures;
    private final KeptLatest<Known, TraitPrior> known = new KeptLatest<>(MOST_CLOUDS);
    private final KeptLatest<Known, StructureForecast> foretold = new KeptLatest<>(MOST_CLOUDS);
    private final KeptWindows windows = new KeptWindows();
    private final KeptLatest<Spot, TraitCloud> clouds = new KeptLatest<>(MOST_CLOUDS);
    private final KeptLatest<ReadElsewhere, Elsewhere> priors = new KeptLatest<>(MOST_PRIORS);

    /** All that decides what is known of a spot where plates have no error of their own. */
    private record Spot(String pair, PlateScatter scatter, List<Trial> trials, TraitPrior prior) {}

    /** All that decides what readings in one pair say about another. */
    private record ReadElsewhere(LinkedPair link, PlateScatter scatter, List<Trial> trials, TraitPrior prior) {}

    /** A compound in a pair. */
    private record Known(String pair, GroupCounts counts) {}

    private record Elsewhere(TraitPrior prior, double varianceC) {
        static Elsewhere of(TraitPrior prior) {
            return new Elsewhere(prior, prior.varianceC());
        }
    }

    private PlateModels(Map<String, PairModel> models, List<LinkedPair> links, Map<String, StructureModel> structures) {
        this.models = models;
        this.links = links;
        this.structures = structures;
    }

    /** The models of measured pairs and the links between them, in which structures say nothing. */
    public static PlateModels of(List<MeasuredPair> pairs, List<PairLink> links) {
        return of(new MeasuredPairs(pairs, links), new FunctionalGroups(List.of()));
    }

    /** The models of measured pairs, the links between them, and what structures say in them. */
    public static PlateModels of(MeasuredPairs measured, FunctionalGroups groups) {
        List<MeasuredPair> pairs = measured.pairs();
        List<PairLink> links = measured.links();
        Map<String, PairModel> models = new LinkedHashMap<>();
        for (MeasuredPair pair : pairs) {
            models.put(pair.id(), PairModel.of(pair));
        }
        List<LinkedPair> linked = new ArrayList<>();
        for (PairLink link : links) {
            PairModel to = models.get(link.to());
            if (to != null && models.containsKey(link.from())) {
                linked.add(new LinkedPair(link, to.prior()));
            }
        }
        Map<String, StructureModel> structures = new LinkedHashMap<>();
        for (GroupEffects effects : measured.structures()) {
            PairModel model = models.get(effects.pair());
            if (model != null) {
                structures.put(effects.pair(), new StructureModel(groups, effects, model.prior()));
            }
        }
        return new PlateModels(models, linked, structures);
    }

    /** The model of that id; empty when the pair was not measured. */
    public Optional<PairModel> find(String pair) {
        return Optional.ofNullable(models.get(pair));
    }

    /** Whether readings in one pair say something about another. */
    public boolean isLinked(String from, String to) {
        for (LinkedPair link : links) {
            if (link.joins(from, to)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Whether what is known of all spots in one pair lies where the line to another pair was fitted; beyond it nothing is
     * known of that pair, and no chance in it means anything.
     */
    public boolean reaches(Knowledge knowledge, String to) {
        return links.stream()
                .filter(link -> link.joins(knowledge.model().id(), to))
                .anyMatch(link ->
                        IntStream.range(0, knowledge.spots()).allMatch(spot -> link.reaches(knowledge.meanC(spot))));
    }

    /**
     * What the plates say about the spots in a pair. Readings in that pair are taken whole; of the other pairs that one
     * counts whose readings of the spot leave the narrowest spread.
     *
     * @param pair id of the pair that is asked about
     * @param setting how much plates scatter
     * @param spots names of the spots
     * @param runs all plates, in any order
     */
    public Knowledge learn(String pair, Setting setting, List<String> spots, List<PlateRun> runs) {
        return learn(pair, setting, spots, runs, Map.of());
    }

    /**
     * The same where structures are known.
     *
     * @param compounds what spots are made of, by name, as far as it is known
     */
    public Knowledge learn(
            String pair, Setting setting, List<String> spots, List<PlateRun> runs, Map<String, GroupCounts> compounds) {
        PairModel model = model(pair);
        PlateScatter scatter = PlateScatter.of(setting);
        List<PlateRun> own = of(pair, runs);
        if (own.size() > 1) {
            own.sort(byContent(spots));
        }
        List<List<Trial>> trials = new ArrayList<>();
        List<TraitPrior> priors = new ArrayList<>();
        Map<String, Knowledge> matched = matchedElsewhere(pair, scatter, spots, runs, compounds);
        for (int i = 0; i < spots.size(); i++) {
            trials.add(trials(spots.get(i), own));
            TraitPrior prior = prior(pair, scatter, spots.get(i), runs, compounds);
            priors.add(matched.isEmpty() ? prior : narrowest(prior, pair, matched, i));
        }
        if (anyUnlabelled(own)) {
            return MatchedKnowledge.from(model, scatter, spots, own, trials, priors);
        }
        if (scatter.isShared()) {
            return Knowledge.from(model, scatter, own.size(), trials, priors);
        }
        List<TraitCloud> clouds = new ArrayList<>();
        for (int spot = 0; spot < spots.size(); spot++) {
            clouds.add(cloud(model, scatter, trials.get(spot), priors.get(spot)));
        }
        return Knowledge.ofApart(model, scatter, clouds);
    }

    /** What is known of one spot where plates have no error of their own; the same readings come again. */
    private TraitCloud cloud(PairModel model, PlateScatter scatter, List<Trial> trials, TraitPrior prior) {
        List<Trial> sorted = onAnyPlate(trials);
        return clouds.get(
                new Spot(model.id(), scatter, sorted, prior),
                () -> SpotEvidence.of(model, scatter, sorted, prior).cloud());
    }

    /** The readings alone, in an order of their own. */
    private static List<Trial> onAnyPlate(List<Trial> trials) {
        List<Trial> sorted = new ArrayList<>();
        for (Trial trial : trials) {
            sorted.add(new Trial(0, trial.percent(), trial.reading(), trial.blur()));
        }
        sorted.sort(Trial.BY_CONTENT);
        return sorted;
    }

    /** Plates in an order that depends on what was read and not on when, or under which heading, it was typed. */
    private static Comparator<PlateRun> byContent(List<String> spots) {
        Comparator<PlateRun> order = Comparator.comparingDouble(PlateRun::percent);
        for (String spot : spots.stream().sorted().toList()) {
            order = order.thenComparing(
                    run -> Optional.ofNullable(run.readings().get(spot)), PlateModels::compare);
        }
        return order.thenComparing(LaneToMatch.PLATES);
    }

    private static int compare(Optional<Reading> one, Optional<Reading> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return Boolean.compare(one.isEmpty(), other.isEmpty());
        }
        return Trial.READING.compare(one.get(), other.get());
    }

    private static List<Trial> trials(String spot, List<PlateRun> plates) {
        List<Trial> trials = new ArrayList<>();
        for (int plate = 0; plate < plates.size(); plate++) {
            Reading reading = plates.get(plate).readings().get(spot);
            if (reading != null) {
                trials.add(new Trial(plate, plates.get(plate).percent(), reading));
            }
        }
        return trials;
    }

    /** What the other pairs say in which some spots were seen without a label, each by itself. */
    private Map<String, Knowledge> matchedElsewhere(
            String pair,
            PlateScatter scatter,
            List<String> spots,
            List<PlateRun> runs,
            Map<String, GroupCounts> compounds) {
        Map<String, Knowledge> matched = new LinkedHashMap<>();
        for (LinkedPair link : links) {
            List<PlateRun> there = of(link.from(), runs);
            if (link.leadsTo(pair) && anyUnlabelled(there)) {
                List<PlateRun> sorted = there.stream().sorted(byContent(spots)).toList();
                PairModel from = model(link.from());
                matched.put(
                        link.from(),
                        MatchedKnowledge.from(
                                from,
                                scatter.unshared(),
                                spots,
                                sorted,
                                spots.stream().map(spot -> trials(spot, sorted)).toList(),
                                spots.stream()
                                        .map(spot -> unread(from, spot, compounds))
                                        .toList()));
            }
        }
        return matched;
    }

    private TraitPrior narrowest(TraitPrior labelled, String pair, Map<String, Knowledge> matched, int spot) {
        TraitPrior narrowest = labelled;
        for (LinkedPair link : links) {
            Knowledge there = link.leadsTo(pair) ? matched.get(link.from()) : null;
            if (there != null) {
                TraitPrior prior = link.prior(there.cloud(spot));
                narrowest = prior.varianceC() < narrowest.varianceC() ? prior : narrowest;
            }
        }
        return narrowest;
    }

    private TraitPrior prior(
            String pair, PlateScatter scatter, String spot, List<PlateRun> runs, Map<String, GroupCounts> compounds) {
        TraitPrior unread = unread(model(pair), spot, compounds);
        Elsewhere narrowest = null;
        for (LinkedPair link : links) {
            List<Trial> trials = link.leadsTo(pair) ? trials(spot, of(link.from(), runs)) : List.of();
            if (!trials.isEmpty()) {
                TraitPrior before = unread(model(link.from()), spot, compounds);
                Elsewhere there = elsewhere(link, scatter.unshared(), trials, before);
                narrowest = narrowest == null || there.varianceC() < narrowest.varianceC() ? there : narrowest;
            }
        }
        if (narrowest == null) {
            return unread;
        }
        boolean isFitted = compounds.containsKey(spot) && structures.containsKey(pair);
        return isFitted && unread.varianceC() <= narrowest.varianceC() ? unread : narrowest.prior();
    }

    /** What is thought of a spot before it was read: what its structure says, if that is known, or what compounds are like. */
    private TraitPrior unread(PairModel model, String spot, Map<String, GroupCounts> compounds) {
        GroupCounts counts = compounds.get(spot);
        StructureModel structure = structures.get(model.id());
        return counts == null || structure == null
                ? model.prior()
                : known.get(new Known(model.id(), counts), () -> structure.prior(counts));
    }

    /** What a structure foretells in a pair; empty where that was not fitted. */
    public Optional<StructureForecast> forecast(String pair, GroupCounts counts) {
        return Optional.ofNullable(structures.get(pair))
                .map(structure -> foretold.get(new Known(pair, counts), () -> structure.forecast(counts)));
    }

    private Elsewhere elsewhere(LinkedPair link, PlateScatter scatter, List<Trial> trials, TraitPrior before) {
        return priors.get(new ReadElsewhere(link, scatter, onAnyPlate(trials), before), () -> {
            PairModel from = model(link.from());
            return Elsewhere.of(link.prior(cloud(from, scatter, trials, before)));
        });
    }

    private static boolean anyUnlabelled(List<PlateRun> runs) {
        for (PlateRun run : runs) {
            if (!run.unlabelled().isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private static List<PlateRun> of(String pair, List<PlateRun> runs) {
        List<PlateRun> own = new ArrayList<>();
        for (PlateRun run : runs) {
            if (run.pair().equals(pair)) {
                own.add(run);
            }
        }
        return own;
    }

    /**
     * What plates yet to be run will show.
     *
     * @param knowledge of the spots, in a pair of these models
     * @param setting the one it was learned in
     * @param low lower edge of the window [1]
     * @param high upper edge [1]
     */
    public Outlook outlook(Knowledge knowledge, Setting setting, double low, double high) {
        WindowChances.Window window = new WindowChances.Window(knowledge.model().id(), setting, low, high);
        return Outlook.of(knowledge, windows.get(window, knowledge.model()));
    }

    private PairModel model(String pair) {
        PairModel model = models.get(pair);
        if (model == null) {
            throw new IllegalArgumentException("pair " + pair + "; allowed: " + models.keySet());
        }
        return model;
    }
}
