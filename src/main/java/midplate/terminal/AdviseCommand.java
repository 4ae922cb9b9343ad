package midplate.terminal;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.advice.OtherRank;
import midplate.plate.Setting;
import midplate.wire.Answered;
import midplate.wire.Exchange;
import midplate.wire.RequestText;
import midplate.wire.ScoutingAnswer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code advise}: says what to pour next. */
@Command(
        name = "advise",
        mixinStandardHelpOptions = true,
        usageHelpAutoWidth = false,
        description = "Says which ratio to pour next, how likely it works, and why.",
        footer = {
            "",
            "Example (invented): midplate advise --run \"10: A=0.05, B=0.12\"",
            "The same plate by its ratio: midplate advise --run \"9:1 A=0.05 B=0.12\"",
            "Before any plate, from the structure: midplate advise --smiles \"A=CC(=O)c1ccccc1\""
        })
public final class AdviseCommand implements Callable<Integer> {
    /** No order was said. */
    private static final String USUAL_RANK = "";

    private static final List<String> RANKS =
            Arrays.stream(OtherRank.values()).map(OtherRank::id).toList();

    private static final Pattern WINDOW = Pattern.compile("\\s*([^\\s–-]+)\\s*[–-]\\s*([^\\s–-]+)\\s*");

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Mixin
    private final SampleOptions sample = new SampleOptions();

    @Option(names = "--sorbent", paramLabel = "NAME", description = "silica (if not said) or alumina.")
    private @Nullable String sorbent;

    @Option(
            names = "--window",
            paramLabel = "LOW-HIGH",
            description = "The Rf between which every spot should lie; 0.2-0.8 if not said.")
    private @Nullable String window;

    @Option(names = "--amount", paramLabel = "ML", description = "Millilitres of eluent wanted; 10 if not said.")
    private @Nullable String amount;

    @Option(
            names = "--graduation",
            paramLabel = "ML",
            description = "Smallest division of the cylinder or pipette; 0.1 if not said.")
    private @Nullable String graduation;

    @Option(
            names = "--jars",
            paramLabel = "N",
            description = "Plates that may run at once, 1 to 3: tells which, and whether that beats going straight.")
    private @Nullable String jars;

    @Option(
            names = "--others",
            paramLabel = "RANK",
            arity = "0..1",
            fallbackValue = USUAL_RANK,
            description =
                    "Also tells other eluents as strong as the one advised, in the order of apart (if not said, with two spots or more), safety, drying or measured.")
    private @Nullable String others;

    @Option(names = "--json", description = "Print the answer as JSON.")
    private boolean json;

    @Option(names = "--calibration", paramLabel = "DIR", description = "Take the strength curves from this folder.")
    private @Nullable Path calibration;

    @Override
    public Integer call() {
        if (jars != null && others != null) {
            throw new Nonsense(
                    "--others", "beside --jars", "--others or --jars, one at a time", "Ask for one after the other.");
        }
        String request = request().toString();
        String wished = others == null ? null : replacing(others).toString();
        Exchange exchange = Exchange.of(calibration);
        if (jars != null) {
            scout(exchange, exchange.scouting(request, Setting.BENCH));
            return 0;
        }
        if (wished != null && json) {
            spec.commandLine()
                    .getOut()
                    .println(exchange.otherEluents(wished, Setting.BENCH).json());
            return 0;
        }
        Answered answered = exchange.advice(request, Setting.BENCH);
        if (json) {
            spec.commandLine().getOut().println(answered.json());
        } else {
            new SpokenAdvice(
                            exchange,
                            new Provenance(exchange.catalogue(), exchange.measured(), exchange.texts()),
                            answered)
                    .print(spec.commandLine().getOut());
        }
        if (wished != null) {
            new SpokenOthers(exchange, exchange.otherEluents(wished, Setting.BENCH))
                    .print(spec.commandLine().getOut());
        }
        return 0;
    }

    private void scout(Exchange exchange, ScoutingAnswer answer) {
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(answer.json());
        } else {
            new SpokenScouting(exchange, answer).print(out);
        }
    }

    /** The request with the order of other eluents. */
    private RequestText replacing(String rank) {
        RequestText request = request();
        if (rank.equals(USUAL_RANK)) {
            return request;
        }
        if (!RANKS.contains(rank)) {
            throw new Nonsense(
                    "--others",
                    rank,
                    String.join(", ", RANKS) + ", or nothing",
                    "Say by what they are to be put in order, or leave it out.");
        }
        return request.with("rank", rank);
    }

    private RequestText request() {
        RequestText request = sample.request();
        SampleOptions.optional(request, "sorbent", sorbent);
        SampleOptions.number(request, "amountMl", "--amount", amount);
        SampleOptions.number(request, "graduationMl", "--graduation", graduation);
        String free = jars;
        if (free != null) {
            request.with(
                    "jars",
                    Decimal.of(free)
                            .orElseThrow(() ->
                                    new Nonsense("--jars", free, "1, 2 or 3", "Say how many plates may run at once.")));
        }
        if (window != null) {
            edges(request, window);
        }
        sample.putSpots(request, "advise");
        return request;
    }

    private static void edges(RequestText request, String window) {
        Matcher edges = WINDOW.matcher(window);
        if (edges.matches()) {
            OptionalDouble low = Decimal.of(edges.group(1));
            OptionalDouble high = Decimal.of(edges.group(2));
            if (low.isPresent() && high.isPresent()) {
                request.with("window", low.getAsDouble(), high.getAsDouble());
                return;
            }
        }
        throw new Nonsense("--window", window, "two Rf, the lower one first: 0.2-0.8", "Join them with a hyphen.");
    }
}
