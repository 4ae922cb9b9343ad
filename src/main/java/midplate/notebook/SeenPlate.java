package midplate.notebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import midplate.notebook.StudyPlate.Given;
import midplate.notebook.StudyPlate.Lane;
import midplate.notebook.StudyPlate.SpotSeen;
import midplate.plate.Limit;
import midplate.plate.PlateMeasurement;
import midplate.plate.PlateReading;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.plate.SpotForm;
import midplate.plate.SpotMeasurement;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * What was seen on a plate of a study, worked out as everywhere: a compound in several lanes at the mean of its places, a spot on a
 * line as a bound. A plate that cannot be worked out has a fault and nothing else.
 */
final class SeenPlate {
    private static final String UNNAMED = "\n"; // no id of a compound begins so

    private final Optional<Message> fault;
    private final Map<String, Reading> readings = new LinkedHashMap<>();
    private final List<OpenLane> lanes = new ArrayList<>();

    /**
     * A lane with spots that nobody named.
     *
     * @param labelled ids of the compounds that are known in this lane
     * @param open the others, in the order entered
     */
    record OpenLane(Set<String> labelled, List<Reading> open) {}

    /** One spot in one lane, once for each compound in it. */
    private record Entry(String name, boolean named, int lane, double place, Optional<Reading> typed, Look look) {}

    /** What was told of a spot beside its place. */
    private record Look(OptionalDouble sizeMm, OptionalDouble errorMm, Optional<SpotForm> shape) {
        SpotMeasurement of(String name, double centreMm) {
            return SpotMeasurement.of(name, centreMm)
                    .withSize(sizeMm)
                    .withError(errorMm)
                    .withShape(shape);
        }
    }

    /** The plate cannot be worked out, and why. */
    private static final class Unread extends Exception {
        private static final long serialVersionUID = 1L;

        @SuppressWarnings("serial") // caught here, never stored
        private final Message why;

        Unread(Message why) {
            super(why.key());
            this.why = why;
        }
    }

    private SeenPlate(Study study, StudyPlate plate) {
        Optional<Message> found = Optional.empty();
        try {
            workOut(study, plate);
        } catch (Unread unread) {
            found = Optional.of(unread.why);
        }
        fault = found;
    }

    static SeenPlate of(Study study, StudyPlate plate) {
        return new SeenPlate(study, plate);
    }

    /** Whether anything was entered on a plate that it must have been run for. */
    static boolean hasAnything(StudyPlate plate) {
        return !plate.notSeen().isEmpty()
                || plate.lanes().stream()
                        .flatMap(lane -> lane.readings().stream())
                        .anyMatch(SeenPlate::isGiven);
    }

    /** A spot that was added and has no place yet counts for nothing. */
    private static boolean isGiven(SpotSeen spot) {
        return spot.place().value().isPresent() || !spot.place().typed().isBlank();
    }

    /** Why it cannot be worked out. */
    Optional<Message> fault() {
        return fault;
    }

    /** Where each compound was read, by its id. */
    Map<String, Reading> readings() {
        return readings;
    }

    /** The lanes in which spots were seen that nobody named. */
    List<OpenLane> lanes() {
        return lanes;
    }

    private void workOut(Study study, StudyPlate plate) throws Unread {
        Setting setting = Setting.byId(study.setting()).orElse(Setting.BENCH);
        List<Entry> entries = entries(plate, setting);
        Optional<PlateMeasurement> lines = lines(plate, entries);
        if (lines.isPresent()) {
            for (Refusal refusal : PlateReading.faults(lines.get())) {
                throw new Unread(named(refusal.reason(), study, entries));
            }
        }
        Map<String, Reading> worked =
                lines.map(each -> PlateReading.of(each).readings()).orElse(Map.of());
        Map<String, List<Entry>> byName = new LinkedHashMap<>();
        entries.forEach(entry ->
                byName.computeIfAbsent(entry.name(), name -> new ArrayList<>()).add(entry));
        Map<Integer, OpenLane> open = new LinkedHashMap<>();
        byName.forEach((name, places) -> {
            Reading reading = reading(places, lines, worked);
            if (places.get(0).named()) {
                readings.put(name, reading);
            } else {
                open.computeIfAbsent(
                                places.get(0).lane(), lane -> new OpenLane(labels(lane, entries), new ArrayList<>()))
                        .open()
                        .add(reading);
            }
        });
        lanes.addAll(open.values());
    }

    private static Set<String> labels(int lane, List<Entry> entries) {
        Set<String> labels = new HashSet<>();
        entries.stream()
                .filter(entry -> entry.named() && entry.lane() == lane)
                .forEach(entry -> labels.add(entry.name()));
        return labels;
    }

    private static List<Entry> entries(StudyPlate plate, Setting setting) throws Unread {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < plate.lanes().size(); i++) {
            Lane lane = plate.lanes().get(i);
            for (SpotSeen spot : lane.readings()) {
                if (isGiven(spot)) {
                    double place = number(spot.place());
                    Optional<Reading> typed =
                            spot.given() == Given.RF ? Optional.of(typed(place, setting)) : Optional.empty();
                    Look look = new Look(
                            ifAny(spot.sizeMm()),
                            ifAny(spot.errorMm()),
                            spot.shape().flatMap(SpotForm::byId));
                    for (String name : new LinkedHashSet<>(spot.spots())) {
                        entries.add(new Entry(name, true, i, place, typed, look));
                    }
                    if (spot.spots().isEmpty()) {
                        entries.add(new Entry(UNNAMED + entries.size(), false, i, place, typed, look));
                    }
                }
            }
        }
        return entries;
    }

    private static OptionalDouble ifAny(Optional<Entered> entered) throws Unread {
        return entered.isEmpty() || entered.get().equals(Entered.NOTHING)
                ? OptionalDouble.empty()
                : OptionalDouble.of(number(entered.get()));
    }

    private static double number(Entered entered) throws Unread {
        if (entered.value().isEmpty()) {
            throw new Unread(Message.of("outcome.no-number", "typed", entered.typed()));
        }
        return entered.value().getAsDouble();
    }

    private static Reading typed(double rf, Setting setting) throws Unread {
        try {
            return Reading.asTyped(rf, setting);
        } catch (Refusal refusal) {
            throw new Unread(refusal.reason());
        }
    }

    /** The plate in mm; empty where no line was entered and none is needed, since every spot has its Rf. */
    private static Optional<PlateMeasurement> lines(StudyPlate plate, List<Entry> entries) throws Unread {
        List<Entered> lines = List.of(plate.heightMm(), plate.startMm(), plate.frontMm());
        boolean none = lines.stream()
                .allMatch(line -> line.typed().isBlank() && line.value().isEmpty());
        if (none && entries.stream().allMatch(entry -> entry.typed().isPresent())) {
            return Optional.empty();
        }
        if (lines.stream().anyMatch(line -> line.value().isEmpty())) {
            throw new Unread(Message.of("outcome.no-lines"));
        }
        double start = number(plate.startMm());
        double front = number(plate.frontMm());
        List<SpotMeasurement> spots = entries.stream()
                .map(entry -> entry.look().of(entry.name(), centreMm(entry, start, front)))
                .toList();
        return Optional.of(new PlateMeasurement(
                number(plate.heightMm()), start, front, plate.widthMm().value(), OptionalDouble.empty(), spots));
    }

    /** A spot that was given by its Rf stands where that Rf would be. */
    private static double centreMm(Entry entry, double start, double front) {
        return entry.typed()
                .map(typed -> Math.max(0, Math.min(Math.max(start, front), start + typed.rf() * (front - start))))
                .orElse(entry.place());
    }

    /** One compound from all its places: by lengths, or where some were given by Rf the mean of all. */
    private static Reading reading(List<Entry> places, Optional<PlateMeasurement> lines, Map<String, Reading> worked) {
        List<Reading> typed =
                places.stream().flatMap(each -> each.typed().stream()).toList();
        if (typed.isEmpty()) {
            return Optional.ofNullable(worked.get(places.get(0).name())).orElseThrow();
        }
        boolean same =
                typed.size() == places.size() && typed.stream().distinct().count() == 1;
        if (same && (places.size() == 1 || typed.get(0).limit() != Limit.NONE)) {
            return typed.get(0);
        }
        double sum = 0;
        for (Entry each : places) {
            sum += each.typed().map(Reading::rf).orElseGet(() -> measured(each.place(), lines.orElseThrow()));
        }
        return Reading.of(sum / places.size());
    }

    private static double measured(double centreMm, PlateMeasurement plate) {
        double rf = (centreMm - plate.startMm()) / (plate.frontMm() - plate.startMm());
        return Math.max(0, Math.min(1, rf));
    }

    /** What was found about lengths, with compounds called by their names and the others by their place in the list. */
    private static Message named(Message message, Study study, List<Entry> entries) {
        Map<String, Object> names = new LinkedHashMap<>();
        study.spots().forEach(spot -> names.put(spot.id(), spot.name().isBlank() ? spot.id() : spot.name()));
        for (int i = 0; i < entries.size(); i++) {
            if (!entries.get(i).named()) {
                names.put(entries.get(i).name(), Message.of("spot.unnamed", "number", i + 1));
            }
        }
        Map<String, Object> args = new LinkedHashMap<>(message.args());
        args.replaceAll((key, value) -> value instanceof String name ? names.getOrDefault(name, value) : value);
        return new Message(message.key(), args);
    }
}
