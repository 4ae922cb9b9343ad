package midplate.wire;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import midplate.catalogue.PairBasis;
import midplate.notebook.GivenAdvice;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * Reads what was advised. An advice is a record of what was said then: the plates and compounds that it names may be gone since, by
 * a step taken back or because somebody removed them.
 */
final class StudyAdviceReader {
    static final List<String> FIELDS = List.of(
            "given",
            "program",
            "after",
            "weak",
            "strong",
            "percentStrong",
            "additive",
            "window",
            "apart",
            "spots",
            "probability",
            "basis");
    static final List<String> SPOT = List.of("spot", "rf", "low", "high");

    /** What an advice may rest on. */
    static final List<String> BASES =
            Arrays.stream(PairBasis.values()).map(PairBasis::id).toList();

    private static final double MOST_PERCENT = 100;

    private final StudyJars jars;
    private final FaultList faults;

    StudyAdviceReader(StudyJars jars, FaultList faults) {
        this.jars = jars;
        this.faults = faults;
    }

    /** One advice. */
    Optional<GivenAdvice> read(String path, Json value) {
        return StudyFields.of(path, value, faults, FIELDS, List.of()).map(fields -> {
            Optional<List<Json>> window = fields.two("window");
            Set<String> foretold = new HashSet<>();
            return new GivenAdvice(
                    fields.time("given"),
                    fields.line("program"),
                    fields.ids("after"),
                    jars.solvent(fields, "weak"),
                    jars.solvent(fields, "strong"),
                    fields.number("percentStrong", 0, MOST_PERCENT),
                    fields.line("additive"),
                    edge(fields, window, 0),
                    edge(fields, window, 1),
                    fields.noneOrTwo("apart", fields.ids("apart")),
                    fields.each("spots", StudyFields.MOST, (place, spot) -> spot(place, spot, foretold)),
                    fields.number("probability", 0, 1),
                    fields.choice("basis", BASES));
        });
    }

    private double edge(StudyFields fields, Optional<List<Json>> window, int which) {
        return window.map(edges ->
                        StudyNumber.between(fields.path("window[" + which + "]"), edges.get(which), 0, 1, faults))
                .orElse(0.0);
    }

    private Optional<GivenAdvice.Foretold> spot(String path, Json value, Set<String> foretold) {
        return StudyFields.of(path, value, faults, SPOT, List.of()).map(fields -> {
            int faultsBefore = faults.count();
            double rf = fields.number("rf", 0, 1);
            double low = fields.number("low", 0, 1);
            double high = fields.number("high", 0, 1);
            boolean areNumbers = faults.count() == faultsBefore;
            if (areNumbers && !(low <= rf && rf <= high)) {
                Message allowed = Allowed.closed(low, high);
                fields.fault(
                        "rf",
                        Message.of("fault.number-out-of-range", "allowed", allowed),
                        allowed,
                        Message.of("todo.give-number-inside"));
            }
            return new GivenAdvice.Foretold(fields.freshId("spot", foretold), rf, low, high);
        });
    }
}
