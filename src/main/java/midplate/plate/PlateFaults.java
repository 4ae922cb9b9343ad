package midplate.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** Finds what cannot be on a plate: lengths that are none, lines in the wrong order, spots outside the run. */
final class PlateFaults {
    /** The longest length taken [mm]: a metre, far above any plate, so that a wrong unit is noticed. */
    static final double LONGEST_MM = 1000;

    /** The shortest run from which an Rf is worked out [mm]; common practice, no source. Its Rf error is 0.12 midway. */
    static final double LEAST_RUN_MM = 5;

    /** A centre this far outside the lines may still be a slip of the ruler [mm]: two standard deviations. */
    static final double SLIP_MM = 2 * RulerError.LENGTH_MM;

    private final PlateMeasurement plate;
    private final List<Refusal> faults = new ArrayList<>();

    private PlateFaults(PlateMeasurement plate) {
        this.plate = plate;
    }

    /** All faults of a plate, lines first, then the spots in their order; empty when an Rf can be worked out. */
    static List<Refusal> of(PlateMeasurement plate) {
        PlateFaults finder = new PlateFaults(plate);
        finder.lengths();
        if (finder.faults.isEmpty()) {
            finder.lines();
        }
        if (finder.faults.isEmpty()) {
            finder.spots();
        }
        return List.copyOf(finder.faults);
    }

    /** How far a centre may lie outside the lines and still be taken as lying on one [mm]. */
    static double slackMm(SpotMeasurement spot) {
        return Math.max(spot.halfSizeMm(), SLIP_MM);
    }

    static String spotField(int index, String name) {
        return String.format(Locale.ROOT, "plate.spots[%d].%s", index, name);
    }

    private void lengths() {
        length("plate.heightMm", plate.heightMm(), Least.ABOVE_ZERO);
        length("plate.startMm", plate.startMm(), Least.ZERO);
        length("plate.frontMm", plate.frontMm(), Least.ABOVE_ZERO);
        plate.widthMm().ifPresent(mm -> length("plate.widthMm", mm, Least.ABOVE_ZERO));
        plate.solventLevelMm().ifPresent(mm -> length("plate.solventLevelMm", mm, Least.ZERO));
        for (int i = 0; i < plate.spots().size(); i++) {
            SpotMeasurement spot = plate.spots().get(i);
            int index = i;
            if (spot.spot().isBlank()) {
                faults.add(new Refusal(
                        spotField(i, "spot"),
                        Message.of("plate.spot-unnamed"),
                        "\"" + spot.spot() + "\"",
                        Message.of("allowed.visible-name"),
                        Message.of("todo.name-spot")));
            }
            length(spotField(i, "centreMm"), spot.centreMm(), Least.ZERO);
            spot.sizeMm().ifPresent(mm -> length(spotField(index, "sizeMm"), mm, Least.ABOVE_ZERO));
            spot.fromLeftMm().ifPresent(mm -> length(spotField(index, "fromLeftMm"), mm, Least.ZERO));
            spot.errorMm().ifPresent(mm -> error(spotField(index, "errorMm"), mm));
        }
    }

    private enum Least {
        ZERO,
        ABOVE_ZERO
    }

    private void length(String field, double mm, Least least) {
        boolean longEnough = least == Least.ZERO ? mm >= 0 : mm > 0;
        if (!(longEnough && mm <= LONGEST_MM)) {
            faults.add(new Refusal(
                    field,
                    Message.of("plate.length-out-of-range"),
                    Double.toString(mm),
                    Allowed.mm(
                            least == Least.ZERO
                                    ? Allowed.closed("0", shown(LONGEST_MM))
                                    : Allowed.leftOpen("0", shown(LONGEST_MM))),
                    Message.of("todo.measure-from-edge")));
        }
    }

    private void error(String field, double mm) {
        if (!(mm > 0 && mm <= SpotMeasurement.LARGEST_ERROR_MM)) {
            faults.add(new Refusal(
                    field,
                    Message.of("plate.height-error-out-of-range"),
                    Double.toString(mm),
                    Allowed.mm(Allowed.leftOpen("0", shown(SpotMeasurement.LARGEST_ERROR_MM))),
                    Message.of("todo.give-height-error")));
        }
    }

    private void lines() {
        double run = plate.runMm();
        if (!(run > 0)) {
            fault(
                    "plate.frontMm",
                    Message.of("plate.front-not-above-start", "frontMm", plate.frontMm(), "startMm", plate.startMm()),
                    plate.frontMm(),
                    interval(plate.startMm() + LEAST_RUN_MM, plate.heightMm()),
                    Message.of("todo.give-both-heights"));
        } else if (!(run >= LEAST_RUN_MM)) {
            fault(
                    "plate.frontMm",
                    Message.of("plate.run-too-short", "runMm", run, "leastMm", LEAST_RUN_MM),
                    plate.frontMm(),
                    interval(plate.startMm() + LEAST_RUN_MM, plate.heightMm()),
                    Message.of("todo.run-again"));
        }
        if (!(plate.frontMm() <= plate.heightMm())) {
            fault(
                    "plate.frontMm",
                    Message.of("plate.front-beyond-top", "frontMm", plate.frontMm(), "heightMm", plate.heightMm()),
                    plate.frontMm(),
                    interval(plate.startMm() + LEAST_RUN_MM, plate.heightMm()),
                    Message.of("todo.measure-front"));
        }
        double level = plate.solventLevelMm().orElse(0);
        if (!(level < plate.frontMm())) {
            fault(
                    "plate.solventLevelMm",
                    Message.of("plate.solvent-above-front", "levelMm", level, "frontMm", plate.frontMm()),
                    level,
                    Allowed.mm(Allowed.rightOpen("0", shown(plate.frontMm()))),
                    Message.of("todo.give-solvent-depth"));
        }
    }

    private void spots() {
        for (int i = 0; i < plate.spots().size(); i++) {
            SpotMeasurement spot = plate.spots().get(i);
            centre(i, spot);
            double size = 2 * spot.halfSizeMm();
            if (!(size < plate.runMm())) {
                fault(
                        spotField(i, "sizeMm"),
                        Message.of("plate.spot-fills-run", "spot", spot.spot(), "sizeMm", size, "runMm", plate.runMm()),
                        size,
                        Allowed.mm(Allowed.open("0", shown(plate.runMm()))),
                        Message.of("todo.leave-spot-out"));
            }
            double width = plate.widthMm().orElse(LONGEST_MM);
            double fromLeft = spot.fromLeftMm().orElse(0);
            if (!(fromLeft <= width)) {
                fault(
                        spotField(i, "fromLeftMm"),
                        Message.of(
                                "plate.spot-off-plate", "spot", spot.spot(), "fromLeftMm", fromLeft, "widthMm", width),
                        fromLeft,
                        interval(0, width),
                        Message.of("todo.measure-from-left"));
            }
        }
    }

    private void centre(int index, SpotMeasurement spot) {
        double slack = slackMm(spot);
        double centre = spot.centreMm();
        Message allowed = interval(plate.startMm(), plate.frontMm());
        if (!(centre <= plate.frontMm() + slack)) {
            fault(
                    spotField(index, "centreMm"),
                    Message.of("plate.spot-beyond-front", "spot", spot.spot(), "beyondMm", centre - plate.frontMm()),
                    centre,
                    allowed,
                    Message.of("todo.measure-spot-and-front"));
        } else if (!(centre >= plate.startMm() - slack)) {
            fault(
                    spotField(index, "centreMm"),
                    Message.of("plate.spot-below-start", "spot", spot.spot(), "belowMm", plate.startMm() - centre),
                    centre,
                    allowed,
                    Message.of("todo.heights-from-edge"));
        }
    }

    private void fault(String field, Message reason, double came, Message allowed, Message todo) {
        faults.add(new Refusal(field, reason, shown(came), allowed, todo));
    }

    private static Message interval(double least, double most) {
        return Allowed.mm(Allowed.closed(shown(least), shown(most)));
    }

    private static String shown(double mm) {
        String text = String.format(Locale.ROOT, "%.2f", mm);
        return text.replaceFirst("\\.?0+$", "");
    }
}
