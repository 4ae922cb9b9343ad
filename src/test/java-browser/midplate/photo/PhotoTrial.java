package midplate.photo;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.function.ToDoubleFunction;
import midplate.web.ReadingPage;

/**
 * Measures how well photos of plates are read, on pictures of seeds that were not looked at while the reader was built, and writes the
 * figures into {@code shared/reference/photo-figures.json} and the README's table.
 *
 * <p>With the class path of the browser's tests ({@code mvn -Pbrowser test-compile dependency:build-classpath}): {@code java
 * midplate.photo.PhotoTrial [count] [first seed]}. It takes about ten minutes on two quiet cores; a file {@code target/photo-trial-stop} ends it
 * early with what was judged until then. With {@code --speed} only the speed is measured anew; with {@code --look} nothing is written, but it tells what went
 * wrong where, which is for seeds that are not for judging.
 */
public final class PhotoTrial {
    /** Seeds for judging begin here; those below 1000 are for building, those from 5000 for the short test. */
    static final long FIRST = 80_000;

    private static final int COUNT = 440;
    private static final long SPEED = 90_000;
    private static final ObjectMapper JSON = new ObjectMapper();

    private PhotoTrial() {}

    public static void main(String[] args) throws IOException {
        List<String> options =
                Arrays.stream(args).filter(arg -> arg.startsWith("--")).toList();
        List<Long> numbers = Arrays.stream(args)
                .filter(arg -> !arg.startsWith("--"))
                .map(Long::valueOf)
                .toList();
        int count = numbers.isEmpty() ? COUNT : numbers.get(0).intValue();
        long first = numbers.size() < 2 ? FIRST : numbers.get(1);
        try (ReadingPage browser = ReadingPage.open()) {
            if (options.contains("--look")) {
                look(judged(Judge.of(Reading.on(browser.empty())), first, count, Photo::of), first);
                return;
            }
            ObjectNode figures = options.contains("--speed")
                    ? (ObjectNode) JSON.readTree(PhotoTable.FILE.toFile())
                    : figures(judged(Judge.of(Reading.on(browser.empty())), first, count, Photo::of), first);
            figures.set("speed", speed(Reading.on(browser.ready())));
            Files.writeString(
                    PhotoTable.FILE, JSON.writerWithDefaultPrettyPrinter().writeValueAsString(figures) + "\n");
            Files.writeString(
                    PhotoTable.README, PhotoTable.placed(Files.readString(PhotoTable.README), PhotoTable.of(figures)));
        }
    }

    private static void look(List<Judge.Both> judged, long first) {
        judged.forEach(both -> complain("hand", both.byHand()));
        judged.forEach(both -> complain("own", both.asProposed().judged()));
        System.out.println(PhotoTable.of(figures(judged, first)));
    }

    /** Draws the picture of a seed. */
    interface Drawing {
        Photo of(long seed) throws IOException;
    }

    /** Judges pictures of so many seeds; the next one is drawn while one is read. */
    static List<Judge.Both> judged(Judge judge, long first, int count, Drawing drawing) {
        List<Judge.Both> judged = new ArrayList<>();
        CompletableFuture<Photo> next = drawn(drawing, first);
        for (int i = 0; i < count; i++) {
            Photo photo = next.join();
            next = drawn(drawing, first + i + 1);
            if (isStopped()) {
                break;
            }
            judged.add(judge.judge(photo));
        }
        return judged;
    }

    /** Whether there is a file that asks for an early end. */
    private static boolean isStopped() {
        return Files.exists(Path.of("target", "photo-trial-stop"));
    }

    private static CompletableFuture<Photo> drawn(Drawing drawing, long seed) {
        return CompletableFuture.supplyAsync(() -> {
            try {
                return drawing.of(seed);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
    }

    static ObjectNode figures(List<Judge.Both> judged, long first) {
        ObjectNode figures = JSON.createObjectNode();
        figures.put("pictures", judged.size());
        figures.put("firstSeed", first).put("lastSeed", first + judged.size() - 1);
        List<Judged> byHand = judged.stream().map(Judge.Both::byHand).toList();
        List<Judged> own = judged.stream()
                .map(Judge.Both::asProposed)
                .filter(each -> !Double.isNaN(each.corners()))
                .map(Judge.Own::judged)
                .toList();
        rows(figures.putArray("byHand"), byHand, Conditions.all());
        rows(
                figures.putArray("asProposed"),
                own,
                Conditions.all().stream()
                        .filter(row -> List.of("all", "ground", "front").contains(row.group()))
                        .toList());
        Shapes.put(figures.putObject("shapes"), byHand);
        proposals(figures.putObject("proposals"), judged);
        return figures;
    }

    private static void rows(ArrayNode rows, List<Judged> judged, List<Conditions.Row> of) {
        for (Conditions.Row row : of) {
            Tally tally = row.of(judged);
            if (tally.count() > 0) {
                ObjectNode told = rows.addObject().put("group", row.group()).put("name", row.name());
                told.setAll(tally.told());
            }
        }
    }

    private static void proposals(ObjectNode told, List<Judge.Both> judged) {
        List<Judge.Own> own = judged.stream().map(Judge.Both::asProposed).toList();
        told.put(
                "cornersProposed",
                own.stream().filter(each -> !Double.isNaN(each.corners())).count());
        told.put(
                "cornersWithin1mm",
                own.stream().filter(each -> each.corners() <= 1).count());
        line(told, "start", "startDrawn", own, Judge.Own::start);
        line(told, "front", "frontDrawn", own, Judge.Own::front);
    }

    /** Of pictures whose corners were proposed and where the line is drawn. */
    private static void line(
            ObjectNode told, String name, String drawn, Collection<Judge.Own> own, ToDoubleFunction<Judge.Own> off) {
        List<Judge.Own> such = own.stream()
                .filter(each -> !Double.isNaN(each.corners())
                        && each.judged().truth().get(drawn).asBoolean())
                .toList();
        told.put(name + "Drawn", such.size());
        told.put(
                name + "Proposed",
                such.stream()
                        .filter(each -> !Double.isNaN(off.applyAsDouble(each)))
                        .count());
        told.put(
                name + "Within05mm",
                such.stream().filter(each -> off.applyAsDouble(each) <= 0.5).count());
    }

    /** Pictures of twelve megapixels from the file to the spots [ms]: medians. */
    private static ObjectNode speed(Reading reading) throws IOException {
        List<double[]> taken = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Photo photo = Photo.of(SPEED + i, 3000, 4000);
            List<double[]> corners = new ArrayList<>();
            Course course = photo.sample().course();
            corners.add(photo.seen(0, 0));
            corners.add(photo.seen(course.widthMm(), 0));
            corners.add(photo.seen(course.widthMm(), course.heightMm()));
            corners.add(photo.seen(0, course.heightMm()));
            Map<String, Object> with = Judge.straightened(photo, corners);
            double[] times = reading.timed(photo.jpeg(), with);
            if (i > 0) {
                taken.add(times); // the first one also loads the scripts
            }
        }
        ObjectNode told = JSON.createObjectNode();
        told.put("megapixels", 12);
        told.put("seconds", median(taken, 0) / 1000);
        told.put("longestFrameGapMs", Math.round(median(taken, 1)));
        return told;
    }

    private static double median(List<double[]> of, int which) {
        double value = of.stream().mapToDouble(each -> each[which]).sorted().toArray()[of.size() / 2];
        return Math.round(value * 10) / 10.0;
    }

    private static void complain(String way, Judged judged) {
        String where = way + " " + judged.seed() + " "
                + judged.conditions().get("ground").asText() + " ";
        if (!judged.fault().isEmpty()) {
            System.out.println(where + "fault " + judged.fault());
            return;
        }
        for (Outcome outcome : judged.outcomes()) {
            Mark mark = outcome.mark();
            if (!outcome.isWithin(Tally.NEAR)) {
                System.out.printf(
                        Locale.ROOT,
                        "%slane %d Rf %.3f at %.1f mm, %s, contrast %.2f, length %.1f mm: %s%n",
                        where,
                        mark.lane(),
                        mark.rf(),
                        mark.mm(),
                        mark.form(),
                        mark.contrast(),
                        mark.sizeMm(),
                        outcome.isMissed() ? "missed" : "off by %.3f, %s".formatted(outcome.offRf(), outcome.found()));
            }
        }
        judged.extra().forEach(extra -> System.out.println(where + "false " + extra));
    }
}
