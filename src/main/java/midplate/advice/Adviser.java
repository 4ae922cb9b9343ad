package midplate.advice;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.MeasuredPair;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.SolventCatalogue;
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
 * <p>A question is refused when its two solvents are no eluent, stand in the wrong order, or were not measured together.
 */
public final class Adviser {
    /** So many questions are remembered with what was answered; a hard one takes about half a megabyte. */
    private static final int MOST_KEPT = 32;

    private final SolventCatalogue catalogue;
    private final List<MeasuredPair> measured;
    private final PairChoice pairs;
    private final PlateModels models;
    private final KeptLatest<Question, KeptConsultation> latest = new KeptLatest<>(MOST_KEPT);

    private Adviser(SolventCatalogue catalogue, MeasuredPairs curves) {
        this.catalogue = catalogue;
        this.measured = curves.pairs();
        this.pairs = new PairChoice(catalogue, measured);
        this.models = PlateModels.of(curves, FunctionalGroups.builtIn());
    }

    /** An adviser with the curves packed with the program. */
    public static Adviser builtIn(SolventCatalogue catalogue) {
        return new Adviser(catalogue, MeasuredPairs.builtIn(catalogue));
    }

    /** An adviser with curves from a folder that {@code calibrate} wrote. */
    public static Adviser of(SolventCatalogue catalogue, Path curves) {
        return new Adviser(catalogue, MeasuredPairs.read(curves, catalogue));
    }

    /** An adviser with curves just fitted. */
    public static Adviser of(SolventCatalogue catalogue, MeasuredPairs curves) {
        return new Adviser(catalogue, curves);
    }

    /** The pairs that can be asked about. */
    public List<MeasuredPair> measured() {
        return measured;
    }

    /** Refuses two solvents that are no eluent, or do not stand on the shelf, with the reason. */
    public void check(Question question) {
        lacking(question, "weak", question.weak());
        lacking(question, "strong", question.strong());
        pairs.check("", question.sorbent(), question.weak(), question.strong());
    }

    private static void lacking(Question question, String field, Solvent solvent) {
        question.wishes().shelf().lacks(field, solvent).ifPresent(refusal -> {
            throw refusal;
        });
    }

    /**
     * What the structure of a compound foretells of its traits in a pair; empty where that was not fitted. Refuses a pair that was
     * not measured.
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

    /** Learns what the plates of a question say, once for everything that is asked of it, and for the same question asked again. */
    public Consultation consult(Question question) {
        KeptConsultation kept = latest.get(question, () -> new KeptConsultation(() -> learned(question)));
        kept.open();
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
        check(question);
        Shelf shelf = question.wishes().shelf();
        MeasuredPair pair = pairs.require(question.sorbent(), question.weak(), question.strong(), shelf);
        UsedRuns runs = UsedRuns.of(question, pair, pairs, models);
        Knowledge knowledge =
                models.learn(pair.id(), question.setting(), question.spots(), runs.all(), question.structures());
        Window window = question.window();
        Outlook outlook = models.outlook(knowledge, question.setting(), window.low(), window.high());
        List<Message> standIns = pairs.standInNotes(question.weak(), question.strong(), shelf);
        return new PlateConsultation(question, pair, runs, outlook, models, measured, catalogue, standIns);
    }
}
