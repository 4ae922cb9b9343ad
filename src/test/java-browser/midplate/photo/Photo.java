package midplate.photo;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * An invented picture of an invented plate with the truth about it. Seeds below 1000 are for building, from 5000 for the short test, from 80000
 * for judging.
 */
final class Photo {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final byte[] jpeg;
    private final ObjectNode truth;
    private final Scene scene;
    private final View view;
    private final List<Mark> marks;

    private Photo(byte[] jpeg, ObjectNode truth, Scene scene, View view, List<Mark> marks) {
        this.jpeg = jpeg;
        this.truth = truth;
        this.scene = scene;
        this.view = view;
        this.marks = marks;
    }

    /** The picture of a seed, in one of several usual sizes. */
    static Photo of(long seed) throws IOException {
        Chance size = Chance.of(seed).of("size");
        int[] sides = size.any(new int[] {1200, 1600}, new int[] {1500, 2000}, new int[] {1800, 2400});
        return size.happens(0.75) ? of(seed, sides[0], sides[1]) : of(seed, sides[1], sides[0]);
    }

    /** The picture of a seed, so large. */
    static Photo of(long seed, int width, int height) throws IOException {
        Chance chance = Chance.of(seed);
        Scene scene = Scene.of(chance);
        Course course = scene.sample().course();
        View view = View.of(chance.of("view"), course, width, height);
        boolean uv = scene.sample().ground() == Ground.GREEN;
        Sensor sensor = Sensor.of(chance.of("sensor"), uv);
        double gain = sensor.exposed() / brightest(scene);
        int turned = chance.of("exif").happens(0.08) ? chance.of("turn").any(3, 6, 8) : 1;
        List<Mark> marks = Marks.of(scene, view, sensor, gain);
        ObjectNode truth = truth(seed, scene, view, marks);
        conditions(truth.putObject("conditions"), scene, view, sensor, turned);
        float[][] light = seen(scene, view, gain);
        int[] pixels = sensor.develop(chance.of("noise"), light, width, height);
        return new Photo(Jpeg.of(pixels, width, height, sensor.quality(), turned), truth, scene, view, marks);
    }

    byte[] jpeg() {
        return jpeg;
    }

    ObjectNode truth() {
        return truth;
    }

    Sample sample() {
        return scene.sample();
    }

    List<Mark> marks() {
        return marks;
    }

    /** Where a place of the plate is seen, in fractions of the picture as shown from its top left: {x, y}. */
    double[] seen(double xMm, double mm) {
        double[] at = view.pixel(xMm, mm);
        return new double[] {at[0] / view.width(), at[1] / view.height()};
    }

    private static double brightest(Scene scene) {
        Course course = scene.sample().course();
        double[] levels = IntStream.range(0, 400)
                .mapToDouble(i -> {
                    double x = (i % 20 + 0.5) / 20 * course.widthMm();
                    double h = (i / 20 + 0.5) / 20 * course.heightMm();
                    double most = 0;
                    for (int channel = 0; channel < 3; channel++) {
                        most = Math.max(most, scene.clean(List.of(), x, h, channel));
                    }
                    return most;
                })
                .sorted()
                .toArray();
        return levels[380];
    }

    private static float[][] seen(Scene scene, View view, double gain) {
        int width = view.width();
        float[][] light = new float[3][width * view.height()];
        double scale = view.pixelsPerMm(scene.sample().course());
        IntStream.range(0, view.height()).parallel().forEach(y -> {
            double[] rgb = new double[3];
            for (int x = 0; x < width; x++) {
                double[] at = view.plane(x + 0.5, y + 0.5);
                scene.at(at[0], at[1], scale, rgb);
                for (int channel = 0; channel < 3; channel++) {
                    light[channel][y * width + x] = (float) (gain * rgb[channel]);
                }
            }
        });
        return light;
    }

    private static double rounded(double value, double step) {
        return Math.round(value / step) * step;
    }

    private static double micro(double value) {
        return Math.round(value * 1e6) / 1e6;
    }

    private static ObjectNode truth(long seed, Scene scene, View view, List<Mark> marks) {
        Sample sample = scene.sample();
        Course course = sample.course();
        ObjectNode truth = JSON.createObjectNode();
        truth.put("seed", seed).put("width", view.width()).put("height", view.height());
        truth.put("light", sample.ground().light().word());
        truth.put("widthMm", course.widthMm()).put("heightMm", course.heightMm());
        ArrayNode corners = truth.putArray("corners");
        double[][] places = {
            {0, 0}, {course.widthMm(), 0}, {course.widthMm(), course.heightMm()}, {0, course.heightMm()}
        };
        for (double[] place : places) {
            double[] at = view.pixel(place[0], place[1]);
            corners.addObject().put("x", micro(at[0] / view.width())).put("y", micro(at[1] / view.height()));
        }
        ArrayNode start = truth.putArray("start");
        start.add(micro(course.start()[0])).add(micro(course.start()[1]));
        ArrayNode front = truth.putArray("front");
        for (double height : course.front()) {
            front.add(micro(height));
        }
        truth.put("frontDrawn", scene.pencil().front() == Pencil.Front.DRAWN);
        truth.put("startDrawn", scene.pencil().start());
        ArrayNode lanes = truth.putArray("lanes");
        for (Lane lane : sample.lanes()) {
            lanes.addObject().put("startXMm", micro(lane.startXMm())).put("frontXMm", micro(lane.frontXMm()));
        }
        ArrayNode spots = truth.putArray("spots");
        for (Mark mark : marks) {
            spots.addObject()
                    .put("lane", mark.lane())
                    .put("xMm", micro(mark.xMm()))
                    .put("mm", micro(mark.mm()))
                    .put("rf", micro(mark.rf()))
                    .put("contrast", micro(mark.contrast()))
                    .put("sizeMm", micro(mark.sizeMm()))
                    .put("shape", mark.shape())
                    .put("form", mark.form())
                    .put("marked", mark.marked());
        }
        return truth;
    }

    private static void conditions(ObjectNode told, Scene scene, View view, Sensor sensor, int turned) {
        Sample sample = scene.sample();
        double scale = view.pixelsPerMm(sample.course());
        told.put("tiltDegrees", micro(rounded(view.tiltDegrees(), 0.01)));
        told.put("perspectiveDegrees", micro(rounded(view.perspectiveDegrees(), 0.01)));
        told.put("jpegQuality", sensor.quality());
        told.put("lightRatio", micro(rounded(scene.lamp().ratio(), 0.01)));
        told.put("glare", scene.lamp().glares());
        told.put("shadow", scene.lamp().hasShadow());
        double grain = scene.layer().grain();
        double camera = sensor.noise(0.5) / (0.5 * scale);
        told.put("noise", micro(Math.hypot(grain, camera)));
        told.put("blurMm", micro(Math.hypot(sensor.blur(), sensor.motion() / 3.5) / scale));
        told.put("curvedMm", micro(rounded(sample.curvedMm(), 0.01)));
        told.put("driftMm", micro(rounded(sample.driftMm(), 0.01)));
        told.put("ground", sample.ground().name().toLowerCase(Locale.ROOT));
        told.put("bench", scene.bench().kind());
        told.put("front", scene.pencil().front().name().toLowerCase(Locale.ROOT));
        told.put("labels", scene.pencil().labelled());
        told.put("circles", scene.pencil().circled());
        told.put("ruler", scene.pencil().ruler());
        told.put("pixelsPerMm", micro(rounded(scale, 0.01)));
        told.put("exifOrientation", turned);
    }
}
