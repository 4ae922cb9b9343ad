package midplate.web;

import io.javalin.util.JavalinBindException;
import java.awt.Desktop;
import java.io.IOException;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import midplate.notebook.FolderFault;
import midplate.notebook.StudyFolder;
import midplate.wire.Exchange;
import midplate.wire.StudyFiles;
import midplate.words.Message;
import midplate.words.Texts;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code serve}: serves the page on this machine until the program is ended. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "Serves the page on this machine and opens it; end it with Ctrl-C.")
public final class ServeCommand implements Callable<Integer> {
    private static final int HIGHEST_PORT = 65_535;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "" + PageServer.USUAL_PORT,
            description = "Port, 0 for any that is free; ${DEFAULT-VALUE} if not said.")
    private int port;

    @Option(names = "--no-browser", description = "Do not open the page in a browser.")
    private boolean noBrowser;

    @Option(names = "--web", paramLabel = "DIR", description = "Serve the page from this folder, while working on it.")
    private @Nullable Path web;

    @Option(
            names = "--calibration",
            paramLabel = "DIR",
            description = "Take the strength curves from this folder instead of those packed with the program.")
    private @Nullable Path calibration;

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "Keep the studies in this folder, which is made where there is none; if not said, where"
                    + " this system keeps such things.")
    private @Nullable Path data;

    @Override
    public Integer call() throws InterruptedException {
        check();
        Optional<Path> place =
                data == null ? UsualFolder.here() : NamedFolder.of(data, System.getProperty("user.home", ""));
        if (place.isEmpty()) {
            tell(Message.of("terminal.no-home"));
            return 1;
        }
        try (StudyFolder folder = StudyFolder.open(place.get(), StudyFiles.builtIn(), Clock.systemUTC())) {
            return serve(folder);
        } catch (FolderFault fault) {
            tell(fault.refusal().reason());
            tell(fault.refusal().todo());
            return 1;
        }
    }

    private int serve(StudyFolder folder) throws InterruptedException {
        if (port != 0 && isTaken(port)) { // the server would first log the same in its own words
            return portTaken();
        }
        return served(folder);
    }

    private static boolean isTaken(int port) {
        try (ServerSocket free = new ServerSocket(port, 1, InetAddress.getLoopbackAddress())) {
            return !free.isBound();
        } catch (IOException e) {
            return true;
        }
    }

    private int portTaken() {
        spec.commandLine()
                .getErr()
                .printf(
                        "Port %d is taken, perhaps by Midplate itself: open http://127.0.0.1:%d/ and see, or start"
                                + " with --port 0 for a free one.%n",
                        port, port);
        return 1;
    }

    private int served(StudyFolder folder) throws InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        Exchange exchange = Exchange.of(calibration);
        PageServer server =
                web == null ? PageServer.of(exchange, folder, port) : PageServer.of(exchange, folder, port, web);
        try {
            server.start();
        } catch (JavalinBindException e) {
            return portTaken();
        }
        out.println(server.address());
        out.println(Texts.english()
                .render(Message.of(
                        "terminal.studies-kept-in", "folder", folder.path().toString())));
        out.flush();
        if (!noBrowser) {
            open(server.address());
        }
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            server.stop();
            folder.close(); // once what is being saved is saved
        }));
        FolderNews.of(folder).forEach(this::tell);
        new CountDownLatch(1).await();
        return 0;
    }

    private void tell(Message message) {
        spec.commandLine().getErr().println(Texts.english().render(message));
        spec.commandLine().getErr().flush();
    }

    private void check() {
        if (data != null && data.toString().isBlank()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--data came empty; a folder is wanted, such as --data ~/plates. Leave --data out for the usual"
                            + " folder.");
        }
        if (port < 0 || port > HIGHEST_PORT) {
            throw new ParameterException(
                    spec.commandLine(), "--port came as " + port + "; allowed is [0, 65535]. Leave it out for 4771.");
        }
        if (web != null && !Files.isRegularFile(web.resolve("index.html"))) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--web came as " + web + ", a folder without index.html. Name the page's folder.");
        }
    }

    /** Opens the page where there is a desktop; where there is none, the address printed is enough. */
    private static void open(String address) {
        try {
            if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
                Desktop.getDesktop().browse(URI.create(address));
            }
        } catch (IOException | RuntimeException | LinkageError e) {
            System.err.println("No browser could be opened here: open " + address + " yourself.");
        }
    }
}
