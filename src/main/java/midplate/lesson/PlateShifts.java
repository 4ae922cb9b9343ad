package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import midplate.chemistry.RetentionFactor;

/**
 * How far each plate of a class lies to one side, so that one reading that is wrong does not move it.
 *
 * <p>Each reading says by how much η = ln(Rf/(1 − Rf)) lies above that of the median of its spot; the shift p of a plate is the median of that over
 * its readings, each counted with {@code g = Rf·(1 − Rf)} of its spot, which is the p that makes {@code Σ |Rf − Rf₀ − g·p|} smallest. Of an even
 * number of readings the middle of the class counts as one more, with their mean g: of two that contradict each other neither moves the plate.
 * A plate with one reading has no shift, since nothing tells it from the error of that reading. Spots near a line say nothing of it.
 */
final class PlateShifts {
    /** What plates differ by at least in the trade [Rf] midway up: the lower end of the usual; from memory, high confidence. */
    private static final double USUAL_BETWEEN = 0.02;
    /** A shift midway up over that in ln units [1]. */
    private static final double MIDWAY = 0.25;

    private final double[] middle;
    private final Map<ClassPlate, Double> shifts = new LinkedHashMap<>();
    private final List<ClassPlate> judged = new ArrayList<>();

    private PlateShifts(double[] middle) {
        this.middle = middle;
    }

    /** What one reading says of its plate, and what that counts. */
    private record Vote(double shift, double weight) {}

    /** Of readings, plates in the order they first come. */
    static PlateShifts of(int spots, List<ClassReading> readings) {
        double[] middle = new double[spots];
        for (int s = 0; s < spots; s++) {
            middle[s] = OutlyingReadings.middle(OutlyingReadings.of(s, readings));
        }
        PlateShifts shifts = new PlateShifts(middle);
        Map<ClassPlate, List<Vote>> votes = new LinkedHashMap<>();
        for (ClassReading each : readings) {
            List<Vote> ofPlate = votes.computeIfAbsent(each.plate(), plate -> new ArrayList<>());
            double at = middle[each.spot()];
            if (SharedShift.isTold(at)) {
                ofPlate.add(new Vote(SharedShift.eta(each.rf()) - SharedShift.eta(at), SharedShift.slope(at)));
            }
        }
        votes.forEach((plate, each) -> {
            shifts.shifts.put(plate, median(each));
            if (each.size() > 1) {
                shifts.judged.add(plate);
            }
        });
        return shifts;
    }

    private static double median(List<Vote> votes) {
        if (votes.size() < 2) {
            return 0;
        }
        double all = votes.stream().mapToDouble(Vote::weight).sum();
        List<Vote> sorted = new ArrayList<>(votes);
        if (votes.size() % 2 == 0) {
            sorted.add(new Vote(0, all / votes.size()));
            all += all / votes.size();
        }
        sorted.sort(Comparator.comparingDouble(Vote::shift));
        double below = 0;
        for (Vote each : sorted) {
            below += each.weight();
            if (below >= all / 2) {
                return each.shift();
            }
        }
        return sorted.get(sorted.size() - 1).shift();
    }

    /** The shift of a plate [ln units]. */
    double of(ClassPlate plate) {
        return shifts.getOrDefault(plate, 0.0);
    }

    /** Where the class and its plate have a reading [Rf]. */
    double expected(ClassReading reading) {
        double shift = of(reading.plate());
        double at = middle[reading.spot()];
        return shift == 0 ? at : RetentionFactor.fromLogit(SharedShift.eta(at) + shift);
    }

    /** By how much a plate lies above the class midway up the plate [Rf]. */
    double midway(ClassPlate plate) {
        return RetentionFactor.fromLogit(of(plate)) - 0.5;
    }

    /** Plates far from the others, judged as readings are ({@link OutlyingReadings}); none among fewer than six. */
    List<ClassPlate> far() {
        double[] all = judged.stream().mapToDouble(this::of).toArray();
        if (all.length < OutlyingReadings.LEAST) {
            return List.of();
        }
        double centre = OutlyingReadings.middle(all);
        double reach = OutlyingReadings.reach(
                judged.stream().mapToDouble(plate -> of(plate) - centre).toArray(), USUAL_BETWEEN / MIDWAY);
        return judged.stream()
                .filter(plate -> Math.abs(of(plate) - centre) > reach)
                .toList();
    }
}
