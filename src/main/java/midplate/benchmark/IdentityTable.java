package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Verdicts on one plate with sample, co-spot and reference. */
final class IdentityTable {
    private IdentityTable() {}

    static Optional<String> of(Accuracy accuracy) {
        Map<String, Map<String, Figure>> identity = accuracy.identity();
        if (identity.isEmpty()) {
            return Optional.empty();
        }
        List<String> names = new ArrayList<>(identity.keySet());
        MarkdownTable table = new MarkdownTable("same or not, on drawn plates", names);
        row(table, identity, "one compound: called different", IdentityBenchmark.name("different", 0));
        row(table, identity, "– undecided", IdentityBenchmark.name("undecided", 0));
        row(table, identity, "– not told apart", IdentityBenchmark.name("not-told-apart", 0));
        row(
                table,
                identity,
                "– called different, no lengths of spots told",
                IdentityBenchmark.name("different.unsized", 0));
        // results measured before this figure was added lack it
        if (identity.values().stream().allMatch(figures -> figures.containsKey("different.twice"))) {
            row(table, identity, "– called different, the sample in two lanes", "different.twice");
        }
        for (double apart : IdentityBenchmark.APART.subList(1, IdentityBenchmark.APART.size())) {
            String head = String.format(Locale.ROOT, "%.2f apart in Rf: called different", apart);
            row(table, identity, head, IdentityBenchmark.name("different", apart));
            row(table, identity, "– not told apart", IdentityBenchmark.name("not-told-apart", apart));
        }
        row(table, identity, "0.05 apart, spots below 2.8 mm", IdentityBenchmark.name("different.small", 0.05));
        row(table, identity, "– longer ones", IdentityBenchmark.name("different.large", 0.05));
        row(table, identity, "– no lengths of spots told", IdentityBenchmark.name("different.unsized", 0.05));
        row(table, identity, "two references 0.15 apart, both in the sample: mixture named", "mixture.recognised");
        row(table, identity, "– only one of them in the sample: mixture named", "mixture.false.one");
        row(table, identity, "– one, and another compound 0.10 from the other: mixture named", "mixture.false.other");
        return Optional.of(table.toString());
    }

    private static void row(
            MarkdownTable table, Map<String, Map<String, Figure>> identity, String head, String figure) {
        table.row(
                head,
                identity.values().stream()
                        .map(figures -> FigureForm.PERCENT.text(figures.get(figure)))
                        .toList());
    }
}
