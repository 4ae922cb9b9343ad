package midplate.inference;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import midplate.catalogue.JointTraits;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Fits a normal curve over the traits of compounds in several pairs, by expectation and maximization: each compound tells what the
 * readings of the pairs it was measured in say ({@link TraitSite}), and of the others what goes with it.
 *
 * @see "DempsterLairdRubin1977"
 */
final class JointFit {
    private static final int ROUNDS = 200;

    private final List<JointTraits.Axis> axes = new ArrayList<>();
    private final List<RealMatrix> precisions = new ArrayList<>();
    private final List<RealVector> pulls = new ArrayList<>();
    private RealVector mean;
    private RealMatrix covariance;

    private JointFit(Map<String, Moments> spreads, Map<String, Map<Series, TraitSite>> sites) {
        for (Map.Entry<String, Moments> spread : spreads.entrySet()) {
            for (int trait = 0; trait < spread.getValue().mean().length; trait++) {
                axes.add(new JointTraits.Axis(spread.getKey(), JointTraits.Trait.values()[trait]));
            }
        }
        this.mean = new ArrayRealVector(axes.size());
        this.covariance = new Array2DRowRealMatrix(axes.size(), axes.size());
        Set<Series> compounds = new TreeSet<>();
        sites.values().forEach(each -> compounds.addAll(each.keySet()));
        for (int i = 0; i < compounds.size(); i++) {
            precisions.add(new Array2DRowRealMatrix(axes.size(), axes.size()));
            pulls.add(new ArrayRealVector(axes.size()));
        }
        int first = 0;
        for (Map.Entry<String, Moments> spread : spreads.entrySet()) {
            mean.setSubVector(first, new ArrayRealVector(spread.getValue().mean()));
            covariance.setSubMatrix(spread.getValue().covariance(), first, first);
            int compound = 0;
            for (Series series : compounds) {
                TraitSite site = sites.getOrDefault(spread.getKey(), Map.of()).get(series);
                if (site != null) {
                    precisions.get(compound).setSubMatrix(site.precision().getData(), first, first);
                    pulls.get(compound).setSubVector(first, site.pull());
                }
                compound++;
            }
            first += spread.getValue().mean().length;
        }
    }

    /**
     * Fits it.
     *
     * @param spreads what compounds are like in each pair by itself, to begin with
     * @param sites what was read of each compound, by pair
     * @return the curve, without reaches and differences
     */
    static JointTraits fit(Map<String, Moments> spreads, Map<String, Map<Series, TraitSite>> sites) {
        JointFit fit = new JointFit(spreads, sites);
        for (int round = 0; round < ROUNDS; round++) {
            fit.round();
        }
        return fit.result();
    }

    private void round() {
        RealMatrix was = TraitSite.inverse(covariance);
        RealVector pull = was.operate(mean);
        List<RealVector> means = new ArrayList<>();
        RealMatrix spread = new Array2DRowRealMatrix(axes.size(), axes.size());
        RealVector sum = new ArrayRealVector(axes.size());
        for (int i = 0; i < precisions.size(); i++) {
            RealMatrix own = TraitSite.inverse(was.add(precisions.get(i)));
            RealVector each = own.operate(pull.add(pulls.get(i)));
            means.add(each);
            sum = sum.add(each);
            spread = spread.add(own);
        }
        mean = sum.mapDivide(precisions.size());
        for (RealVector each : means) {
            RealVector away = each.subtract(mean);
            spread = spread.add(away.outerProduct(away));
        }
        covariance = TraitSite.symmetric(spread.scalarMultiply(1.0 / precisions.size()));
    }

    private JointTraits result() {
        List<Double> means = new ArrayList<>();
        List<Double> triangle = new ArrayList<>();
        for (int i = 0; i < axes.size(); i++) {
            means.add(mean.getEntry(i));
            for (int j = 0; j <= i; j++) {
                triangle.add(covariance.getEntry(i, j));
            }
        }
        return new JointTraits(axes, means, triangle);
    }
}
