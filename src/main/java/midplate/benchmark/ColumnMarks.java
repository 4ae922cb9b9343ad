package midplate.benchmark;

import java.util.List;
import midplate.inference.ColumnMeasurement;
import midplate.inference.Series;

/**
 * Marks what was foretold of columns. A figure is named {@code SET.SIZE.WHAT}: the set is {@code all} (all plates of the compound were
 * told), {@code same} (the one with the same eluent only), {@code weaker} or {@code stronger} (all plates and a column of 4 g in a
 * weaker or stronger eluent), or {@code unearlier} (the runs of both of these without that column); the size {@code 4g} or {@code
 * other}; what {@code within25} and {@code within35} [share of runs], {@code error} [mean |ln|], and of all sizes {@code cover90.start},
 * {@code middle} and {@code end} {@code width-error} [mean |ln| of the widths ln(end/start)] and {@code narrow} [mean ln(high/low)
 * of the middle].
 */
final class ColumnMarks {
    private static final double USUAL_GRAMS = 4;
    private static final double NEAR = 0.25;
    private static final double FAR = 0.35;
    private static final List<String> EDGES = List.of("start", "middle", "end");

    private final Samples samples;
    private final List<Series> compound;

    ColumnMarks(Samples samples, String smiles) {
        this.samples = samples;
        this.compound = of(smiles);
    }

    /** A structure as what is resampled. */
    static List<Series> of(String smiles) {
        return List.of(new Series(0, smiles));
    }

    static boolean isUsualSize(ColumnMeasurement run) {
        return run.grams() == USUAL_GRAMS;
    }

    /** Marks a middle. */
    void middle(String set, ColumnMeasurement run, double foretoldMl) {
        String name = set + (isUsualSize(run) ? ".4g." : ".other.");
        double off = Math.abs(foretoldMl / run.middleMl() - 1);
        samples.add(name + "within25", compound, off <= NEAR ? 1 : 0);
        samples.add(name + "within35", compound, off <= FAR ? 1 : 0);
        samples.add(name + "error", compound, Math.abs(Math.log(foretoldMl / run.middleMl())));
    }

    /** Marks the bands around start, middle and end. */
    void bands(String set, ColumnMeasurement run, ColumnAnswers.Foretold foretold) {
        double[] seen = {run.startMl(), run.middleMl(), run.endMl()};
        for (int i = 0; i < seen.length; i++) {
            samples.add(set + ".cover90." + EDGES.get(i), compound, foretold.holds(i, seen[i]) ? 1 : 0);
        }
        samples.add(set + ".width-error", compound, Math.abs(Math.log(run.width() / foretold.width())));
        samples.add(set + ".narrow", compound, Math.log(foretold.high()[1] / foretold.low()[1]));
    }
}
