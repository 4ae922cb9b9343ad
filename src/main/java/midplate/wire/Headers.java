package midplate.wire;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;

/** What a header says that a column holds. */
final class Headers {
    private static final Set<String> HUNDREDFOLD =
            Set.of("hrf", "hrfvalue", "hrfwert", "rf%", "rfx100", "100rf", "rf100", "rfmal100");
    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");

    private Headers() {}

    /**
     * A meaning.
     *
     * @param column which
     * @param factor by which its numbers become those of the column: 10 where they are centimetres, 0.01 for hRf
     */
    record Meaning(RunColumn column, BigDecimal factor) {
        static Meaning plain(RunColumn column) {
            return new Meaning(column, BigDecimal.ONE);
        }
    }

    /** What a header means by itself; empty where it is none that is known. */
    static Optional<Meaning> meaning(String header) {
        String plain = RunColumn.plain(header);
        if (plain.isEmpty()) {
            return Optional.empty();
        }
        if (HUNDREDFOLD.contains(plain)) {
            return Optional.of(new Meaning(RunColumn.RF, HUNDREDTH));
        }
        return RunColumn.called(plain)
                .map(Meaning::plain)
                .or(() -> length(plain, "mm", BigDecimal.ONE))
                .or(() -> length(plain, "cm", BigDecimal.TEN));
    }

    private static Optional<Meaning> length(String plain, String unit, BigDecimal factor) {
        if (!plain.endsWith(unit)) {
            return Optional.empty();
        }
        String name = plain.substring(0, plain.length() - unit.length());
        String bare = name.endsWith("in") ? name.substring(0, name.length() - 2) : name;
        return RunColumn.called(name)
                .or(() -> RunColumn.called(bare))
                .filter(RunColumn::isLength)
                .map(column -> new Meaning(column, factor));
    }
}
