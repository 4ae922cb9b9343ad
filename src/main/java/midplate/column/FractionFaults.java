package midplate.column;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** What keeps the tubes of a run from being pooled, each with its place in the request. */
public final class FractionFaults {
    /** More tubes are no run of a flash column. */
    public static final int MOST_TUBES = 400;

    private static final double MOST_FRACTION_ML = 5000;
    private static final double MOST_COLLECTED_FROM_ML = 100_000;
    private static final double MOST_GRAMS = 100_000;

    private FractionFaults() {}

    /** All of them; empty where nothing is wrong. */
    public static List<Refusal> in(FractionQuestion question) {
        List<Refusal> faults = new ArrayList<>();
        if (!question.spots().contains(question.target())) {
            faults.add(ColumnFaults.unknownTarget("target", question.target(), question.spots()));
        }
        ColumnFaults.mass("massMg", question.massMg(), faults);
        ColumnFaults.limit("fractionMl", question.fractionMl(), MOST_FRACTION_ML, faults);
        if (!(question.collectedFromMl() >= 0 && question.collectedFromMl() <= MOST_COLLECTED_FROM_ML)) {
            faults.add(new Refusal(
                    "collectedFromMl",
                    Message.of("column.number-out-of-range"),
                    Allowed.number(question.collectedFromMl()),
                    Allowed.closed(0, MOST_COLLECTED_FROM_ML),
                    Message.of("todo.give-number-inside")));
        }
        if (question.tubes().isEmpty() || question.tubes().size() > MOST_TUBES) {
            faults.add(new Refusal(
                    "tubes",
                    Message.of("column.tubes-out-of-range"),
                    Integer.toString(question.tubes().size()),
                    Message.of("allowed.entries", "interval", Allowed.closed(1, MOST_TUBES)),
                    Message.of("column.todo-tubes")));
        }
        for (int i = 0; i < question.tubes().size(); i++) {
            marks("tubes[" + i + "].marks[", question.tubes().get(i), question.spots(), faults);
        }
        for (int i = 0; i < question.flasks().size(); i++) {
            flask(
                    "flasks[" + i + "].",
                    question.flasks().get(i),
                    question.tubes().size(),
                    faults);
        }
        return List.copyOf(faults);
    }

    private static void marks(String place, Tube tube, List<String> spots, List<Refusal> faults) {
        List<TubeMark> marks = tube.marks().orElse(List.of());
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < marks.size(); i++) {
            TubeMark mark = marks.get(i);
            if (!spots.contains(mark.spot())) {
                faults.add(ColumnFaults.unknownTarget(place + i + "].spot", mark.spot(), spots));
            } else if (!seen.add(mark.spot())) {
                faults.add(new Refusal(
                        place + i + "].spot",
                        Message.of("column.mark-twice", "spot", mark.spot()),
                        mark.spot(),
                        Message.of("allowed.each-name-once"),
                        Message.of("todo.keep-one")));
            }
            if (!(mark.strength() >= 0 && mark.strength() <= TubeMark.HEAVIEST)) {
                faults.add(new Refusal(
                        place + i + "].strength",
                        Message.of("column.strength-out-of-range"),
                        Integer.toString(mark.strength()),
                        Allowed.closed(0, TubeMark.HEAVIEST),
                        Message.of("column.todo-strength")));
            }
        }
    }

    private static void flask(String place, Flask flask, int tubes, List<Refusal> faults) {
        if (!(flask.fromTube() >= 1 && flask.fromTube() <= tubes)) {
            faults.add(tubeFault(place + "fromTube", flask.fromTube(), 1, tubes));
        } else if (!(flask.toTube() >= flask.fromTube() && flask.toTube() <= tubes)) {
            faults.add(tubeFault(place + "toTube", flask.toTube(), flask.fromTube(), tubes));
        }
        if (!(flask.tareGrams() > 0 && flask.tareGrams() <= MOST_GRAMS)) {
            faults.add(new Refusal(
                    place + "tareGrams",
                    Message.of("column.number-out-of-range"),
                    Allowed.number(flask.tareGrams()),
                    Allowed.leftOpen("0", Allowed.number(MOST_GRAMS)),
                    Message.of("column.todo-weigh")));
        } else if (!(flask.grossGrams() >= flask.tareGrams() && flask.grossGrams() <= MOST_GRAMS)) {
            faults.add(new Refusal(
                    place + "grossGrams",
                    Message.of("column.gross-below-tare"),
                    Allowed.number(flask.grossGrams()),
                    Allowed.closed(flask.tareGrams(), MOST_GRAMS),
                    Message.of("column.todo-weigh")));
        }
    }

    private static Refusal tubeFault(String field, int came, int least, int most) {
        return new Refusal(
                field,
                Message.of("column.tube-out-of-range"),
                Integer.toString(came),
                Allowed.closed(least, most),
                Message.of("column.todo-tube"));
    }
}
