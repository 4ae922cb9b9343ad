package midplate.inference;

/** Rf, its slope and σ at every node of the grid for every measured share, for one state of a fit. */
final class FitTables {
    private final TraitGrid grid;
    private final double leftAtLines;
    private final double[][] rf;
    private final double[][] slope;
    private final double[][] sigma;

    private FitTables(TraitGrid grid, double leftAtLines, int shares) {
        this.grid = grid;
        this.leftAtLines = leftAtLines;
        rf = new double[shares][grid.size()];
        slope = new double[shares][grid.size()];
        sigma = new double[shares][grid.size()];
    }

    static FitTables of(TraitGrid grid, double[] strength, double[] scales, PlateShape shape) {
        FitTables tables = new FitTables(grid, shape.leftAtLines(), strength.length);
        double[] fromC = new double[grid.cCount()];
        for (int iC = 0; iC < fromC.length; iC++) {
            fromC[iC] = StrictMath.exp(-grid.cAt(iC));
        }
        for (int j = 0; j < strength.length; j++) {
            for (int iS = 0; iS < grid.sCount(); iS++) {
                double fromS = StrictMath.exp(-grid.sAt(iS) * strength[j]);
                for (int iC = 0; iC < fromC.length; iC++) {
                    int node = iS * fromC.length + iC;
                    double logistic = 1 / (1 + fromC[iC] * fromS);
                    tables.rf[j][node] = shape.stretch().rf(logistic);
                    tables.slope[j][node] = shape.stretch().slope(logistic) * grid.sAt(iS);
                    tables.sigma[j][node] = scales[j] * StrictMath.sqrt(tables.shapeAt(j, node));
                }
            }
        }
        return tables;
    }

    double[] rf(int share) {
        return rf[share];
    }

    /** dRf/dG at each node [1/ln unit]. */
    double[] slope(int share) {
        return slope[share];
    }

    double[] sigma(int share) {
        return sigma[share];
    }

    /** The share of the full noise variance at a node [1]. */
    double shapeAt(int share, int node) {
        return Noise.shape(rf[share][node], leftAtLines);
    }

    TraitGrid grid() {
        return grid;
    }

    /** Fisher's information on G at a share from one reading, averaged over the weights: (ν + 1)/(ν + 3)·(dRf/dG/σ)². */
    double information(int share, Weights weights) {
        double[] steep = slope[share];
        double[] scatter = sigma[share];
        return weights.mean(node -> {
            double ratio = steep[node] / scatter[node];
            return (Noise.DEGREES + 1.0) / (Noise.DEGREES + 3.0) * ratio * ratio;
        });
    }
}
