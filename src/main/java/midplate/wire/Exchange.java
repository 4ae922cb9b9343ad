package midplate.wire;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import midplate.advice.Advice;
import midplate.advice.Adviser;
import midplate.advice.Consultation;
import midplate.advice.Curves;
import midplate.advice.Forecast;
import midplate.advice.Question;
import midplate.advice.Replacements;
import midplate.advice.ScoutingPlan;
import midplate.catalogue.ColumnLaw;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.MeasuredAccuracy;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.identity.ModelledParting;
import midplate.identity.PartingEluents;
import midplate.identity.SameOrNot;
import midplate.lesson.LessonModel;
import midplate.plate.Setting;
import midplate.words.Language;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.jspecify.annotations.Nullable;

/**
 * Takes requests in JSON and gives answers in JSON, the same for every door. Immutable but for what it keeps, and safe to share between threads.
 *
 * <p>Each method throws {@link BadInput} with all faults of an input it cannot take.
 */
public final class Exchange {
    /** The most that is read at once [bytes]. */
    public static final int MOST_BYTES = 1_000_000;

    /** The version of this program. */
    public static final String VERSION = "0.1.0";

    private final SolventCatalogue catalogue;
    private final List<PlatePair> measured;
    private final Supplier<List<PlatePair>> byTheory;
    private final Function<Question, Consultation> adviser;
    private final Compounds compounds;
    private final Foretelling foretelling;
    private final ColumnLaw columnLaw;
    private final PartingEluents parting;
    private final SameOrNot same;
    private final Speech speech;
    private final Texts texts;
    private final PublishedWriter published;
    private final CompoundAnswers compoundAnswers;
    /** Written when first asked for: a batch never does. The same whoever writes it, so it does not matter if two threads do. */
    private volatile @Nullable String library;

    private volatile @Nullable String sources;

    private volatile @Nullable String groups;

    Exchange(SolventCatalogue catalogue, List<PlatePair> pairs, Function<Question, Consultation> adviser) {
        this(
                catalogue,
                pairs,
                List::of,
                adviser,
                new Compounds(FunctionalGroups.builtIn()),
                Foretelling.NONE,
                ColumnLaw.builtIn(catalogue),
                (here, one, other, most) -> List.of(),
                SameOrNot.withoutModel(),
                Speech.in(Language.ENGLISH));
    }

    private Exchange(
            SolventCatalogue catalogue,
            List<PlatePair> pairs,
            Supplier<List<PlatePair>> byTheory,
            Function<Question, Consultation> adviser,
            Compounds compounds,
            Foretelling foretelling,
            ColumnLaw columnLaw,
            PartingEluents parting,
            SameOrNot same,
            Speech speech) {
        this.catalogue = catalogue;
        this.measured = List.copyOf(pairs);
        this.byTheory = byTheory;
        this.adviser = adviser;
        this.compounds = compounds;
        this.foretelling = foretelling;
        this.columnLaw = columnLaw;
        this.parting = parting;
        this.same = same;
        this.speech = speech;
        this.texts = speech.texts();
        this.published = new PublishedWriter(catalogue, pairs, byTheory, speech);
        this.compoundAnswers = new CompoundAnswers(compounds, foretelling, speech);
    }

    /** With the solvents and curves packed with the program. */
    public static Exchange builtIn() {
        SolventCatalogue catalogue = SolventCatalogue.builtIn();
        return by(catalogue, Adviser.builtIn(catalogue), ColumnLaw.builtIn(catalogue));
    }

    /** With the solvents packed with the program, and the curves in a folder if one is named. */
    public static Exchange of(@Nullable Path curves) {
        if (curves == null) {
            return builtIn();
        }
        SolventCatalogue catalogue = SolventCatalogue.builtIn();
        ColumnLaw columns = ColumnLaw.read(curves, catalogue).orElseGet(() -> ColumnLaw.builtIn(catalogue));
        return by(catalogue, Adviser.of(catalogue, curves), columns);
    }

    private static Exchange by(SolventCatalogue catalogue, Adviser adviser, ColumnLaw columns) {
        return new Exchange(
                catalogue,
                adviser.measured(),
                adviser::byTheory,
                adviser::consult,
                new Compounds(FunctionalGroups.builtIn()),
                adviser::forecast,
                columns,
                ModelledParting.of(adviser, catalogue),
                SameOrNot.of(adviser, catalogue),
                Speech.in(Language.ENGLISH));
    }

    /** The same exchange, with the same adviser, in another language; as it comes it speaks English. */
    public Exchange in(Language language) {
        return language == speech.language()
                ? this
                : new Exchange(
                        catalogue,
                        measured,
                        byTheory,
                        adviser,
                        compounds,
                        foretelling,
                        columnLaw,
                        parting,
                        same,
                        Speech.in(language));
    }

    /** The texts in which it speaks. */
    public Texts texts() {
        return texts;
    }

    /** The measured pairs it advises on. */
    public List<PlatePair> measured() {
        return measured;
    }

    /** The solvents it knows. */
    public SolventCatalogue catalogue() {
        return catalogue;
    }

    /** Answers a request for advice in UTF-8; the setting is taken where the request names none. */
    public String advice(byte[] json, Setting ifUnsaid) {
        FaultList faults = new FaultList(texts);
        return answered(JsonText.read(JsonText.decoded(json, faults), faults), ifUnsaid, faults)
                .json();
    }

    /** Answers a request for advice; the setting is taken where the request names none. */
    public Answered advice(String json, Setting ifUnsaid) {
        FaultList faults = new FaultList(texts);
        return answered(JsonText.read(json, faults), ifUnsaid, faults);
    }

    /**
     * Answers one line of a batch; a line that cannot be taken is answered with its faults. Never throws.
     *
     * @param slips is told what went wrong inside the program, if anything did
     */
    public String line(byte[] json, Consumer<Throwable> slips) {
        return new BatchLines(this).answer(json, slips);
    }

    /** The answer in place of a line that was too long to be read. */
    public String tooLongLine() {
        return new BatchLines(this).tooLong();
    }

    Answered answered(Json request, Setting ifUnsaid, FaultList faults) {
        Asked asked = new QuestionReader(catalogue, compounds, ifUnsaid, faults).read(request);
        return told(faults, () -> {
            Consultation consultation = adviser.apply(asked.question());
            Advice advice = consultation.advice();
            List<Forecast> forecasts = consultation.at(asked.predictAt());
            Optional<Curves> curves =
                    asked.curves() == Asked.CurvesWanted.YES ? Optional.of(consultation.curves()) : Optional.empty();
            List<Note> notes = new ArrayList<>();
            advice.notes().forEach(message -> notes.add(new Note(message, Optional.empty())));
            notes.addAll(asked.notes());
            List<ObjectNode> structures = compoundAnswers.beside(asked, notes);
            String json = new AnswerWriter(texts)
                    .write(asked, advice, notes, forecasts, curves, consultation.whichIsWhich(), structures);
            return new Answered(asked.question(), advice, notes, json);
        });
    }

    /** An answer; what a room below refuses becomes a fault of the input. */
    static <T> T told(FaultList faults, Supplier<T> answer) {
        try {
            return answer.get();
        } catch (Refusal refusal) {
            faults.add(refusal.field(), refusal);
            throw new BadInput(BadInput.Kind.FIELDS, faults.faults());
        }
    }

    /** Which plates to run at once, in UTF-8; the setting is taken where the request names none. */
    public String scouting(byte[] json, Setting ifUnsaid) {
        FaultList faults = new FaultList(texts);
        return scouting(JsonText.read(JsonText.decoded(json, faults), faults), ifUnsaid, faults)
                .json();
    }

    /** Which plates to run at once; the setting is taken where the request names none. */
    public ScoutingAnswer scouting(String json, Setting ifUnsaid) {
        FaultList faults = new FaultList(texts);
        return scouting(JsonText.read(json, faults), ifUnsaid, faults);
    }

    private ScoutingAnswer scouting(Json request, Setting ifUnsaid, FaultList faults) {
        ScoutingQuestion question = ScoutingQuestion.read(request, catalogue, compounds, ifUnsaid, faults);
        Asked asked = question.asked();
        return told(faults, () -> {
            ScoutingPlan plan = adviser.apply(asked.question()).scout(question.jars());
            return new ScoutingAnswer(asked.question(), plan, new ScoutingWriter(texts).write(asked, plan));
        });
    }

    /** Which other eluents may take the place of a mixture, in UTF-8; the setting is taken where the request names none. */
    public String otherEluents(byte[] json, Setting ifUnsaid) {
        FaultList faults = new FaultList(texts);
        return otherEluents(JsonText.read(JsonText.decoded(json, faults), faults), ifUnsaid, faults)
                .json();
    }

    /** Which other eluents may take the place of a mixture; the setting is taken where the request names none. */
    public OthersAnswer otherEluents(String json, Setting ifUnsaid) {
        FaultList faults = new FaultList(texts);
        return otherEluents(JsonText.read(json, faults), ifUnsaid, faults);
    }

    private OthersAnswer otherEluents(Json request, Setting ifUnsaid, FaultList faults) {
        OthersQuestion question = OthersQuestion.read(request, catalogue, compounds, ifUnsaid, faults);
        Asked asked = question.asked();
        return told(faults, () -> {
            Replacements found = adviser.apply(asked.question()).others(question.wish());
            return new OthersAnswer(asked.question(), found, new OthersWriter(texts).write(asked, found));
        });
    }

    /** What a compound is made of, and what that does in a pair. */
    public String structure(byte[] json) {
        FaultList faults = new FaultList(texts);
        return structure(JsonText.decoded(json, faults), faults);
    }

    /** What a compound is made of, and what that does in a pair. */
    public String structure(String json) {
        return structure(json, new FaultList(texts));
    }

    private String structure(String json, FaultList faults) {
        return compoundAnswers.of(
                StructureQuestion.read(JsonText.read(json, faults), catalogue, compounds, faults), faults);
    }

    /** All groups and classes of compounds, and what each group does in every measured pair. */
    public String groups() {
        String known = groups;
        if (known == null) {
            known = compoundAnswers.groups(measured);
            groups = known;
        }
        return known;
    }

    /** Works out a plate given in millimetres: the Rf of its spots, and what to tell about it. */
    public String reading(byte[] json) {
        FaultList faults = new FaultList(texts);
        return reading(JsonText.decoded(json, faults), faults);
    }

    /** Works out a plate given in millimetres: the Rf of its spots, and what to tell about it. */
    public String reading(String json) {
        return reading(json, new FaultList(texts));
    }

    /** The same for a door that says it in words. */
    public ReadPlate plate(String json) {
        return plate(json, new FaultList(texts));
    }

    private ReadPlate plate(String json, FaultList faults) {
        Optional<ReadPlate> plate = new PlateReader(faults, Setting.BENCH).read("", JsonText.read(json, faults));
        faults.throwIfAny();
        return plate.orElseThrow();
    }

    private String reading(String json, FaultList faults) {
        return ReadingWriter.text(plate(json, faults), texts);
    }

    /** The strength of a mixture, and the equally strong mixture of another pair. */
    public String equalStrength(byte[] json) {
        FaultList faults = new FaultList(texts);
        return equalStrength(JsonText.decoded(json, faults), faults).json();
    }

    /** The strength of a mixture, and the equally strong mixture of another pair. */
    public StrengthAnswer equalStrength(String json) {
        return equalStrength(json, new FaultList(texts));
    }

    private StrengthAnswer equalStrength(String json, FaultList faults) {
        StrengthQuestion question = StrengthQuestion.read(JsonText.read(json, faults), catalogue, faults);
        return new EqualStrength(catalogue, speech, faults, question).answer();
    }

    /** All solvents with all that is published here about them. */
    public String library() {
        String known = library;
        if (known == null) {
            known = published.library();
            library = known;
        }
        return known;
    }

    /** All publications. */
    public String sources() {
        String known = sources;
        if (known == null) {
            known = published.sources();
            sources = known;
        }
        return known;
    }

    /** How accurate the advice was on compounds that the fit had not seen. */
    public String accuracy() {
        return MeasuredAccuracy.json();
    }

    /** Studies as they are asked for and answered. */
    public StudyAnswers studies() {
        return new StudyAnswers(catalogue, compounds.groups(), texts);
    }

    /** Columns as they are asked for and answered. */
    public ColumnAnswers columns() {
        return new ColumnAnswers(catalogue, compounds, adviser, columnLaw, texts);
    }

    /** Samples beside references, and reference spots, as they are asked about and answered. */
    public CheckAnswers checks() {
        return new CheckAnswers(catalogue, compounds, same, speech);
    }

    /** How to see compounds, and what a plate says of purity, as they are asked for and answered. */
    public SightAnswers sight() {
        return new SightAnswers(catalogue, compounds, adviser, parting, speech);
    }

    /** Reactions as they are asked about and answered. */
    public ReactionAnswers reactions() {
        return new ReactionAnswers(catalogue, compounds, parting, texts);
    }

    /** Lessons as they are asked for and answered. */
    public LessonAnswers lessons() {
        return new LessonAnswers(new LessonModel(catalogue, adviser), compounds, foretelling, speech);
    }

    /** Name and version of this program. */
    public String version() {
        return JsonWriting.text(JsonWriting.object().put("name", "Midplate").put("version", VERSION));
    }
}
