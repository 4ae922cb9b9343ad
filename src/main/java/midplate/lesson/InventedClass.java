package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import midplate.inference.PossiblePlates;
import midplate.words.Message;

/**
 * A class that never was: one true sample is drawn, each pair runs a plate of it that has an error of its own, and each spot is read with an
 * error. One pair divides distances that it took from the plate's edge. The same code with the same compounds and ratio gives the same class.
 *
 * @param code from which all was drawn; its choices are the number of pairs
 * @param rows what each pair wrote down
 * @param slipped the pair that measured from the edge, from 0
 */
public record InventedClass(LessonCode code, List<Row> rows, int slipped) {
    /** Fewest pairs that show anything. */
    public static final int LEAST_PAIRS = 4;
    /** As many pairs as are usual. */
    public static final int USUAL_PAIRS = 20;

    private static final int START_TENTHS_LOW = 90;
    private static final int START_TENTHS_HIGH = 125;
    private static final int FRONT_LOW = 52;
    private static final int FRONT_HIGH = 66;

    /** Keeps its own copy. */
    public InventedClass {
        rows = List.copyOf(rows);
    }

    /**
     * What a pair wrote down.
     *
     * @param pair who
     * @param startMm height of the start line [mm]
     * @param frontMm height of the front [mm]
     * @param rf of each spot, in their order, to two decimals [1]
     */
    public record Row(Message pair, double startMm, double frontMm, List<Double> rf) {
        /** Keeps its own copy. */
        public Row {
            rf = List.copyOf(rf);
        }
    }

    /**
     * The class of a code.
     *
     * @param code of readings, with {@value #LEAST_PAIRS} to {@value ClassReadings#MOST_PAIRS} pairs as its choices
     * @param sample what runs
     * @param percent share of the strong solvent [% v/v]
     */
    public static InventedClass of(LessonModel model, LessonCode code, LessonSample sample, double percent) {
        PossiblePlates plates = PossiblePlates.of(model.consult(sample).knowledge());
        SeededDraws all = SeededDraws.of(code.seed(), 0);
        int truth = all.whole(0, plates.samples() - 1);
        int slipped = all.whole(0, code.choices() - 1);
        List<Row> rows = new ArrayList<>();
        for (int pair = 0; pair < code.choices(); pair++) {
            SeededDraws own = SeededDraws.of(code.seed(), 1, pair);
            double start = Math.round(own.whole(START_TENTHS_LOW, START_TENTHS_HIGH) / 5.0) / 2.0;
            double front = own.whole(FRONT_LOW, FRONT_HIGH);
            double part = pair == slipped ? start / front : 0;
            List<Double> read = plates.read(truth, percent, own::normal).stream()
                    .map(rf -> rounded(part + (1 - part) * rf))
                    .toList();
            rows.add(new Row(
                    Message.of("lesson.class-pair", "number", String.format(Locale.ROOT, "%d", pair + 1)),
                    start,
                    front,
                    read));
        }
        return new InventedClass(code, rows, slipped);
    }

    private static double rounded(double rf) {
        return Math.round(100 * rf) / 100.0;
    }
}
