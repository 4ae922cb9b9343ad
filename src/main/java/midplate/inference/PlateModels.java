package midplate.inference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import midplate.catalogue.MeasuredPair;
import midplate.catalogue.PairLink;
import midplate.plate.Reading;
import midplate.plate.Setting;

/** The models of all pairs and what they say about each other; immutable but for its cache, and shared between threads. */
public final class PlateModels {
    private static final int MOST_WINDOWS = 12;

    private final Map<String, PairModel> models;
    private final List<LinkedPair> links;
    private final Map<WindowKey, WindowChances> windows = new ConcurrentHashMap<>();

    private record WindowKey(String pair, Setting setting, double low, double high) {}

    private PlateModels(Map<String, PairModel> models, List<LinkedPair> links) {
        this.models = models;
        this.links = links;
    }

    /** The models of measured pairs and the links between them. */
    public static PlateModels of(List<MeasuredPair> pairs, List<PairLink> links) {
        Map<String, MeasuredPair> byId = new LinkedHashMap<>();
        Map<String, PairModel> models = new LinkedHashMap<>();
        for (MeasuredPair pair : pairs) {
            byId.put(pair.id(), pair);
            models.put(pair.id(), PairModel.of(pair));
        }
        List<LinkedPair> linked = new ArrayList<>();
        for (PairLink link : links) {
            MeasuredPair to = byId.get(link.to());
            if (to != null && byId.containsKey(link.from())) {
                linked.add(new LinkedPair(link, to.prior()));
            }
        }
        return new PlateModels(models, linked);
    }

    /** The model of that id; empty when the pair was not measured. */
    public Optional<PairModel> find(String pair) {
        return Optional.ofNullable(models.get(pair));
    }

    /** Whether readings in one pair say something about another. */
    public boolean isLinked(String from, String to) {
        return links.stream().anyMatch(link -> link.joins(from, to));
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
        PairModel model = model(pair);
        PlateScatter scatter = PlateScatter.of(setting);
        List<PlateRun> own = of(pair, runs).stream().sorted(byContent(spots)).toList();
        List<List<Trial>> trials = new ArrayList<>();
        List<TraitPrior> priors = new ArrayList<>();
        Map<String, Knowledge> matched = matchedElsewhere(pair, scatter, spots, runs);
        for (int i = 0; i < spots.size(); i++) {
            trials.add(trials(spots.get(i), own));
            TraitPrior prior = prior(pair, scatter, spots.get(i), runs);
            priors.add(matched.isEmpty() ? prior : narrowest(prior, pair, matched, i));
        }
        return own.stream().allMatch(run -> run.unlabelled().isEmpty())
                ? Knowledge.from(model, scatter, own.size(), trials, priors)
                : MatchedKnowledge.from(model, scatter, spots, own, trials, priors);
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
            String pair, PlateScatter scatter, List<String> spots, List<PlateRun> runs) {
        Map<String, Knowledge> matched = new LinkedHashMap<>();
        for (LinkedPair link : links) {
            List<PlateRun> there = of(link.from(), runs);
            if (link.leadsTo(pair)
                    && there.stream().anyMatch(run -> !run.unlabelled().isEmpty())) {
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
                                Collections.nCopies(spots.size(), from.prior())));
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

    private TraitPrior prior(String pair, PlateScatter scatter, String spot, List<PlateRun> runs) {
        TraitPrior narrowest = model(pair).prior();
        double least = Double.POSITIVE_INFINITY;
        for (LinkedPair link : links) {
            List<Trial> trials = link.leadsTo(pair) ? trials(spot, of(link.from(), runs)) : List.of();
            if (!trials.isEmpty()) {
                TraitCloud cloud = SpotEvidence.of(
                                model(link.from()),
                                scatter.unshared(),
                                trials.stream().sorted(Trial.BY_CONTENT).toList(),
                                model(link.from()).prior())
                        .cloud();
                TraitPrior prior = link.prior(cloud);
                if (prior.varianceC() < least) {
                    least = prior.varianceC();
                    narrowest = prior;
                }
            }
        }
        return narrowest;
    }

    private static List<PlateRun> of(String pair, List<PlateRun> runs) {
        return runs.stream().filter(run -> run.pair().equals(pair)).toList();
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
        return Outlook.of(knowledge, window(knowledge.model().id(), setting, low, high));
    }

    /** The chances of reading inside a window, tabulated once and kept. */
    private WindowChances window(String pair, Setting setting, double low, double high) {
        WindowKey key = new WindowKey(pair, setting, low, high);
        WindowChances known = windows.get(key);
        if (known != null) {
            return known;
        }
        WindowChances made = WindowChances.of(model(pair), PlateScatter.of(setting), low, high);
        if (windows.size() >= MOST_WINDOWS) {
            windows.clear();
        }
        windows.put(key, made);
        return made;
    }

    private PairModel model(String pair) {
        PairModel model = models.get(pair);
        if (model == null) {
            throw new IllegalArgumentException("pair " + pair + "; allowed: " + models.keySet());
        }
        return model;
    }
}
