package midplate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The documents say what the program does. */
class DocumentsTest {
    private static final Pattern EXAMPLE = Pattern.compile("^ {4}\\$ java -jar target/midplate\\.jar (.*)$");
    private static final Pattern ARGUMENT = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    private static String read(String file) throws IOException {
        return Files.readString(Path.of(file));
    }

    /** Regression only: the numbers in the example are those the program gave; the words around them are held too. */
    @Test
    void theExampleOfTheReadmeRunsAsPrinted() throws IOException {
        List<String> lines = read("README.md").lines().toList();
        int examples = 0;
        for (int i = 0; i < lines.size(); i++) {
            Matcher command = EXAMPLE.matcher(lines.get(i));
            if (command.matches()) {
                List<String> expected = new ArrayList<>();
                for (int j = i + 1; j < lines.size() && lines.get(j).startsWith("    "); j++) {
                    expected.add(lines.get(j).strip());
                }
                StringWriter out = new StringWriter();
                Commands.run(new PrintWriter(out), new PrintWriter(out), arguments(command.group(1)));
                List<String> said = out.toString().lines().map(String::strip).toList();
                assertEquals(expected, said.subList(0, expected.size()));
                examples++;
            }
        }
        assertTrue(examples > 0, "the README shows an example");
    }

    private static String[] arguments(String text) {
        List<String> arguments = new ArrayList<>();
        Matcher matcher = ARGUMENT.matcher(text);
        while (matcher.find()) {
            arguments.add(matcher.group(1) != null ? matcher.group(1) : matcher.group(2));
        }
        return arguments.toArray(String[]::new);
    }

    @Test
    void everyCommandAndOptionStandsInTheReadme() throws IOException {
        String readme = read("README.md");
        int options = 0;
        for (var entry : Commands.commandLine().getSubcommands().entrySet()) {
            if (!entry.getKey().equals("help")) {
                assertTrue(readme.contains("| `" + entry.getKey() + " "), entry.getKey());
                for (CommandLine.Model.OptionSpec option :
                        entry.getValue().getCommandSpec().options()) {
                    if (!option.usageHelp() && !option.versionHelp()) {
                        options++;
                        assertTrue(row(readme, entry.getKey()).contains(option.longestName()), option.longestName());
                    }
                }
            }
        }
        assertTrue(options > 20, "options seen: " + options);
    }

    private static String row(String readme, String command) {
        return readme.lines()
                .filter(line -> line.startsWith("| `" + command + " "))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyRouteStandsInTheReadme() throws IOException {
        Matcher route = Pattern.compile("routes\\.(?:get|post)\\(\"(/api/[a-z/-]+)\"")
                .matcher(read("src/main/java/midplate/web/Routes.java")
                        + read("src/main/java/midplate/web/LessonRoutes.java"));
        int routes = 0;
        String readme = read("README.md");
        while (route.find()) {
            routes++;
            assertTrue(
                    readme.contains("`" + route.group(1) + "`") || readme.contains(" " + route.group(1) + "`"),
                    route.group(1));
        }
        assertTrue(routes >= 7, "routes seen: " + routes);
    }

    @Test
    void theCountsOfTheReadmeAreThoseOfTheCurves() throws IOException {
        String readme = read("README.md").replaceAll("\\s+", " ");
        for (PlatePair pair : MeasuredPairs.builtIn(SolventCatalogue.builtIn()).pairs()) {
            String readings = Integer.toString(pair.readings()).replaceAll("(\\d)(\\d{3})$", "$1 $2");
            assertTrue(readme.contains(pair.compounds() + " series, " + readings + " readings"), pair.id());
        }
    }

    @Test
    void everyLibraryOfTheBuildIsJustifiedForDevelopers() throws IOException {
        Matcher artifact =
                Pattern.compile("<artifactId>([a-zA-Z0-9_.-]+)</artifactId>").matcher(read("pom.xml"));
        String developers = read("DEVELOPERS.md");
        Set<String> missing = new TreeSet<>();
        while (artifact.find()) {
            if (!artifact.group(1).equals("midplate") && !developers.contains(artifact.group(1))) {
                missing.add(artifact.group(1));
            }
        }
        assertEquals(Set.of(), missing);
    }

    @Test
    void theTopLevelHoldsWhatItMayHold() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("."))) {
            Set<String> seen =
                    new TreeSet<>(files.map(file -> file.getFileName().toString())
                            .filter(name -> !name.startsWith(".") && !name.equals("target"))
                            .toList());
            assertEquals(
                    Set.of("README.md", "DEVELOPERS.md", "LICENSE", "pom.xml", "src", "shared", "solvent-data", "web"),
                    seen);
        }
    }
}
