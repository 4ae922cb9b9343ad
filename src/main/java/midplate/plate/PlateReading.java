package midplate.plate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * The readings of a plate, worked out from its lengths, with what to tell about how it was run and measured.
 *
 * <p>Rf = (c − s)/(f − s), with c the height of the spot's centre, s that of the start line, f that of the front [mm], each
 * from the plate's lower edge. A spot that reaches either line is a bound and no number: with d its size and L = f − s, c −
 * s ≤ d/2 gives "at most d/(2L)" and f − c ≤ d/2 gives "at least 1 − d/(2L)".
 *
 * <p>Lines in the wrong order, a run below 5 mm, a spot clearly outside the run: refused. The error is that of the lengths
 * alone ({@link RulerError}); how plates differ among themselves is for the model to know. The centre of a spot in one lane has the
 * variance V [mm²]: e² where its standard error e was worked out elsewhere ({@link SpotMeasurement#errorMm}); else σ² + d²/12 of a streak,
 * which is a spot that is one by its length d or was called {@code streak}, {@code sharp-head} or {@code merged}; else σ² of the ruler. Of a
 * spot in n lanes, each with a V of its own, the mean of the centres has the larger of ΣV/n² and s²/n, with s² the variance seen between the
 * lanes.
 */
public final class PlateReading {
    /** The same spot in two lanes should not differ by more than this in Rf [1]; common practice, no source. */
    static final double LANES_AGREE_RF = 0.04;

    private final Map<String, Reading> readings;
    private final List<Message> warnings;

    private PlateReading(Map<String, Reading> readings, List<Message> warnings) {
        this.readings = Collections.unmodifiableMap(readings);
        this.warnings = List.copyOf(warnings);
    }

    /**
     * Works out a plate.
     *
     * @param plate its lengths [mm]
     * @throws Refusal the first of {@link #faults} when the geometry is impossible
     */
    public static PlateReading of(PlateMeasurement plate) {
        for (Refusal fault : faults(plate)) {
            throw fault;
        }
        List<Message> warnings = new ArrayList<>(PlateHabits.of(plate));
        Map<String, List<SpotMeasurement>> bySpot = new LinkedHashMap<>();
        for (SpotMeasurement spot : plate.spots()) {
            bySpot.computeIfAbsent(spot.spot(), name -> new ArrayList<>()).add(spot);
        }
        Map<String, Reading> readings = new LinkedHashMap<>();
        bySpot.forEach((name, lanes) -> {
            readings.put(name, reading(plate, lanes));
            lanesDiffer(plate, name, lanes, warnings);
        });
        return new PlateReading(readings, warnings);
    }

    /** Everything that makes a plate impossible, each with its field; empty when {@link #of} takes it. */
    public static List<Refusal> faults(PlateMeasurement plate) {
        return PlateFaults.of(plate);
    }

    /** The readings by the spots' names, in the order of the measurement. */
    public Map<String, Reading> readings() {
        return readings;
    }

    /** Mistakes that were probably made and what they do; empty when nothing is to be said. */
    public List<Message> warnings() {
        return warnings;
    }

    /** One spot, from all lanes in which it stands: the mean of the centres, the size of the largest. */
    private static Reading reading(PlateMeasurement plate, List<SpotMeasurement> lanes) {
        double run = plate.runMm();
        double centre = meanCentre(lanes);
        double half =
                lanes.stream().mapToDouble(SpotMeasurement::halfSizeMm).max().orElseThrow();
        double variance = centreVariance(plate, lanes);
        if (centre - plate.startMm() <= half) {
            return reading(half / run, Limit.AT_START, run, variance);
        }
        if (plate.frontMm() - centre <= half) {
            return reading(1 - half / run, Limit.AT_FRONT, run, variance);
        }
        return reading((centre - plate.startMm()) / run, Limit.NONE, run, variance);
    }

    private static Reading reading(double rf, Limit limit, double runMm, double centreVariance) {
        return new Reading(rf, limit, OptionalDouble.of(RulerError.ofRf(rf, runMm, centreVariance)));
    }

    private static double meanCentre(List<SpotMeasurement> lanes) {
        return lanes.stream().mapToDouble(SpotMeasurement::centreMm).sum() / lanes.size();
    }

    /** Variance of the mean centre [mm²]: that of the lengths, or that seen between the lanes where it is larger. */
    private static double centreVariance(PlateMeasurement plate, List<SpotMeasurement> lanes) {
        int n = lanes.size();
        double mean = meanCentre(lanes);
        double known = 0;
        double seen = 0;
        for (SpotMeasurement spot : lanes) {
            known += PlateHabits.centreVariance(plate, spot);
            seen += (spot.centreMm() - mean) * (spot.centreMm() - mean);
        }
        double between = n > 1 ? seen / (n - 1) : 0;
        return Math.max(known / n, between) / n;
    }

    private static void lanesDiffer(
            PlateMeasurement plate, String name, List<SpotMeasurement> lanes, List<Message> warnings) {
        double lowest = plate.frontMm() + PlateFaults.LONGEST_MM;
        double highest = 0;
        for (SpotMeasurement spot : lanes) {
            lowest = Math.min(lowest, spot.centreMm());
            highest = Math.max(highest, spot.centreMm());
        }
        double differenceRf = (highest - lowest) / plate.runMm();
        if (differenceRf > LANES_AGREE_RF) {
            warnings.add(Message.of(
                    "plate.lanes-differ",
                    "spot",
                    name,
                    "lowMm",
                    lowest,
                    "highMm",
                    highest,
                    "differenceRf",
                    differenceRf));
        }
    }
}
