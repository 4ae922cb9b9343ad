package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;
import midplate.advice.Window;
import midplate.chemistry.Sorbent;
import midplate.plate.Eluent;
import midplate.plate.Limit;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.plate.SpotMeasurement;

/**
 * A plate of the unknowns as a class reads it: a lane for each, and a last one where all were put on top of each other. Heights are read to half
 * a millimetre; a spot reaches a line as for {@link midplate.plate.PlateReading} where its size was not measured. All spots share the error of the plate, each has one of its own, and spots of the last lane nearer to each
 * other than they are long are seen as one.
 *
 * @param number which plate it is, from 1
 * @param percentStrong share of the stronger solvent, to a hundredth [% v/v]
 * @param frontMm height of the front above the lower edge [mm]
 * @param lanes a lane for each unknown and the mixed one, spots from low to high
 */
public record ExercisePlate(int number, double percentStrong, double frontMm, List<List<Spot>> lanes) {
    /** Height of the plate [mm]. */
    public static final double HEIGHT_MM = 70;
    /** Width of the plate [mm]. */
    public static final double WIDTH_MM = 40;
    /** Height of the start line [mm]. */
    public static final double START_MM = 10;
    /** Most plates of an exercise. */
    public static final int MOST = 30;

    private static final int LOWEST_FRONT = 58;
    private static final int HIGHEST_FRONT = 64;
    /** A ruler is read to this part of a millimetre. */
    private static final double PER_MM = 2;
    /** The usual run [mm]. */
    private static final double USUAL_RUN_MM = (LOWEST_FRONT + HIGHEST_FRONT) / 2.0 - START_MM;
    /** Spots are not told apart where they lie nearer than this [1 in Rf]; own choice. */
    private static final double LEAST_GAP = 0.05;
    /** A spot of which only the height was measured reaches a line within this [mm]. */
    private static final double HALF_MM = SpotMeasurement.USUAL_SIZE_MM / 2;

    private static final double HUNDREDTHS = 100;
    /** For what is drawn: plates. */
    private static final int PLATES = 2;

    /** Keeps its own copy. */
    public ExercisePlate {
        lanes = lanes.stream().map(List::copyOf).toList();
    }

    /**
     * A spot as it is seen.
     *
     * @param names what lies in it
     * @param mm height of its centre above the lower edge [mm]
     * @param rf as read [1]
     * @param limit whether it sits on a line
     * @param sizeMm its length along the lane [mm]
     */
    public record Spot(List<String> names, double mm, double rf, Limit limit, double sizeMm) {
        /** Keeps its own copy. */
        public Spot {
            names = List.copyOf(names);
        }
    }

    /**
     * The plate of that number at that share, the same whenever it is asked for.
     *
     * @param exercise what runs
     * @param number which plate it is, 1 to {@value #MOST}
     * @param percent share of the stronger solvent, 0 to 100 [% v/v]
     */
    public static ExercisePlate of(Exercise exercise, int number, double percent) {
        int hundredths = (int) Math.round(percent * HUNDREDTHS);
        double share = hundredths / HUNDREDTHS;
        SeededDraws draws = Exercise.draws(exercise.code(), PLATES, number, hundredths);
        double front = draws.whole(LOWEST_FRONT, HIGHEST_FRONT);
        double common = draws.normal();
        TrueCourse truth = exercise.truth();
        List<Double> alone = truth.plates().read(truth.sample(), share, first(common, draws::normal));
        List<Double> mixed = truth.plates().read(truth.sample(), share, first(common, draws::normal));
        List<String> names = exercise.names();
        List<List<Spot>> lanes = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            lanes.add(List.of(spot(names.get(i), alone.get(i), front)));
        }
        List<Spot> together = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            together.add(spot(names.get(i), mixed.get(i), front));
        }
        together.sort(Comparator.comparingDouble(Spot::mm));
        lanes.add(seen(together, front));
        return new ExercisePlate(number, share, front, lanes);
    }

    /** Both lanes of a plate share its error, which is the first number that a reading asks for. */
    private static DoubleSupplier first(double common, DoubleSupplier further) {
        boolean[] isTaken = {false};
        return () -> {
            if (isTaken[0]) {
                return further.getAsDouble();
            }
            isTaken[0] = true;
            return common;
        };
    }

    private static Spot spot(String name, double rf, double front) {
        double mm = Math.round((START_MM + rf * (front - START_MM)) * PER_MM) / PER_MM;
        return spot(List.of(name), mm, SpotGrowth.alongMm(mm - START_MM), front);
    }

    private static Spot spot(List<String> names, double mm, double size, double front) {
        double rf = (mm - START_MM) / (front - START_MM);
        Limit limit = mm - START_MM <= HALF_MM ? Limit.AT_START : front - mm <= HALF_MM ? Limit.AT_FRONT : Limit.NONE;
        return new Spot(names, mm, Math.round(rf * HUNDREDTHS) / HUNDREDTHS, limit, size);
    }

    /** What is seen of spots that rise: those that touch as one, from the foot of the lowest to the top of the highest. */
    private static List<Spot> seen(List<Spot> rising, double front) {
        List<Spot> seen = new ArrayList<>();
        for (Spot spot : rising) {
            Spot below = seen.isEmpty() ? null : seen.get(seen.size() - 1);
            if (below == null || foot(spot) >= top(below)) {
                seen.add(spot);
                continue;
            }
            List<String> names = new ArrayList<>(below.names());
            names.addAll(spot.names());
            double low = Math.min(foot(below), foot(spot));
            double high = Math.max(top(below), top(spot));
            double centre = Math.round((low + high) / 2 * PER_MM) / PER_MM;
            seen.set(seen.size() - 1, spot(names, centre, high - low, front));
        }
        return seen;
    }

    private static double foot(Spot spot) {
        return spot.mm() - spot.sizeMm() / 2;
    }

    private static double top(Spot spot) {
        return spot.mm() + spot.sizeMm() / 2;
    }

    /** The spot of each unknown in its own lane. */
    public Map<String, Spot> own() {
        Map<String, Spot> own = new LinkedHashMap<>();
        lanes.subList(0, lanes.size() - 1)
                .forEach(lane -> own.put(lane.get(0).names().get(0), lane.get(0)));
        return own;
    }

    /** How many spots the lane with all of them shows. */
    public int spotsOfAll() {
        return lanes.get(lanes.size() - 1).size();
    }

    /**
     * What is left between neighbours on a plate of the usual run [1 in Rf], of half the lengths of both and of 0.05 at least; below 0 where two
     * touch, 1 where there is one spot.
     *
     * @see SpotGrowth
     */
    static double between(List<Double> rf) {
        double[] sorted = rf.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return IntStream.range(1, sorted.length)
                .mapToDouble(i -> sorted[i]
                        - sorted[i - 1]
                        - Math.max(LEAST_GAP, (length(sorted[i]) + length(sorted[i - 1])) / 2))
                .min()
                .orElse(1);
    }

    /** How long a spot is on a plate of the usual run [1 in Rf]. */
    private static double length(double rf) {
        return SpotGrowth.alongMm(rf * USUAL_RUN_MM) / USUAL_RUN_MM;
    }

    /** Whether what the exercise asks for can be seen on it: every spot in the window, and as many in the lane with all of them. */
    public boolean isDone() {
        boolean inside =
                own().values().stream().allMatch(spot -> spot.limit() == Limit.NONE && Window.USUAL.holds(spot.rf()));
        return inside && spotsOfAll() == own().size();
    }

    /** The Rf of a spot, or the bound where it reaches a line [1]. */
    double known(Spot spot) {
        double half = HALF_MM / (frontMm - START_MM);
        return switch (spot.limit()) {
            case AT_START -> half;
            case AT_FRONT -> 1 - half;
            case NONE -> spot.rf();
        };
    }

    /** As somebody notes it for the adviser. */
    Run noted(LessonSample sample) {
        Map<String, Reading> readings = new LinkedHashMap<>();
        own().forEach((name, spot) -> readings.put(name, reading(spot)));
        return new Run(Eluent.of(Sorbent.SILICA, sample.weak(), sample.strong(), percentStrong), readings);
    }

    private Reading reading(Spot spot) {
        return switch (spot.limit()) {
            case AT_START -> Reading.atStart(known(spot));
            case AT_FRONT -> Reading.atFront(known(spot));
            case NONE -> Reading.of(spot.rf());
        };
    }
}
