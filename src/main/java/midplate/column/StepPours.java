package midplate.column;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import midplate.advice.PourableRatios;
import midplate.advice.Ratio;

/** What to mix for each step: a tenth more than runs through, rounded up to what a cylinder reads. */
final class StepPours {
    private static final double SPARE = 1.1;
    private static final double ALL = 100;
    /** Parts of a hundred are told to two decimals. */
    private static final int PARTS = 10_000;
    /** Up to a volume [ml] a pipette or cylinder of that size reads steps of [ml]; common practice, no source. */
    private static final double[][] CYLINDERS = {
        {1, 0.01}, {10, 0.1}, {25, 0.5}, {100, 1}, {250, 5}, {500, 5}, {2000, 10}
    };

    /** To keep the ratio exactly, so many times what is needed with the spare may be mixed [1]. */
    private static final double MORE = 1.03;
    /** From here on … [ml] */
    private static final double FINE_ML = 100;
    /** … up to here a cylinder has marks every 2 ml, of which round volumes need none. */
    private static final double FINE_UP_TO_ML = 250;

    private static final double FINE_STEP_ML = 2;
    /** A share so near to parts that are poured in practice is meant as these [% v/v]. */
    private static final double MEANT = 0.05;
    /** Ratios of more parts are read off a cylinder as near as it goes. */
    private static final int MOST_PARTS = 200;

    private static final double LARGE_STEP_ML = 50;

    private StepPours() {}

    static List<ColumnPlan.StepPour> of(Program program) {
        return program.steps().stream().map(StepPours::of).toList();
    }

    private static ColumnPlan.StepPour of(Program.Step step) {
        Ratio ratio = ratio(step.percentStrong());
        double least = SPARE * step.volumeMl();
        return exactly(ratio, step.volumeMl(), least).orElseGet(() -> {
            double mix = up(least);
            double strong = nearest(mix * step.percentStrong() / ALL);
            double weak = up(clean(mix - strong));
            return new ColumnPlan.StepPour(ratio, step.volumeMl(), clean(weak + strong), weak, strong);
        });
    }

    /** In the very ratio, both volumes read on a cylinder; empty where that takes too much more. */
    private static Optional<ColumnPlan.StepPour> exactly(Ratio ratio, double volumeMl, double leastMl) {
        int parts = ratio.weak() + ratio.strong();
        int fewer = Math.min(ratio.weak(), ratio.strong());
        if (fewer == 0 || Math.max(ratio.weak(), ratio.strong()) > MOST_PARTS) {
            return Optional.empty();
        }
        double reading = graduation(leastMl * fewer / parts);
        double first = Math.ceil(leastMl * fewer / parts / reading - 1e-9);
        for (double at = first; at * reading * parts <= MORE * leastMl * fewer; at++) {
            double unit = at * reading / fewer;
            if (isRead(unit * ratio.weak()) && isRead(unit * ratio.strong())) {
                return Optional.of(new ColumnPlan.StepPour(
                        ratio,
                        volumeMl,
                        clean(unit * parts),
                        clean(unit * ratio.weak()),
                        clean(unit * ratio.strong())));
            }
        }
        return Optional.empty();
    }

    private static boolean isRead(double ml) {
        return isMultiple(ml, graduation(ml)) || (ml > FINE_ML && ml <= FINE_UP_TO_ML && isMultiple(ml, FINE_STEP_ML));
    }

    private static boolean isMultiple(double ml, double step) {
        return Math.abs(ml / step - Math.rint(ml / step)) < 1e-6;
    }

    /** The mixture as small whole parts, as far as it has them; a share told to a decimal is taken for the parts it stands for. */
    static Ratio ratio(double percentStrong) {
        return PourableRatios.between(percentStrong, percentStrong).stream()
                .findFirst()
                .orElseGet(() ->
                        small(percentStrong).orElseGet(() -> reduced((int) Math.round(percentStrong * PARTS / ALL))));
    }

    private static Optional<Ratio> small(double percentStrong) {
        return PourableRatios.between(percentStrong - MEANT, percentStrong + MEANT).stream()
                .filter(ratio -> ratio.strong() > 0 && ratio.weak() > 0)
                .min(Comparator.comparingDouble(ratio -> Math.abs(ratio.percentStrong() - percentStrong)));
    }

    private static Ratio reduced(int strong) {
        int divisor = BigInteger.valueOf(strong)
                .gcd(BigInteger.valueOf(PARTS - strong))
                .intValue();
        return new Ratio((PARTS - strong) / divisor, strong / divisor);
    }

    /** The reading of the cylinder that holds a volume [ml]. */
    private static double graduation(double ml) {
        for (double[] cylinder : CYLINDERS) {
            if (ml <= cylinder[0]) {
                return cylinder[1];
            }
        }
        return LARGE_STEP_ML;
    }

    /** Up to the next reading [ml]. */
    static double up(double ml) {
        double step = graduation(ml);
        return clean(Math.ceil(ml / step - 1e-9) * step);
    }

    private static double nearest(double ml) {
        double step = graduation(ml);
        return clean(Math.rint(ml / step) * step);
    }

    /** Without a tail of binary digits. */
    private static double clean(double ml) {
        return Math.rint(ml * 1000) / 1000 + 0.0;
    }
}
