package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import midplate.advice.FrontSpeed;
import midplate.advice.FrontSpeeds;
import midplate.advice.SpotForecast;
import midplate.chemistry.FrontMigration;
import midplate.words.Digits;
import midplate.words.Message;

/**
 * A plate while it develops: the front climbs from the eluent's surface as {@code z² = κ·t}, spots wait until it has passed them and
 * follow at their Rf, growing on the way.
 *
 * <p>z [mm] height of the front above the surface, t [s], κ [mm²/s]. A spot's centre stands at {@code s + Rf·(f − s)} with s the
 * start line and f the front [mm]: its Rf is the same at every moment. Theory: dry layer, saturated jar.
 *
 * @param plate where the lines are
 * @param percentStrong share of the strong solvent [% v/v]
 * @param speed how fast the front climbs
 * @param moments what is seen, evenly spaced in time from the dip to the stop, and when the front passes the start line and half of the run
 * @param spots each compound, in the order of the sample
 * @param events what happens when
 * @param notes what to know of the numbers
 * @see "PlanarFlow"
 * @see SpotGrowth
 */
public record Development(
        DippedPlate plate,
        double percentStrong,
        FrontSpeed speed,
        List<Moment> moments,
        List<Spot> spots,
        List<Event> events,
        List<Message> notes) {
    /** So many steps are evenly spaced. */
    static final int STEPS = 60;

    private static final double SECONDS_PER_MINUTE = 60;
    private static final double HALF = 0.5;

    /** Keeps its own copies. */
    public Development {
        moments = List.copyOf(moments);
        spots = List.copyOf(spots);
        events = List.copyOf(events);
        notes = List.copyOf(notes);
    }

    /**
     * A moment.
     *
     * @param minutes since the plate was put in [min]
     * @param frontMm height of the front above the plate's lower edge [mm]
     */
    public record Moment(double minutes, double frontMm) {}

    /**
     * A spot.
     *
     * @param name its compound
     * @param rf the Rf to expect [1]
     * @param low lower end of the 90 % band of {@link midplate.inference.Outlook.Spot} [1]
     * @param high its upper end [1]
     * @param places where it is at each moment
     */
    public record Spot(String name, double rf, double low, double high, List<Place> places) {
        /** Keeps its own copy. */
        public Spot {
            places = List.copyOf(places);
        }
    }

    /**
     * Where a spot is.
     *
     * @param centreMm height of its centre above the plate's lower edge [mm]
     * @param alongMm how long it is [mm]
     * @param acrossMm how broad [mm]
     */
    public record Place(double centreMm, double alongMm, double acrossMm) {}

    /** What is told when it happens. */
    public enum Happening {
        /** The front passes the start line: spots set out. */
        START,
        /** The front has gone half of the way from the start line to the stop. */
        HALF_WAY,
        /** The plate is taken out. */
        STOP;

        /** Its word: {@code half-way}. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * What happens when.
     *
     * @param what it is
     * @param frontMm where the front stands then [mm]
     * @param minutes when [min]
     * @param lowMinutes at the earliest [min]
     * @param highMinutes at the latest [min]
     */
    public record Event(Happening what, double frontMm, double minutes, double lowMinutes, double highMinutes) {}

    /**
     * A sample on a plate in one mixture.
     *
     * @throws midplate.words.Refusal where the two solvents are no eluent, or nothing is known of how fast they climb
     */
    public static Development of(LessonModel model, LessonSample sample, double percentStrong, DippedPlate plate) {
        List<SpotForecast> forecasts =
                model.consult(sample).at(List.of(percentStrong)).get(0).spots();
        FrontSpeeds.Mixed mixed =
                FrontSpeeds.of(model.catalogue()).mixture(sample.weak(), sample.strong(), percentStrong);
        Climbing climbing = new Climbing(plate, mixed.speed());
        List<Moment> moments = climbing.moments();
        List<Spot> spots = new ArrayList<>();
        for (SpotForecast each : forecasts) {
            List<Place> places = moments.stream()
                    .map(moment -> place(plate, each.rf(), moment.frontMm()))
                    .toList();
            spots.add(new Spot(each.spot(), each.rf(), each.low(), each.high(), places));
        }
        return new Development(plate, percentStrong, mixed.speed(), moments, spots, climbing.events(), mixed.notes());
    }

    private static Place place(DippedPlate plate, double rf, double frontMm) {
        double way = rf * Math.max(0, frontMm - plate.startMm());
        return new Place(plate.startMm() + way, SpotGrowth.alongMm(way), SpotGrowth.acrossMm(way));
    }

    /** What to say of it: the wait, the slowing front, the Rf that stays. */
    public List<Message> sentences() {
        Event start = events.get(0);
        Event half = events.get(1);
        Event stop = events.get(2);
        List<Message> said = new ArrayList<>();
        said.add(Message.of(
                "lesson.climb-wait",
                "seconds",
                Math.rint(start.minutes() * SECONDS_PER_MINUTE),
                "startMm",
                plate.startMm(),
                "levelMm",
                plate.levelMm()));
        said.add(Message.of(
                "lesson.climb-slows",
                "percent",
                (int) Math.round(100 * half.minutes() / stop.minutes()),
                "halfMm",
                Digits.percent(half.frontMm()),
                "stopMm",
                plate.stopMm()));
        said.add(Message.of(
                "lesson.climb-time", "minutes", stop.minutes(), "low", stop.lowMinutes(), "high", stop.highMinutes()));
        Spot longest = spots.get(0);
        for (Spot spot : spots) {
            longest = end(spot).alongMm() > end(longest).alongMm() ? spot : longest;
        }
        said.add(Message.of("lesson.climb-constant"));
        said.add(Message.of(
                "lesson.climb-grows",
                "spot",
                longest.name(),
                "startMm",
                SpotGrowth.START_MM,
                "alongMm",
                end(longest).alongMm(),
                "acrossMm",
                end(longest).acrossMm()));
        said.add(Message.of("lesson.climb-growth-basis", "heightMm", SpotGrowth.PLATE_HEIGHT_MM));
        said.addAll(notes);
        return said;
    }

    private static Place end(Spot spot) {
        return spot.places().get(spot.places().size() - 1);
    }

    /** The front alone. */
    private record Climbing(DippedPlate plate, FrontSpeed speed) {
        double minutes(double frontMm, ToDoubleFunction<FrontSpeed> coefficient) {
            return FrontMigration.seconds(frontMm - plate.levelMm(), coefficient.applyAsDouble(speed))
                    / SECONDS_PER_MINUTE;
        }

        double halfMm() {
            return plate.startMm() + HALF * (plate.stopMm() - plate.startMm());
        }

        /** Where the front must stand is kept as it is, not worked out from the time again. */
        List<Moment> moments() {
            double end = minutes(plate.stopMm(), FrontSpeed::middle);
            List<Moment> exact = DoubleStream.of(plate.startMm(), halfMm(), plate.stopMm())
                    .mapToObj(mm -> new Moment(minutes(mm, FrontSpeed::middle), mm))
                    .toList();
            List<Moment> moments = new ArrayList<>(exact);
            for (int step = 0; step < STEPS; step++) {
                double minutes = end * step / STEPS;
                double mm = plate.levelMm() + FrontMigration.heightMm(minutes * SECONDS_PER_MINUTE, speed.middle());
                if (exact.stream().noneMatch(moment -> moment.minutes() == minutes)) {
                    moments.add(new Moment(minutes, mm));
                }
            }
            moments.sort(Comparator.comparingDouble(Moment::minutes));
            return moments;
        }

        List<Event> events() {
            return List.of(
                    event(Happening.START, plate.startMm()),
                    event(Happening.HALF_WAY, halfMm()),
                    event(Happening.STOP, plate.stopMm()));
        }

        private Event event(Happening what, double frontMm) {
            return new Event(
                    what,
                    frontMm,
                    minutes(frontMm, FrontSpeed::middle),
                    minutes(frontMm, FrontSpeed::fast),
                    minutes(frontMm, FrontSpeed::slow));
        }
    }
}
