package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import midplate.advice.SpotForecast;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * Puts into sentences what a class read.
 *
 * <p>What is usual (from memory, high confidence for one plate, medium else): on one plate 0.01 to 0.02, between plates 0.02 to 0.05, between
 * laboratories 0.05 to 0.10.
 *
 * @see "Geiss1987"
 */
final class ClassWords {
    private static final double ONE_PLATE = 0.01;
    private static final double ONE_PLATE_MOST = 0.02;
    private static final double PLATES = 0.02;
    private static final double PLATES_MOST = 0.05;
    /** Intervals from fewer plates say little (own choice). */
    private static final int FEW_PLATES = 10;
    /** From this chance on it is said that plates were not shown to differ [1] (own choice). */
    private static final double NOT_SHOWN = 0.05;

    private static final int OF = 1000;
    /** By how much a scatter may miss what the model expects beside its interval, which is one of normal errors and too narrow for heavier tails [1] (own choice). */
    private static final double ALLOWANCE = 1.25;

    private final List<ClassSpot> spots;
    private final List<ClassReading> readings;
    private final Optional<ClassYardstick.Expected> expected;

    ClassWords(List<ClassSpot> spots, List<ClassReading> readings, Optional<ClassYardstick.Expected> expected) {
        this.spots = spots;
        this.readings = readings;
        this.expected = expected;
    }

    Message spot(
            ClassSpot spot,
            int count,
            int plates,
            double mean,
            Optional<Double> error,
            double median,
            Optional<Integer> inside) {
        Message read = error.isPresent()
                ? Message.of(
                        "lesson.class-spot",
                        "spot",
                        spot.name(),
                        "count",
                        count,
                        "plates",
                        plates,
                        "mean",
                        mean,
                        "error",
                        error.get(),
                        "median",
                        median)
                : Message.of("lesson.class-spot-one-plate", "spot", spot.name(), "count", count, "mean", mean);
        if (inside.isEmpty()) {
            return Message.of("lesson.class-spot-unforetold", "read", read);
        }
        SpotForecast band = spot.forecast().orElseThrow();
        return Message.of(
                "lesson.class-spot-band",
                "read",
                read,
                "rf",
                band.rf(),
                "low",
                band.low(),
                "high",
                band.high(),
                "inside",
                inside.get(),
                "count",
                count);
    }

    ClassFindings.Scatter scatter(ClassScatter found) {
        boolean repeats = found.way() == ClassScatter.Way.REPEATS;
        Message within = spread(repeats ? "lesson.class-within-repeats" : "lesson.class-within-shared", found.within());
        Message between =
                spread(repeats ? "lesson.class-between-repeats" : "lesson.class-between-shared", found.between());
        List<Message> said = new ArrayList<>();
        if (repeats) {
            said.add(withUsual(within, within(found.within())));
            said.add(withUsual(between, between(found.between())));
        } else if (expected.isPresent()) {
            said.add(
                    withUsual(within, besideModel(found.within(), expected.get().own())));
            said.add(withUsual(
                    between, besideModel(found.between(), expected.get().between())));
        } else {
            said.add(within);
            said.add(withUsual(between, between(found.between())));
        }
        if (found.variance() < 0) {
            said.add(Message.of(
                    "lesson.class-between-none", "high", found.between().high()));
        }
        said.add(chance(found.chance()));
        return new ClassFindings.Scatter(
                found.way().name().toLowerCase(Locale.ROOT),
                found.plates(),
                found.within(),
                found.between(),
                found.chance(),
                said);
    }

    private static Message spread(String key, Spread spread) {
        return Message.of(key, "value", spread.value(), "low", spread.low(), "high", spread.high());
    }

    private static Message withUsual(Message spread, Message usual) {
        return Message.of("lesson.class-beside-usual", "spread", spread, "usual", usual);
    }

    private static Message within(Spread spread) {
        if (spread.low() > ONE_PLATE_MOST) {
            return Message.of("lesson.class-within-more");
        }
        return Message.of(spread.high() < ONE_PLATE ? "lesson.class-within-less" : "lesson.class-within-usual");
    }

    private static Message besideModel(Spread spread, double expected) {
        String key = "lesson.class-model-usual";
        if (spread.low() > ALLOWANCE * expected) {
            key = "lesson.class-model-more";
        } else if (spread.high() * ALLOWANCE < expected) {
            key = "lesson.class-model-less";
        }
        return Message.of(key, "expected", expected);
    }

    private static Message between(Spread spread) {
        if (spread.low() > PLATES_MOST) {
            return Message.of("lesson.class-between-more");
        }
        return Message.of(spread.high() < PLATES ? "lesson.class-between-less" : "lesson.class-between-usual");
    }

    private static Message chance(double chance) {
        if (chance * OF <= 1) { // where exchanges are counted, no fewer can come out
            return Message.of("lesson.class-chance-rare");
        }
        int of = (int) Math.round(OF * chance);
        return Message.of(chance < NOT_SHOWN ? "lesson.class-chance" : "lesson.class-chance-not-shown", "of", of);
    }

    ClassFindings.Far far(ClassReading reading, PlateShifts shifts) {
        double place = shifts.expected(reading);
        return new ClassFindings.Far(
                reading,
                Message.of(
                        readings.stream()
                                                .filter(each -> each.plate().equals(reading.plate()))
                                                .count()
                                        > 1
                                ? "lesson.class-far"
                                : "lesson.class-far-alone",
                        "pair",
                        reading.pair(),
                        "plate",
                        reading.plate().name(),
                        "spot",
                        spots.get(reading.spot()).name(),
                        "rf",
                        reading.rf(),
                        "off",
                        Math.abs(reading.rf() - place),
                        "place",
                        place));
    }

    ClassFindings.FarPlate farPlate(ClassFindings.OfPlate plate) {
        return new ClassFindings.FarPlate(
                plate,
                Message.of(
                        plate.shift() > 0 ? "lesson.class-plate-high" : "lesson.class-plate-low",
                        "pair",
                        String.join(", ", plate.pairs()),
                        "plate",
                        plate.plate().name(),
                        "off",
                        Math.abs(plate.shift())));
    }

    ClassFindings.Slip slip(SlipSearch.Found found) {
        List<ClassFindings.Behind> behind = readings.stream()
                .filter(each -> each.pair().equals(found.pair()))
                .map(each -> new ClassFindings.Behind(each, found.rule().behind(each.rf())))
                .toList();
        Message values = Allowed.list(behind.stream()
                .map(each -> Message.of(
                        "lesson.class-value",
                        "spot",
                        spots.get(each.reading().spot()).name(),
                        "rf",
                        each.rf()))
                .toList());
        String key = switch (found.slip()) {
            case EDGE -> "lesson.class-slip-edge";
            case FRONT -> "lesson.class-slip-front";
            case LINE -> "lesson.class-slip-line";
        };
        return new ClassFindings.Slip(
                found.pair(),
                found.slip().name().toLowerCase(Locale.ROOT),
                found.chance(),
                behind,
                Message.of(
                        key,
                        "pair",
                        found.pair(),
                        "of",
                        (int) Math.min(99, Math.round(100 * found.chance())),
                        "values",
                        values));
    }

    /** What to know of all of it. */
    List<Message> sentences(Optional<ClassScatter> scatter) {
        List<Message> said = new ArrayList<>();
        if (scatter.isEmpty()) {
            said.add(Message.of("lesson.class-not-told"));
            return said;
        }
        int plates = scatter.get().plates();
        if (plates < FEW_PLATES) {
            said.add(Message.of("lesson.class-few-plates", "plates", plates));
        }
        if (scatter.get().way() == ClassScatter.Way.SHARED) {
            said.add(Message.of("lesson.class-shared-how"));
        }
        if (isEachPairOnItsPlate()) {
            said.add(Message.of("lesson.class-pairs-are-plates"));
        }
        return said;
    }

    /** Whether no pair has two plates and no plate two pairs, so that one stands for the other. */
    private boolean isEachPairOnItsPlate() {
        long both = readings.stream()
                .map(each -> List.of(each.pair(), each.plate()))
                .distinct()
                .count();
        return both == readings.stream().map(ClassReading::pair).distinct().count()
                && both == readings.stream().map(ClassReading::plate).distinct().count();
    }
}
