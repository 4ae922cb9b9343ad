package midplate.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import midplate.catalogue.PlatePair;

/**
 * A compound run both on plates and on columns: what its plates say of it, as so many even draws of its traits, and the logarithms of
 * the middles of its bands, those of one cartridge and eluent together.
 *
 * @param smiles its structure
 * @param cells by cartridge and eluent
 */
record ColumnCompound(String smiles, List<Cell> cells) {
    /** Draws of the traits. */
    static final int DRAWS = 24;

    private static final double NEGLIGIBLE = 1e-5;

    /**
     * Runs on one cartridge with one eluent.
     *
     * @param grams dry silica [g]
     * @param place ln(1 + p) [1]
     * @param eta η for each draw [ln units]
     * @param rf Rf for each draw [1]
     * @param logMiddles ln V of each run
     */
    record Cell(double grams, double place, double[] eta, double[] rf, double[] logMiddles) {}

    private record Where(double grams, double percent) implements Comparable<Where> {
        @Override
        public int compareTo(Where other) {
            int order = Double.compare(grams, other.grams);
            return order != 0 ? order : Double.compare(percent, other.percent);
        }
    }

    /** The compounds that stand among both, sorted by structure; those whose plates contradict each other are not among the plates. */
    static List<ColumnCompound> joined(OpenMeasurements plates, ColumnMeasurements columns, PlatePair pair) {
        ReadingTable table = plates.table(PairName.HEXANE_ETHYL_ACETATE);
        PairModel model = PairModel.of(pair);
        Traits traits = new Traits(pair, table);
        List<ColumnCompound> joined = new ArrayList<>();
        for (String smiles : columns.structures()) {
            double[] row = table.meanRow(smiles);
            if (Arrays.stream(row).allMatch(Double::isNaN)) {
                continue;
            }
            double[][] draws = traits.draws(row);
            Map<Where, List<Double>> cells = new TreeMap<>();
            for (ColumnMeasurement run : columns.runs(smiles)) {
                cells.computeIfAbsent(new Where(run.grams(), run.percentStrong()), key -> new ArrayList<>())
                        .add(StrictMath.log(run.middleMl()));
            }
            List<Cell> all = new ArrayList<>();
            cells.forEach((where, middles) -> all.add(cell(where, middles, draws, model)));
            joined.add(new ColumnCompound(smiles, List.copyOf(all)));
        }
        return joined;
    }

    private static Cell cell(Where where, List<Double> middles, double[][] draws, PairModel model) {
        Climb climb = model.climb(where.percent());
        double[] eta = new double[draws.length];
        double[] rf = new double[draws.length];
        for (int k = 0; k < eta.length; k++) {
            eta[k] = climb.eta(draws[k][0], draws[k][1], draws[k][2]);
            rf[k] = model.rf(eta[k]);
        }
        return new Cell(
                where.grams(),
                StrictMath.log1p(where.percent()),
                eta,
                rf,
                middles.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** What plates say of traits, on the grid of spots. */
    private static final class Traits {
        private final TraitGrid grid;
        private final double[] prior;
        private final FitTables tables;

        Traits(PlatePair pair, ReadingTable table) {
            PlatePair.Bell bell = pair.prior().bells().get(0);
            grid = TraitGrid.spots(
                    bell.varianceS() > 0 ? TraitGrid.Trait.OWN : TraitGrid.Trait.ALIKE,
                    bell.varianceT() > 0 ? TraitGrid.Trait.OWN : TraitGrid.Trait.ALIKE);
            prior = TraitPrior.normalized(new Bells(grid).summed(pair.prior().bells()));
            double[] percents = table.percents();
            Climb[] climbs = new Climb[percents.length];
            double[] scales = new double[percents.length];
            PairModel model = PairModel.of(pair);
            for (int j = 0; j < percents.length; j++) {
                climbs[j] = model.climb(percents[j]);
                scales[j] = nearest(pair, percents[j]);
            }
            PlateShape shape =
                    new PlateShape(pair.noiseLeftAtLines(), new Stretch(pair.stretchStart(), pair.stretchFront()));
            tables = FitTables.of(grid, climbs, scales, shape, pair.atLines());
        }

        /** σ₀ of the nearest share that was fitted: the shares of the table are those of the fit, but for their last digits. */
        private static double nearest(PlatePair pair, double percent) {
            int best = 0;
            for (int j = 1; j < pair.percentStrong().size(); j++) {
                if (StrictMath.abs(pair.percentStrong().get(j) - percent)
                        < StrictMath.abs(pair.percentStrong().get(best) - percent)) {
                    best = j;
                }
            }
            return pair.noiseScale().get(best);
        }

        double[][] draws(double[] row) {
            Weights weights = Weights.of(prior, tables, row, NEGLIGIBLE);
            double[][] draws = new double[DRAWS][];
            int at = 0;
            double reached = weights.weight(0);
            for (int k = 0; k < DRAWS; k++) {
                while (reached < (k + 0.5) / DRAWS && at < weights.size() - 1) {
                    reached += weights.weight(++at);
                }
                int node = weights.node(at);
                draws[k] = new double[] {grid.c(node), grid.s(node), grid.t(node)};
            }
            return draws;
        }
    }
}
