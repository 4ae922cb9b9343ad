package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import midplate.chemistry.Solvent;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * Questions on paper with their answers, drawn from a code: the same code gives the same sheets. Its variants differ in what was drawn, all
 * within the same limits.
 *
 * @param code by what it is drawn
 * @param choices what stands on it
 * @param sheets one of each variant
 */
public record Worksheet(LessonCode code, WorksheetChoices choices, List<Sheet> sheets) {
    /** How often a question is drawn before it is given up; each kind comes within a few hundred. */
    private static final int MOST_DRAWS = 5000;

    private static final LessonCode EXAMPLE =
            code(new WorksheetChoices(List.of(WorksheetKind.values()), 1, WorksheetPair.HEXANE_ETHYL_ACETATE), 1);

    /** An acid that streaks, and what never leaves the start line: on no sheet. */
    private static final Set<String> UNSUITED = Set.of("benzoic-acid", "caffeine");

    /** Keeps its own copy. */
    public Worksheet {
        sheets = List.copyOf(sheets);
    }

    /**
     * The sheet of one variant.
     *
     * @param letter of the variant
     * @param questions in their order
     */
    public record Sheet(String letter, List<WorksheetQuestion> questions) {
        /** Keeps its own copy. */
        public Sheet {
            questions = List.copyOf(questions);
        }
    }

    /** The code that makes a worksheet of these choices. */
    public static LessonCode code(WorksheetChoices choices, int seed) {
        return new LessonCode(LessonCode.Kind.WORKSHEET, choices.bits(), seed);
    }

    /**
     * The worksheet of a code.
     *
     * @param model the adviser and the solvents
     * @param compounds of the table of lessons, by their ids
     * @param code of a worksheet
     * @throws Refusal where the code chooses what no worksheet has
     */
    public static Worksheet of(LessonModel model, List<LessonCompound> compounds, LessonCode code) {
        WorksheetChoices choices = choices(code);
        Solvent weak = choices.pair().weak(model.catalogue());
        Solvent strong = choices.pair().strong(model.catalogue());
        List<LessonCompound> suited = compounds.stream()
                .filter(compound -> !UNSUITED.contains(compound.name()))
                .toList();
        WorksheetBench bench =
                new WorksheetBench(model, choices.pair(), weak, strong, PossibleRf.of(model, suited, weak, strong));
        List<Sheet> sheets = new ArrayList<>();
        for (int variant = 0; variant < choices.variants(); variant++) {
            List<WorksheetQuestion> questions = new ArrayList<>();
            for (WorksheetKind kind : choices.kinds()) {
                questions.add(drawn(bench, code.seed(), kind, variant, sheets));
            }
            sheets.add(new Sheet(String.valueOf((char) ('A' + variant)), questions));
        }
        return new Worksheet(code, choices, sheets);
    }

    /**
     * What a code chooses.
     *
     * @throws Refusal where no worksheet is chosen so
     */
    public static WorksheetChoices choices(LessonCode code) {
        return WorksheetChoices.of(code.choices())
                .orElseThrow(() -> new Refusal(
                        "code",
                        Message.of("lesson.code-kind", "came", code.text()),
                        code.text(),
                        Message.of("allowed.lesson-code", "example", EXAMPLE.text()),
                        Message.of("todo.type-lesson-code")));
    }

    /** A question that no variant before has. */
    private static WorksheetQuestion drawn(
            WorksheetBench bench, int seed, WorksheetKind kind, int variant, List<Sheet> before) {
        for (int draw = 0; draw < MOST_DRAWS; draw++) {
            SeededDraws draws =
                    SeededDraws.of(seed, LessonCode.Kind.WORKSHEET.ordinal(), kind.ordinal(), variant, draw);
            Optional<WorksheetQuestion> question = question(draws, bench, kind, (seed + variant) % 2)
                    .filter(each ->
                            before.stream().noneMatch(sheet -> sheet.questions().contains(each)));
            if (question.isPresent()) {
                return question.get();
            }
        }
        throw new IllegalStateException("Seed " + seed + " has no question of kind " + kind);
    }

    /** Draws a question; the turn says which of two cases it is, so that both stand among the variants. */
    private static Optional<WorksheetQuestion> question(
            SeededDraws draws, WorksheetBench bench, WorksheetKind kind, int turn) {
        return switch (kind) {
            case RF -> RfQuestion.of(draws, bench);
            case ORDER -> OrderQuestion.of(draws, bench, bench.pair().ordered());
            case CO_SPOT -> CoSpotQuestion.of(draws, bench, CoSpotQuestion.Case.values()[turn]);
            case RATIO -> RatioQuestion.of(draws, bench, RatioQuestion.Case.values()[turn]);
            case EDGE -> EdgeQuestion.of(draws, bench);
        };
    }
}
