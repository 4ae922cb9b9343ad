package midplate.advice;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.TheoryPair;
import midplate.catalogue.TheoryPairs;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.inference.KeptLatest;
import midplate.inference.Knowledge;
import midplate.inference.Outlook;
import midplate.inference.PlateModels;
import midplate.inference.StructureForecast;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * Answers questions about the next plate. Immutable but for what it keeps, and safe to share between threads.
 *
 * <p>A question is refused when its two solvents are no eluent, stand in the wrong order, or not even theory knows them together.
 */
public final class Adviser {
    /** So many questions are remembered with what was learned from their plates; a hard one takes about half a megabyte. */
    private static final int MOST_LEARNED = 32;
    /** So many with what was answered, about 10 kB each: in a long batch a question comes again long after it was asked. */
    private static final int MOST_ANSWERED = 4096;

    private final SolventCatalogue catalogue;
    private final PairChoice pairs;
    private final PlateModels models;
    private final KeptLatest<Question, PlateConsultation> learned = new KeptLatest<>(MOST_LEARNED);
    private final KeptLatest<Question, KeptConsultation> answered = new KeptLatest<>(MOST_ANSWERED);

    private Adviser(SolventCatalogue catalogue, MeasuredPairs curves) {
        Optional<TheoryPairs> theory = curves.theory().map(strength -> TheoryPairs.of(catalogue, curves, strength));
        this.catalogue = catalogue;
        this.pairs = new PairChoice(
                catalogue,
                curves.pairs(),
                (sorbent, weak, strong) -> theory.flatMap(pairs -> pairs.find(sorbent, weak, strong))
                        .map(TheoryPair::pair));
        this.models = PlateModels.of(curves, FunctionalGroups.builtIn(), id -> theory.flatMap(pairs -> pairs.find(id)));
    }

    /** An adviser with the curves packed with the program. */
    public static Adviser builtIn(SolventCatalogue catalogue) {
        return of(catalogue, MeasuredPairs.builtIn(catalogue));
    }

    /** An adviser with curves from a folder that {@code calibrate} wrote. */
    public static Adviser of(SolventCatalogue catalogue, Path curves) {
        return of(catalogue, MeasuredPairs.read(curves, catalogue));
    }

    /** An adviser with curves just fitted. */
    public static Adviser of(SolventCatalogue catalogue, MeasuredPairs curves) {
        return new Adviser(catalogue, curves);
    }

    /** The measured pairs. */
    public List<PlatePair> measured() {
        return pairs.measured();
    }

    /** The pairs of which there is theory only, on silica. */
    public List<PlatePair> byTheory() {
        return pairs.byTheory(Sorbent.SILICA);
    }

    /** Refuses two solvents that are no eluent, or do not stand on the shelf, with the reason. */
    public void check(Question question) {
        question.wishes().shelf().check(question.weak(), question.strong());
        pairs.check("", question.sorbent(), question.weak(), question.strong());
    }

    /**
     * What the structure of a compound foretells of its traits in a pair; empty where that was not fitted. Refuses a pair of which
     * not even theory exists.
     *
     * @param counts the groups of the compound
     */
    public Optional<StructureForecast> forecast(Sorbent sorbent, Solvent weak, Solvent strong, GroupCounts counts) {
        return models.forecast(
                pairs.require(sorbent, weak, strong, Shelf.UNTOLD).id(), counts);
    }

    /** What to pour next and why. */
    public Advice advise(Question question) {
        return consult(question).advice();
    }

    /** What plates of the asked pair would show at some shares of the strong solvent [% v/v, 0 to 100]. */
    public List<Forecast> predict(Question question, List<Double> percentStrong) {
        return consult(question).at(percentStrong);
    }

    /** What happens at every ratio. */
    public Curves curves(Question question) {
        return consult(question).curves();
    }

    /** Which plates to run at once when so many jars are free, 1 to 3, and whether that beats going straight to the likeliest ratio. */
    public ScoutingPlan scout(Question question, int jars) {
        return consult(question).scout(jars);
    }

    /** Which other eluents may take the place of a mixture, whose solvents need not stand on the shelf. */
    public Replacements others(Question question, OthersWish wish) {
        return consult(question).others(wish);
    }

    /** Learns what the plates of a question say, once for everything that is asked of it; the same question asked again is not worked out again. */
    public Consultation consult(Question question) {
        KeptConsultation kept = answered.get(
                question, () -> new KeptConsultation(() -> learned.get(question, () -> learned(question))));
        kept.check();
        return kept;
    }

    /** What the plates of a question say, with nothing kept. */
    PlateConsultation learned(Question question) {
        if (question.spots().isEmpty()) {
            throw new Refusal(
                    "spots",
                    Message.of("advice.no-spots"),
                    "[]",
                    Message.of("allowed.spots-from-to", "least", 1, "most", 50),
                    Message.of("todo.name-one-spot"));
        }
        pairs.check("", question.sorbent(), question.weak(), question.strong());
        Shelf shelf = question.wishes().shelf();
        PlatePair pair = pairs.require(question.sorbent(), question.weak(), question.strong(), shelf);
        UsedRuns runs = UsedRuns.of(question, pair, pairs, models);
        Knowledge knowledge =
                models.learn(pair.id(), question.setting(), question.spots(), runs.all(), question.structures());
        Window window = question.window();
        Outlook outlook = models.outlook(knowledge, question.setting(), window.low(), window.high());
        List<Message> standIns = pairs.standInNotes(question.weak(), question.strong(), shelf);
        return new PlateConsultation(question, pair, runs, outlook, models, pairs, catalogue, standIns);
    }
}
