package midplate.photo;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Has the reader read a picture, and holds what it proposes against the truth. */
final class Judge {
    /** How exactly a careful hand marks corners and lines, standard deviation [mm]. */
    private static final double HAND_MM = 0.3;

    private final Reading reading;

    private Judge(Reading reading) {
        this.reading = reading;
    }

    static Judge of(Reading reading) {
        return new Judge(reading);
    }

    /**
     * What was proposed of a picture's corners and lines.
     *
     * @param judged the picture, read with all that was proposed, or nothing of it where no corners were
     * @param corners how far the worst of the corners is off, NaN where none was proposed [mm]
     * @param start how far the start line's worse end is off, NaN where none was proposed [mm]
     * @param front how far the front's worst of three is off, NaN where none was proposed [mm]
     */
    record Own(Judged judged, double corners, double start, double front) {}

    /** A picture read in both ways. */
    record Both(Judged byHand, Own asProposed) {}

    Both judge(Photo photo) {
        long seed = photo.truth().get("seed").asLong();
        JsonNode opened = reading.open(photo.jpeg());
        Chance hand = Chance.of(seed).of("hand");
        if (!opened.hasNonNull("answer")) {
            Judged none = nothing(photo, opened);
            return new Both(none, new Own(none, Double.NaN, Double.NaN, Double.NaN));
        }
        Course course = photo.sample().course();
        List<double[]> corners = new ArrayList<>();
        for (int corner = 0; corner < 4; corner++) {
            double x = corner == 1 || corner == 2 ? course.widthMm() : 0;
            double h = corner >= 2 ? course.heightMm() : 0;
            corners.add(photo.seen(x + hand.normal(HAND_MM), h + hand.normal(HAND_MM)));
        }
        JsonNode flat = straighten(photo, corners);
        Judged byHand =
                flat.hasNonNull("answer") ? read(photo, corners, lines(photo, corners, hand)) : nothing(photo, flat);
        return new Both(byHand, asProposed(photo, opened.get("answer"), hand.of("second")));
    }

    private Own asProposed(Photo photo, JsonNode opened, Chance hand) {
        if (!opened.hasNonNull("corners")) {
            return new Own(nothing(photo, opened), Double.NaN, Double.NaN, Double.NaN);
        }
        List<double[]> corners = new ArrayList<>();
        for (JsonNode corner : opened.get("corners")) {
            corners.add(
                    new double[] {corner.get("x").asDouble(), corner.get("y").asDouble()});
        }
        double off = 0;
        Course course = photo.sample().course();
        Flattened truly = Flattened.of(trueCorners(photo), course.widthMm(), course.heightMm());
        for (int i = 0; i < 4; i++) {
            double[] at = truly.at(corners.get(i));
            double x = i == 1 || i == 2 ? course.widthMm() : 0;
            double h = i >= 2 ? course.heightMm() : 0;
            off = Math.max(off, Math.hypot(at[0] - x, at[1] - h));
        }
        JsonNode flat = straighten(photo, corners);
        if (!flat.hasNonNull("answer")) {
            return new Own(nothing(photo, flat), off, Double.NaN, Double.NaN);
        }
        double[][] exact = lines(photo, corners, null);
        double[][] used = lines(photo, corners, hand);
        double[] lineOff = {Double.NaN, Double.NaN};
        String[] names = {"start", "front"};
        boolean[] seen = {
            photo.truth().get("startDrawn").asBoolean(),
            photo.truth().get("frontDrawn").asBoolean()
        };
        for (int line = 0; line < 2; line++) {
            JsonNode told = flat.get("answer").get(names[line]);
            if (told == null || told.isNull()) {
                continue;
            }
            lineOff[line] = 0;
            for (int i = 0; i < exact[line].length; i++) {
                lineOff[line] = Math.max(lineOff[line], Math.abs(told.get(i).asDouble() - exact[line][i]));
                if (seen[line]) {
                    used[line][i] = told.get(i).asDouble();
                }
            }
        }
        return new Own(read(photo, corners, used), off, lineOff[0], lineOff[1]);
    }

    private static List<double[]> trueCorners(Photo photo) {
        Course course = photo.sample().course();
        return List.of(
                photo.seen(0, 0),
                photo.seen(course.widthMm(), 0),
                photo.seen(course.widthMm(), course.heightMm()),
                photo.seen(0, course.heightMm()));
    }

    private JsonNode straighten(Photo photo, List<double[]> corners) {
        return reading.ask("straighten", straightened(photo, corners));
    }

    /** The message's parts. */
    static Map<String, Object> straightened(Photo photo, List<double[]> corners) {
        Map<String, Object> with = new TreeMap<>();
        List<Map<String, Double>> points = new ArrayList<>();
        for (double[] corner : corners) {
            points.add(Map.of("x", corner[0], "y", corner[1]));
        }
        with.put("corners", points);
        with.put("widthMm", photo.sample().course().widthMm());
        with.put("heightMm", photo.sample().course().heightMm());
        return with;
    }

    /** Start line and front as they lie on the straightened plate, by a hand or exactly. */
    private static double[][] lines(
            Photo photo, List<double[]> corners, @org.jspecify.annotations.Nullable Chance hand) {
        Course course = photo.sample().course();
        double width = course.widthMm();
        Flattened flat = Flattened.of(corners, width, course.heightMm());
        double[][] lines = {new double[2], new double[3]};
        for (int line = 0; line < 2; line++) {
            for (int i = 0; i < lines[line].length; i++) {
                double x = width * i / (lines[line].length - 1);
                double h = line == 0 ? course.startAt(x) : course.frontAt(x);
                double by = hand == null ? 0 : hand.normal(HAND_MM);
                lines[line][i] = flat.at(photo.seen(x, h))[1] + by;
            }
        }
        return lines;
    }

    private static Judged nothing(Photo photo, JsonNode reply) {
        String fault = reply.path("fault").path("code").asText("corners-none")
                + reply.path("fault").path("message").asText("");
        return judged(photo, List.of(), trueCorners(photo), fault);
    }

    private Judged read(Photo photo, List<double[]> corners, double[][] lines) {
        Map<String, Object> with = new TreeMap<>();
        with.put("start", lines[0]);
        with.put("front", lines[1]);
        JsonNode reply = reading.ask("read", with);
        if (!reply.hasNonNull("answer")) {
            return nothing(photo, reply);
        }
        List<Proposed> proposals = new ArrayList<>();
        for (JsonNode lane : reply.get("answer").get("lanes")) {
            for (JsonNode spot : lane.get("spots")) {
                proposals.add(Proposed.of(spot));
            }
        }
        return judged(photo, proposals, corners, "");
    }

    private static Judged judged(Photo photo, List<Proposed> proposals, List<double[]> corners, String fault) {
        Course course = photo.sample().course();
        Flattened flat = Flattened.of(corners, course.widthMm(), course.heightMm());
        List<Mark> marks = photo.marks();
        Matching matching = Matching.of(marks, proposals, photo.sample().laneDistance());
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            if (!mark.marked()) {
                continue;
            }
            double run = course.runAt(mark.xMm());
            Proposed found = matching.of(i) < 0 ? null : proposals.get(matching.of(i));
            double offRf = found == null ? Double.NaN : found.rf() - mark.rf();
            double offMm = found == null ? Double.NaN : found.mm() - flat.at(photo.seen(mark.xMm(), mark.mm()))[1];
            outcomes.add(new Outcome(mark, found, offRf, offMm, run));
        }
        List<Proposed> counted = new ArrayList<>();
        List<Proposed> extra = new ArrayList<>();
        for (int j = 0; j < proposals.size(); j++) {
            if (!matching.isIdle(j)) {
                counted.add(proposals.get(j));
            }
            if (!matching.isTaken(j)) {
                extra.add(proposals.get(j));
            }
        }
        return new Judged(photo.truth().get("seed").asLong(), photo.truth(), outcomes, counted, extra, fault);
    }
}
