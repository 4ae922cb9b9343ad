package midplate.wire;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import midplate.lesson.ClassPlate;
import midplate.lesson.ClassReading;
import midplate.lesson.ClassReadings;
import midplate.lesson.LessonSample;
import midplate.words.Allowed;
import midplate.words.Message;

/** Reads what a class read: who, on which plate, which spot, where. */
final class ClassReadingsReader {
    static final List<String> READING =
            List.of("pair", "plate", "lane", "spot", "rf", "centreMm", "startMm", "frontMm");
    static final int MOST_READINGS = ClassReadings.MOST_PAIRS * LessonSample.MOST_COMPOUNDS * ClassReadings.MOST_PLATES;

    private static final String READINGS = "readings";
    private static final int LONGEST = 60;

    private final FaultList faults;
    private final ClassRfReader rf;
    private final Map<String, Integer> spots = new LinkedHashMap<>();
    private final Map<String, Set<ClassPlate>> plates = new LinkedHashMap<>();
    private final Set<List<Object>> taken = new HashSet<>();

    /**
     * Reads readings of these spots, and of others that they name.
     *
     * @param named spots that stand in an order
     */
    ClassReadingsReader(List<String> named, FaultList faults) {
        this.faults = faults;
        this.rf = new ClassRfReader(faults);
        named.forEach(name -> spots.put(name, spots.size()));
    }

    /** The readings of a request, without those that are faulty. */
    List<ClassReading> read(JsonFields request) {
        List<ClassReading> read = new ArrayList<>();
        Message allowed = Message.of("allowed.entries", "interval", Allowed.closed(1, MOST_READINGS));
        Message todo =
                Message.of("todo.give-class-reading", "example", "[{\"pair\": \"1\", \"spot\": \"A\", \"rf\": 0.35}]");
        if (!request.has(READINGS)) {
            request.missing(READINGS, allowed, todo);
        }
        int before = faults.count();
        request.items(READINGS, MOST_READINGS).ifPresent(list -> {
            for (int i = 0; i < list.size(); i++) {
                JsonFields.of(request.path(READINGS + "[" + i + "]"), list.get(i), faults, READING)
                        .flatMap(this::reading)
                        .ifPresent(read::add);
            }
            if (list.isEmpty()) {
                faults.add(request.path(READINGS), Message.of("fault.no-class-readings"), "[]", allowed, todo);
            }
        });
        if (faults.count() == before) {
            most(request, "pair", plates.size(), ClassReadings.MOST_PAIRS);
            most(request, "spot", spots.size(), LessonSample.MOST_COMPOUNDS);
        }
        return read;
    }

    /** The spots, those named first. */
    List<String> spots() {
        return List.copyOf(spots.keySet());
    }

    private void most(JsonFields request, String what, int count, int most) {
        if (count > most) {
            faults.add(
                    request.path(READINGS),
                    Message.of("pair".equals(what) ? "fault.class-pairs" : "fault.class-spots", "most", most),
                    Message.of("came.entries", "count", count),
                    Message.of("allowed.entries", "interval", Allowed.closed(1, most)),
                    Message.of("todo.class-in-parts"));
        }
    }

    private Optional<ClassReading> reading(JsonFields fields) {
        int before = faults.count();
        Optional<String> pair = named(fields, "pair");
        Optional<String> spot = named(fields, "spot");
        Optional<ClassPlate> plate = pair.flatMap(who -> plate(fields, who));
        int lane = whole(fields, "lane", ClassReadings.MOST_LANES).orElse(1);
        Optional<ClassRfReader.Read> read = rf.read(fields, spot.orElse(""));
        if (faults.count() > before || pair.isEmpty() || spot.isEmpty() || plate.isEmpty() || read.isEmpty()) {
            return Optional.empty();
        }
        Set<ClassPlate> own = plates.computeIfAbsent(pair.get(), who -> new HashSet<>());
        own.add(plate.get());
        if (own.size() > ClassReadings.MOST_PLATES) {
            fault(
                    fields,
                    "plate",
                    Message.of("fault.class-plates", "pair", pair.get(), "most", ClassReadings.MOST_PLATES),
                    Message.of("allowed.entries", "interval", Allowed.closed(1, ClassReadings.MOST_PLATES)),
                    Message.of("todo.leave-some-out"));
        }
        int at = spots.computeIfAbsent(spot.get(), name -> spots.size());
        if (!taken.add(List.of(pair.get(), plate.get(), lane, at))) {
            fault(
                    fields,
                    "lane",
                    Message.of("fault.class-reading-twice", "pair", pair.get(), "spot", spot.get()),
                    Message.of("allowed.whole-number", "interval", Allowed.closed(1, ClassReadings.MOST_LANES)),
                    Message.of("todo.give-lane"));
        }
        return faults.count() > before
                ? Optional.empty()
                : Optional.of(new ClassReading(
                        pair.get(),
                        plate.get(),
                        lane,
                        at,
                        read.get().rf(),
                        read.get().how()));
    }

    private void fault(JsonFields fields, String name, Message reason, Message allowed, Message todo) {
        faults.add(fields.path(name), reason, fields.any(name).map(Json::shown).orElse(""), allowed, todo);
    }

    private Optional<String> named(JsonFields fields, String name) {
        if (!fields.has(name)) {
            fields.missing(name, Message.of("allowed.name"), Message.of("todo.name-in-class", "name", name));
        }
        return fields.text(name, LONGEST);
    }

    /** A number is the pair's own plate, a name one of the class. */
    private Optional<ClassPlate> plate(JsonFields fields, String pair) {
        if (fields.any("plate").filter(Json.Text.class::isInstance).isPresent()) {
            return fields.text("plate", LONGEST).map(ClassPlate::ofClass);
        }
        return whole(fields, "plate", ClassReadings.MOST_PLATES)
                .or(() -> fields.has("plate") ? Optional.empty() : Optional.of(1))
                .map(number -> ClassPlate.ofPair(pair, number));
    }

    private Optional<Integer> whole(JsonFields fields, String name, int most) {
        return ClassRfReader.whole(fields, name, 1, most, faults);
    }
}
