package midplate.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads how published strengths become curves, from the file that the index names. */
final class TheoryStrengthReader {
    private static final double FAR = 50;
    private static final double MOST_SLOPE = 500;
    private static final double LEAST = 1e-6;

    private TheoryStrengthReader() {}

    /**
     * Reads it; empty where the index names no such file.
     *
     * @param pairs the pairs that there are
     */
    static Optional<TheoryStrength> read(DataFolder folder, String prefix, CurveJson index, List<String> pairs) {
        if (!index.has("theory")) {
            return Optional.empty();
        }
        index.oneOf("theory", List.of(TheoryStrength.FILE));
        CurveJson json = CurveJson.read(folder, prefix + TheoryStrength.FILE);
        List<TheoryCheck> checks = new ArrayList<>();
        for (CurveJson check : json.objects("checks")) {
            checks.add(check(check, pairs));
        }
        List<String> kinds = checks.stream().map(check -> check.kind().id()).toList();
        if (!kinds.equals(kinds())) {
            throw json.fault("checks", kinds, "one for each of " + kinds() + ", in this order");
        }
        return Optional.of(new TheoryStrength(
                series(json), json.number("activity", LEAST, 1), json.number("slope", LEAST, MOST_SLOPE), checks));
    }

    private static TheoryCheck check(CurveJson json, List<String> pairs) {
        return new TheoryCheck(
                TheoryKind.byId(json.oneOf("kind", kinds())).orElseThrow(),
                json.oneOf("pair", pairs),
                json.oneOf("from", pairs),
                json.rising("percents", 0, 100),
                json.count("compounds"),
                json.number("bias", -FAR, FAR),
                json.number("scatter", 0, FAR),
                json.number("deviationC", LEAST, FAR),
                json.number("deviationS", LEAST, FAR));
    }

    private static StrengthSeries series(CurveJson json) {
        List<String> known = Arrays.stream(StrengthSeries.values())
                .map(each -> each.name().toLowerCase(Locale.ROOT))
                .toList();
        return StrengthSeries.values()[known.indexOf(json.oneOf("series", known))];
    }

    private static List<String> kinds() {
        return Arrays.stream(TheoryKind.values()).map(TheoryKind::id).toList();
    }
}
