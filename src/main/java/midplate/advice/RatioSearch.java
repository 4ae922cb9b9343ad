package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.inference.Climb;
import midplate.inference.Knowledge;
import midplate.inference.Outlook;
import midplate.inference.PairModel;
import midplate.inference.PossibleSamples;

/**
 * Finds the share of the strong solvent that suits all spots.
 *
 * <p>The best chance that every spot reads inside the window, and the named pairs lie apart, counts first. Among shares whose
 * chance is within 0.02 of the best, the spots' separation decides: the largest expected smallest resolution between
 * neighbours; one spot alone should come nearest to Rf 0.4. Among the simple ratios to pour, of which few come near the best,
 * it decides within 0.005 only: there 0.02 cost about one hit in a hundred. Where the best chance is itself small, 0.02 would let anything
 * through; then a share must also keep nine tenths of it.
 *
 * <p>Where even the best is below 0.05, that chance decides nothing: it is a tail of how a structure or a reading may be wrong.
 * Where some ratio lets expect half a spot or more inside, the number of spots to expect inside, and of pairs apart, decides. Where
 * none does, the spots should come as near to the window as they can: the smallest largest distance between {@code η = a·c + s·G}
 * of a spot's mean traits [ln units, ln(Rf/(1 − Rf)) between the lines] and the edge of the window; spots that stay low get the
 * strongest mixture, spots that run high the weakest. Such a share has its own chance, at most 0.05 below the best.
 */
final class RatioSearch {
    private static final double AS_GOOD = 0.02;
    private static final double AS_GOOD_POURED = 0.005;
    private static final double KEPT = 0.9;
    private static final double HOPELESS = 0.05;
    /** So many spots to expect inside are something to go by [1]. */
    private static final double SOMETHING = 0.5;

    private static final double ROUNDING = 1e-9;
    /** Where one spot alone should come nearest [1]. */
    private static final double FAVOURITE_RF = 0.4;

    private static final double FINE_TO = 10;
    private static final double FINE = 0.25;
    private static final double COARSE = 0.5;
    private static final List<Double> EVERY = every();
    private static final int STRIDE = 5;
    /** Below 2.5 % the strength climbs so steeply that each share is tried. */
    private static final int EACH_UP_TO = 10;

    private static final int SKIPPED = 3;
    private static final double NEAR = 0.05;
    private static final double NEAR_SHARE = 0.75;

    private final Outlook outlook;
    private final Aim aim;
    private final Window window;
    private final PossibleSamples samples;
    private final List<Double> promising;

    /** A share with the chance of what is aimed at. */
    record Found(double percent, double chance) {}

    private RatioSearch(Aim aim, Window window) {
        this.window = window;
        this.outlook = aim.outlook();
        this.aim = aim;
        this.samples = outlook.possibleSamples();
        this.promising = promising();
    }

    /**
     * For an aim.
     *
     * @param window where the spots of the aim should read
     */
    static RatioSearch of(Aim aim, Window window) {
        return new RatioSearch(aim, window);
    }

    PossibleSamples samples() {
        return samples;
    }

    /** The optimum on a grid of 0.25 % up to 10 % and 0.5 % above, as far as the curve of the pair goes. */
    Found optimum() {
        return best(promising, AS_GOOD);
    }

    /** Mixtures poured in practice, of which this glassware can measure both parts. */
    private static List<Ratio> measurable(double first, double last, Glassware glassware) {
        return PourableRatios.between(first, last).stream()
                .filter(glassware::measures)
                .toList();
    }

    /** Of the mixtures that are poured in practice those that this glassware can measure and that come near the best. */
    private List<Ratio> pourables(Glassware glassware) {
        PairModel model = outlook.knowledge().model();
        List<Ratio> ratios = measurable(promising.get(0), promising.get(promising.size() - 1), glassware);
        return ratios.isEmpty() ? measurable(model.lowestPercent(), model.highestPercent(), glassware) : ratios;
    }

    private static Ratio at(double percent, List<Ratio> ratios) {
        return ratios.stream()
                .filter(ratio -> ratio.percentStrong() == percent)
                .findFirst()
                .orElseThrow();
    }

    /** The best of the mixtures that are poured in practice and that the glassware can measure. */
    Ratio pourable(Glassware glassware) {
        List<Ratio> ratios = pourables(glassware);
        return at(best(shares(ratios), AS_GOOD_POURED).percent(), ratios);
    }

    private static List<Double> shares(List<Ratio> ratios) {
        return ratios.stream().map(Ratio::percentStrong).toList();
    }

    /** The greatest chance at given shares, of those that come near it; empty where none does. */
    Optional<Found> likeliest(List<Double> percents) {
        double first = promising.get(0);
        double last = promising.get(promising.size() - 1);
        List<Double> near = percents.stream()
                .filter(percent -> percent >= first && percent <= last)
                .toList();
        return near.isEmpty() ? Optional.empty() : Optional.of(likeliestOf(near));
    }

    private Found likeliestOf(List<Double> percents) {
        Found likeliest = new Found(percents.get(0), aim.chance(percents.get(0)));
        for (double percent : percents) {
            double chance = aim.chance(percent, likeliest.chance());
            likeliest = chance > likeliest.chance() ? new Found(percent, chance) : likeliest;
        }
        return likeliest;
    }

    /**
     * Shares at which the chance comes near the best: every {@value #STRIDE}th of the grid is tried, and those in between
     * are kept where a neighbour tried comes near. A chance is a smooth curve over the ratio, so what is left out lies lower
     * by far more than what is looked for.
     */
    private List<Double> promising() {
        PairModel model = outlook.knowledge().model();
        List<Double> grid = grid(model.lowestPercent(), model.highestPercent());
        double[] chances = new double[grid.size()];
        double most = 0;
        for (int i = 0; i < chances.length; i++) {
            if (i % STRIDE == 0 || i < EACH_UP_TO) {
                chances[i] = aim.chance(grid.get(i), near(most));
                most = Math.max(most, chances[i]);
            }
        }
        double near = near(most);
        List<Double> kept = new ArrayList<>();
        for (int i = 0; i < chances.length; i++) {
            int before = i - i % STRIDE;
            int after = Math.min(before + STRIDE, (chances.length - 1) / STRIDE * STRIDE);
            if (Math.max(chances[i], Math.max(chances[before], chances[after])) >= near) {
                kept.add(grid.get(i));
            }
        }
        return kept;
    }

    /** The chance that is near enough to the best. */
    private static double near(double most) {
        return most < HOPELESS ? 0 : Math.min(most - NEAR, NEAR_SHARE * most);
    }

    /** The chance that is as good as the best. */
    private static double least(double most, double asGood) {
        return most < HOPELESS ? 0 : Math.max(most - asGood, KEPT * most);
    }

    /** The optimum among given shares, at least one; a chance that lies no farther from the best is as good. */
    private Found best(List<Double> percents, double asGood) {
        List<Found> all = new ArrayList<>();
        double most = 0;
        for (double percent : percents) {
            Found found = new Found(percent, aim.chance(percent, least(most, asGood)));
            all.add(found);
            most = Math.max(most, found.chance());
        }
        return isHopeless(most) ? hopeless(all) : bestPlaced(all, least(most, asGood));
    }

    private Found bestPlaced(List<Found> all, double least) {
        Found best = all.get(0);
        double bestWorth = Double.NEGATIVE_INFINITY;
        for (Found found : all) {
            if (found.chance() >= least) {
                double worth = placing(found.percent());
                if (worth > bestWorth) {
                    bestWorth = worth;
                    best = found;
                }
            }
        }
        return best;
    }

    /**
     * The greatest chance of an aim on one plate, over given shares, rising: every third is tried, and then
     * those beside the best of them.
     */
    static Found likeliest(Aim aim, List<Double> percents) {
        int best = 0;
        double most = -1;
        for (int i = 0; i < percents.size(); i += SKIPPED) {
            double chance = aim.chance(percents.get(i), most);
            if (chance > most) {
                most = chance;
                best = i;
            }
        }
        Found found = new Found(percents.get(best), most);
        int last = Math.min(percents.size() - 1, best + SKIPPED - 1);
        for (int i = Math.max(0, best - SKIPPED + 1); i <= last; i++) {
            double chance = aim.chance(percents.get(i), found.chance());
            if (chance > found.chance()) {
                found = new Found(percents.get(i), chance);
            }
        }
        return found;
    }

    /** The share at which most is to be expected; where that is next to nothing, one that brings the spots nearest. */
    private Found hopeless(List<Found> all) {
        boolean something = all.stream().anyMatch(found -> aim.inside(found.percent()) >= SOMETHING);
        Found best = all.get(0);
        double most = Double.NEGATIVE_INFINITY;
        for (Found found : something ? all : nearest(all)) {
            double expected = aim.expected(found.percent());
            if (expected > most) {
                most = expected;
                best = found;
            }
        }
        return best;
    }

    /** The shares at which the spot that lies farthest from the window comes as near to its edge as it can [ln units]. */
    private List<Found> nearest(List<Found> all) {
        Knowledge knowledge = outlook.knowledge();
        PairModel model = knowledge.model();
        double low = model.eta(window.low());
        double high = model.eta(window.high());
        List<double[]> means = aim.spots().stream()
                .map(spot -> new double[] {knowledge.meanC(spot), knowledge.meanS(spot)})
                .toList();
        double[] farthest = new double[all.size()];
        double smallest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < farthest.length; i++) {
            Climb climb = model.climb(all.get(i).percent());
            for (double[] mean : means) {
                double eta = climb.eta(mean[0], mean[1], 0);
                farthest[i] = Math.max(farthest[i], Math.max(low - eta, eta - high));
            }
            smallest = Math.min(smallest, farthest[i]);
        }
        List<Found> nearest = new ArrayList<>();
        for (int i = 0; i < farthest.length; i++) {
            if (farthest[i] <= smallest + ROUNDING) {
                nearest.add(all.get(i));
            }
        }
        return nearest;
    }

    /** Whether a best chance is so small that it decides nothing. */
    static boolean isHopeless(double chance) {
        return chance < HOPELESS;
    }

    /** What decides among ratios of nearly the same chance, the more the better: how well the spots part, or lie, at a share. */
    private double placing(double percent) {
        if (aim.spots().size() == 1) {
            return -Math.abs(outlook.rf(aim.spots().get(0), percent) - FAVOURITE_RF);
        }
        return resolution(percent);
    }

    /** The smallest resolution between neighbours to expect at a share [1, relative]. */
    double resolution(double percent) {
        return samples.smallestResolution(outlook.knowledge().model().climb(percent));
    }

    private static List<Double> every() {
        List<Double> grid = new ArrayList<>();
        for (int step = 0; step * FINE < FINE_TO; step++) {
            grid.add(step * FINE);
        }
        for (int step = 0; FINE_TO + step * COARSE <= 100; step++) {
            grid.add(FINE_TO + step * COARSE);
        }
        return List.copyOf(grid);
    }

    /** Shares from one limit to the other [% v/v]. */
    static List<Double> grid(double from, double to) {
        List<Double> grid = new ArrayList<>(EVERY.size());
        for (Double percent : EVERY) {
            if (percent >= from && percent <= to) {
                grid.add(percent);
            }
        }
        if (grid.isEmpty() || grid.get(grid.size() - 1) < to) {
            grid.add(to);
        }
        return grid;
    }
}
