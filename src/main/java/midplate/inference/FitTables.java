package midplate.inference;

/** Rf, its slope and σ at every node of the grid for every measured share, for one state of a fit. */
final class FitTables {
    private final TraitGrid grid;
    private final PlateShape shape;
    private final double atLines;
    private final double[][] beyond;
    private final double[][] slope;
    private final double[][] sigma;

    private FitTables(TraitGrid grid, PlateShape shape, double atLines, int shares) {
        this.grid = grid;
        this.shape = shape;
        this.atLines = atLines;
        beyond = new double[shares][grid.size()];
        slope = new double[shares][grid.size()];
        sigma = new double[shares][grid.size()];
    }

    /**
     * The tables.
     *
     * @param grid the traits
     * @param climbs what the eluent of each share does
     * @param scales σ₀ there [1]
     * @param shape how readings and their noise behave near the lines
     * @param atLines a spot read no farther than this from a line sits on it [1]; 0 where every reading is a number
     */
    static FitTables of(TraitGrid grid, Climb[] climbs, double[] scales, PlateShape shape, double atLines) {
        FitTables tables = new FitTables(grid, shape, atLines, climbs.length);
        for (int j = 0; j < climbs.length; j++) {
            double[] fromC = new double[grid.cCount()];
            for (int iC = 0; iC < fromC.length; iC++) {
                fromC[iC] = StrictMath.exp(-climbs[j].eta(grid.cAt(iC), 0, 0));
            }
            for (int iS = 0; iS < grid.sCount(); iS++) {
                for (int iT = 0; iT < grid.tCount(); iT++) {
                    double others = StrictMath.exp(-climbs[j].eta(0, grid.sAt(iS), grid.tAt(iT)));
                    for (int iC = 0; iC < fromC.length; iC++) {
                        int node = grid.node(iC, iS, iT);
                        double logistic = 1 / (1 + fromC[iC] * others);
                        tables.beyond[j][node] = shape.stretch().beyond(logistic);
                        tables.slope[j][node] = shape.stretch().slope(logistic);
                        tables.sigma[j][node] = scales[j] * StrictMath.sqrt(tables.shapeAt(j, node));
                    }
                }
            }
        }
        return tables;
    }

    /** Rf [1] at each node, not held between the lines. */
    double[] beyond(int share) {
        return beyond[share];
    }

    /** Rf [1] at a node. */
    double rf(int share, int node) {
        return StrictMath.max(0, StrictMath.min(1, beyond[share][node]));
    }

    /** dRf/dη at each node [1]. */
    double[] slope(int share) {
        return slope[share];
    }

    double[] sigma(int share) {
        return sigma[share];
    }

    double atLines() {
        return atLines;
    }

    /** How likely a reading is at a node. */
    double likelihood(double read, int share, int node) {
        return Noise.likelihood(read, beyond[share][node], sigma[share][node], atLines);
    }

    /** The share of the full noise variance at a node [1]. */
    private double shapeAt(int share, int node) {
        return Noise.shape(rf(share, node), shape.leftAtLines());
    }

    /** The change of the logarithm of that share with Rf [1]; 0 on the lines. */
    double changeOfShape(int share, int node) {
        double rf = beyond[share][node];
        return rf > 0 && rf < 1 ? (1 - shape.leftAtLines()) * 4 * (1 - 2 * rf) / shapeAt(share, node) : 0;
    }

    TraitGrid grid() {
        return grid;
    }

    /** Fisher's information on G at a share from one reading, averaged over the weights: (ν + 1)/(ν + 3)·(s·dRf/dη/σ)². */
    double information(int share, Weights weights) {
        double[] steep = slope[share];
        double[] scatter = sigma[share];
        return weights.mean(node -> {
            double ratio = grid.s(node) * steep[node] / scatter[node];
            return (Noise.DEGREES + 1.0) / (Noise.DEGREES + 3.0) * ratio * ratio;
        });
    }
}
