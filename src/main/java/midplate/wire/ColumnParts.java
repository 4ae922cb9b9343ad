package midplate.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import midplate.column.Bed;
import midplate.column.Cartridge;
import midplate.column.GlassColumn;
import midplate.column.Program;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * The parts that requests about columns share. A part that cannot be read is told, and something else stands in its place, so that the
 * room below can look at the rest; what it then says of the stand-in is not told.
 */
final class ColumnParts {
    static final List<String> BED = List.of("cartridgeGrams", "diameterMm", "bedMm");
    static final List<String> STEP = List.of("percentStrong", "volumeMl");

    /** Stands in for an eluent that cannot be read [% v/v]. */
    private static final double SOME_PERCENT = 10;
    /** A diameter of a glass column that exists [mm]. */
    private static final double SOME_DIAMETER_MM = 20;

    private static final double LARGEST_WHOLE = 1e6;

    private final FaultList faults;
    private final Set<String> told = new HashSet<>();

    ColumnParts(FaultList faults) {
        this.faults = faults;
    }

    /** What stands in for a bed that cannot be read. */
    static Bed someBed() {
        return new Cartridge(Cartridge.SIZES.get(0));
    }

    /** How a value of an enum is written. */
    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    /** One of the values of an enum by its word; empty where none came or the word is not known. */
    static <E extends Enum<E>> Optional<E> one(JsonFields fields, String name, E[] values) {
        List<String> words = Arrays.stream(values).map(ColumnParts::word).toList();
        return fields.choice(name, words).map(word -> values[words.indexOf(word)]);
    }

    /** Keeps what the room below says of a place from being told. */
    void passOver(String path) {
        told.add(path);
    }

    /** Tells what the room below refuses, but of stand-ins. */
    void tell(List<Refusal> refusals) {
        for (Refusal refusal : refusals) {
            String field = refusal.field();
            boolean known = told.stream()
                    .anyMatch(
                            path -> field.equals(path) || field.startsWith(path + ".") || field.startsWith(path + "["));
            if (!known) {
                faults.add(field, refusal);
            }
        }
    }

    /** A number that must be there. */
    double number(JsonFields fields, String name, double standIn, Message todo) {
        if (!fields.has(name)) {
            fields.missing(name, Message.of("kind.number"), todo);
        }
        OptionalDouble number = fields.number(name);
        if (number.isEmpty()) {
            passOver(fields.path(name));
        }
        return number.orElse(standIn);
    }

    /** A whole number that must be there. */
    int whole(JsonFields fields, String name, int standIn, Message todo) {
        double number = number(fields, name, standIn, todo);
        if (number == Math.rint(number) && Math.abs(number) <= LARGEST_WHOLE) {
            return (int) number;
        }
        Message allowed = Message.of("kind.whole-number");
        faults.add(
                fields.path(name),
                Message.of("fault.no-whole-number"),
                fields.any(name).map(Json::shown).orElse(""),
                allowed,
                Message.of("todo.give", "wanted", allowed));
        passOver(fields.path(name));
        return standIn;
    }

    /** The silica; empty where none came, or where it cannot be. */
    Optional<Bed> bed(JsonFields parent, String name) {
        return parent.any(name)
                .flatMap(value -> JsonFields.of(parent.path(name), value, faults, BED))
                .flatMap(this::bed);
    }

    private Optional<Bed> bed(JsonFields fields) {
        boolean cartridge = fields.has("cartridgeGrams");
        boolean glass = fields.has("diameterMm") || fields.has("bedMm");
        if (cartridge == glass) {
            faults.add(
                    fields.place(),
                    Message.of(cartridge ? "fault.two-beds" : "fault.no-bed"),
                    Message.of(cartridge ? "came.two-beds" : "came.nothing"),
                    Message.of("allowed.one-bed"),
                    Message.of("todo.keep-one-bed"));
            return Optional.empty();
        }
        if (cartridge) {
            OptionalDouble grams = fields.number("cartridgeGrams");
            return grams.isEmpty() ? Optional.empty() : made(fields, () -> new Cartridge(grams.getAsDouble()));
        }
        if (!fields.has("diameterMm")) {
            fields.missing("diameterMm", Message.of("kind.number"), Message.of("todo.give-diameter"));
        }
        OptionalDouble diameter = fields.number("diameterMm");
        double height = fields.number("bedMm").orElse(GlassColumn.USUAL_BED_MM);
        int before = faults.count();
        Optional<Bed> wide = diameter.isEmpty()
                ? Optional.empty()
                : made(fields, () -> new GlassColumn(diameter.getAsDouble(), GlassColumn.USUAL_BED_MM));
        made(fields, () -> new GlassColumn(SOME_DIAMETER_MM, height));
        return wide.isEmpty() || faults.count() > before
                ? Optional.empty()
                : Optional.of(new GlassColumn(diameter.getAsDouble(), height));
    }

    private Optional<Bed> made(JsonFields fields, Supplier<Bed> bed) {
        try {
            return Optional.of(bed.get());
        } catch (Refusal refusal) {
            String name = refusal.field().substring(refusal.field().lastIndexOf('.') + 1);
            faults.add(
                    fields.path(name),
                    refusal.reason(),
                    fields.any(name).map(Json::shown).orElse(refusal.came()),
                    refusal.allowed(),
                    refusal.todo());
            return Optional.empty();
        }
    }

    /** What is poured, step by step; empty where none came, or where it cannot be poured. */
    Optional<Program> steps(JsonFields parent, String name) {
        Optional<List<Json>> items = parent.items(name, Program.MOST_STEPS);
        if (items.isEmpty()) {
            return Optional.empty();
        }
        int before = faults.count();
        List<Program.Step> steps = new ArrayList<>();
        Map<String, String> came = new HashMap<>();
        for (int i = 0; i < items.get().size(); i++) {
            String path = parent.path(name + "[" + i + "]");
            steps.add(JsonFields.of(path, items.get().get(i), faults, STEP)
                    .map(fields -> step(fields, came))
                    .orElse(new Program.Step(SOME_PERCENT, 1)));
        }
        String prefix = parent.path(name);
        for (Refusal refusal : Program.faults(steps)) {
            String place = prefix + refusal.field().substring("column.steps".length());
            if (!told.contains(place)) {
                faults.add(
                        place,
                        refusal.reason(),
                        came.getOrDefault(place, refusal.came()),
                        refusal.allowed(),
                        refusal.todo());
            }
        }
        return faults.count() > before ? Optional.empty() : Optional.of(new Program(steps));
    }

    private Program.Step step(JsonFields fields, Map<String, String> came) {
        STEP.forEach(name -> fields.any(name).ifPresent(value -> came.put(fields.path(name), value.shown())));
        return new Program.Step(
                number(fields, "percentStrong", SOME_PERCENT, Message.of("todo.give-percent-of-volumes")),
                number(fields, "volumeMl", 1, Message.of("todo.give-step-volume")));
    }

    /** One eluent to the end, by its share of the stronger solvent; empty where none came, or where it cannot be. */
    static Optional<Program> isocratic(JsonFields fields) {
        OptionalDouble percent = fields.percent("percentStrong");
        return percent.isPresent() ? Optional.of(Program.isocratic(percent.getAsDouble())) : Optional.empty();
    }

    /** Tells that a spot must be named, unless there is only one: that is meant then. */
    String target(JsonFields fields, List<String> spots) {
        if (!fields.has("target")) {
            if (spots.size() > 1) {
                fields.missing("target", Allowed.words(spots), Message.of("todo.name-target"));
            }
            passOver(fields.path("target"));
            return spots.isEmpty() ? "" : spots.get(0);
        }
        Optional<String> target = fields.text("target", QuestionReader.LONGEST_NAME);
        if (target.isEmpty() || spots.isEmpty()) { // no spots: told already
            passOver(fields.path("target"));
        }
        return target.orElse("");
    }
}
