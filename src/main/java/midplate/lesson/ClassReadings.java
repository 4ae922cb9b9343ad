package midplate.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.words.Message;
import org.apache.commons.math3.stat.StatUtils;

/**
 * What the readings of a class show: where each spot lies beside what the model expects, how much readings scatter by themselves and how much
 * because plates differ, which readings lie far off, and who seems to have measured wrongly.
 *
 * @see "Searle1992"
 */
public final class ClassReadings {
    /** Most pairs of a class. */
    public static final int MOST_PAIRS = 40;
    /** Most plates of a pair. */
    public static final int MOST_PLATES = 4;
    /** Most readings of a spot on one plate by one pair. */
    public static final int MOST_LANES = 4;

    private static final double MIDWAY = 0.25;

    private final List<ClassSpot> spots;
    private final List<ClassReading> readings;

    private ClassReadings(List<ClassSpot> spots, List<ClassReading> readings) {
        this.spots = List.copyOf(spots);
        this.readings = List.copyOf(readings);
    }

    /**
     * Of readings.
     *
     * @param spots those that were read, 1 to {@value LessonSample#MOST_COMPOUNDS}
     * @param readings of these spots, each pair, plate, lane and spot once; at least one
     */
    public static ClassFindings judged(List<ClassSpot> spots, List<ClassReading> readings) {
        return new ClassReadings(spots, readings).judged();
    }

    private ClassFindings judged() {
        ClassTable table = ClassTable.of(spots.size(), readings);
        List<ClassReading> far = OutlyingReadings.in(spots.size(), readings);
        Optional<ClassScatter> scatter = ClassScatter.of(table);
        ClassWords words = new ClassWords(spots, readings);
        List<SlipSearch.Found> slips = SlipSearch.in(spots.size(), readings);
        return new ClassFindings(
                ofSpots(table, words),
                scatter.map(words::scatter),
                far.isEmpty() ? Optional.empty() : ClassScatter.of(without(far)).map(words::scatter),
                ofPlates(),
                far.stream().map(words::far).toList(),
                slips.stream().map(words::slip).toList(),
                words.sentences(scatter));
    }

    private ClassTable without(List<ClassReading> far) {
        return ClassTable.of(
                spots.size(),
                readings.stream().filter(each -> !far.contains(each)).toList());
    }

    private List<ClassFindings.OfSpot> ofSpots(ClassTable table, ClassWords words) {
        List<double[]> each = new ArrayList<>();
        for (int s = 0; s < spots.size(); s++) {
            each.add(table.all(s));
        }
        double width = ReadingHistogram.width(each);
        Optional<SharedShift> shift = SharedShift.of(table);
        List<ClassFindings.OfSpot> found = new ArrayList<>();
        for (int s = 0; s < spots.size(); s++) {
            if (each.get(s).length > 0) {
                found.add(ofSpot(s, table.of(s), each.get(s), width, shift, words));
            }
        }
        return found;
    }

    private ClassFindings.OfSpot ofSpot(
            int s, List<double[]> plates, double[] all, double width, Optional<SharedShift> shift, ClassWords words) {
        ClassSpot spot = spots.get(s);
        double mean = StatUtils.mean(all);
        double[] means = plates.stream().mapToDouble(StatUtils::mean).toArray();
        Optional<Double> error =
                means.length < 2 ? Optional.empty() : Optional.of(Math.sqrt(StatUtils.variance(means) / means.length));
        double median = OutlyingReadings.middle(all);
        Optional<PlateAnova> anova = PlateAnova.of(plates);
        Optional<Double> between = anova.map(PlateAnova::between)
                .or(() -> shift.map(one -> one.shift() * square(SharedShift.slope(mean))));
        Optional<Double> within = anova.map(PlateAnova::msWithin)
                .or(() -> means.length < 2
                        ? Optional.empty()
                        : between.map(one -> StatUtils.variance(means) - Math.max(0, one)));
        Optional<Integer> inside = spot.forecast().map(band -> (int) readings.stream()
                .filter(each -> each.spot() == s && each.rf() >= band.low() && each.rf() <= band.high())
                .count());
        Message text = words.spot(spot, all.length, means.length, mean, error, median, inside);
        return new ClassFindings.OfSpot(
                spot,
                all.length,
                means.length,
                mean,
                error,
                median,
                ReadingHistogram.of(all, width),
                within.map(Spread::root),
                between.map(Spread::root),
                inside,
                text);
    }

    private static double square(double value) {
        return value * value;
    }

    /** How far each plate lies to one side: the shift that fits its spots best, each counted by how much it moves. */
    private List<ClassFindings.OfPlate> ofPlates() {
        double[] median = new double[spots.size()];
        for (int s = 0; s < median.length; s++) {
            median[s] = OutlyingReadings.middle(OutlyingReadings.of(s, readings));
        }
        Map<ClassPlate, List<ClassReading>> byPlate = new LinkedHashMap<>();
        readings.forEach(each -> byPlate.computeIfAbsent(each.plate(), plate -> new ArrayList<>())
                .add(each));
        List<ClassFindings.OfPlate> plates = new ArrayList<>();
        byPlate.forEach((plate, on) -> {
            double moved = 0;
            double squares = 0;
            for (ClassReading each : on) {
                double slope = SharedShift.slope(median[each.spot()]);
                moved += slope * (each.rf() - median[each.spot()]);
                squares += slope * slope;
            }
            List<String> pairs = on.stream().map(ClassReading::pair).distinct().toList();
            plates.add(new ClassFindings.OfPlate(plate, pairs, squares == 0 ? 0 : MIDWAY * moved / squares));
        });
        return plates;
    }
}
