package midplate.photo;

import java.util.List;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/** A plate straightened by four corners that somebody marked: from fractions of the picture to millimetres of the plate. */
final class Flattened {
    private final double[] rows;

    private Flattened(double[] rows) {
        this.rows = rows;
    }

    /**
     * Straightened by these corners.
     *
     * @param corners lower left, lower right, upper right, upper left, {x, y} in fractions of the picture
     */
    static Flattened of(List<double[]> corners, double widthMm, double heightMm) {
        double[][] places = {{0, 0}, {widthMm, 0}, {widthMm, heightMm}, {0, heightMm}};
        RealMatrix matrix = MatrixUtils.createRealMatrix(8, 8);
        double[] right = new double[8];
        for (int i = 0; i < 4; i++) {
            double x = corners.get(i)[0];
            double y = corners.get(i)[1];
            for (int part = 0; part < 2; part++) {
                double place = places[i][part];
                double[] row = new double[8];
                row[3 * part] = x;
                row[3 * part + 1] = y;
                row[3 * part + 2] = 1;
                row[6] = -x * place;
                row[7] = -y * place;
                matrix.setRow(2 * i + part, row);
                right[2 * i + part] = place;
            }
        }
        return new Flattened(new LUDecomposition(matrix)
                .getSolver()
                .solve(new ArrayRealVector(right))
                .toArray());
    }

    /** {x, height} of a point [mm]. */
    double[] at(double[] point) {
        double w = rows[6] * point[0] + rows[7] * point[1] + 1;
        return new double[] {
            (rows[0] * point[0] + rows[1] * point[1] + rows[2]) / w,
            (rows[3] * point[0] + rows[4] * point[1] + rows[5]) / w
        };
    }
}
