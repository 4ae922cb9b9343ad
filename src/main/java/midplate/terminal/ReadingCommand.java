package midplate.terminal;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import midplate.plate.Reading;
import midplate.wire.Exchange;
import midplate.wire.ReadPlate;
import midplate.wire.RequestText;
import midplate.words.Message;
import midplate.words.Texts;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code reading}: works out Rf from millimetres. */
@Command(
        name = "reading",
        mixinStandardHelpOptions = true,
        description = "Works out the Rf of spots from millimetres, each from the plate's lower edge.",
        footer = {"", "Example (invented): midplate reading --height 80 --start 10 --front 70 --spot A=28 --spot B=46/3"
        })
public final class ReadingCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Option(names = "--height", paramLabel = "MM", required = true, description = "Height of the plate.")
    private String height = "";

    @Option(names = "--start", paramLabel = "MM", required = true, description = "Height of the start line.")
    private String start = "";

    @Option(names = "--front", paramLabel = "MM", required = true, description = "Height that the front reached.")
    private String front = "";

    @Option(names = "--width", paramLabel = "MM", description = "Width of the plate.")
    private @Nullable String width;

    @Option(names = "--level", paramLabel = "MM", description = "Depth of the solvent in the jar.")
    private @Nullable String level;

    @Option(
            names = "--spot",
            paramLabel = "NAME=MM[/SIZE]",
            required = true,
            description = "Height of a spot's middle, and its size where it was measured; as often as there are spots.")
    private List<String> spots = List.of();

    @Option(names = "--json", description = "Print the answer as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        String request = request().toString();
        Exchange exchange = Exchange.builtIn();
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(exchange.reading(request));
        } else {
            print(exchange.plate(request), exchange.texts(), out);
        }
        return 0;
    }

    private RequestText request() {
        RequestText request = RequestText.empty()
                .with("heightMm", millimetres("--height", height))
                .with("startMm", millimetres("--start", start))
                .with("frontMm", millimetres("--front", front));
        if (width != null) {
            request.with("widthMm", millimetres("--width", width));
        }
        if (level != null) {
            request.with("solventLevelMm", millimetres("--level", level));
        }
        for (String spot : spots) {
            int equals = spot.indexOf('=');
            if (equals < 1) {
                throw new Nonsense("--spot", spot, "a name and a height, such as A=28", "Join them with =.");
            }
            String[] lengths = spot.substring(equals + 1).split("/", 2);
            request.withMeasuredSpot(
                    spot.substring(0, equals),
                    millimetres("--spot", lengths[0]),
                    lengths.length > 1 ? millimetres("--spot", lengths[1]) : 0);
        }
        return request;
    }

    private static double millimetres(String option, String text) {
        return Decimal.of(text)
                .orElseThrow(() -> new Nonsense(option, text, "a number of millimetres", "Give it without the unit."));
    }

    private static void print(ReadPlate plate, Texts texts, PrintWriter out) {
        for (Map.Entry<String, Reading> entry : plate.readings().entrySet()) {
            Reading reading = entry.getValue();
            String key = switch (reading.limit()) {
                case NONE -> "terminal.rf";
                case AT_START -> "terminal.rf-at-most";
                case AT_FRONT -> "terminal.rf-at-least";
            };
            Message line = Message.of(
                    key,
                    "spot",
                    entry.getKey(),
                    "rf",
                    reading.rf(),
                    "error",
                    reading.standardError().orElse(0));
            Paragraph.of(texts.render(line)).print(out);
        }
        plate.warnings()
                .forEach(warning -> Paragraph.item(texts.render(warning)).print(out));
    }
}
