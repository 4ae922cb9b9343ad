package midplate;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import midplate.notebook.KeptStudy;
import midplate.notebook.Study;
import midplate.notebook.StudyFolder;
import midplate.notebook.StudyId;
import midplate.notebook.StudySearch;
import midplate.notebook.StudySearch.Which;
import midplate.notebook.UnreadableStudy;
import midplate.wire.StudyFiles;

/**
 * How long a folder of many studies takes: to open it, to list it the first time and later, to search it, to save one. All studies
 * are the invented example under other names. Started by {@link #main}, twice: the second start finds the folder filled, as a person does.
 */
public final class FolderSpeed {
    private static final String SIGNS = "abcdefghijklmnopqrstuvwxyz23456789";
    private static final int USUAL_MANY = 10_000;
    private static final int TIMES = 20;

    private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    private final StudyFiles format = StudyFiles.builtIn();
    private final Path place;

    private FolderSpeed(Path place) {
        this.place = place;
    }

    /** Arguments: a folder, made and filled where it is not yet; how many studies, 10 000 if not said. */
    public static void main(String[] arguments) throws IOException, UnreadableStudy {
        Path place = arguments.length > 0 ? Path.of(arguments[0]) : Files.createTempDirectory("midplate-speed");
        FolderSpeed speed = new FolderSpeed(place);
        speed.fill(arguments.length > 1 ? Integer.parseInt(arguments[1]) : USUAL_MANY);
        speed.measure("just started");
        speed.measure("opened again, warm");
    }

    private Study example() throws IOException, UnreadableStudy {
        return format.read(Files.readAllBytes(Path.of("shared", "studies", "version-5.json")));
    }

    private void fill(int many) throws IOException, UnreadableStudy {
        Path studies = place.resolve("studies");
        long there = 0;
        if (Files.isDirectory(studies)) {
            try (Stream<Path> files = Files.list(studies)) {
                there = files.count();
            }
        }
        if (there >= many) {
            return;
        }
        try (StudyFolder folder = open()) {
            Random random = new Random();
            Study example = example();
            long begun = System.nanoTime();
            for (long made = there; made < many; made++) {
                StringBuilder id = new StringBuilder("20261126-");
                for (int i = 0; i < 10; i++) {
                    id.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
                }
                folder.create(named(example, new StudyId(id.toString()), "Invented study no. " + made));
            }
            out.printf(Locale.ROOT, "%d made: %.1f s%n", many - there, seconds(begun));
        }
    }

    private static Study named(Study study, StudyId id, String title) {
        return new Study(
                id,
                title,
                study.created(),
                study.modified(),
                study.keeping(),
                study.origin(),
                study.sorbent(),
                study.setting(),
                study.shelf(),
                study.spots(),
                study.plates(),
                study.next(),
                study.advices(),
                study.column(),
                study.checks(),
                study.notes());
    }

    private StudyFolder open() {
        return StudyFolder.open(place, format, Clock.systemUTC());
    }

    private void measure(String when) {
        long begun = System.nanoTime();
        try (StudyFolder folder = open()) {
            double opened = seconds(begun);
            StudySearch newest = new StudySearch("", Which.AT_HAND, 0, 50);
            int total = folder.list(newest).total();
            double listed = seconds(begun);
            out.printf(
                    Locale.ROOT,
                    "%s: %d studies, opened after %.3f s, first list after %.2f s%n",
                    when,
                    total,
                    opened,
                    listed);
            print("later list", () -> folder.list(newest));
            print("search", () -> folder.list(new StudySearch("invented 4711", Which.ALL, 0, 50)));
            StudyId id = folder.list(newest).studies().get(0).id();
            print("read one", () -> folder.read(id));
            print("save one", () -> {
                KeptStudy kept = folder.read(id);
                folder.replace(kept.study(), kept.tag());
            });
            print("list after a save", () -> folder.list(newest));
        }
    }

    private void print(String what, Runnable doing) {
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < TIMES; i++) {
            long begun = System.nanoTime();
            doing.run();
            times.add(1000 * seconds(begun));
        }
        times.sort(null);
        out.printf(
                Locale.ROOT,
                "    %s: median %.1f ms, longest %.1f ms%n",
                what,
                times.get(TIMES / 2),
                times.get(TIMES - 1));
    }

    private static double seconds(long begun) {
        return (System.nanoTime() - begun) / 1e9;
    }
}
