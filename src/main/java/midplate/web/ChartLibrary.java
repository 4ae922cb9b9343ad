package midplate.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The script that draws the charts, from its jar; the version stands in {@code pom.xml} and is read from that jar. */
final class ChartLibrary {
    private static final String VERSION = "/META-INF/maven/org.webjars.npm/d3/pom.properties";

    private ChartLibrary() {}

    /** The script, to be closed by whoever reads it. */
    static InputStream script() {
        try (InputStream in = open(VERSION)) {
            Properties about = new Properties();
            about.load(in);
            return open("/META-INF/resources/webjars/d3/" + about.getProperty("version") + "/dist/d3.min.js");
        } catch (IOException e) {
            throw new UncheckedIOException(VERSION + " cannot be read", e);
        }
    }

    private static InputStream open(String resource) {
        InputStream in = ChartLibrary.class.getResourceAsStream(resource);
        if (in == null) {
            throw new IllegalStateException(
                    resource + " is not on the class path: put the jar of d3 back beside the other libraries.");
        }
        return in;
    }
}
