package midplate.wire;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.SolventCatalogue;
import midplate.catalogue.StrengthSeries;
import midplate.chemistry.Sorbent;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * A question about the strength of a mixture, and which mixture of another pair is equally strong.
 *
 * @param sorbent the layer
 * @param pair the two solvents
 * @param percentStrong share of the stronger one [% v/v]
 * @param series the tables to calculate with, one after the other
 * @param to the other pair, if one is asked for
 * @param activity α' [1]
 */
record StrengthQuestion(
        Sorbent sorbent,
        PairReader.Pair pair,
        double percentStrong,
        List<StrengthSeries> series,
        Optional<PairReader.Pair> to,
        double activity) {
    static final List<String> FIELDS =
            List.of("sorbent", "weak", "strong", "percentStrong", "series", "to", "activity");
    static final List<String> TO_FIELDS = List.of("weak", "strong");

    /**
     * α' taken where none is given [1]: the middle of the published 0.57 to 0.83 for silica; inside the published 0.55 to
     * 1.0 for alumina.
     *
     * @see "Snyder1968"
     */
    static final double USUAL_ACTIVITY = 0.7;

    private static final List<String> SERIES = Arrays.stream(StrengthSeries.values())
            .map(series -> series.name().toLowerCase(Locale.ROOT))
            .toList();

    /**
     * Reads it.
     *
     * @throws BadInput with all faults
     */
    static StrengthQuestion read(Json value, SolventCatalogue catalogue, FaultList faults) {
        JsonFields fields = JsonFields.of("", value, faults, FIELDS)
                .orElseThrow(() -> new BadInput(BadInput.Kind.FIELDS, faults.faults()));
        Sorbent sorbent = fields.choice(
                        "sorbent",
                        Arrays.stream(Sorbent.values()).map(Sorbent::id).toList())
                .flatMap(Sorbent::byId)
                .orElse(Sorbent.SILICA);
        PairReader pairs = new PairReader(catalogue, faults);
        Optional<PairReader.Pair> pair = pairs.read(fields, sorbent);
        if (!fields.has("percentStrong")) {
            fields.missing("percentStrong", Allowed.closed(0, 100), Message.of("todo.give-percent"));
        }
        OptionalDouble percent = fields.percent("percentStrong");
        Optional<PairReader.Pair> to = fields.any("to")
                .flatMap(other -> JsonFields.of("to", other, faults, TO_FIELDS))
                .flatMap(other -> pairs.read(other, sorbent));
        Optional<String> series = fields.choice("series", SERIES);
        double activity = activity(fields, faults);
        faults.throwIfAny();
        return new StrengthQuestion(
                sorbent, pair.orElseThrow(), percent.orElseThrow(), tables(sorbent, series), to, activity);
    }

    private static double activity(JsonFields fields, FaultList faults) {
        double activity = fields.number("activity").orElse(USUAL_ACTIVITY);
        if (!(activity > 0 && activity <= 1)) {
            faults.add(
                    "activity",
                    Message.of("fault.number-out-of-range", "allowed", Allowed.leftOpen("0", "1")),
                    fields.any("activity").map(Json::shown).orElse(""),
                    Allowed.leftOpen("0", "1"),
                    Message.of("todo.give-activity"));
        }
        return activity;
    }

    /** On silica both tables where none is named; on alumina there is one. */
    private static List<StrengthSeries> tables(Sorbent sorbent, Optional<String> named) {
        if (named.isPresent()) {
            return List.of(StrengthSeries.valueOf(named.get().toUpperCase(Locale.ROOT)));
        }
        return sorbent == Sorbent.ALUMINA
                ? List.of(StrengthSeries.OLDER)
                : List.of(StrengthSeries.OLDER, StrengthSeries.NEWER);
    }
}
