package midplate.terminal;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import midplate.wire.Exchange;
import midplate.wire.RequestText;
import midplate.wire.StrengthAnswer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code strength}: tells how strong a mixture is by the published tables, and what equals it. */
@Command(
        name = "strength",
        mixinStandardHelpOptions = true,
        description =
                "Tells the eluent strength of a mixture by the published tables, and an equal one of another pair.",
        footer = {"", "Example (invented): midplate strength --percent 20 --to \"hexane/diethyl ether\""})
public final class StrengthCommand implements Callable<Integer> {
    private static final Pattern PER_CENT = Pattern.compile("\\s*%\\s*$");

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Option(names = "--weak", paramLabel = "NAME", description = "The weaker solvent; hexane if not said.")
    private String weak = "hexane";

    @Option(names = "--strong", paramLabel = "NAME", description = "The stronger solvent; ethyl acetate if not said.")
    private String strong = "ethyl acetate";

    @Option(names = "--percent", paramLabel = "N", required = true, description = "Percentage of the stronger solvent.")
    private String percent = "";

    @Option(names = "--sorbent", paramLabel = "NAME", description = "silica (if not said) or alumina.")
    private @Nullable String sorbent;

    @Option(names = "--series", paramLabel = "NAME", description = "older or newer table; both if not said.")
    private @Nullable String series;

    @Option(names = "--activity", paramLabel = "N", description = "Activity of the layer; 0.7 if not said.")
    private @Nullable String activity;

    @Option(names = "--to", paramLabel = "WEAK/STRONG", description = "Another pair, to find the ratio equally strong.")
    private @Nullable String to;

    @Option(names = "--json", description = "Print the answer as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        String request = request().toString();
        Exchange exchange = Exchange.builtIn();
        StrengthAnswer answer = exchange.equalStrength(request);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(answer.json());
            return 0;
        }
        answer.lines()
                .forEach(line -> Paragraph.of(exchange.texts().render(line)).print(out));
        answer.notes()
                .forEach(note -> Paragraph.item(exchange.texts().render(note)).print(out));
        return 0;
    }

    private RequestText request() {
        RequestText request = RequestText.empty()
                .with("weak", weak)
                .with("strong", strong)
                .with(
                        "percentStrong",
                        number("--percent", PER_CENT.matcher(percent).replaceFirst("")));
        if (sorbent != null) {
            request.with("sorbent", sorbent);
        }
        if (series != null) {
            request.with("series", series);
        }
        if (activity != null) {
            request.with("activity", number("--activity", activity));
        }
        if (to != null) {
            String[] names = to.split("/", -1);
            if (names.length != 2) {
                throw new Nonsense("--to", to, "two solvents, weak/strong", "Join their names with a slash.");
            }
            request.with("to", RequestText.empty().with("weak", names[0]).with("strong", names[1]));
        }
        return request;
    }

    private static double number(String option, String text) {
        return Decimal.of(text)
                .orElseThrow(() -> new Nonsense(option, text, "a number", "Give it without unit or words."));
    }
}
