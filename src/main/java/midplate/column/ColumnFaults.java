package midplate.column;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/** What keeps a question about a column from being answered, each with its place in the request. */
public final class ColumnFaults {
    /** More is no matter of a flash column [mg]. */
    public static final double MOST_MG = 100_000;

    private static final double MOST_LOAD_ML = 1000;
    private static final double MOST_FLOW_ML_MIN = 1000;
    private static final double MOST_FRACTION_ML = 5000;

    private ColumnFaults() {}

    /** All of them; empty where nothing is wrong. Beds and programs refuse by themselves. */
    public static List<Refusal> in(ColumnQuestion question) {
        List<Refusal> faults = new ArrayList<>();
        List<String> spots = question.sample().spots();
        if (!spots.contains(question.target())) {
            faults.add(unknownTarget("column.target", question.target(), spots));
        }
        mass("column.massMg", question.massMg(), faults);
        limit("column.loadMl", question.loadMl(), MOST_LOAD_ML, faults);
        limit("column.flowMlMin", question.flowMlMin(), MOST_FLOW_ML_MIN, faults);
        limit("column.fractionMl", question.fractionMl(), MOST_FRACTION_ML, faults);
        for (int i = 0; i < question.earlier().size(); i++) {
            earlier("column.earlier[" + i + "].", question.earlier().get(i), spots, faults);
        }
        return List.copyOf(faults);
    }

    static Refusal unknownTarget(String field, String target, List<String> spots) {
        return new Refusal(
                field,
                Message.of("column.unknown-target", "target", target),
                target,
                Allowed.words(spots),
                Message.of("column.todo-target"));
    }

    static void mass(String field, double massMg, List<Refusal> faults) {
        if (!(massMg > 0 && massMg <= MOST_MG)) {
            faults.add(new Refusal(
                    field,
                    Message.of("column.mass-out-of-range"),
                    Allowed.number(massMg),
                    Allowed.leftOpen("0", Allowed.number(MOST_MG)),
                    Message.of("column.todo-mass")));
        }
    }

    private static void limit(String field, OptionalDouble value, double most, List<Refusal> faults) {
        value.ifPresent(given -> limit(field, given, most, faults));
    }

    static void limit(String field, double given, double most, List<Refusal> faults) {
        if (!(given > 0 && given <= most)) {
            faults.add(new Refusal(
                    field,
                    Message.of("column.number-out-of-range"),
                    Allowed.number(given),
                    Allowed.leftOpen("0", Allowed.number(most)),
                    Message.of("todo.give-number-inside")));
        }
    }

    private static void earlier(String place, ObservedBand band, List<String> spots, List<Refusal> faults) {
        if (!spots.contains(band.spot())) {
            faults.add(unknownTarget(place + "spot", band.spot(), spots));
        }
        if (!(band.startMl() >= 0 && Double.isFinite(band.startMl()))) {
            faults.add(bandFault(place + "startMl", band.startMl(), Allowed.rightOpen("0", "∞")));
        }
        if (!(band.endMl() > band.startMl() && Double.isFinite(band.endMl()))) {
            faults.add(bandFault(place + "endMl", band.endMl(), above(Allowed.number(band.startMl()))));
        }
        if (!(band.errorMl() > 0 && Double.isFinite(band.errorMl()))) {
            faults.add(bandFault(place + "errorMl", band.errorMl(), above("0")));
        }
    }

    private static Message above(String low) {
        return Allowed.open(low, "∞");
    }

    private static Refusal bandFault(String field, double came, Message allowed) {
        return new Refusal(
                field,
                Message.of("column.band-out-of-order"),
                Allowed.number(came),
                allowed,
                Message.of("column.todo-band"));
    }
}
