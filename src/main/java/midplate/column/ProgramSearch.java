package midplate.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoublePredicate;
import midplate.advice.PourableRatios;
import midplate.advice.Ratio;

/**
 * Finds what to pour, among mixtures that are poured in practice: one eluent, or two or three, one after the other. Steps are sought
 * coarsely over a part of the cases, then finely over all of them; some hundred programs are tried.
 */
final class ProgramSearch {
    /** Below this Rf of the target nearly nothing is gained but solvent and time: V₀ is a tenth of V, and ln V parts as ln k does [1]. */
    private static final double LOWEST_RF = 0.1;

    private static final double HIGHEST_RF = 0.65;
    private static final double HIGHEST_FIRST_RF = 0.45;
    private static final double HIGHEST_LAST_RF = 0.8;
    private static final int FIRSTS = 8;
    private static final int NEXTS = 6;
    private static final double[] SWITCH_VOIDS = {2, 2.5, 3, 4, 6, 8, 11};
    /** A step shorter than this hardly reaches the bands [column volumes]. */
    private static final double SHORTEST_VOIDS = 2;

    /**
     * The next eluent holds at most so many times the strong solvent: a greater jump heats the bed, brings bubbles and cracks, and
     * sweeps along what stayed at the top; common practice, no source.
     */
    static final double STEEPEST = 3;
    /** After the weak solvent alone: so much at most [% v/v]; common practice, no source. */
    static final double FROM_NOTHING = 5;

    private static final double[] NEARBY = {0.8, 1.25};
    /** Volumes are rounded to two digits. */
    private static final double ROUNDING = 0.94;
    /** So many cases are looked at in the coarse search. */
    private static final int FEW_CASES = 64;
    /** So many of the coarse search are looked at over all cases. */
    private static final int FINALISTS = 8;

    private final TrialColumn column;
    private final ProgramRule rule;
    private final List<Double> percents;

    ProgramSearch(TrialColumn column) {
        this.column = column;
        this.rule = new ProgramRule(column);
        percents = PourableRatios.between(
                        column.law().lowestPercent(), column.law().highestPercent())
                .stream()
                .map(Ratio::percentStrong)
                .toList();
    }

    /** The shares that are poured in practice [% v/v]. */
    List<Double> percents() {
        return percents;
    }

    ProgramRule rule() {
        return rule;
    }

    private double rf(double percent) {
        return column.rf(column.target(), percent);
    }

    /** Single eluents worth a thought, weak to strong. */
    List<WeighedProgram> isocratic() {
        List<Double> fit = where(p -> rf(p) >= LOWEST_RF && rf(p) <= HIGHEST_RF);
        List<Double> some = fit.isEmpty() ? nearest(percents) : fit;
        return some.stream()
                .map(percent -> column.weigh(Program.isocratic(percent)))
                .toList();
    }

    private List<Double> where(DoublePredicate wanted) {
        return percents.stream().filter(wanted::test).toList();
    }

    /** Where no ratio brings the target among them, the one that comes nearest. */
    private List<Double> nearest(List<Double> all) {
        double middle = (LOWEST_RF + HIGHEST_RF) / 2;
        return all.stream().min(Comparator.comparingDouble(percent -> Math.abs(rf(percent) - middle))).stream()
                .toList();
    }

    /** The best program of two eluents; empty where the pair leaves no room for two. */
    List<WeighedProgram> twoSteps() {
        List<WeighedProgram> tried = new ArrayList<>();
        for (double first : firsts()) {
            for (double next : nexts(first)) {
                for (double voids : SWITCH_VOIDS) {
                    tried.add(coarse(program(first, round(voids * column.voidMl()), next)));
                }
            }
        }
        return finest(tried);
    }

    /** The best program of three: a further eluent between the two of a program, or after them. */
    List<WeighedProgram> threeSteps(WeighedProgram two) {
        Program.Step first = two.program().steps().get(0);
        double last = two.program().steps().get(1).percentStrong();
        List<WeighedProgram> tried = new ArrayList<>();
        for (double voids : SWITCH_VOIDS) {
            double second = round(voids * column.voidMl());
            for (double middle : thin(where(p -> rises(first.percentStrong(), p) && p < last), NEXTS)) {
                tried.add(coarse(program(first, middle, second, last)));
            }
            for (double end : nexts(last)) {
                tried.add(coarse(program(first, last, second, end)));
            }
        }
        return finest(tried);
    }

    private List<Double> firsts() {
        return thin(where(p -> rf(p) >= LOWEST_RF && rf(p) <= HIGHEST_FIRST_RF), FIRSTS);
    }

    private List<Double> nexts(double before) {
        return thin(where(p -> rises(before, p) && rf(p) <= HIGHEST_LAST_RF), NEXTS);
    }

    /** So many at most, evenly, the first and the last among them. */
    private static List<Double> thin(List<Double> all, int most) {
        if (all.size() <= most) {
            return all;
        }
        List<Double> some = new ArrayList<>();
        for (int i = 0; i < most; i++) {
            some.add(all.get(i * (all.size() - 1) / (most - 1)));
        }
        return some;
    }

    private static Program program(double first, double volumeMl, double next) {
        return new Program(
                List.of(new Program.Step(first, volumeMl), new Program.Step(next, Double.POSITIVE_INFINITY)));
    }

    private static Program program(Program.Step first, double middle, double volumeMl, double last) {
        return new Program(
                List.of(first, new Program.Step(middle, volumeMl), new Program.Step(last, Double.POSITIVE_INFINITY)));
    }

    private WeighedProgram coarse(Program program) {
        return column.weighAmong(program, FEW_CASES);
    }

    /** The best of a coarse search and what lies near it, over all cases; that best one comes first. */
    private List<WeighedProgram> finest(List<WeighedProgram> tried) {
        if (tried.isEmpty()) {
            return List.of();
        }
        List<WeighedProgram> left = new ArrayList<>(tried);
        List<WeighedProgram> fine = new ArrayList<>();
        for (int i = 0; i < FINALISTS && !left.isEmpty(); i++) {
            WeighedProgram best = rule.choose(left);
            left.remove(best);
            fine.add(column.weigh(best.program()));
        }
        for (Program near : nearby(rule.choose(fine).program())) {
            fine.add(column.weigh(near));
        }
        WeighedProgram best = rule.choose(fine);
        fine.remove(best);
        fine.add(0, best);
        return fine;
    }

    /** Each volume a little smaller and greater, each eluent one ratio weaker and stronger. */
    private List<Program> nearby(Program program) {
        List<Program> near = new ArrayList<>();
        for (int i = 0; i < program.steps().size(); i++) {
            Program.Step step = program.steps().get(i);
            for (double factor : NEARBY) {
                if (Double.isFinite(step.volumeMl())) {
                    near.add(with(program, i, new Program.Step(step.percentStrong(), round(factor * step.volumeMl()))));
                }
            }
            int at = percents.indexOf(step.percentStrong());
            for (int to : List.of(at - 1, at + 1)) {
                if (to >= 0 && to < percents.size()) {
                    near.add(with(program, i, new Program.Step(percents.get(to), step.volumeMl())));
                }
            }
        }
        near.removeIf(
                each -> !climbs(each) || each.steps().get(0).volumeMl() < SHORTEST_VOIDS * column.voidMl() * ROUNDING);
        return near;
    }

    /** Whether an eluent is stronger than the one before it, but not by too much. */
    private static boolean rises(double before, double next) {
        return next > before && next <= Math.max(FROM_NOTHING, STEEPEST * before);
    }

    private static boolean climbs(Program program) {
        for (int i = 1; i < program.steps().size(); i++) {
            if (!rises(
                    program.steps().get(i - 1).percentStrong(),
                    program.steps().get(i).percentStrong())) {
                return false;
            }
        }
        return true;
    }

    private static Program with(Program program, int place, Program.Step step) {
        List<Program.Step> steps = new ArrayList<>(program.steps());
        steps.set(place, step);
        return new Program(steps);
    }

    /** To what is poured: two digits. */
    private static double round(double ml) {
        double step = Math.pow(10, Math.floor(Math.log10(ml)) - 1);
        return Math.max(1, Math.rint(ml / step) * step);
    }
}
