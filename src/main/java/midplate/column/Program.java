package midplate.column;

import java.util.ArrayList;
import java.util.List;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * What is poured on a column, one eluent after the other.
 *
 * @param steps 1 to {@value #MOST_STEPS}; only the last one may be endless: it then goes on as long as it is needed
 */
public record Program(List<Step> steps) {
    /** More are no steps any more. */
    public static final int MOST_STEPS = 10;

    private static final double MOST_ML = 1_000_000;
    private static final double ALL = 100;

    /** Keeps its own copy; refuses what cannot be poured. */
    public Program {
        steps = List.copyOf(steps);
        List<Refusal> faults = faults(steps);
        if (!faults.isEmpty()) {
            throw faults.get(0);
        }
    }

    /** Everything that keeps steps from being a program, each with its place; empty where nothing does. */
    public static List<Refusal> faults(List<Step> steps) {
        List<Refusal> faults = new ArrayList<>();
        if (steps.isEmpty() || steps.size() > MOST_STEPS) {
            faults.add(new Refusal(
                    "column.steps",
                    Message.of("column.steps-out-of-range"),
                    Integer.toString(steps.size()),
                    Message.of("allowed.entries", "interval", Allowed.closed(1, MOST_STEPS)),
                    Message.of("column.todo-steps")));
        }
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            String place = "column.steps[" + i + "].";
            if (!(step.percentStrong() >= 0 && step.percentStrong() <= ALL)) {
                faults.add(new Refusal(
                        place + "percentStrong",
                        Message.of("plate.percent-out-of-range", "percent", step.percentStrong()),
                        Double.toString(step.percentStrong()),
                        Allowed.closed(0, ALL),
                        Message.of("todo.give-percent-of-volumes")));
            }
            boolean endless = i == steps.size() - 1 && step.volumeMl() == Double.POSITIVE_INFINITY;
            if (!((step.volumeMl() > 0 && step.volumeMl() <= MOST_ML) || endless)) {
                faults.add(new Refusal(
                        place + "volumeMl",
                        Message.of("column.step-volume-out-of-range"),
                        Double.toString(step.volumeMl()),
                        Allowed.leftOpen("0", Allowed.number(MOST_ML)),
                        Message.of("column.todo-step-volume")));
            }
        }
        return faults;
    }

    /**
     * One eluent.
     *
     * @param percentStrong share of the stronger solvent [% v/v]
     * @param volumeMl how much of it [ml]
     */
    public record Step(double percentStrong, double volumeMl) {}

    /** One eluent to the end. */
    public static Program isocratic(double percentStrong) {
        return new Program(List.of(new Step(percentStrong, Double.POSITIVE_INFINITY)));
    }

    /** All volumes together [ml]; infinite where the last step is endless. */
    double volumeMl() {
        return steps.stream().mapToDouble(Step::volumeMl).sum();
    }

    /** The same up to a volume [ml]: steps that would begin there or later are left out, the last one ends there. */
    Program until(double volumeMl) {
        List<Step> kept = new ArrayList<>();
        double before = 0;
        for (int i = 0; i < steps.size() && before < volumeMl; i++) {
            boolean last = i == steps.size() - 1;
            double until =
                    last ? volumeMl : Math.min(volumeMl, before + steps.get(i).volumeMl());
            kept.add(new Step(steps.get(i).percentStrong(), until - before));
            before = until;
        }
        return new Program(kept);
    }

    /** The same with each volume so many times as large, as far as that is taken. */
    Program scaled(double factor) {
        return new Program(steps.stream()
                .map(step -> new Step(
                        step.percentStrong(),
                        Double.isFinite(step.volumeMl())
                                ? Math.min(MOST_ML, factor * step.volumeMl())
                                : step.volumeMl()))
                .toList());
    }

    /** The same with a last step that does not end. */
    Program endless() {
        List<Step> all = new ArrayList<>(steps);
        Step last = all.remove(all.size() - 1);
        all.add(new Step(last.percentStrong(), Double.POSITIVE_INFINITY));
        return new Program(all);
    }
}
