package midplate.notebook;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A process that keeps a folder until its standard input ends. */
final class KeepingChild {
    private KeepingChild() {}

    /** Arguments: the folder, the address of its page. */
    public static void main(String[] arguments) throws IOException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        try (StudyFolder folder = RealStudies.open(Path.of(arguments[0]))) {
            folder.servedAt(arguments[1]);
            out.println("open");
            while (System.in.read() >= 0) {
                // until it ends
            }
        }
    }
}
