package midplate.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How the traits of one compound in several pairs go together: a normal curve over all of them, fitted to compounds measured in one
 * pair or more.
 *
 * @param axes the traits, those of a pair one after the other
 * @param means of each trait, in its unit
 * @param covariance of the traits, lower triangle row by row
 * @param reaches between which c of one pair compounds were measured in another one
 * @param width how far compounds measured in two pairs lie around what one says of the other
 * @param differences what groups do in one pair beyond what they do in another, for the pairs for which that was fitted
 */
public record JointTraits(
        List<Axis> axes,
        List<Double> means,
        List<Double> covariance,
        List<Reach> reaches,
        Width width,
        List<GroupDifference> differences) {
    /** Keeps its own copies. */
    public JointTraits {
        axes = List.copyOf(axes);
        means = List.copyOf(means);
        covariance = List.copyOf(covariance);
        reaches = List.copyOf(reaches);
        differences = List.copyOf(differences);
    }

    /** A curve alone, around which compounds lie as it says. */
    public JointTraits(List<Axis> axes, List<Double> means, List<Double> covariance) {
        this(axes, means, covariance, List.of(), Width.OF_THE_CURVE, List.of());
    }

    /** Which trait of a compound. */
    public enum Trait {
        /** How weakly it is held [ln units]. */
        C,
        /** Its area relative to the average [1]. */
        S,
        /** How early it climbs [1]. */
        T
    }

    /**
     * A trait in a pair.
     *
     * @param pair id of the pair
     * @param trait which
     */
    public record Axis(String pair, Trait trait) {}

    /**
     * Compounds measured in two pairs.
     *
     * @param from id of one pair
     * @param to id of the other
     * @param compounds how many there are
     * @param lowest c in the first below which fewer than one in fifty of them lie: beyond it nothing is known of the second [ln units]
     * @param highest c above which fewer than one in fifty lie [ln units]
     */
    public record Reach(String from, String to, int compounds, double lowest, double highest) {
        /** Whether a compound of that c [ln units] lies among them. */
        public boolean holds(double c) {
            return c >= lowest && c <= highest;
        }
    }

    /**
     * How far compounds lie around what their traits in one pair say of c in another: the variance there is that of the normal curve
     * times {@code factor·exp(slope·(c − mean))}, with c as foretold [ln units] and the mean of all compounds there. What is held
     * strongly has more groups, or stronger ones, that solvents tell apart.
     *
     * @param factor at the mean [1], above 0
     * @param slope [1/ln unit]
     */
    public record Width(double factor, double slope) {
        /** As the normal curve says. */
        public static final Width OF_THE_CURVE = new Width(1, 0);
    }

    /** The same of all pairs but one. */
    public JointTraits without(String pair) {
        List<Axis> axesLeft = new ArrayList<>();
        List<Double> meansLeft = new ArrayList<>();
        List<Double> covarianceLeft = new ArrayList<>();
        for (int i = 0, at = 0; i < axes.size(); i++) {
            boolean stays = !axes.get(i).pair().equals(pair);
            if (stays) {
                axesLeft.add(axes.get(i));
                meansLeft.add(means.get(i));
            }
            for (int j = 0; j <= i; j++, at++) {
                if (stays && !axes.get(j).pair().equals(pair)) {
                    covarianceLeft.add(covariance.get(at));
                }
            }
        }
        return new JointTraits(
                axesLeft,
                meansLeft,
                covarianceLeft,
                reaches.stream()
                        .filter(each -> !each.from().equals(pair) && !each.to().equals(pair))
                        .toList(),
                width,
                differences.stream()
                        .filter(each -> !each.from().equals(pair) && !each.to().equals(pair))
                        .toList());
    }

    /** Compounds measured in two pairs; empty where there were too few. */
    public Optional<Reach> reach(String from, String to) {
        return reaches.stream()
                .filter(reach -> reach.from().equals(from) && reach.to().equals(to))
                .findFirst();
    }
}
