package midplate.column;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Which of several programs is advised: chance against solvent and time.
 *
 * <p>The chance of a pure cut grows with the eluent run and levels off, so the best chance alone would ask for ever weaker eluents
 * and ever more solvent. Programs whose chance is within 0.05 of the best, and at least nine tenths of it, count as equally good:
 * the chance itself is hardly known better. (In glass columns within {@value #AS_GOOD_GLASS} and 0.85 of it: there the scatter is
 * taken over from cartridges, and the published rule is Rf 0.35.) Of these, the ones that keep the target at Rf 0.38 or below in the first eluent and
 * need {@value #LONG_VOIDS} column volumes at most go first (flash columns are published for a target at Rf 0.35, and ratios that
 * can be poured lie about 0.03 apart; higher up, what no plate has shown comes along), then those that keep it at Rf 0.5 or below;
 * and of those the one that needs the least solvent on average is taken; time follows the solvent. More than {@value #MOST_VOIDS} column volumes
 * are not spent while anything else is there. Where every chance is below 0.01 none says anything: then the target should lie
 * nearest to Rf 1/3, where a plate parts best. So it is, too, where nothing shows in which order the spots leave: then a run is
 * as good as a guess, and no solvent is spent to better it.
 *
 * @see "Still1978"
 */
final class ProgramRule {
    /** As good as the best [1]. */
    static final double AS_GOOD = 0.05;
    /** The same in glass, where the scatter behind the chance was not measured [1]; own. */
    static final double AS_GOOD_GLASS = 0.1;
    /** Column volumes that are not exceeded without need. */
    static final double MOST_VOIDS = 20;
    /** A run of more column volumes is long. */
    static final double LONG_VOIDS = 8;
    /** The highest Rf of the target that is sought [1]. */
    static final double HIGHEST_RF = 0.38;
    /** The highest where that makes the run long [1]. */
    static final double HIGHER_RF = 0.5;

    private static final double KEPT = 0.9;
    private static final double KEPT_GLASS = 0.85;
    private static final double HOPELESS = 0.01;
    static final double PARTS_BEST_RF = 1.0 / 3;
    /** A further step is poured only where it makes a pure cut so much likelier [1], */
    private static final double SURER = 0.1;
    /** or where it spares so much of the solvent of a long run … [1] */
    private static final double SPARED = 0.45;
    /** … and costs no more of the chance than this [1]. */
    private static final double COSTS = 0.02;

    private final TrialColumn column;

    ProgramRule(TrialColumn column) {
        this.column = column;
    }

    /** Of programs, the one that puts the target where a plate parts best; there is at least one. */
    WeighedProgram nearestToPlates(List<WeighedProgram> weighed) {
        return weighed.stream()
                .min(Comparator.comparingDouble((WeighedProgram each) -> Math.abs(firstRf(each) - PARTS_BEST_RF))
                        .thenComparingDouble(WeighedProgram::firstPercent))
                .orElseThrow();
    }

    /** The one to advise of programs with as many steps; there is at least one. */
    WeighedProgram choose(List<WeighedProgram> weighed) {
        double longest = MOST_VOIDS * column.voidMl();
        List<WeighedProgram> all = preferred(weighed, each -> each.meanMl() <= longest);
        double best = all.stream().mapToDouble(WeighedProgram::chance).max().orElse(0);
        if (best < HOPELESS) {
            return nearestToPlates(all);
        }
        double least = Math.max(best - margin(), (isGlass() ? KEPT_GLASS : KEPT) * best);
        List<WeighedProgram> good =
                all.stream().filter(each -> each.chance() >= least).toList();
        double shortEnough = LONG_VOIDS * column.voidMl();
        List<WeighedProgram> low = preferred(good, each -> firstRf(each) <= HIGHER_RF);
        return preferred(low, each -> firstRf(each) <= HIGHEST_RF && each.meanMl() <= shortEnough).stream()
                .min(Comparator.comparingDouble(WeighedProgram::meanMl)
                        .thenComparingDouble(each -> -each.chance())
                        .thenComparingDouble(WeighedProgram::firstPercent))
                .orElseThrow();
    }

    private static List<WeighedProgram> preferred(List<WeighedProgram> all, Predicate<WeighedProgram> wanted) {
        List<WeighedProgram> some = all.stream().filter(wanted).toList();
        return some.isEmpty() ? all : some;
    }

    private boolean isGlass() {
        return column.bed() instanceof GlassColumn;
    }

    /** A chance so much below the best counts as equally good [1]. */
    double margin() {
        return isGlass() ? AS_GOOD_GLASS : AS_GOOD;
    }

    private double firstRf(WeighedProgram each) {
        return column.rf(column.target(), each.firstPercent());
    }

    /** Whether further steps need not be thought of: the chance is high and the run is short. */
    boolean isGoodEnough(WeighedProgram one) {
        return one.chance() >= 1 - 2 * AS_GOOD && one.meanMl() <= LONG_VOIDS * column.voidMl();
    }

    /** Whether one with more steps is worth the trouble: it is more often pure, or spares much solvent of a long run. */
    boolean isWorth(WeighedProgram more, WeighedProgram fewer) {
        boolean surer = more.chance() >= fewer.chance() + SURER;
        boolean sparing = fewer.meanMl() > LONG_VOIDS * column.voidMl()
                && more.meanMl() <= (1 - SPARED) * fewer.meanMl()
                && more.chance() >= fewer.chance() - COSTS;
        return surer || sparing;
    }
}
