package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import midplate.advice.Ratio;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * Four compounds, or three, to be put into the order in which they climb. Only gaps that nearly every possible sample has are asked for, and
 * only those whose reason is the strongest group of each.
 */
final class OrderQuestion {
    /** A gap is wide where one lies above the other by so much in Rf … */
    static final double GAP = 0.05;
    /** … in at least this share of the possible samples. */
    static final double WIDE = 0.95;

    private OrderQuestion() {}

    static Optional<WorksheetQuestion> of(SeededDraws draws, WorksheetBench bench, int compounds) {
        Ratio ratio = draws.some(WorksheetBench.RATIOS, 1).get(0);
        List<List<LessonCompound>> chains = chains(bench.possible(), ratio.percentStrong(), compounds);
        if (chains.isEmpty()) {
            return Optional.empty();
        }
        List<LessonCompound> rising = draws.some(chains, 1).get(0);
        List<LessonCompound> shuffled = draws.some(rising, compounds);
        return Optional.of(question(bench, ratio, rising, shuffled));
    }

    private static WorksheetQuestion question(
            WorksheetBench bench, Ratio ratio, List<LessonCompound> rising, List<LessonCompound> shuffled) {
        List<Message> columns = List.of(
                Message.of("lesson.worksheet-column-compound"),
                Message.of("lesson.worksheet-column-place"),
                Message.of("lesson.worksheet-column-reason"));
        return new WorksheetQuestion(
                WorksheetKind.ORDER,
                List.of(Message.of("lesson.worksheet-order-ask", "eluent", bench.eluent(ratio))),
                Optional.empty(),
                Optional.of(new WorksheetTable(
                        columns,
                        shuffled.stream()
                                .map(each -> WorksheetTable.toFill(columns.size(), WorksheetBench.named(each)))
                                .toList())),
                0,
                new WorksheetQuestion.Key(
                        List.of(
                                Message.of(
                                        "lesson.worksheet-order-sure",
                                        "share",
                                        100 * surest(bench.possible(), rising, ratio.percentStrong()),
                                        "gap",
                                        GAP),
                                Message.of("lesson.worksheet-order-energy")),
                        Optional.of(key(bench.possible(), rising, ratio.percentStrong())),
                        List.of()));
    }

    private static WorksheetTable key(PossibleRf possible, List<LessonCompound> rising, double percent) {
        List<List<Optional<Message>>> rows = new ArrayList<>();
        for (LessonCompound compound : rising) {
            double[] band = possible.band(compound, percent);
            rows.add(WorksheetTable.full(
                    Message.of("lesson.worksheet-place", "place", rows.size() + 1),
                    WorksheetBench.named(compound),
                    groups(compound),
                    RulerTables.rf(possible.middle(compound, percent)),
                    Message.of("lesson.worksheet-range", "from", band[0], "to", band[1])));
        }
        return new WorksheetTable(
                List.of(
                        Message.of("lesson.worksheet-column-place"),
                        Message.of("lesson.worksheet-column-compound"),
                        Message.of("lesson.worksheet-column-groups"),
                        Message.of("lesson.worksheet-column-expected"),
                        Message.of("lesson.worksheet-column-band")),
                rows);
    }

    /** What holds a compound on silica, the strongest group first. */
    private static Message groups(LessonCompound compound) {
        List<Message> polar = FunctionalGroups.builtIn().all().stream()
                .filter(group -> group.isPolar() && compound.counts().of(group.id()) > 0)
                .sorted(Comparator.comparingDouble(FunctionalGroup::energy).reversed())
                .map(group -> group(group, compound.counts().of(group.id())))
                .toList();
        return polar.isEmpty() ? Message.of("lesson.worksheet-no-group") : Allowed.list(polar);
    }

    private static Message group(FunctionalGroup group, int count) {
        Message said = Message.of("group." + group.id());
        return count == 1
                ? Message.of("lesson.worksheet-group", "group", said, "energy", group.energy())
                : Message.of("lesson.worksheet-groups", "count", count, "group", said, "energy", group.energy());
    }

    /** The smallest share of samples [1] that keep a pair of neighbours in order and apart. */
    private static double surest(PossibleRf possible, List<LessonCompound> rising, double percent) {
        double least = 1;
        for (int i = 1; i < rising.size(); i++) {
            least = Math.min(
                    least,
                    PossibleRf.shareAbove(
                            possible.each(rising.get(i), percent), possible.each(rising.get(i - 1), percent), GAP));
        }
        return least;
    }

    /** All chains of so many, each rising, in which every pair is parted widely and by its strongest groups. */
    static List<List<LessonCompound>> chains(PossibleRf possible, double percent, int compounds) {
        List<LessonCompound> all = possible.compounds();
        double[][] rf =
                all.stream().map(compound -> possible.each(compound, percent)).toArray(double[][]::new);
        boolean[][] above = new boolean[all.size()][all.size()];
        for (int upper = 0; upper < all.size(); upper++) {
            for (int lower = 0; lower < all.size(); lower++) {
                above[upper][lower] = StrongestGroup.isReasonFor(all.get(lower), all.get(upper))
                        && PossibleRf.shareAbove(rf[upper], rf[lower], GAP) >= WIDE;
            }
        }
        List<List<Integer>> chains = new ArrayList<>(List.of(List.of()));
        for (int length = 0; length < compounds; length++) {
            List<List<Integer>> longer = new ArrayList<>();
            for (List<Integer> chain : chains) {
                for (int next = 0; next < all.size(); next++) {
                    int upper = next;
                    if (chain.stream().allMatch(lower -> above[upper][lower])) {
                        longer.add(
                                Stream.concat(chain.stream(), Stream.of(next)).toList());
                    }
                }
            }
            chains = longer;
        }
        return chains.stream()
                .map(chain -> chain.stream().map(all::get).toList())
                .toList();
    }
}
