package midplate.wire;

import java.util.Optional;
import java.util.OptionalDouble;
import midplate.lesson.HowRead;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads where a pair of students has a spot: an Rf, with or without the heights of the lines, or three heights. */
final class ClassRfReader {
    /** Longest length taken [mm], shortest run [mm], and how far a spot may lie beyond a line by a slip of the ruler [mm]; common practice, no source. */
    private static final double LONGEST_MM = 1000;

    private static final double LEAST_RUN_MM = 5;
    private static final double SLIP_MM = 1;
    private static final String RF = "rf";
    private static final String CENTRE = "centreMm";
    private static final String START = "startMm";
    private static final String FRONT = "frontMm";

    private final FaultList faults;

    ClassRfReader(FaultList faults) {
        this.faults = faults;
    }

    /**
     * A reading.
     *
     * @param rf what was read [1]
     * @param how it came about
     */
    record Read(double rf, HowRead how) {}

    /** A reading; empty where it is missing or faulty. */
    Optional<Read> read(JsonFields fields, String spot) {
        if (fields.has(RF) == fields.has(CENTRE)) {
            String came = fields.any(RF).map(Json::shown).orElse("");
            faults.add(
                    fields.path(fields.has(RF) ? CENTRE : RF),
                    Message.of("fault.class-height-or-rf"),
                    fields.has(RF) ? came : "–",
                    Message.of("allowed.class-height-or-rf"),
                    Message.of("todo.class-height-or-rf"));
            return Optional.empty();
        }
        OptionalDouble start = length(fields, START);
        OptionalDouble front = length(fields, FRONT);
        boolean areLines = start.isPresent() && front.isPresent();
        if (areLines && !(front.getAsDouble() - start.getAsDouble() >= LEAST_RUN_MM)) {
            faults.add(
                    fields.path(FRONT),
                    Message.of(
                            "plate.front-not-above-start",
                            "frontMm",
                            front.getAsDouble(),
                            "startMm",
                            start.getAsDouble()),
                    shown(fields, FRONT),
                    Allowed.mm(Allowed.closed(start.getAsDouble() + LEAST_RUN_MM, LONGEST_MM)),
                    Message.of("todo.give-both-heights"));
            return Optional.empty();
        }
        if (fields.has(RF)) {
            OptionalDouble rf = RfReader.read(fields, RF, faults);
            return rf.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Read(
                            rf.getAsDouble(),
                            areLines ? HowRead.divided(start.getAsDouble(), front.getAsDouble()) : HowRead.UNTOLD));
        }
        lines(fields);
        OptionalDouble centre = length(fields, CENTRE);
        return areLines && centre.isPresent()
                ? measured(fields, spot, centre.getAsDouble(), start.getAsDouble(), front.getAsDouble())
                : Optional.empty();
    }

    private void lines(JsonFields fields) {
        for (String line : new String[] {START, FRONT}) {
            if (!fields.has(line)) {
                fields.missing(line, Message.of("kind.number"), Message.of("todo.measure-from-edge"));
            }
        }
    }

    private Optional<Read> measured(JsonFields fields, String spot, double centre, double start, double front) {
        Message allowed = Allowed.mm(Allowed.closed(start, front));
        if (!(centre <= front + SLIP_MM)) {
            faults.add(
                    fields.path(CENTRE),
                    Message.of("plate.spot-beyond-front", "spot", spot, "beyondMm", centre - front),
                    shown(fields, CENTRE),
                    allowed,
                    Message.of("todo.measure-spot-and-front"));
            return Optional.empty();
        }
        if (!(centre >= start - SLIP_MM)) {
            faults.add(
                    fields.path(CENTRE),
                    Message.of("plate.spot-below-start", "spot", spot, "belowMm", start - centre),
                    shown(fields, CENTRE),
                    allowed,
                    Message.of("todo.heights-from-edge"));
            return Optional.empty();
        }
        double rf = Math.max(0, Math.min(1, (centre - start) / (front - start)));
        return Optional.of(new Read(rf, HowRead.measured(start, front)));
    }

    private OptionalDouble length(JsonFields fields, String name) {
        OptionalDouble mm = fields.number(name);
        if (mm.isEmpty() || (mm.getAsDouble() >= 0 && mm.getAsDouble() <= LONGEST_MM)) {
            return mm;
        }
        faults.add(
                fields.path(name),
                Message.of("plate.length-out-of-range"),
                shown(fields, name),
                Allowed.mm(Allowed.closed(0, LONGEST_MM)),
                Message.of("todo.measure-from-edge"));
        return OptionalDouble.empty();
    }

    private static String shown(JsonFields fields, String name) {
        return fields.any(name).map(Json::shown).orElse("");
    }

    /** A whole number; empty when absent or faulty. */
    static Optional<Integer> whole(JsonFields fields, String name, int least, int most, FaultList faults) {
        OptionalDouble came = fields.number(name);
        if (came.isEmpty()) {
            return Optional.empty();
        }
        double number = came.getAsDouble();
        if (number == Math.rint(number) && number >= least && number <= most) {
            return Optional.of((int) number);
        }
        Message interval = Allowed.closed(least, most);
        Message allowed = Message.of("allowed.whole-number", "interval", interval);
        faults.add(
                fields.path(name),
                Message.of("fault.number-out-of-range", "allowed", interval),
                shown(fields, name),
                allowed,
                Message.of("todo.give", "wanted", allowed));
        return Optional.empty();
    }
}
