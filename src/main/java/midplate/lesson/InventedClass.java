package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import midplate.inference.PossiblePlates;
import midplate.words.Message;

/**
 * A class that never was: one true sample is drawn, each pair runs a plate of it that has an error of its own, and each spot is read with an
 * error. One pair divides wrongly: distances that it took from the plate's edge, from a start line that stands high, or by the distance to the top of
 * the plate where the front stopped short; that of the two which moves these spots farther from anything that a plate does to all of them. The same
 * code with the same compounds and ratio gives the same class.
 *
 * @param code from which all was drawn; its choices are the number of pairs
 * @param rows what each pair wrote down
 * @param slipped the pair that divided wrongly, from 0
 * @param slip how: {@code edge} or {@code front}
 */
public record InventedClass(LessonCode code, List<Row> rows, int slipped, String slip) {
    /** Fewest pairs that show anything. */
    public static final int LEAST_PAIRS = 4;
    /** As many pairs as are usual. */
    public static final int USUAL_PAIRS = 20;

    private static final int START_TENTHS_LOW = 90;
    private static final int START_TENTHS_HIGH = 125;
    private static final int FRONT_LOW = 52;
    private static final int FRONT_HIGH = 66;
    /** Of the pair that divides wrongly: a start line high up, a front that stopped short, and the top of its plate [mm]; own choice. */
    private static final double HIGH_START = 15;

    private static final double LOW_FRONT = 50;
    private static final double USUAL_START = 10;
    private static final double TOP = 70;

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
        double edge = HIGH_START / LOW_FRONT;
        MeasuringSlip.Rule fromEdge = new MeasuringSlip.Rule(edge, 1 - edge);
        MeasuringSlip.Rule byTop = new MeasuringSlip.Rule(0, (LOW_FRONT - USUAL_START) / (TOP - USUAL_START));
        List<Double> truths = IntStream.range(0, sample.compounds().size())
                .mapToObj(spot -> plates.rf(truth, spot, percent))
                .toList();
        boolean isEdge = apart(fromEdge, truths) >= apart(byTop, truths);
        double wrongStart = isEdge ? HIGH_START : USUAL_START;
        List<Row> rows = new ArrayList<>();
        for (int pair = 0; pair < code.choices(); pair++) {
            SeededDraws own = SeededDraws.of(code.seed(), 1, pair);
            double start = Math.round(own.whole(START_TENTHS_LOW, START_TENTHS_HIGH) / 5.0) / 2.0;
            double front = own.whole(FRONT_LOW, FRONT_HIGH);
            boolean isRight = pair != slipped;
            MeasuringSlip.Rule wrong = isEdge ? fromEdge : byTop;
            MeasuringSlip.Rule rule = isRight ? MeasuringSlip.Rule.NONE : wrong;
            List<Double> read = plates.read(truth, percent, own::normal).stream()
                    .map(rf -> rounded(rule.read(rf)))
                    .toList();
            rows.add(new Row(
                    Message.of("lesson.class-pair", "number", String.format(Locale.ROOT, "%d", pair + 1)),
                    isRight ? start : wrongStart,
                    isRight ? front : LOW_FRONT,
                    read));
        }
        return new InventedClass(code, rows, slipped, isEdge ? "edge" : "front");
    }

    /** How far a mistake moves spots from anything that a shift of all of them does: what is left of it beside the shift that fits best [Rf²]. */
    private static double apart(MeasuringSlip.Rule rule, List<Double> truths) {
        double moved = 0;
        double along = 0;
        double slopes = 0;
        for (double rf : truths) {
            double by = rule.read(rf) - rf;
            double slope = SharedShift.slope(rf);
            moved += by * by;
            along += by * slope;
            slopes += slope * slope;
        }
        return slopes == 0 ? moved : moved - along * along / slopes;
    }

    private static double rounded(double rf) {
        return Math.round(100 * rf) / 100.0;
    }
}
