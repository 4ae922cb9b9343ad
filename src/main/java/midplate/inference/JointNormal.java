package midplate.inference;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import midplate.catalogue.JointTraits;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** A normal curve over the traits of one compound in several pairs, and what follows from it when some of them are known. */
final class JointNormal {
    private final List<JointTraits.Axis> axes;
    private final RealVector mean;
    private final RealMatrix covariance;

    private JointNormal(List<JointTraits.Axis> axes, RealVector mean, RealMatrix covariance) {
        this.axes = List.copyOf(axes);
        this.mean = mean;
        this.covariance = covariance;
    }

    static JointNormal of(JointTraits traits) {
        int n = traits.axes().size();
        RealMatrix covariance = new Array2DRowRealMatrix(n, n);
        for (int i = 0, at = 0; i < n; i++) {
            for (int j = 0; j <= i; j++, at++) {
                covariance.setEntry(i, j, traits.covariance().get(at));
                covariance.setEntry(j, i, traits.covariance().get(at));
            }
        }
        double[] means =
                traits.means().stream().mapToDouble(Double::doubleValue).toArray();
        return new JointNormal(traits.axes(), new ArrayRealVector(means), covariance);
    }

    /** Whether it speaks of a pair. */
    boolean knows(String pair) {
        return axes.stream().anyMatch(axis -> axis.pair().equals(pair));
    }

    /** How many traits it knows of a compound in a pair. */
    int traits(String pair) {
        return places(pair).length;
    }

    private int[] places(String pair) {
        return IntStream.range(0, axes.size())
                .filter(i -> axes.get(i).pair().equals(pair))
                .toArray();
    }

    /** c and s of a pair, or c alone. */
    private int[] holdAndArea(String pair) {
        return IntStream.of(places(pair))
                .filter(i -> axes.get(i).trait() != JointTraits.Trait.T)
                .toArray();
    }

    /** What it is once the readings in a pair are known: {@code V' = V − V_a(I + ΛV_aa)⁻¹ΛV_aᵀ}, the mean likewise. */
    JointNormal given(String pair, TraitSite site) {
        int[] a = places(pair);
        RealMatrix to = covariance.getSubMatrix(all(), a);
        RealMatrix own = covariance.getSubMatrix(a, a);
        RealMatrix weighed = to.multiply(new LUDecomposition(MatrixUtils.createRealIdentityMatrix(a.length)
                        .add(site.precision().multiply(own)))
                .getSolver()
                .getInverse());
        RealVector away = site.pull().subtract(site.precision().operate(sub(mean, a)));
        return new JointNormal(
                axes,
                mean.add(weighed.operate(away)),
                TraitSite.symmetric(
                        covariance.subtract(weighed.multiply(site.precision()).multiply(to.transpose()))));
    }

    /**
     * The same with a further pair, in which c and s of a compound are those of a base pair, each with a normal error of its own.
     *
     * @param pair id of the further pair
     * @param base id of the base pair
     * @param deviationC of the error of c [ln units]
     * @param deviationS of the error of s [1]
     */
    JointNormal with(String pair, String base, double deviationC, double deviationS) {
        int[] like = holdAndArea(base);
        int n = axes.size();
        List<JointTraits.Axis> more = new ArrayList<>(axes);
        for (int place : like) {
            more.add(new JointTraits.Axis(pair, axes.get(place).trait()));
        }
        RealMatrix picks = new Array2DRowRealMatrix(more.size(), n);
        for (int i = 0; i < n; i++) {
            picks.setEntry(i, i, 1);
        }
        for (int k = 0; k < like.length; k++) {
            picks.setEntry(n + k, like[k], 1);
        }
        RealMatrix wider = picks.multiply(covariance).multiply(picks.transpose());
        for (int k = 0; k < like.length; k++) {
            double deviation = k == 0 ? deviationC : deviationS;
            wider.addToEntry(n + k, n + k, deviation * deviation);
        }
        return new JointNormal(more, picks.operate(mean), wider);
    }

    /** What traits in one pair say of c and s in another: {@code x_to = B·x_from + b}, around it a normal curve of covariance R. */
    LinkedPair link(String from, String to) {
        int[] a = places(from);
        int[] b = holdAndArea(to);
        RealMatrix across = covariance.getSubMatrix(b, a);
        RealMatrix slopes = across.multiply(TraitSite.inverse(covariance.getSubMatrix(a, a)));
        RealVector intercepts = sub(mean, b).subtract(slopes.operate(sub(mean, a)));
        RealMatrix around =
                TraitSite.symmetric(covariance.getSubMatrix(b, b).subtract(slopes.multiply(across.transpose())));
        return new LinkedPair(slopes.getData(), intercepts.toArray(), around.getData());
    }

    /** What it says of all traits in a pair. */
    Moments of(String pair) {
        int[] a = places(pair);
        return new Moments(sub(mean, a).toArray(), covariance.getSubMatrix(a, a).getData());
    }

    private int[] all() {
        return IntStream.range(0, axes.size()).toArray();
    }

    private static RealVector sub(RealVector vector, int[] places) {
        return new ArrayRealVector(
                IntStream.of(places).mapToDouble(vector::getEntry).toArray(), false);
    }
}
