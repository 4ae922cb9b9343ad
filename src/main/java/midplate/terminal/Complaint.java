package midplate.terminal;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import midplate.catalogue.BadSolventData;
import midplate.inference.BadMeasurements;
import midplate.wire.BadInput;
import midplate.wire.Fault;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.jspecify.annotations.Nullable;

/** Tells what went wrong with a command, and gives the exit status for it. */
public final class Complaint {
    private static final int WRONG_COMMAND_LINE = 2;
    private static final int FAILED = 1;
    private static final Pattern RUN = Pattern.compile("runs\\[(\\d+)](?:\\.rf)?(?:\\.(.+))?");

    private static final Pattern SPOT = Pattern.compile("(spot|compound)s\\[(\\d+)](?:\\.(.+))?");

    private static final Pattern STEP = Pattern.compile("column\\.steps(?:\\[(\\d+)])?(?:\\.(.+))?");

    private static final Pattern COLUMN = Pattern.compile("column[.](.+)");

    private Complaint() {}

    /** Tells a failure; the result is the exit status: 2 where the input can be mended, 1 for anything else. */
    public static int tell(Exception failure, PrintWriter err) {
        if (failure instanceof BadInput bad) {
            bad.faults().forEach(fault -> tell(fault, err));
            return WRONG_COMMAND_LINE;
        }
        if (failure instanceof Nonsense nonsense) {
            for (Nonsense one : nonsense.each()) {
                Paragraph.of(one.lines().get(0)).print(err);
                one.lines().stream()
                        .skip(1)
                        .forEach(line -> Paragraph.indented(line).print(err));
            }
            return WRONG_COMMAND_LINE;
        }
        if (failure instanceof Refusal refusal) {
            Texts texts = Texts.english();
            tell(
                    new Fault(
                            refusal.field(),
                            refusal.code(),
                            refusal.came(),
                            texts.render(refusal.allowed()),
                            texts.render(refusal.todo()),
                            texts.render(refusal.reason())),
                    err);
            return WRONG_COMMAND_LINE;
        }
        if (failure instanceof BadSolventData || failure instanceof BadMeasurements) {
            err.println(failure.getMessage());
            return FAILED;
        }
        if (failure instanceof IOException) {
            err.println("A file could not be read or written: " + failure.getMessage()
                    + ". Check that the place exists and may be written to.");
            return FAILED;
        }
        err.println("Midplate failed; please report what stands here.");
        failure.printStackTrace(err);
        return FAILED;
    }

    private static void tell(Fault fault, PrintWriter err) {
        Paragraph.of(option(fault.field()) + ": " + fault.message()).print(err);
        Paragraph.indented("Came: " + fault.came() + ". Allowed: " + IntervalWords.of(fault.allowed()) + ".")
                .print(err);
        Paragraph.indented(fault.todo()).print(err);
    }

    /** What of a plate or a spot is meant, by the word of the option and not by that of the request. */
    private static String part(@Nullable String field) {
        if (field == null) {
            return "";
        }
        return switch (field) {
            case "percentStrong" -> ", percentage";
            case "centreMm" -> ", height";
            case "sizeMm" -> ", size";
            case "name" -> ", name";
            case "volumeMl" -> ", volume";
            default -> ", " + field;
        };
    }

    /** A field of a request as the option that filled it: {@code --run no. 1, A}. */
    private static String option(String field) {
        Matcher run = RUN.matcher(field);
        if (run.matches()) {
            int number = Integer.parseInt(run.group(1)) + 1;
            return "--run no. " + number + part(run.group(2));
        }
        Matcher spot = SPOT.matcher(field);
        if (spot.matches()) {
            return spotOption(spot.group(1), Integer.parseInt(spot.group(2)) + 1, spot.group(3));
        }
        Matcher column = COLUMN.matcher(field);
        if (column.matches()) {
            return columnOption(field, column.group(1));
        }
        if (field.startsWith("spots")) {
            return "--spot" + field.substring("spots".length());
        }
        return switch (field) {
            case "amountMl" -> "--amount";
            case "graduationMl" -> "--graduation";
            case "percentStrong" -> "--percent";
            case "heightMm", "startMm", "frontMm", "widthMm" -> "--" + field.substring(0, field.length() - 2);
            case "solventLevelMm" -> "--level";
            default ->
                List.of("weak", "strong", "sorbent", "setting", "window", "additive", "series", "to", "activity")
                                .contains(field)
                        ? "--" + field
                        : field;
        };
    }

    /** A field of a spot, or of a compound, as the option that filled it: {@code --smiles of spot no. 2}. */
    private static String spotOption(String thing, int number, @Nullable String known) {
        if ("smiles".equals(known) || "class".equals(known)) {
            return "--" + known + " of " + thing + " no. " + number;
        }
        if (known != null && known.startsWith("groups")) {
            String group = known.substring("groups".length()).replaceFirst("^\\.", ", ");
            return "--groups of " + thing + " no. " + number + group;
        }
        return "--spot no. " + number + part(known);
    }

    /** A field of what is asked of a column as the option that filled it: {@code --steps no. 1, volume}. */
    private static String columnOption(String field, String name) {
        Matcher step = STEP.matcher(field);
        if (step.matches()) {
            String number = step.group(1) == null ? "" : " no. " + (Integer.parseInt(step.group(1)) + 1);
            return "--steps" + number + part(step.group(2));
        }
        return switch (name) {
            case "massMg" -> "--mass";
            case "loadMl" -> "--load";
            case "flowMlMin" -> "--flow";
            case "fractionMl" -> "--fraction";
            case "percentStrong" -> "--steps";
            case "target", "loading", "elution" -> "--" + name;
            default -> name.startsWith("bed") ? "--bed" : field;
        };
    }
}
