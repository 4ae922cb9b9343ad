package midplate.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

    private final List<ClassSpot> spots;
    private final List<ClassReading> readings;
    private final Optional<ClassYardstick> yardstick;

    private ClassReadings(List<ClassSpot> spots, List<ClassReading> readings, Optional<ClassYardstick> yardstick) {
        this.spots = List.copyOf(spots);
        this.readings = List.copyOf(readings);
        this.yardstick = yardstick;
    }

    /**
     * Of readings.
     *
     * @param spots those that were read, 1 to {@value LessonSample#MOST_COMPOUNDS}
     * @param readings of these spots, each pair, plate, lane and spot once; at least one
     * @param yardstick what the model expects of their scatter; empty where it expects nothing
     */
    public static ClassFindings judged(
            List<ClassSpot> spots, List<ClassReading> readings, Optional<ClassYardstick> yardstick) {
        return new ClassReadings(spots, readings, yardstick).judged();
    }

    private ClassFindings judged() {
        ClassTable table = ClassTable.of(spots.size(), readings);
        PlateShifts shifts = PlateShifts.of(spots.size(), readings);
        List<ClassReading> far = OutlyingReadings.in(spots.size(), readings);
        Optional<ClassScatter> scatter = ClassScatter.of(table);
        ClassWords words = new ClassWords(spots, readings, yardstick.map(one -> one.at(table)));
        List<SlipSearch.Found> slips = SlipSearch.in(spots.size(), readings);
        List<ClassFindings.OfPlate> plates = ofPlates(shifts);
        return new ClassFindings(
                ofSpots(table, words),
                scatter.map(words::scatter),
                kept(scatter, far).map(words::scatter),
                plates,
                far.stream().map(each -> words.far(each, shifts)).toList(),
                farPlates(plates, shifts, slips).stream().map(words::farPlate).toList(),
                slips.stream().map(words::slip).toList(),
                words.sentences(scatter));
    }

    /** Plates far off that no mistake of measuring explains. */
    private static List<ClassFindings.OfPlate> farPlates(
            List<ClassFindings.OfPlate> plates, PlateShifts shifts, List<SlipSearch.Found> slips) {
        List<ClassPlate> far = shifts.far();
        List<String> slipped = slips.stream().map(SlipSearch.Found::pair).toList();
        return plates.stream()
                .filter(each ->
                        far.contains(each.plate()) && each.pairs().stream().noneMatch(slipped::contains))
                .toList();
    }

    /** The scatter without readings far off; empty where readings do not scatter less then, so that leaving them out explains nothing. */
    private Optional<ClassScatter> kept(Optional<ClassScatter> all, List<ClassReading> far) {
        if (far.isEmpty() || all.isEmpty()) {
            return Optional.empty();
        }
        List<ClassReading> others =
                readings.stream().filter(each -> !far.contains(each)).toList();
        return ClassScatter.of(ClassTable.of(spots.size(), others))
                .filter(one -> one.within().value() < all.get().within().value());
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

    private List<ClassFindings.OfPlate> ofPlates(PlateShifts shifts) {
        Map<ClassPlate, Set<String>> pairs = new LinkedHashMap<>();
        readings.forEach(each -> pairs.computeIfAbsent(each.plate(), plate -> new LinkedHashSet<>())
                .add(each.pair()));
        return pairs.entrySet().stream()
                .map(each -> new ClassFindings.OfPlate(
                        each.getKey(), List.copyOf(each.getValue()), shifts.midway(each.getKey())))
                .toList();
    }
}
