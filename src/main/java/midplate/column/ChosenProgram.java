package midplate.column;

import java.util.List;
import java.util.Optional;
import midplate.advice.Ratio;
import midplate.words.Allowed;
import midplate.words.Digits;
import midplate.words.Message;

/**
 * What was chosen for a column, with what it was chosen from.
 *
 * @param question what was asked
 * @param column the sample on the bed
 * @param program what is poured
 * @param bands when each spot leaves in it
 * @param isocratic the single eluents weighed, weak to strong
 * @param steps the best programs of several eluents weighed, each with one eluent more; may be empty
 * @param gap ΔRf of the target to its nearest neighbour, in the step where it is greatest [1]; infinite where it is alone, 0.1 at
 *     least where nothing shows their order
 * @param mostMg what the bed carries at that [mg]
 * @param unshown the spots of which nothing shows whether they leave before or after the target
 */
record ChosenProgram(
        ColumnQuestion question,
        TrialColumn column,
        WeighedProgram program,
        Bands bands,
        List<WeighedProgram> isocratic,
        List<WeighedProgram> steps,
        double gap,
        double mostMg,
        List<Integer> unshown) {
    private static final double ALMOST = 1e-9;
    private static final double ALL = 100;
    /** Nobody measures more parts than this. */
    private static final int LARGE_PARTS = 200;

    /** More portions than this are no matter of one small column; common practice, no source. */
    static final int MOST_RUNS = 10;

    ChosenProgram {
        unshown = List.copyOf(unshown);
    }

    Message names(List<Integer> some) {
        return Allowed.list(some.stream().map(spot -> Allowed.words(name(spot))).toList());
    }

    /** An eluent in words: {@code 9 : 1}, a solvent alone, or, where no small parts make it, its share of the strong solvent. */
    Message eluent(double percent) {
        if (percent <= 0) {
            return Message.of("column.neat", "solvent", question.sample().weak().said());
        }
        if (percent >= ALL) {
            return Message.of(
                    "column.neat", "solvent", question.sample().strong().said());
        }
        Ratio ratio = StepPours.ratio(percent);
        return Math.max(ratio.weak(), ratio.strong()) > LARGE_PARTS
                ? Message.of(
                        "column.share",
                        "percent",
                        Digits.percent(percent),
                        "strong",
                        question.sample().strong().said())
                : Message.of("column.ratio", "weak", ratio.weak(), "strong", ratio.strong());
    }

    /** The same with its share of the strong solvent behind the parts. */
    Message eluentWithShare(double percent) {
        Message eluent = eluent(percent);
        return eluent.key().equals("column.ratio")
                ? Message.of("column.ratio-share", "ratio", eluent, "percent", Digits.percent(percent))
                : eluent;
    }

    boolean isDry() {
        return question.loading() == Loading.DRY;
    }

    String name(int spot) {
        return question.sample().spots().get(spot);
    }

    String target() {
        return question.target();
    }

    boolean isOwn() {
        return question.program().isPresent();
    }

    /** How many times the column is to be run for all of the sample. */
    int runs() {
        return (int) Math.max(1, Math.ceil(question.massMg() / mostMg - ALMOST));
    }

    /** What is put on in one of them [mg]. */
    double portionMg() {
        return question.massMg() / runs();
    }

    /** That the plan is for one of several, in words; empty where the bed carries all at once. */
    Optional<Message> portion() {
        if (runs() == 1) {
            return Optional.empty();
        }
        return Optional.of(
                isDry()
                        ? Message.of(
                                "column.portion-dry",
                                "runs",
                                runs(),
                                "massMg",
                                portionMg(),
                                "grams",
                                BedHabits.drySilicaGrams(portionMg()))
                        : Message.of(
                                "column.portion-wet", "runs", runs(), "massMg", portionMg(), "ml", column.loadMl()));
    }

    /** Eluent from the first drop to the last fraction [ml]. */
    double runMl() {
        return program.runMl();
    }
}
