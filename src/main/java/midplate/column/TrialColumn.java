package midplate.column;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;

/**
 * A sample on a bed, on which programs are tried in the mind: what each would give over all cases that the law foresees.
 */
final class TrialColumn {
    /** A run is stopped when the target has left in so many of the cases [1]. */
    private static final double LEFT = 0.95;
    /** Nobody runs on for more column volumes. */
    private static final double MOST_VOIDS = 40;
    /** Where nothing shows the order of two spots, no more column volumes are spent on finding it out. */
    static final double MOST_VOIDS_UNSHOWN = 10;

    /** Of two orders of which nothing shows either [1]. */
    private static final double EVEN_ODDS = 0.5;

    private static final double MIDDLE = 0.5;
    private static final double TAIL = 0.05;
    /** More fractions are no plan. */
    static final int MOST_FRACTIONS = 400;

    private final BandLaw law;
    private final Bed bed;
    private final double loadMl;
    private final int target;
    private final OptionalDouble fractionMl;
    private final Order order;
    private final Map<Double, double[]> rfs = new HashMap<>();

    /**
     * A sample on a bed.
     *
     * @param loadMl volume in which it is put on [ml]; 0 for a dry load
     * @param target place of the spot that is wanted
     * @param fractionMl volume of a fraction [ml], where it was said
     * @param order whether anything shows in which order its spots leave
     */
    TrialColumn(BandLaw law, Bed bed, double loadMl, int target, OptionalDouble fractionMl, Order order) {
        this.law = law;
        this.bed = bed;
        this.loadMl = loadMl;
        this.target = target;
        this.fractionMl = fractionMl;
        this.order = order;
    }

    /** The same sample on the same bed where nothing shows the order of its spots: stopped soon, and the order taken as a coin tossed. */
    TrialColumn unshown() {
        return new TrialColumn(law, bed, loadMl, target, fractionMl, Order.UNSHOWN);
    }

    /** Whether plates or structures show in which order spots leave. */
    enum Order {
        /** They do. */
        SHOWN,
        /** They do not: what the cases say of the order is what compounds do in general. */
        UNSHOWN
    }

    BandLaw law() {
        return law;
    }

    Bed bed() {
        return bed;
    }

    double loadMl() {
        return loadMl;
    }

    int target() {
        return target;
    }

    double voidMl() {
        return law.voidMl(bed);
    }

    /** The Rf of a spot to expect at a share [1]. */
    double rf(int spot, double percent) {
        return rfs.computeIfAbsent(percent, this::rfs)[spot];
    }

    private double[] rfs(double percent) {
        double[] all = new double[law.spots()];
        for (int spot = 0; spot < all.length; spot++) {
            all[spot] = law.rf(spot, percent).value();
        }
        return all;
    }

    /** The spot nearest to the target on a plate at a share; empty where the target is alone. */
    OptionalInt neighbour(double percent) {
        int nearest = -1;
        for (int spot = 0; spot < law.spots(); spot++) {
            if (spot != target && (nearest < 0 || gap(spot, percent) < gap(nearest, percent))) {
                nearest = spot;
            }
        }
        return nearest < 0 ? OptionalInt.empty() : OptionalInt.of(nearest);
    }

    private double gap(int spot, double percent) {
        return Math.abs(rf(spot, percent) - rf(target, percent));
    }

    /** ΔRf of the target to its nearest neighbour at a share [1]; infinite where it is alone. */
    double gap(double percent) {
        OptionalInt nearest = neighbour(percent);
        return nearest.isEmpty() ? Double.POSITIVE_INFINITY : gap(nearest.getAsInt(), percent);
    }

    /** The greatest of these over the steps of a program [1]. */
    double gap(Program program) {
        return program.steps().stream()
                .mapToDouble(step -> gap(step.percentStrong()))
                .max()
                .orElse(0);
    }

    Bands bands(Program program) {
        return law.bands(bed, program.endless(), loadMl);
    }

    /** What a program is worth over all cases. */
    WeighedProgram weigh(Program program) {
        return weigh(program, bands(program), 1);
    }

    /** The same over about so many of the cases, the same ones each time. */
    WeighedProgram weighAmong(Program program, int cases) {
        Bands bands = bands(program);
        return weigh(program, bands, Math.max(1, bands.cases() / cases));
    }

    private WeighedProgram weigh(Program program, Bands bands, int stride) {
        double run = runMl(program, bands, stride);
        double fraction = fractionMl.orElseGet(() -> BedHabits.fractionMl(bed, width(bands, stride), run));
        boolean open = Double.isInfinite(program.volumeMl());
        double collected = open ? wholeFractions(run, fraction) : run;
        double chance = collected / fraction > MOST_FRACTIONS ? 0 : chance(bands, collected, fraction, stride);
        double mean = meanMl(bands, collected, stride);
        return new WeighedProgram(program, chance, collected, mean, fraction);
    }

    /** Whole fractions [ml]: the last one is filled, unless that would be more than anybody runs. */
    private double wholeFractions(double runMl, double fraction) {
        double up = Math.ceil(runMl / fraction - 1e-9) * fraction;
        double down = Math.floor(runMl / fraction + 1e-9) * fraction;
        return Math.max(fraction, up > mostMl() ? down : up);
    }

    private double mostMl() {
        return (order == Order.SHOWN ? MOST_VOIDS : MOST_VOIDS_UNSHOWN) * voidMl();
    }

    /** The volumes of a program, or, where it is endless, until the target has very likely left [ml]. */
    private double runMl(Program program, Bands bands, int stride) {
        double said = program.volumeMl();
        if (Double.isFinite(said)) {
            return said;
        }
        double left = quantile(bands, one -> bands.endMl(target, one), LEFT, stride);
        double begun = said(program);
        return Math.max(begun, Math.min(left, mostMl()));
    }

    /** What is poured before the last step, with at least a little of that [ml]. */
    private double said(Program program) {
        double before = 0;
        for (Program.Step step : program.steps()) {
            before += Double.isFinite(step.volumeMl()) ? step.volumeMl() : 0;
        }
        return program.steps().size() == 1 ? 0 : before + voidMl() / 2;
    }

    /** Eluent run when the target has left, on average over the cases; where it has not left by the end, all of it [ml]. */
    private double meanMl(Bands bands, double runMl, int stride) {
        double sum = 0;
        int seen = 0;
        for (int one = 0; one < bands.cases(); one += stride) {
            sum += Math.min(runMl, bands.endMl(target, one));
            seen++;
        }
        return sum / seen;
    }

    /** How wide the band of the target is, in the middle of the cases [ml]. */
    private double width(Bands bands, int stride) {
        return quantile(bands, one -> bands.endMl(target, one) - bands.startMl(target, one), MIDDLE, stride);
    }

    /** The share of cases in which some run of fractions is a good cut and lies between the neighbours that the plan shows. */
    private double chance(Bands bands, double runMl, double fraction, int stride) {
        FractionGrid grid = new FractionGrid(fraction, runMl);
        LeavingOrder sides = LeavingOrder.of(bands, law.spots(), target, stride);
        int ordered = 0;
        int good = 0;
        int seen = 0;
        for (int one = 0; one < bands.cases(); one += stride) {
            if (sides.holds(one)) {
                ordered++;
                good += isGood(bands, grid, one) ? 1 : 0;
            }
            seen++;
        }
        double even = order == Order.SHOWN ? 1 : Math.min(1, EVEN_ODDS * seen / Math.max(1, ordered));
        return even * good / seen;
    }

    private boolean isGood(Bands bands, FractionGrid grid, int one) {
        double[] wanted = grid.shares(bands.startMl(target, one), bands.endMl(target, one));
        return PureCut.isGood(wanted, others(bands, grid, one));
    }

    private double[] others(Bands bands, FractionGrid grid, int one) {
        double[] others = new double[grid.count()];
        for (int spot = 0; spot < law.spots(); spot++) {
            if (spot != target) {
                grid.addShares(bands.startMl(spot, one), bands.endMl(spot, one), others);
            }
        }
        return others;
    }

    /** The chance that the target has a good cut beside one other spot alone [1]. */
    double chanceBeside(int other, Bands bands, WeighedProgram chosen) {
        FractionGrid grid = new FractionGrid(chosen.fractionMl(), chosen.runMl());
        LeavingOrder order = LeavingOrder.of(bands, law.spots(), target, 1);
        int good = 0;
        for (int one = 0; one < bands.cases(); one++) {
            double[] wanted = grid.shares(bands.startMl(target, one), bands.endMl(target, one));
            double[] foreign = grid.shares(bands.startMl(other, one), bands.endMl(other, one));
            good += order.holds(other, one) && PureCut.isGood(wanted, foreign) ? 1 : 0;
        }
        return (double) good / bands.cases();
    }

    /**
     * The spots of which nothing shows whether they leave before or after the target: in none of these programs do they keep their
     * side in {@value LeavingOrder#SHOWN} of the cases, or, where one of the two may lie nearly anywhere, in
     * {@value LeavingOrder#SHOWN_VAGUE}.
     *
     * @param percents shares [% v/v] at which plates may be run
     */
    List<Integer> unshown(List<Program> programs, List<Double> percents) {
        double[] surest = new double[law.spots()];
        for (Program program : programs) {
            LeavingOrder order = LeavingOrder.of(bands(program), law.spots(), target, 1);
            for (int spot = 0; spot < surest.length; spot++) {
                surest[spot] = spot == target ? 1 : Math.max(surest[spot], order.share(spot));
            }
        }
        List<Integer> unshown = new ArrayList<>();
        for (int spot = 0; spot < surest.length; spot++) {
            boolean vague =
                    surest[spot] < LeavingOrder.SHOWN_VAGUE && (isVague(spot, percents) || isVague(target, percents));
            if (vague || surest[spot] < LeavingOrder.SHOWN) {
                unshown.add(spot);
            }
        }
        return List.copyOf(unshown);
    }

    private boolean isVague(int spot, List<Double> percents) {
        double middle = percents.stream()
                .min(Comparator.comparingDouble(percent -> Math.abs(rf(spot, percent) - ProgramRule.PARTS_BEST_RF)))
                .orElseThrow();
        Range90 band = law.rf(spot, middle);
        return band.high() - band.low() > LeavingOrder.VAGUE;
    }

    /** The share of cases in which a spot has not left when the run ends [1]. */
    double stays(int spot, Bands bands, double runMl) {
        int late = 0;
        for (int one = 0; one < bands.cases(); one++) {
            late += bands.endMl(spot, one) > runMl ? 1 : 0;
        }
        return (double) late / bands.cases();
    }

    /** A number over all cases, with the bounds that hold 90 % of them. */
    static Range90 range(Bands bands, IntToDoubleFunction value) {
        double[] sorted = sorted(bands, value, 1);
        return new Range90(at(sorted, MIDDLE), at(sorted, TAIL), at(sorted, 1 - TAIL));
    }

    private static double quantile(Bands bands, IntToDoubleFunction value, double part, int stride) {
        return at(sorted(bands, value, stride), part);
    }

    private static double[] sorted(Bands bands, IntToDoubleFunction value, int stride) {
        double[] all = new double[(bands.cases() + stride - 1) / stride];
        for (int i = 0; i < all.length; i++) {
            all[i] = value.applyAsDouble(i * stride);
        }
        Arrays.sort(all);
        return all;
    }

    /** A quantile of sorted numbers, straight between two of them. */
    private static double at(double[] sorted, double part) {
        double place = part * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
