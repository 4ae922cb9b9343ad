package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import midplate.advice.Adviser;
import midplate.inference.Measurement;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import midplate.inference.PossiblePlates;
import midplate.inference.ReadingTable;
import midplate.inference.Series;
import midplate.plate.Setting;

/**
 * Compounds as a fitted model expects the next ones to be, measured as it expects them to be read. Asked about these, the model is right
 * in every respect: what it then misses one or two readings do not tell, and no other model could know it either.
 *
 * <p>Curves, traits and scatter are those of the fit, each reading has a scatter of its own ({@link PossiblePlates#read}), and what is
 * taken for the truth at other ratios goes through these readings, as it does for measured compounds ({@link TrueCurve}).
 */
final class ExpectedCompounds {
    /** As many as a fold of the open measurements has series, about. */
    private static final int COMPOUNDS = 40;

    private static final int NUMBERS = 10_000;

    private ExpectedCompounds() {}

    /**
     * Draws them: other ones for each pair, since only plates of one pair are foretold from each other.
     *
     * @param adviser with the fitted curves
     * @param questions puts the question of a compound that nothing is known of
     * @param like tells which ratios are measured
     * @param number of the drawing; drawings of two numbers have no series in common
     */
    static OpenMeasurements of(Adviser adviser, PlateQuestions questions, OpenMeasurements like, int number) {
        List<Measurement> rows = new ArrayList<>();
        Random random = new Random(number);
        for (PairName pair : List.of(PairName.HEXANE_ETHYL_ACETATE, PairName.DICHLOROMETHANE_METHANOL)) {
            ReadingTable table = like.table(pair);
            PossiblePlates plates = PossiblePlates.of(
                    adviser.consult(questions.of(pair, List.of(List.of()), List.of(), Setting.AUTOMATED))
                            .knowledge());
            for (int i = 0; i < COMPOUNDS; i++) {
                int id = NUMBERS * number + pair.ordinal() * COMPOUNDS + i;
                Series series = new Series(id, "expected compound " + id);
                int sample = random.nextInt(plates.samples());
                for (double percent : table.percents()) {
                    double rf =
                            plates.read(sample, percent, random::nextGaussian).get(0);
                    rows.add(new Measurement(series, pair.fractionsAt(percent), rf));
                }
            }
        }
        return like.withRows(rows);
    }
}
