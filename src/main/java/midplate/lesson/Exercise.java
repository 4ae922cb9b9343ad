package midplate.lesson;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import midplate.advice.Window;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.TeachingCompound;
import midplate.chemistry.GroupCounts;
import midplate.chemistry.Sorbent;
import midplate.inference.Knowledge;
import midplate.inference.PossiblePlates;
import midplate.plate.Setting;

/**
 * Unknowns to be run against. They are drawn by the seed from the table of lessons, and one possible sample near what the model
 * expects of them is the truth, so that nobody can look it up and nobody learns an order that is wrong. Draws go on until two of the ratios that are poured do what is asked, one with room for the scatter of a
 * class where the level says so. The same code makes the same on every machine.
 */
public final class Exercise {
    /** The names of the unknowns, in the order of their lanes. */
    private static final List<String> NAMES = List.of("X", "Y", "Z");

    private static final Window ROOMY = new Window(0.25, 0.75);
    /** Spots that leave less than this between them at every ratio in the window are hard to part [1 in Rf]; own choice. */
    private static final double HARD = 0.15;
    /** What is left between spots that are hard to part, somewhere [1 in Rf]; own choice. */
    private static final double HARD_ROOM = 0.02;
    /** The same for {@link ExerciseLevel#NUMBER_TOLD}. */
    private static final double SOME_ROOM = 0.02;
    /** The same for {@link ExerciseLevel#GROUPS_TOLD}. */
    private static final double ROOM = 0.02;
    /** So many of the ratios that are poured do what is asked, so that it can be found. */
    private static final int FEWEST_RATIOS = 2;
    /** For what is drawn: the unknowns. */
    private static final int UNKNOWNS = 1;

    private static final int MOST_ATTEMPTS = 2000;

    private final ExerciseCode code;
    private final List<ExerciseCompound> compounds;
    private final LessonSample sample;
    private final TrueCourse truth;

    private Exercise(ExerciseCode code, List<ExerciseCompound> compounds, LessonSample sample, TrueCourse truth) {
        this.code = code;
        this.compounds = compounds;
        this.sample = sample;
        this.truth = truth;
    }

    /**
     * The exercise of a code.
     *
     * @param code which
     * @param model what lessons compute with
     * @param table the compounds it may be about; those seen only after a stain are left out
     */
    public static Exercise of(ExerciseCode code, LessonModel model, List<ExerciseCompound> table) {
        List<ExerciseCompound> usable = usable(table);
        for (int attempt = 0; attempt < MOST_ATTEMPTS; attempt++) {
            SeededDraws draws = draws(code, UNKNOWNS, attempt);
            List<ExerciseCompound> drawn = draws.some(usable, code.level().unknowns());
            if (code.level() == ExerciseLevel.GROUPS_TOLD && !differ(drawn)) {
                continue;
            }
            LessonSample sample = sample(code, model.catalogue(), drawn);
            Knowledge knowledge = model.consult(sample).knowledge();
            PossiblePlates plates = PossiblePlates.of(knowledge);
            Optional<TrueCourse> truth = TrueCourse.drawn(plates, drawn.size(), knowledge.model(), draws)
                    .filter(course -> serves(code.level(), course)
                            && course.ratios(Exercise::isReached).size() >= FEWEST_RATIOS);
            if (truth.isPresent()) {
                return new Exercise(code, drawn, sample, truth.get());
            }
        }
        throw new IllegalStateException("No unknowns for " + code);
    }

    static List<ExerciseCompound> usable(List<ExerciseCompound> table) {
        return table.stream()
                .filter(each -> each.compound().seen() != TeachingCompound.Seen.STAIN)
                .toList();
    }

    static SeededDraws draws(ExerciseCode code, int what, int number, int... further) {
        int[] place = new int[further.length + 4];
        place[0] = code.level().ordinal();
        place[1] = code.pair().ordinal();
        place[2] = what;
        place[3] = number;
        System.arraycopy(further, 0, place, 4, further.length);
        return SeededDraws.of(code.seed(), place);
    }

    private static boolean differ(List<ExerciseCompound> drawn) {
        Set<Set<String>> groups = new HashSet<>();
        drawn.forEach(each -> groups.add(each.counts().counts().keySet()));
        return groups.size() == drawn.size();
    }

    private static LessonSample sample(ExerciseCode code, SolventCatalogue catalogue, List<ExerciseCompound> drawn) {
        List<LessonCompound> named = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            named.add(new LessonCompound(NAMES.get(i), drawn.get(i).counts()));
        }
        return sample(code.pair(), catalogue, named);
    }

    static LessonSample sample(ExercisePair pair, SolventCatalogue catalogue, List<LessonCompound> compounds) {
        return new LessonSample(
                compounds,
                Sorbent.SILICA,
                catalogue.solventIn("weak", pair.weak()),
                catalogue.solventIn("strong", pair.strong()),
                Setting.CLASS);
    }

    private static boolean serves(ExerciseLevel level, TrueCourse truth) {
        return switch (level) {
            case GROUPS_TOLD -> !truth.ratios(roomy(ROOM)).isEmpty();
            case NUMBER_TOLD ->
                !truth.ratios(rf -> inWindow(rf) && ExercisePlate.between(rf) >= SOME_ROOM)
                        .isEmpty();
            case HARD_TO_PART ->
                !truth.ratios(roomy(HARD_ROOM)).isEmpty()
                        && truth.ratios(rf -> inWindow(rf) && ExercisePlate.between(rf) > HARD)
                                .isEmpty();
        };
    }

    private static TrueCourse.Aimed roomy(double room) {
        return rf -> TrueCourse.within(rf, ROOMY.low(), ROOMY.high()) && ExercisePlate.between(rf) >= room;
    }

    private static boolean inWindow(List<Double> rf) {
        return TrueCourse.within(rf, Window.USUAL.low(), Window.USUAL.high());
    }

    /** What is to be reached, of the Rf of the possible course: every spot in the window, and none touching another. */
    public static boolean isReached(List<Double> rf) {
        return inWindow(rf) && ExercisePlate.between(rf) >= 0;
    }

    /** Its code. */
    public ExerciseCode code() {
        return code;
    }

    /** What the unknowns are, in their order. */
    public List<ExerciseCompound> compounds() {
        return compounds;
    }

    /** Their names, in the order of their lanes. */
    public List<String> names() {
        return NAMES.subList(0, compounds.size());
    }

    /** The unknowns with all that is known of their structures: nothing for students. */
    public LessonSample sample() {
        return sample;
    }

    /** What students are told of the unknowns, in the form that the adviser takes: their groups where those are told, else nothing. */
    Map<String, GroupCounts> told() {
        return code.level() != ExerciseLevel.GROUPS_TOLD
                ? Map.of()
                : sample.compounds().stream()
                        .collect(Collectors.toMap(
                                LessonCompound::name,
                                each -> new GroupCounts(each.counts().counts(), GroupCounts.Detail.GROUPS)));
    }

    /** The least share that its plates are computed for [% v/v]. */
    public double lowestPercent() {
        return truth.model().lowestPercent();
    }

    /** The largest one [% v/v]. */
    public double highestPercent() {
        return truth.model().highestPercent();
    }

    TrueCourse truth() {
        return truth;
    }
}
