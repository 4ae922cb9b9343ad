package midplate.wire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import midplate.plate.Limit;
import midplate.plate.PlateMeasurement;
import midplate.plate.PlateReading;
import midplate.plate.Reading;
import midplate.plate.SpotForm;
import midplate.plate.SpotMeasurement;
import midplate.plate.UnlabelledLane;
import midplate.plate.UnlabelledSpot;
import midplate.words.Message;

/**
 * The spots of a plate as they were given, some perhaps without a name, some by their Rf in place of a height.
 *
 * <p>For the lengths to be checked each needs a name and a height: one without a name is called after its place in the list, one
 * given by its Rf stands where that Rf would be.
 */
final class PlateSpots {
    /** More spots without a label than this in one lane are not told apart. */
    static final int MOST_UNLABELLED = 12;

    /** What a message about lengths calls the spots that it names. */
    private static final List<String> SPOTS = List.of("spot", "neighbour");

    private final List<Entry> entries;

    /**
     * One entry.
     *
     * @param label the name of the spot, if it has one
     * @param lane number of its lane, from 1
     * @param centreMm height of its middle [mm], if that was given
     * @param typed its Rf, if that was given
     * @param sizeMm its length along the run [mm], if that was given
     * @param fromLeftMm distance of its middle from the left edge [mm], if that was given
     * @param errorMm standard error of the height of its middle [mm], if that was worked out elsewhere
     * @param shape what it looks like, if that was said
     */
    record Entry(
            int index,
            Optional<String> label,
            int lane,
            OptionalDouble centreMm,
            Optional<Reading> typed,
            OptionalDouble sizeMm,
            OptionalDouble fromLeftMm,
            OptionalDouble errorMm,
            Optional<SpotForm> shape) {}

    PlateSpots(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    /** What to call an entry without a name, counting from 1. */
    static Message called(int index) {
        return Message.of("spot.unnamed", "number", index + 1);
    }

    /** The name an entry goes by among lengths, unlike that of any other spot; nobody reads that of one without a name. */
    private String name(Entry entry) {
        Set<String> labels = new LinkedHashSet<>();
        entries.forEach(each -> each.label().ifPresent(labels::add));
        String name = Integer.toString(entry.index());
        while (labels.contains(name)) {
            name += "'";
        }
        return entry.label().orElse(name);
    }

    /** What was found about lengths, with spots that have no name called by their place in the list. */
    Message said(Message message) {
        Map<String, Message> unnamed = new LinkedHashMap<>();
        entries.stream()
                .filter(entry -> entry.label().isEmpty())
                .forEach(entry -> unnamed.put(name(entry), called(entry.index())));
        Map<String, Object> args = new LinkedHashMap<>(message.args());
        for (String spot : SPOTS) {
            args.computeIfPresent(spot, (key, name) -> unnamed.containsKey(name) ? unnamed.get(name) : name);
        }
        return new Message(message.key(), args);
    }

    /** The spots with a height for each; lines in mm, sound or not. */
    List<SpotMeasurement> measurements(double startMm, double frontMm) {
        List<SpotMeasurement> spots = new ArrayList<>();
        for (Entry entry : entries) {
            double centre = entry.centreMm().orElseGet(() -> {
                double rf = entry.typed().map(Reading::rf).orElse(0.5);
                return Math.max(0, Math.min(Math.max(startMm, frontMm), startMm + rf * (frontMm - startMm)));
            });
            spots.add(SpotMeasurement.of(name(entry), centre)
                    .withSize(entry.sizeMm())
                    .withFromLeft(entry.fromLeftMm())
                    .withError(entry.errorMm())
                    .withShape(entry.shape()));
        }
        return spots;
    }

    /** The plate with names and typed Rf where they belong. */
    ReadPlate on(PlateMeasurement plate, PlateReading worked, List<Message> notes) {
        Map<String, List<Entry>> labelled = new LinkedHashMap<>();
        Map<Integer, List<UnlabelledSpot>> unlabelled = new TreeMap<>();
        Map<Integer, Set<String>> known = new TreeMap<>();
        for (Entry entry : entries) {
            if (entry.label().isPresent()) {
                labelled.computeIfAbsent(entry.label().get(), key -> new ArrayList<>())
                        .add(entry);
                known.computeIfAbsent(entry.lane(), key -> new LinkedHashSet<>())
                        .add(entry.label().get());
            } else {
                Reading reading = reading(name(entry), List.of(entry), plate, worked);
                unlabelled
                        .computeIfAbsent(entry.lane(), key -> new ArrayList<>())
                        .add(new UnlabelledSpot(entry.index(), reading));
            }
        }
        Map<String, Reading> readings = new LinkedHashMap<>();
        labelled.forEach((label, lanes) -> readings.put(label, reading(label, lanes, plate, worked)));
        List<UnlabelledLane> lanes = new ArrayList<>();
        unlabelled.forEach(
                (lane, spots) -> lanes.add(new UnlabelledLane(lane, known.getOrDefault(lane, Set.of()), spots)));
        return new ReadPlate(
                readings, lanes, worked.warnings().stream().map(this::said).toList(), notes);
    }

    private static Reading worked(PlateReading worked, String name) {
        return Optional.ofNullable(worked.readings().get(name)).orElseThrow();
    }

    /**
     * A spot: from its lengths, or where some of its lanes were given by Rf the mean of all. An Rf that was typed has no error unless one
     * was worked out elsewhere.
     */
    private static Reading reading(String label, List<Entry> lanes, PlateMeasurement plate, PlateReading worked) {
        List<Reading> typed = lanes.stream()
                .flatMap(entry -> entry.typed().stream())
                .distinct()
                .toList();
        if (typed.isEmpty()) {
            return worked(worked, label);
        }
        Reading read = mean(typed, lanes, plate);
        boolean errorKnown = lanes.stream()
                .anyMatch(each -> each.typed().isPresent() && each.errorMm().isPresent());
        return errorKnown
                ? new Reading(read.rf(), read.limit(), worked(worked, label).standardError())
                : read;
    }

    /** What was typed, or the mean of it and of what was measured beside it. */
    private static Reading mean(List<Reading> typed, List<Entry> lanes, PlateMeasurement plate) {
        boolean oneBound = typed.size() == 1 && typed.get(0).limit() != Limit.NONE;
        if ((oneBound || lanes.size() == 1)
                && lanes.stream().allMatch(each -> each.typed().isPresent())) {
            return typed.get(0);
        }
        double run = plate.frontMm() - plate.startMm();
        double sum = 0;
        for (Entry entry : lanes) {
            double measured = (entry.centreMm().orElse(0) - plate.startMm()) / run;
            sum += entry.typed().map(Reading::rf).orElse(Math.max(0, Math.min(1, measured)));
        }
        return Reading.of(sum / lanes.size());
    }

    /** How many spots without a label the fullest lane has. */
    int mostUnlabelled() {
        Map<Integer, Integer> counts = new TreeMap<>();
        entries.stream()
                .filter(entry -> entry.label().isEmpty())
                .forEach(entry -> counts.merge(entry.lane(), 1, Integer::sum));
        return counts.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }
}
