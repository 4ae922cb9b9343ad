package midplate.notebook;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import midplate.words.Texts;

/** A process that may write small files only, and saves a study that grows. */
final class LittleRoomChild {
    private static final int MOST = 2000;

    private LittleRoomChild() {}

    /** Argument: the folder. */
    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        try (StudyFolder folder = RealStudies.open(Path.of(arguments[0]))) {
            KeptStudy now = folder.create(RealStudies.study(RealStudies.A, "Invented", "1", 1));
            try {
                for (int count = 2; count < MOST; count++) {
                    Study next =
                            RealStudies.study(RealStudies.A, "Invented", count + " " + "x".repeat(count * 1000), 1);
                    now = folder.replace(next, now.tag());
                }
                out.println("never full");
            } catch (FolderFault fault) {
                out.println(fault.kind());
                out.println(Texts.english().render(fault.refusal().reason()));
                out.println(SavingChild.count(now.study()));
                KeptStudy there = folder.read(RealStudies.A);
                out.println(there.equals(now) ? "as it was" : "changed");
                FolderRooms rooms = new FolderRooms(folder.path());
                FoundFile before = new FileReading(rooms, RealStudies.FORMAT).look(rooms.earlier(RealStudies.A));
                out.println(before instanceof FoundFile.Good good ? SavingChild.count(good.study()) : before);
                Study small = RealStudies.study(RealStudies.A, "Invented", "small", 1);
                out.println(folder.replace(small, now.tag()).study().notes());
            }
        }
    }
}
