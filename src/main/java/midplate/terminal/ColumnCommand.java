package midplate.terminal;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.plate.Setting;
import midplate.wire.ColumnAnswer;
import midplate.wire.Exchange;
import midplate.wire.RequestText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code column}: says what to do on a column. */
@Command(
        name = "column",
        mixinStandardHelpOptions = true,
        usageHelpAutoWidth = false,
        description = "Says what to pour on a column, when each spot leaves it, and which fractions to keep.",
        footer = {
            "",
            "Example (invented): midplate column --run \"9:1 A=0.35 B=0.22\" --target B --mass 250",
            "With a bed and steps of your own: midplate column --run \"9:1 A=0.35 B=0.22\" --target B --mass 250 --bed \"20 x 150 mm\" --steps \"5 %%:60, 4:1:120\""
        })
public final class ColumnCommand implements Callable<Integer> {
    private static final Pattern CARTRIDGE = Pattern.compile("\\s*([^\\sx×]+?)\\s*g\\s*");
    private static final Pattern GLASS =
            Pattern.compile("\\s*([^\\sx×]+?)\\s*(?:mm)?\\s*[x×]\\s*([^\\sx×]+?)\\s*mm\\s*");
    private static final Pattern WIDE = Pattern.compile("\\s*([^\\sx×]+?)\\s*mm\\s*");

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @Mixin
    private final SampleOptions sample = new SampleOptions();

    @Option(
            names = "--target",
            paramLabel = "NAME",
            description = "The spot that is wanted; not needed where there is only one.")
    private @Nullable String target;

    @Option(names = "--mass", paramLabel = "MG", required = true, description = "Mass of the sample in milligrams.")
    private String mass = "";

    @Option(
            names = "--bed",
            paramLabel = "BED",
            description =
                    "A cartridge by its silica, such as 12g, or a glass column by its diameter, such as 20mm or \"20 x 150 mm\" with the height of the silica; the smallest that carries the sample if not said.")
    private @Nullable String bed;

    @Option(
            names = "--loading",
            paramLabel = "NAME",
            description = "wet (dissolved in little solvent, if not said) or dry (dried onto silica).")
    private @Nullable String loading;

    @Option(
            names = "--load",
            paramLabel = "ML",
            description = "Millilitres in which the sample is dissolved for a wet load.")
    private @Nullable String load;

    @Option(
            names = "--flow",
            paramLabel = "ML",
            description = "Flow in millilitres a minute; usual for the bed if not said.")
    private @Nullable String flow;

    @Option(names = "--fraction", paramLabel = "ML", description = "Millilitres in a fraction; advised if not said.")
    private @Nullable String fraction;

    @Option(
            names = "--elution",
            paramLabel = "NAME",
            description = "best (if not said), isocratic (one eluent) or steps (as few as do it).")
    private @Nullable String elution;

    @Option(
            names = "--steps",
            paramLabel = "TEXT",
            description =
                    "What you would pour yourself: one eluent, such as \"10 %%\" or 9:1, or each with its millilitres, such as \"5 %%:60, 4:1:120\".")
    private @Nullable String steps;

    @Option(
            names = "--sorbent",
            paramLabel = "NAME",
            description = "silica, which need not be said: no columns of anything else were measured.")
    private @Nullable String sorbent;

    @Option(names = "--json", description = "Print the answer as JSON.")
    private boolean json;

    @Option(names = "--calibration", paramLabel = "DIR", description = "Take the fitted curves from this folder.")
    private @Nullable Path calibration;

    @Override
    public Integer call() {
        String request = request().toString();
        Exchange exchange = Exchange.of(calibration);
        ColumnAnswer answer = exchange.columns().plan(request, Setting.BENCH);
        if (json) {
            spec.commandLine().getOut().println(answer.json());
        } else {
            new SpokenColumn(exchange, answer).print(spec.commandLine().getOut());
        }
        return 0;
    }

    private RequestText request() {
        RequestText request = sample.request();
        SampleOptions.optional(request, "sorbent", sorbent);
        Attempts attempts = new Attempts();
        attempts.at(() -> sample.putSpots(request, "column"));
        RequestText column = RequestText.empty();
        SampleOptions.optional(column, "target", target);
        attempts.at(() -> column.with("massMg", milligrams(mass)));
        Optional.ofNullable(bed).ifPresent(text -> attempts.at(() -> column.with("bed", bed(text))));
        SampleOptions.optional(column, "loading", loading);
        attempts.at(() -> millilitres(column, "loadMl", "--load", load));
        attempts.at(() -> millilitres(column, "flowMlMin", "--flow", flow));
        attempts.at(() -> millilitres(column, "fractionMl", "--fraction", fraction));
        SampleOptions.optional(column, "elution", elution);
        Optional.ofNullable(steps)
                .ifPresent(text -> attempts.at(() -> StepsText.of(text).put(column)));
        attempts.orTellAll();
        return request.with("column", column);
    }

    private static RequestText bed(String text) {
        Matcher cartridge = CARTRIDGE.matcher(text);
        if (cartridge.matches()) {
            return RequestText.empty().with("cartridgeGrams", part(text, cartridge.group(1)));
        }
        Matcher glass = GLASS.matcher(text);
        if (glass.matches()) {
            return RequestText.empty()
                    .with("diameterMm", part(text, glass.group(1)))
                    .with("bedMm", part(text, glass.group(2)));
        }
        Matcher wide = WIDE.matcher(text);
        if (wide.matches()) {
            return RequestText.empty().with("diameterMm", part(text, wide.group(1)));
        }
        throw noBed(text);
    }

    private static double part(String text, String number) {
        return Decimal.of(number).orElseThrow(() -> noBed(text));
    }

    private static Nonsense noBed(String text) {
        return new Nonsense(
                "--bed",
                text,
                "a cartridge such as 12g, or a glass column such as 20mm or \"20 x 150 mm\"",
                "Give the number with its unit, g or mm, or leave the option out to be advised.");
    }

    private static void millilitres(RequestText column, String field, String option, @Nullable String value) {
        if (value != null) {
            column.with(field, quantity(option, value, "ml", "a number of millilitres", "Give one number, in ml."));
        }
    }

    private static double milligrams(String text) {
        return quantity(
                "--mass", text, "mg", "a number of milligrams, such as 250", "Give one number, in mg: 5000 for 5 g.");
    }

    /** A number, with its unit or without. */
    private static double quantity(String option, String text, String unit, String allowed, String todo) {
        String plain = text.strip();
        String number = plain.endsWith(unit) ? plain.substring(0, plain.length() - unit.length()) : plain;
        return Decimal.of(number).orElseThrow(() -> new Nonsense(option, text, allowed, todo));
    }
}
