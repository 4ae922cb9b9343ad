package midplate.inference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.GroupEffects;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PlatePair;
import midplate.catalogue.TheoryPair;
import midplate.chemistry.GroupCounts;
import midplate.plate.Setting;

/** The models of all pairs and what they say about each other; immutable but for what it keeps, and shared between threads. */
public final class PlateModels {
    /** Points of a spot's cloud in a pair whose theory may be off for all spots together. */
    private static final int POINTS = 400;

    /** What structures foretell is kept for so many. */
    private static final int MOST_FORETOLD = 1024;

    private final PairBook book;
    private final AcrossPairs across;
    private final SpotPriors priors;
    private final KeptLatest<Foretold, StructureForecast> foretold = new KeptLatest<>(MOST_FORETOLD);
    private final KeptWindows windows = new KeptWindows();

    private record Foretold(String pair, GroupCounts counts) {}

    private PlateModels(PairBook book, AcrossPairs across) {
        this.book = book;
        this.across = across;
        this.priors = new SpotPriors(book, across);
    }

    /** The models of measured pairs that say nothing about each other, in which structures say nothing. */
    public static PlateModels of(List<PlatePair> pairs) {
        return of(new MeasuredPairs(pairs), new FunctionalGroups(List.of()));
    }

    /** The models of measured pairs, what they say about each other, and what structures say in them. */
    public static PlateModels of(MeasuredPairs measured, FunctionalGroups groups) {
        return of(measured, groups, id -> Optional.empty());
    }

    /**
     * The same, with pairs made from published strengths beside them.
     *
     * @param theory the pair of an id, where there is one
     */
    public static PlateModels of(
            MeasuredPairs measured, FunctionalGroups groups, Function<String, Optional<TheoryPair>> theory) {
        Map<String, PairModel> models = new LinkedHashMap<>();
        for (PlatePair pair : measured.pairs()) {
            models.put(pair.id(), PairModel.of(pair));
        }
        Map<String, StructureModel> structures = new LinkedHashMap<>();
        for (GroupEffects effects : measured.structures()) {
            PairModel model = models.get(effects.pair());
            if (model != null) {
                structures.put(effects.pair(), new StructureModel(groups, effects, model.prior()));
            }
        }
        AcrossPairs across = new AcrossPairs(measured.joint(), new MoleculeParts(groups));
        return new PlateModels(new PairBook(models, structures, theory), across);
    }

    /** The model of that id; empty when the pair was not measured, nor made from published strengths. */
    public Optional<PairModel> find(String pair) {
        return book.find(pair);
    }

    /** Whether readings in one pair say something about another. */
    public boolean isLinked(String from, String to) {
        return across.isLinked(book.place(from), book.place(to));
    }

    /**
     * Whether what is known of all spots in one pair lies among the compounds measured in another, too; beyond them nothing is
     * known of that pair, and no chance in it means anything.
     */
    public boolean reaches(Knowledge knowledge, String to) {
        AcrossPairs.Place from = book.place(knowledge.model().id());
        return IntStream.range(0, knowledge.spots())
                .allMatch(spot -> across.reaches(from, book.place(to), knowledge.meanC(spot)));
    }

    /**
     * What the plates say about the spots in a pair. Readings in that pair are taken whole; what those in other pairs say comes
     * before them ({@link AcrossPairs}).
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
        PairModel model = book.model(pair);
        PlateScatter scatter = PlateScatter.of(setting);
        PlateRuns plates = new PlateRuns(runs);
        List<PlateRun> own = plates.in(pair, spots);
        List<List<Trial>> trials = new ArrayList<>();
        List<TraitPrior> before = new ArrayList<>();
        boolean isOffTogether =
                own.isEmpty() && spots.size() > 1 && book.place(pair).sharedC() > 0;
        AcrossPairs.Place place = isOffTogether ? book.place(pair).withoutShared() : book.place(pair);
        Map<String, Knowledge> matched = priors.matchedElsewhere(pair, scatter, spots, plates, compounds);
        for (int i = 0; i < spots.size(); i++) {
            trials.add(PlateRuns.trials(spots.get(i), own));
            before.add(priors.prior(place, scatter, spots, i, plates, compounds, matched));
        }
        if (isOffTogether) {
            return offTogether(model, scatter, before);
        }
        if (PlateRuns.anyUnlabelled(own)) {
            return MatchedKnowledge.from(model, scatter, spots, own, trials, before);
        }
        if (scatter.isShared()) {
            return Knowledge.from(model, scatter, own.size(), trials, before);
        }
        List<TraitCloud> clouds = new ArrayList<>();
        for (int spot = 0; spot < spots.size(); spot++) {
            clouds.add(priors.cloud(model, scatter, trials.get(spot), before.get(spot)));
        }
        return Knowledge.ofApart(model, scatter, clouds);
    }

    /**
     * What a structure foretells in a pair, or in the one whose curve it borrows, there with the errors of the theory on top; empty
     * where that was not fitted.
     */
    public Optional<StructureForecast> forecast(String pair, GroupCounts counts) {
        return Optional.ofNullable(book.structure(pair))
                .map(structure -> foretold.get(new Foretold(pair, counts), () -> {
                    StructureForecast forecast = structure.forecast(counts);
                    return book.place(pair).theory().map(forecast::borrowedBy).orElse(forecast);
                }));
    }

    /** A theory that no plate of its own has set right yet may be off for all spots together: a scenario for each of five errors. */
    private Knowledge offTogether(PairModel model, PlateScatter scatter, List<TraitPrior> spots) {
        double shared = book.place(model.id()).sharedC();
        double[] errors = NormalPoints.points();
        List<Knowledge.Scenario> scenarios = new ArrayList<>();
        for (int k = 0; k < errors.length; k++) {
            double error = shared * errors[k];
            scenarios.add(new Knowledge.Scenario(
                    NormalPoints.weights()[k],
                    spots.stream()
                            .map(prior -> prior.cloud().thinned(POINTS, 0.5).moved(error))
                            .toList()));
        }
        return Knowledge.of(model, scatter, scenarios, List.of(), 1);
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
}
