package midplate.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.staticfiles.Location;
import java.nio.file.Path;
import midplate.notebook.StudyFolder;
import midplate.wire.Exchange;
import org.jspecify.annotations.Nullable;

/** The server of the page, on this machine's loopback address only; it asks nothing of the world outside. */
public final class PageServer {
    /** The port where nothing else is asked for. */
    public static final int USUAL_PORT = 4771;

    private static final String LOOPBACK = "127.0.0.1";

    private final Javalin server;
    private final StudyFolder folder;

    private PageServer(Javalin server, StudyFolder folder) {
        this.server = server;
        this.folder = folder;
    }

    /** A server, not yet started, of the page packed with the program; port 0 takes any that is free. */
    public static PageServer of(Exchange exchange, StudyFolder folder, int port) {
        return new PageServer(Javalin.create(config -> configure(config, exchange, folder, port, null)), folder);
    }

    /** A server, not yet started, of a page in a folder. */
    public static PageServer of(Exchange exchange, StudyFolder folder, int port, Path web) {
        return new PageServer(Javalin.create(config -> configure(config, exchange, folder, port, web)), folder);
    }

    /** Starts it, and says in the folder where it answers. */
    public PageServer start() {
        server.start();
        folder.servedAt(address());
        return this;
    }

    /** Where it answers once it is started. */
    public String address() {
        return "http://" + LOOPBACK + ":" + server.port() + "/";
    }

    /** Ends it; the folder stays open. */
    public void stop() {
        server.stop();
    }

    private static void configure(
            JavalinConfig config, Exchange exchange, StudyFolder folder, int port, @Nullable Path web) {
        Tongue tongue = new Tongue(exchange);
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.jetty.host = LOOPBACK;
        config.jetty.port = port;
        config.jetty.modifyServer(jetty -> jetty.setErrorHandler(new BareErrors(tongue)));
        config.http.defaultContentType = "application/json; charset=utf-8";
        config.staticFiles.add(files -> {
            files.hostedPath = "/";
            files.directory = web == null ? "/web" : web.toAbsolutePath().toString();
            files.location = web == null ? Location.CLASSPATH : Location.EXTERNAL;
        });
        config.routes.before(Guard::check);
        new Routes(tongue, folder).add(config.routes);
        new Failures(tongue).add(config.routes);
    }
}
