package midplate.lesson;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import midplate.advice.Forecast;
import midplate.advice.SpotForecast;
import midplate.plate.Limit;
import midplate.plate.Reading;
import midplate.words.Allowed;
import midplate.words.Message;

/** Says what a slip does, from the numbers of a careful pair and those of this time. */
final class SlipSentences {
    /** Shares that differ by less are the same ratio [% v/v]. */
    private static final double SAME = 1e-6;
    /** Rf that differ by less are not told apart [1]. */
    private static final double SHOWN = 0.005;

    private final SlipQuestion question;
    private final SlipAnswer.Noted careful;
    private final List<SlipAnswer.Noted> noted;

    SlipSentences(SlipQuestion question, SlipAnswer.Noted careful, List<SlipAnswer.Noted> noted) {
        this.question = question;
        this.careful = careful;
        this.noted = List.copyOf(noted);
    }

    /** Where the advice errs; to both sides, or to one and not at all, is either. */
    SlipAnswer.Errs errs() {
        Set<SlipAnswer.Errs> each = noted.stream().map(this::errs).collect(Collectors.toSet());
        return each.size() == 1 ? each.iterator().next() : SlipAnswer.Errs.EITHER;
    }

    private SlipAnswer.Errs errs(SlipAnswer.Noted misled) {
        if (misled.advised().isEmpty()) {
            return SlipAnswer.Errs.REFUSED;
        }
        double off = misled.advised().get().percentStrong() - right().percentStrong();
        if (Math.abs(off) < SAME) {
            return SlipAnswer.Errs.SAME;
        }
        return off < 0 ? SlipAnswer.Errs.WEAK : SlipAnswer.Errs.STRONG;
    }

    private SlipAnswer.Advised right() {
        return careful.advised().orElseThrow();
    }

    /** The sentences, in the order to be read: what is noted, what is advised, where the spots would land. */
    List<Message> does(SlipPlates plates) {
        Set<Message> said = new LinkedHashSet<>();
        if (question.slip() == Slip.NEIGHBOURS_TOO_NEAR) {
            said.add(gap(plates.right()));
        }
        for (SlipAnswer.Noted misled : noted) {
            largestShift(misled).ifPresent(said::add);
        }
        leftOut().ifPresent(said::add);
        for (SlipAnswer.Noted misled : noted) {
            advice(misled).forEach(said::add);
        }
        return List.copyOf(said);
    }

    /** How near two spots come to make one patch. */
    private static Message gap(SeenPlate plate) {
        if (plate.spots().size() < 2) {
            return Message.of("lesson.slip-does-alone");
        }
        int[] pair = SizeSlips.nearest(plate.spots());
        SeenSpot one = plate.spots().get(pair[0]);
        SeenSpot other = plate.spots().get(pair[1]);
        OptionalDouble lanes = SizeSlips.mergedWithin(one, other);
        return Message.of(
                lanes.isPresent() ? "lesson.slip-does-gap" : "lesson.slip-does-clear",
                "one",
                one.name(),
                "other",
                other.name(),
                "gapMm",
                Math.abs(one.mm() - other.mm()),
                "patchMm",
                lanes.orElse(SizeSlips.clearFrom(one, other)));
    }

    /** The spot of which the Rf is farthest off. */
    private Optional<Message> largestShift(SlipAnswer.Noted misled) {
        double largest = SHOWN;
        Optional<Message> said = Optional.empty();
        for (int spot = 0; spot < careful.spots().size(); spot++) {
            Optional<Reading> right = careful.spots().get(spot).reading();
            Optional<Reading> wrong = misled.spots().get(spot).reading();
            if (right.isPresent() && wrong.isPresent()) {
                double shift = Math.abs(right.get().rf() - wrong.get().rf());
                if ((shift >= largest
                                && shown(right.get().rf()) != shown(wrong.get().rf()))
                        || (said.isEmpty() && wrong.get().limit() != right.get().limit())) {
                    largest = Math.max(largest, shift);
                    said = Optional.of(shift(careful.spots().get(spot).name(), right.get(), wrong.get()));
                }
            }
        }
        return said;
    }

    /** An Rf in hundredths, as it is shown. */
    private static long shown(double rf) {
        return Math.round(rf * 100);
    }

    private Message shift(String name, Reading right, Reading wrong) {
        String key = switch (wrong.limit()) {
            case NONE -> question.slip().kind() == Slip.Kind.MODEL ? "lesson.slip-does-lies" : "lesson.slip-does-noted";
            case AT_START -> "lesson.slip-does-at-start";
            case AT_FRONT -> "lesson.slip-does-at-front";
        };
        return wrong.limit() == Limit.NONE
                ? Message.of(key, "spot", name, "right", right.rf(), "noted", wrong.rf())
                : Message.of(key, "spot", name, "right", right.rf(), "bound", wrong.rf());
    }

    private Optional<Message> leftOut() {
        List<Message> gone = noted.get(0).spots().stream()
                .filter(spot ->
                        noted.get(0).advised().isPresent() && spot.reading().isEmpty())
                .map(spot -> Allowed.words(spot.name()))
                .toList();
        return gone.isEmpty()
                ? Optional.empty()
                : Optional.of(Message.of("lesson.slip-does-left-out", "spots", Allowed.list(gone)));
    }

    private List<Message> advice(SlipAnswer.Noted misled) {
        if (misled.advised().isEmpty()) {
            return List.of(Message.of("lesson.slip-does-refused"));
        }
        SlipAnswer.Advised wrong = misled.advised().get();
        SlipAnswer.Errs side = errs(misled);
        if (side == SlipAnswer.Errs.SAME) {
            return List.of(Message.of("lesson.slip-does-same", "ratio", ratio(wrong)));
        }
        Message advised = Message.of(
                side == SlipAnswer.Errs.WEAK ? "lesson.slip-does-weaker" : "lesson.slip-does-stronger",
                "wrong",
                ratio(wrong),
                "right",
                ratio(right()),
                "points",
                Math.abs(wrong.percentStrong() - right().percentStrong()),
                "strong",
                question.sample().strong().said());
        return List.of(advised, lands(wrong));
    }

    private static Message ratio(SlipAnswer.Advised advised) {
        String[] parts = advised.ratio().split(":", 2);
        return Message.of("column.ratio", "weak", parts[0], "strong", parts[1]);
    }

    /** Where the spots would lie with a ratio wrongly advised. */
    private static Message lands(SlipAnswer.Advised wrong) {
        Forecast plate = wrong.lands();
        List<Message> outside = plate.spots().stream()
                .filter(spot -> SlipAnswer.Advised.outside(spot.rf()) != 0)
                .map(SlipSentences::placed)
                .toList();
        return outside.isEmpty()
                ? Message.of("lesson.slip-does-lands-inside", "ratio", ratio(wrong))
                : Message.of("lesson.slip-does-lands-outside", "ratio", ratio(wrong), "spots", Allowed.list(outside));
    }

    private static Message placed(SpotForecast spot) {
        return Message.of("lesson.slip-does-place", "spot", spot.spot(), "rf", spot.rf());
    }
}
