package midplate.terminal;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import midplate.wire.RequestText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that say what the sample is and what its plates showed. */
final class SampleOptions {
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

    @Option(
            names = "--setting",
            paramLabel = "NAME",
            description = "How much plates scatter: automated, bench (if not said) or class.")
    private @Nullable String setting;

    @Option(
            names = "--additive",
            paramLabel = "TEXT",
            description = "What else is in the eluent, on these plates and the next.")
    private @Nullable String additive;

    /** A request with what was said, but the sorbent, the spots and plates. */
    RequestText request() {
        RequestText request = RequestText.empty().with("weak", weak).with("strong", strong);
        optional(request, "setting", setting);
        optional(request, "additive", additive);
        return request;
    }

    /** Puts the plates and spots into a request; at least one spot must have been named. */
    void putSpots(RequestText request, String command) {
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
                    "Give a plate with its Rf, or name a spot; \"midplate " + command
                            + " --help\" tells every option.");
        }
        names.forEach(name -> known.put(request, name));
    }

    /** Puts a text into a request where one was said. */
    static void optional(RequestText request, String field, @Nullable String value) {
        if (value != null) {
            request.with(field, value);
        }
    }

    /** Puts a number into a request where one was said. */
    static void number(RequestText request, String field, String option, @Nullable String value) {
        if (value != null) {
            request.with(
                    field,
                    Decimal.of(value)
                            .orElseThrow(() -> new Nonsense(
                                    option, value, "a number of millilitres", "Give it without the unit.")));
        }
    }
}
