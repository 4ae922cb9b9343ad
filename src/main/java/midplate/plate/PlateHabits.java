package midplate.plate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import midplate.words.Message;

/**
 * Finds the usual mistakes of running and measuring a plate, on a plate without faults.
 *
 * <p>Every threshold here is common practice, no source. Each is a bound that is itself still good: a front exactly 5 mm
 * below the top is not told.
 */
final class PlateHabits {
    /** A start line lower than this was hardly drawn there: the lengths were measured from it [mm]. */
    static final double START_AT_EDGE_MM = 1;
    /** Where a start line usually is [mm]. */
    static final double USUAL_START_MM = 10;
    /** Room to leave between the front and the top [mm]. */
    static final double TOP_ROOM_MM = 5;
    /** Less room than this: the front was at the top before the plate was taken out [mm]. */
    static final double AT_TOP_MM = 1;
    /** Room to leave between the solvent and the start line [mm]. */
    static final double SOLVENT_ROOM_MM = 3;
    /** A run below this says little [mm]. */
    static final double SHORT_RUN_MM = 20;
    /** A spot longer than this is a streak [mm]. */
    static final double STREAK_MM = 8;
    /** A spot longer than this part of the run is a streak [1]. */
    static final double STREAK_PART = 0.25;
    /** Room to leave between a lane's middle and the side edge [mm]. */
    static final double SIDE_ROOM_MM = 5;
    /** Room to leave between the spots of two lanes [mm]. */
    static final double LANE_ROOM_MM = 1;
    /** Middles no farther apart than this belong to one lane [mm]. */
    static final double ONE_LANE_MM = 1;

    private final PlateMeasurement plate;
    private final List<Message> warnings = new ArrayList<>();

    private PlateHabits(PlateMeasurement plate) {
        this.plate = plate;
    }

    /** What to tell about a plate, lines first, then the spots in their order, then the lanes from the left. */
    static List<Message> of(PlateMeasurement plate) {
        PlateHabits habits = new PlateHabits(plate);
        habits.startAtEdge();
        habits.front();
        habits.solvent();
        for (SpotMeasurement spot : plate.spots()) {
            habits.ends(spot);
            habits.look(spot);
            habits.side(spot);
        }
        habits.lanes();
        return List.copyOf(habits.warnings);
    }

    /** Whether a spot's size was measured and is that of a streak. */
    static boolean isStreak(PlateMeasurement plate, SpotMeasurement spot) {
        double size = spot.sizeMm().orElse(0);
        return size > STREAK_MM || size > STREAK_PART * plate.runMm();
    }

    /** Variance of a spot's centre in one lane [mm²]: what was worked out elsewhere, else that of a streak or of a compact spot. */
    static double centreVariance(PlateMeasurement plate, SpotMeasurement spot) {
        if (spot.errorMm().isPresent()) {
            return spot.errorMm().getAsDouble() * spot.errorMm().getAsDouble();
        }
        boolean spread = isStreak(plate, spot) || spot.shape().orElse(SpotForm.COMPACT) != SpotForm.COMPACT;
        return spread ? RulerError.streakVariance(2 * spot.halfSizeMm()) : RulerError.compactVariance();
    }

    private void startAtEdge() {
        if (plate.startMm() >= START_AT_EDGE_MM) {
            return;
        }
        warnings.add(Message.of("plate.start-at-edge", "startMm", plate.startMm()));
        if (plate.frontMm() > USUAL_START_MM) {
            Optional<SpotMeasurement> most = plate.spots().stream().max(Comparator.comparingDouble(this::edgeShift));
            most.ifPresent(spot -> warnings.add(Message.of(
                    "plate.start-at-edge-shift",
                    "spot",
                    spot.spot(),
                    "rf",
                    rfFrom(plate.startMm(), spot),
                    "usualStartMm",
                    USUAL_START_MM,
                    "rfThen",
                    rfFrom(USUAL_START_MM, spot))));
        }
    }

    private double edgeShift(SpotMeasurement spot) {
        return rfFrom(plate.startMm(), spot) - rfFrom(USUAL_START_MM, spot);
    }

    private double rfFrom(double startMm, SpotMeasurement spot) {
        double rf = (spot.centreMm() - startMm) / (plate.frontMm() - startMm);
        return Math.max(0, Math.min(1, rf));
    }

    private void front() {
        double room = plate.heightMm() - plate.frontMm();
        if (room < AT_TOP_MM) {
            warnings.add(Message.of("plate.front-at-top", "roomMm", room));
        } else if (room < TOP_ROOM_MM) {
            warnings.add(Message.of("plate.front-near-top", "roomMm", room));
        }
        if (plate.runMm() < SHORT_RUN_MM) {
            double error = RulerError.ofRf(0.5, plate.runMm(), RulerError.compactVariance());
            warnings.add(Message.of("plate.run-short", "runMm", plate.runMm(), "rfError", error));
        }
    }

    private void solvent() {
        plate.solventLevelMm().ifPresent(level -> {
            double room = plate.startMm() - level;
            if (room <= 0) {
                warnings.add(Message.of("plate.start-under-solvent", "startMm", plate.startMm(), "levelMm", level));
            } else if (room < SOLVENT_ROOM_MM) {
                warnings.add(Message.of("plate.start-near-solvent", "roomMm", room));
            }
        });
    }

    private void ends(SpotMeasurement spot) {
        double past = spot.centreMm() - plate.frontMm();
        double under = plate.startMm() - spot.centreMm();
        if (past > 0) {
            warnings.add(Message.of("plate.spot-past-front", "spot", spot.spot(), "pastMm", past));
        } else if (under > 0) {
            warnings.add(Message.of("plate.spot-under-start", "spot", spot.spot(), "underMm", under));
        }
    }

    /** What makes a spot's middle say little: told once, the worst that is known of it. */
    private void look(SpotMeasurement spot) {
        SpotForm form = spot.shape().orElse(SpotForm.COMPACT);
        double error = RulerError.ofRf(rfFrom(plate.startMm(), spot), plate.runMm(), centreVariance(plate, spot));
        if (form == SpotForm.SHARP_HEAD) {
            warnings.add(Message.of("plate.spot-overloaded", "spot", spot.spot(), "rfError", error));
        } else if (form == SpotForm.MERGED) {
            warnings.add(Message.of("plate.spot-merged", "spot", spot.spot(), "rfError", error));
        } else if (isStreak(plate, spot)) {
            double size = 2 * spot.halfSizeMm();
            warnings.add(Message.of("plate.spot-streak", "spot", spot.spot(), "sizeMm", size, "rfError", error));
        } else if (form == SpotForm.STREAK) {
            warnings.add(Message.of("plate.spot-drawn-out", "spot", spot.spot(), "rfError", error));
        }
    }

    private void side(SpotMeasurement spot) {
        spot.fromLeftMm().ifPresent(left -> {
            double right = plate.widthMm().isPresent() ? plate.widthMm().getAsDouble() - left : SIDE_ROOM_MM;
            double room = Math.min(left, right);
            if (room < SIDE_ROOM_MM) {
                warnings.add(Message.of("plate.spot-near-edge", "spot", spot.spot(), "roomMm", room));
            }
        });
    }

    /** Two lanes are too near when less than {@link #LANE_ROOM_MM} is left between their largest spots. */
    private void lanes() {
        List<SpotMeasurement> fromLeft = plate.spots().stream()
                .filter(spot -> spot.fromLeftMm().isPresent())
                .sorted(Comparator.comparingDouble(PlateHabits::left))
                .toList();
        List<SpotMeasurement> before = List.of();
        List<SpotMeasurement> lane = new ArrayList<>();
        for (SpotMeasurement spot : fromLeft) {
            if (!lane.isEmpty() && left(spot) - left(lane.get(0)) > ONE_LANE_MM) {
                pair(before, lane);
                before = lane;
                lane = new ArrayList<>();
            }
            lane.add(spot);
        }
        pair(before, lane);
    }

    private void pair(List<SpotMeasurement> one, List<SpotMeasurement> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return;
        }
        SpotMeasurement a = largest(one.stream());
        SpotMeasurement b = largest(other.stream());
        double distance = left(b) - left(a);
        double needed = a.halfSizeMm() + b.halfSizeMm() + LANE_ROOM_MM;
        if (distance < needed) {
            warnings.add(Message.of(
                    "plate.lanes-close",
                    "spot",
                    a.spot(),
                    "neighbour",
                    b.spot(),
                    "distanceMm",
                    distance,
                    "neededMm",
                    needed));
        }
    }

    private static SpotMeasurement largest(Stream<SpotMeasurement> lane) {
        return lane.max(Comparator.comparingDouble(SpotMeasurement::halfSizeMm)).orElseThrow();
    }

    private static double left(SpotMeasurement spot) {
        return spot.fromLeftMm().orElseThrow();
    }
}
