package midplate.inference;

import java.util.List;
import midplate.catalogue.GroupDifference;

/** What the parts of a molecule do to c in one pair beyond another, with the arithmetic ready. */
final class GroupShift {
    private final int[] places;
    private final double[] effects;
    private final double[][] covariance;
    private final double unseen;
    private final double residual;

    GroupShift(MoleculeParts parts, GroupDifference difference) {
        List<String> names = parts.names();
        int count = difference.parts().size();
        places = new int[count];
        effects = new double[count];
        covariance = new double[count][count];
        for (int i = 0, at = 0; i < count; i++) {
            places[i] = names.indexOf(difference.parts().get(i).part());
            effects[i] = difference.parts().get(i).c();
            for (int j = 0; j <= i; j++, at++) {
                covariance[i][j] = difference.covariance().get(at);
                covariance[j][i] = difference.covariance().get(at);
            }
        }
        unseen = difference.unseen();
        residual = difference.residual();
    }

    /** By how much c of a compound lies higher than its traits in the other pair say [ln units]. */
    double shift(double[] row) {
        double sum = 0;
        for (int i = 0; i < places.length; i++) {
            sum += effects[i] * row[places[i]];
        }
        return sum;
    }

    /** The variance of c around that [ln units²]. */
    double variance(double[] row) {
        double sum = residual;
        double known = 0;
        for (int i = 0; i < places.length; i++) {
            double mine = row[places[i]];
            known += mine * mine;
            for (int j = 0; j < places.length && mine != 0; j++) {
                sum += mine * covariance[i][j] * row[places[j]];
            }
        }
        double all = 0;
        for (double each : row) {
            all += each * each;
        }
        return sum + unseen * (all - known);
    }
}
