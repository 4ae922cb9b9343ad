package midplate.benchmark;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Marks a contender that is told structures: {@code first.…} is the first plate of a sample, from the structures alone, {@code
 * plates.…} the plate after a trial, {@code one-trial-informative.…} and its like the forecasts after a trial, all as {@link
 * PlateMarks} and {@link RatioMarks} define them; {@code from-structure.…} and {@code methanol-from-structure.…} are forecasts of
 * every ratio with nothing read, {@code ….rare.…} of those the compounds with a group that few compounds learned from have, and
 * {@code ….common.…} the others.
 */
final class StructureMarks {
    private final StructureContender contender;
    private final PlateMarks plates;
    private final RatioMarks ratios;
    private final Map<List<ToldSpot>, Choice> firsts = new HashMap<>();
    private final Map<List<ToldSpot>, Optional<Choice>> seconds = new HashMap<>();

    StructureMarks(StructureContender contender, Samples samples) {
        this.contender = contender;
        this.plates = new PlateMarks(samples, Told.TRIALS);
        this.ratios = new RatioMarks(samples, Told.TRIALS);
    }

    /** Asks about a sample, before any plate and after one. */
    void mark(PlateTask task) {
        plates.markFirst(task, firsts.computeIfAbsent(task.structures(), contender::first));
        seconds.computeIfAbsent(task.structuresAndTrials(), contender::choose)
                .ifPresent(choice -> plates.mark(task, choice));
    }

    /** Asks about one compound after one trial. */
    void mark(RatioTask task) {
        boolean switches = !task.inOnePair();
        if (task.trials().size() > 1 || (!switches && !task.informative())) {
            return;
        }
        String kind = task.kind().id() + (switches ? "" : "-informative");
        mark(kind, task, task.trials());
    }

    /** Asks about every reading of one compound with nothing told but its structure. */
    void markFromStructure(RatioTask task) {
        String kind = (task.kind() == RatioKind.METHANOL_ONE_TRIAL ? "methanol-" : "") + "from-structure";
        mark(kind, task, List.of());
        boolean rare = contender.isRare(task.kind().pair(), task.series().smiles());
        mark(kind + (rare ? ".rare" : ".common"), task, List.of());
    }

    private void mark(String kind, RatioTask task, List<TrialReading> trials) {
        double[] percents =
                task.percents().stream().mapToDouble(Double::doubleValue).toArray();
        contender
                .guesses(task.kind().pair(), new ToldSpot(task.series().smiles(), trials), percents)
                .ifPresent(guesses -> {
                    for (int i = 0; i < guesses.size(); i++) {
                        ratios.mark(
                                kind,
                                task.series(),
                                guesses.get(i),
                                task.truths().get(i));
                    }
                });
    }
}
