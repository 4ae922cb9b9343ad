package midplate.terminal;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
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

    @Option(
            names = "--weak",
            paramLabel = "NAME",
            defaultValue = "hexane",
            description = "The weaker solvent; ${DEFAULT-VALUE} if not said.")
    private String weak = "hexane";

    @Option(
            names = "--strong",
            paramLabel = "NAME",
            defaultValue = "ethyl acetate",
            description = "The stronger solvent; ${DEFAULT-VALUE} if not said.")
    private String strong = "ethyl acetate";

    @Option(
            names = "--run",
            paramLabel = "TEXT",
            description =
                    "A plate already run, as often as there are: percentage of the stronger solvent (or ratio weak:strong), then each spot with its Rf.")
    private List<String> runs = List.of();

    @Option(names = "--spot", paramLabel = "NAME", description = "A spot to ask about that no plate shows yet.")
    private List<String> spots = List.of();

    @Option(
            names = "--smiles",
            paramLabel = "NAME=SMILES",
            description = "The structure of a spot, where it is known; also for a spot that no plate shows yet.")
    private List<String> smiles = List.of();

    @Option(
            names = "--class",
            paramLabel = "NAME=CLASS",
            description = "The class of compounds of a spot, such as aryl-ketone, where nothing more is known.")
    private List<String> classes = List.of();

    @Option(
            names = "--groups",
            paramLabel = "NAME=GROUPS",
            description =
                    "The functional groups of a spot with their numbers, such as A=aryl-ketone:1,aromatic-carbon:6.")
    private List<String> groups = List.of();

    @Option(names = "--sorbent", paramLabel = "NAME", description = "silica (if not said) or alumina.")
    private @Nullable String sorbent;

    @Option(
            names = "--setting",
            paramLabel = "NAME",
            description = "How much plates scatter: automated, bench (if not said) or class.")
    private @Nullable String setting;

    @Option(
            names = "--window",
            paramLabel = "LOW-HIGH",
            description = "The Rf between which every spot should lie; 0.2-0.8 if not said.")
    private @Nullable String window;

    @Option(
            names = "--additive",
            paramLabel = "TEXT",
            description = "What else is in the eluent, on these plates and the next.")
    private @Nullable String additive;

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
        RequestText request = RequestText.empty().with("weak", weak).with("strong", strong);
        optional(request, "sorbent", sorbent);
        optional(request, "setting", setting);
        optional(request, "additive", additive);
        number(request, "amountMl", "--amount", amount);
        number(request, "graduationMl", "--graduation", graduation);
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
        Set<String> names = new LinkedHashSet<>(spots);
        SpotTexts known = new SpotTexts()
                .with("--smiles", "smiles", "A=CC(=O)c1ccccc1", smiles)
                .with("--class", "class", "A=aryl-ketone", classes)
                .withGroups(groups);
        for (String text : runs) {
            RunText run = RunText.of(text);
            names.addAll(run.rf().keySet());
            request.withRun(run.percentStrong(), run.rf());
            if (additive != null) {
                request.withRunField("additive", additive);
            }
        }
        names.addAll(known.names());
        if (names.isEmpty()) {
            throw new Nonsense(
                    "--run",
                    "",
                    "at least one plate, such as --run \"9:1 A=0.05 B=0.12\", or one spot by --smiles, --groups, --class or --spot",
                    "Give a plate with its Rf, or name a spot; \"midplate advise --help\" tells every option.");
        }
        names.forEach(name -> known.put(request, name));
        return request;
    }

    private static void optional(RequestText request, String field, @Nullable String value) {
        if (value != null) {
            request.with(field, value);
        }
    }

    private static void number(RequestText request, String field, String option, @Nullable String value) {
        if (value != null) {
            request.with(
                    field,
                    Decimal.of(value)
                            .orElseThrow(() -> new Nonsense(
                                    option, value, "a number of millilitres", "Give it without the unit.")));
        }
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
