package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.advice.Advice;
import midplate.advice.Window;
import midplate.words.Allowed;
import midplate.words.Digits;
import midplate.words.Message;

/**
 * Says what to see on a series of plates, and of how many possible samples it holds. What fewer than half of them bear out is not said as a fact.
 */
final class SeriesSentences {
    /** From such a share of the samples on, two that change places are named [1]. */
    private static final double WORTH_NAMING = 0.2;
    /** From such a share on it is what is expected [1]. */
    private static final double MOST_SAMPLES = 0.5;
    /** A climb below this is none that is seen [1]. */
    private static final double SEEN = 0.02;
    /** An Rf is told to two decimals. */
    private static final double TOLD = 100;

    /** How the adviser's notes begin that tell of a spot's shape, and of handling what helps. */
    private static final List<String> SHAPES = List.of(
            "advice.streaks-",
            "advice.handle-acetic-acid",
            "advice.handle-triethylamine",
            "advice.handle-ammonia",
            "note.of-spot");

    private final LessonSample sample;
    private final Advice advice;
    private final List<SeriesPlate> plates;
    private final PlateClouds clouds;
    private final List<Double> percents;

    SeriesSentences(LessonSample sample, Advice advice, List<SeriesPlate> plates, PlateClouds clouds) {
        this.sample = sample;
        this.advice = advice;
        this.plates = plates;
        this.clouds = clouds;
        this.percents = plates.stream().map(SeriesPlate::percentStrong).toList();
    }

    /** All of them, in the order to be read. */
    List<Message> all() {
        List<Message> said = new ArrayList<>();
        said.add(ends());
        if (sample.compounds().size() > 1) {
            said.addAll(order());
            said.add(gap());
        }
        said.add(window());
        said.add(best());
        said.addAll(streaks());
        return said;
    }

    /** Which spots are hardly as round on a real plate as they are drawn, as the adviser says it, and how what helps is handled. */
    private List<Message> streaks() {
        List<Message> notes = advice.notes().stream()
                .filter(note -> SHAPES.stream().anyMatch(note.key()::startsWith))
                .toList();
        if (notes.isEmpty()) {
            return List.of();
        }
        List<Message> said = new ArrayList<>(notes);
        said.add(0, Message.of("lesson.series-drawn-round"));
        return said;
    }

    /** What changed from the plate before: how far spots climbed, and who overtook whom. */
    List<Message> changed(int plate) {
        List<Message> said = new ArrayList<>();
        if (plate > 0) {
            said.add(climb(plates.get(plate - 1), plates.get(plate)));
            said.addAll(overtakes(plate));
        }
        return said;
    }

    /** The eluent of a plate in words. */
    Message eluent(SeriesPlate plate) {
        if (plate.percentStrong() <= 0) {
            return Message.of("lesson.series-alone", "solvent", sample.weak().said());
        }
        if (plate.percentStrong() >= 100) {
            return Message.of("lesson.series-alone", "solvent", sample.strong().said());
        }
        return plate.ratio()
                .map(ratio -> Message.of("lesson.series-ratio", "weak", ratio.weak(), "strong", ratio.strong()))
                .orElseGet(() -> Message.of("lesson.series-share", "percent", Digits.percent(plate.percentStrong())));
    }

    private Message ends() {
        SeriesPlate first = plates.get(0);
        SeriesPlate last = plates.get(plates.size() - 1);
        return Message.of(
                sample.compounds().size() == 1 ? "lesson.series-ends-one" : "lesson.series-ends",
                "weakest",
                eluent(first),
                "weak",
                reach(first),
                "strongest",
                eluent(last),
                "strong",
                reach(last));
    }

    /** From the lowest Rf to the highest; one alone where both are told alike. */
    private static Message reach(SeriesPlate plate) {
        double low = lowest(plate);
        double high = highest(plate);
        return Math.round(TOLD * low) == Math.round(TOLD * high)
                ? Message.of("lesson.series-rf-at", "rf", low)
                : Message.of("lesson.series-rf-reach", "low", low, "high", high);
    }

    private static double lowest(SeriesPlate plate) {
        return plate.upwards().get(0).rf();
    }

    private static double highest(SeriesPlate plate) {
        return plate.upwards().get(plate.spots().size() - 1).rf();
    }

    private Message climb(SeriesPlate before, SeriesPlate after) {
        List<Integer> spots = new ArrayList<>();
        for (int i = 0; i < before.spots().size(); i++) {
            spots.add(i);
        }
        int most = spots.stream()
                .max(Comparator.comparingDouble(spot -> gain(before, after, spot)))
                .orElseThrow();
        double gain = gain(before, after, most);
        String key = gain < SEEN
                ? "lesson.series-hardly-climb"
                : spots.size() == 1 ? "lesson.series-climbs-one" : "lesson.series-climbs";
        return Message.of(
                key,
                "from",
                eluent(before),
                "to",
                eluent(after),
                "spot",
                before.spots().get(most).spot(),
                "gain",
                gain);
    }

    private static double gain(SeriesPlate before, SeriesPlate after, int spot) {
        return after.spots().get(spot).rf() - before.spots().get(spot).rf();
    }

    /** Who changes places, between which neighbours, in how many samples; where nobody does, that the order stays. */
    private List<Message> order() {
        List<Message> turned = new ArrayList<>();
        for (int i = 1; i < plates.size(); i++) {
            turned.addAll(overtakes(i));
        }
        return turned.isEmpty() ? List.of(stays()) : turned;
    }

    private List<Message> overtakes(int plate) {
        List<Message> said = new ArrayList<>();
        int compounds = sample.compounds().size();
        for (int one = 0; one < compounds; one++) {
            for (int other = 0; other < compounds; other++) {
                if (one != other) {
                    overtakes(one, other, plate).ifPresent(said::add);
                }
            }
        }
        return said;
    }

    private Optional<Message> overtakes(int one, int other, int plate) {
        double share = clouds.overtakes(one, other, percents.get(plate - 1), percents.get(plate));
        if (share < WORTH_NAMING) {
            return Optional.empty();
        }
        return Optional.of(Message.of(
                share >= MOST_SAMPLES ? "lesson.series-overtakes" : "lesson.series-may-overtake",
                "one",
                name(one),
                "other",
                name(other),
                "from",
                eluent(plates.get(plate - 1)),
                "to",
                eluent(plates.get(plate)),
                "count",
                ofHundred(share)));
    }

    /** The order on the plate where the closest two lie widest apart, and in how many samples it holds on all plates. */
    private Message stays() {
        SeriesPlate plate = plates.get(widest());
        List<Integer> order =
                plate.upwards().stream().map(spot -> indexOf(spot.spot())).toList();
        double share = clouds.inOrder(order, List.of(plate.percentStrong()));
        Message names = Allowed.list(
                order.stream().map(spot -> Allowed.words(name(spot))).toList());
        return Message.of(
                share >= MOST_SAMPLES ? "lesson.series-order-stays" : "lesson.series-order-open",
                "order",
                names,
                "at",
                eluent(plate),
                "count",
                ofHundred(share));
    }

    private int widest() {
        int widest = 0;
        for (int i = 1; i < plates.size(); i++) {
            if (smallest(plates.get(i)) > smallest(plates.get(widest))) {
                widest = i;
            }
        }
        return widest;
    }

    private static double smallest(SeriesPlate plate) {
        return plate.closest().map(SeriesPlate.Neighbours::gap).orElse(0.0);
    }

    private Message gap() {
        int plate = widest();
        SeriesPlate.Neighbours closest = plates.get(plate).closest().orElseThrow();
        double share = clouds.widest(plate, percents);
        return Message.of(
                share >= MOST_SAMPLES ? "lesson.series-gap" : "lesson.series-gap-open",
                "at",
                eluent(plates.get(plate)),
                "one",
                closest.lower().spot(),
                "other",
                closest.upper().spot(),
                "gap",
                closest.gap(),
                "count",
                ofHundred(share));
    }

    private Message window() {
        int all = sample.compounds().size();
        int most = plates.stream().mapToInt(SeriesPlate::inWindow).max().orElse(0);
        List<Message> eluents = plates.stream()
                .filter(plate -> plate.inWindow() == most)
                .map(this::eluent)
                .toList();
        String key = most == 0
                ? "lesson.series-window-none"
                : most == all ? "lesson.series-window-all" : "lesson.series-window-some";
        return Message.of(
                key,
                "at",
                Allowed.list(eluents),
                "most",
                most,
                "all",
                all,
                "low",
                Window.USUAL.low(),
                "high",
                Window.USUAL.high());
    }

    private Message best() {
        return Message.of(
                "lesson.series-best",
                "ratio",
                eluent(new SeriesPlate(
                        advice.ratio().percentStrong(),
                        Optional.of(advice.ratio()),
                        OptionalDouble.empty(),
                        advice.forecast().spots())),
                "count",
                ofHundred(advice.forecast().chance()));
    }

    private String name(int compound) {
        return sample.compounds().get(compound).name();
    }

    private int indexOf(String name) {
        return sample.compounds().stream().map(LessonCompound::name).toList().indexOf(name);
    }

    /** Never none and never all: what is counted is a model's. */
    static Message ofHundred(double share) {
        long count = Math.round(100 * share);
        if (count < 1) {
            return Message.of("answer.fewer-than-one");
        }
        return count > 99 ? Message.of("answer.more-than-99") : Message.of("answer.about", "count", (int) count);
    }
}
