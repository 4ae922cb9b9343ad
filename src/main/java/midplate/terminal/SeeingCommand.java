package midplate.terminal;

import java.io.PrintWriter;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import midplate.wire.Exchange;
import midplate.wire.RequestText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code seeing}: how to see compounds that have no colour. */
@Command(
        name = "seeing",
        mixinStandardHelpOptions = true,
        description = "Says which ways of seeing show which compounds, and in which order to use them.",
        footer = {"", "Example (invented): midplate seeing --smiles \"A=CC(=O)c1ccccc1\" --class B=alcohol --spot C"})
public final class SeeingCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Option(names = "--spot", paramLabel = "NAME", description = "A compound of which nothing is known.")
    private List<String> spots = List.of();

    @Option(names = "--smiles", paramLabel = "NAME=SMILES", description = "The structure of a compound.")
    private List<String> smiles = List.of();

    @Option(
            names = "--class",
            paramLabel = "NAME=CLASS",
            description = "The class of a compound, such as aryl-ketone, where nothing more is known.")
    private List<String> classes = List.of();

    @Option(
            names = "--groups",
            paramLabel = "NAME=GROUPS",
            description = "The functional groups of a compound with their numbers, such as A=alcohol:1,alkyl-carbon:6.")
    private List<String> groups = List.of();

    @Option(names = "--json", description = "Print the answer as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        SpotTexts known = new SpotTexts()
                .with("--smiles", "smiles", "A=CC(=O)c1ccccc1", smiles)
                .with("--class", "class", "A=aryl-ketone", classes)
                .withGroups(groups);
        Set<String> names = new LinkedHashSet<>(known.names());
        names.addAll(spots);
        RequestText request = RequestText.empty();
        names.forEach(name -> known.put(request, name));
        String asked = request.withSpotsAs("compounds").toString();
        Exchange exchange = Exchange.builtIn();
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(exchange.sight().seeing(asked));
        } else {
            new SpokenSeeing(exchange.texts()).print(exchange.sight().seen(asked), out);
        }
        return 0;
    }
}
