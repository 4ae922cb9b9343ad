package midplate.inference;

import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What the readings of one compound in one pair say of its traits there by themselves, as a normal curve: {@code exp(−½·xᵀΛx + hᵀx)}
 * with precision Λ and pull h. It is what turns the moments before the readings into those after them.
 *
 * @param precision Λ, never negative in any direction
 * @param pull h
 * @see "Bishop2006"
 */
record TraitSite(RealMatrix precision, RealVector pull) {
    /** The site between what was thought before the readings and what is after them; directions in which they widened say nothing. */
    static TraitSite between(Moments before, Moments after) {
        RealMatrix was = inverse(before.matrix());
        EigenDecomposition gained =
                new EigenDecomposition(symmetric(inverse(after.matrix()).subtract(was)));
        RealMatrix values = gained.getD();
        for (int i = 0; i < values.getRowDimension(); i++) {
            values.setEntry(i, i, StrictMath.max(0, values.getEntry(i, i)));
        }
        RealMatrix precision = symmetric(gained.getV().multiply(values).multiply(gained.getVT()));
        RealVector pull = precision
                .add(was)
                .operate(MatrixUtils.createRealVector(after.mean()))
                .subtract(was.operate(MatrixUtils.createRealVector(before.mean())));
        return new TraitSite(precision, pull);
    }

    static RealMatrix inverse(RealMatrix matrix) {
        return new LUDecomposition(matrix).getSolver().getInverse();
    }

    static RealMatrix symmetric(RealMatrix matrix) {
        return matrix.add(matrix.transpose()).scalarMultiply(0.5);
    }
}
