package midplate.notebook;

import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** A process of its own that saves studies until somebody ends it, and says so after each save. */
final class SavingChild {
    static final int STUDIES = 5;
    private static final int MOST_PLATES = 30;

    private SavingChild() {}

    static StudyId id(int number) {
        return new StudyId("20261126-" + (char) ('a' + number) + "aaaaaaaaa");
    }

    /** How often a study was saved: the first word of its notes. */
    static int count(Study study) {
        return Integer.parseInt(study.notes().split(" ", 2)[0]);
    }

    /** The command that starts this class, to which more may be added. */
    static List<String> command(Class<?> main, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Xmx256m",
                "-cp",
                classPath(),
                main.getName()));
        command.addAll(List.of(arguments));
        return command;
    }

    private static String classPath() {
        String whole = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return whole.isEmpty() ? "target" + File.separator + "classes" : whole;
    }

    /** Arguments: the folder, the seed. */
    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Random random = new Random(Long.parseLong(arguments[1]));
        try (StudyFolder folder = RealStudies.open(Path.of(arguments[0]))) {
            out.println("open");
            Map<Integer, KeptStudy> kept = new TreeMap<>();
            while (true) {
                int number = random.nextInt(STUDIES);
                KeptStudy now = kept.containsKey(number) ? kept.get(number) : there(folder, number);
                int count = now == null ? 1 : count(now.study()) + 1;
                Study next = RealStudies.study(
                        id(number),
                        "Invented " + number,
                        count + " " + "x".repeat(random.nextInt(20_000)),
                        1 + count % MOST_PLATES);
                kept.put(number, now == null ? folder.create(next) : folder.replace(next, now.tag()));
                out.println(number + " " + count);
            }
        }
    }

    private static KeptStudy there(StudyFolder folder, int number) {
        try {
            return folder.read(id(number));
        } catch (NoSuchStudy e) {
            return null;
        }
    }

    /** All that a process says until it ends. */
    static List<String> said(Process process) throws IOException {
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
    }
}
