package midplate.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import midplate.advice.Consultation;
import midplate.catalogue.SolventCatalogue;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * Plans a column: the bed that carries the sample, what to pour on it, which fractions to keep. Immutable and safe to share between
 * threads.
 */
public final class ColumnPlanner {
    private final SolventCatalogue catalogue;

    private ColumnPlanner(SolventCatalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** A planner that knows the solvents of a catalogue. */
    public static ColumnPlanner of(SolventCatalogue catalogue) {
        return new ColumnPlanner(catalogue);
    }

    /**
     * The plan.
     *
     * @param law of the bands of this sample, its spots in the order of the question
     * @param plates what its plates say, for other pairs of solvents
     * @throws Refusal when something asked cannot be; the first of {@link ColumnFaults#in}
     */
    public ColumnPlan plan(ColumnQuestion question, BandLaw law, Consultation plates) {
        List<Refusal> faults = ColumnFaults.in(question);
        if (!faults.isEmpty()) {
            throw faults.get(0);
        }
        ChosenProgram chosen = ColumnChoice.of(question, law);
        int fractions = fractions(chosen);
        Program poured = chosen.program().program().until(chosen.runMl());
        List<ColumnPlan.SpotBand> bands =
                bands(question, law, chosen.column().bed(), chosen.program().program(), chosen.bands());
        List<double[]> shares = shares(bands, chosen);
        Optional<ColumnPlan.Cut> cut = cut(shares, chosen.column().target());
        double flow = question.flowMlMin()
                .orElseGet(() -> BedHabits.flowMlMin(chosen.column().bed()));
        PlanWarnings warnings = new PlanWarnings(chosen, bands, cut, catalogue);
        return new ColumnPlan(
                chosen.column().bed(),
                chosen.column().voidMl(),
                law.unretainedMl(chosen.column().bed()),
                load(chosen),
                poured,
                StepPours.of(poured),
                stop(chosen, bands.get(chosen.column().target())),
                chosen.program().chance(),
                chanceInWords(chosen),
                bands,
                cut,
                chosen.program().fractionMl(),
                fractions,
                shares.stream().map(ColumnPlanner::list).toList(),
                flow,
                chosen.runMl() / flow,
                chosen.runMl(),
                tried(chosen),
                new PlanReasons(chosen, bands.get(chosen.column().target())).all(),
                warnings.all(plates),
                new PlanCautions(catalogue).of(chosen));
    }

    /** What single eluents would do on a bed, one at each share [% v/v]. */
    public List<ColumnPlan.Prediction> predict(ColumnQuestion question, BandLaw law, Bed bed, List<Double> percents) {
        double loadMl = ColumnChoice.loadMl(question, law, bed);
        return percents.stream()
                .map(percent -> {
                    Program program = Program.isocratic(percent);
                    Bands bands = law.bands(bed, program, loadMl);
                    return new ColumnPlan.Prediction(percent, bands(question, law, bed, program, bands));
                })
                .toList();
    }

    /** When to stop, where the target has most likely left earlier than what is to be ready; a tube more, for the plate that shows it. */
    private static OptionalDouble stop(ChosenProgram chosen, ColumnPlan.SpotBand target) {
        double likely = StepPours.up(target.endMl().value() + chosen.program().fractionMl());
        return likely < chosen.runMl() ? OptionalDouble.of(likely) : OptionalDouble.empty();
    }

    private static int fractions(ChosenProgram chosen) {
        double count = FractionGrid.count(chosen.program().fractionMl(), chosen.runMl());
        if (count > TrialColumn.MOST_FRACTIONS) {
            double least = Math.ceil(10 * chosen.runMl() / TrialColumn.MOST_FRACTIONS) / 10;
            throw new Refusal(
                    "column.fractionMl",
                    Message.of("column.too-many-fractions", "most", TrialColumn.MOST_FRACTIONS),
                    Allowed.number(chosen.program().fractionMl()),
                    Allowed.rightOpen(Allowed.number(least), "∞"),
                    Message.of("column.todo-fraction"));
        }
        return (int) count;
    }

    private static List<ColumnPlan.SpotBand> bands(
            ColumnQuestion question, BandLaw law, Bed bed, Program program, Bands bands) {
        double first = program.steps().get(0).percentStrong();
        return IntStream.range(0, law.spots())
                .mapToObj(spot -> new ColumnPlan.SpotBand(
                        question.sample().spots().get(spot),
                        law.rf(spot, first),
                        TrialColumn.range(bands, one -> bands.startMl(spot, one)),
                        TrialColumn.range(bands, one -> bands.middleMl(spot, one)),
                        TrialColumn.range(bands, one -> bands.endMl(spot, one)),
                        law.idealMl(spot, bed, program.endless())))
                .toList();
    }

    private static List<double[]> shares(List<ColumnPlan.SpotBand> bands, ChosenProgram chosen) {
        FractionGrid grid = new FractionGrid(chosen.program().fractionMl(), chosen.runMl());
        return bands.stream()
                .map(band -> grid.shares(band.startMl().value(), band.endMl().value()))
                .toList();
    }

    private static Optional<ColumnPlan.Cut> cut(List<double[]> shares, int target) {
        double[] others = new double[shares.get(target).length];
        for (int spot = 0; spot < shares.size(); spot++) {
            for (int i = 0; spot != target && i < others.length; i++) {
                others[i] += shares.get(spot)[i];
            }
        }
        return PureCut.best(shares.get(target), others);
    }

    private static List<Double> list(double[] numbers) {
        return IntStream.range(0, numbers.length).mapToObj(i -> numbers[i]).toList();
    }

    private static ColumnPlan.Load load(ChosenProgram chosen) {
        ColumnQuestion question = chosen.question();
        return new ColumnPlan.Load(
                chosen.portionMg(),
                chosen.runs(),
                chosen.mostMg(),
                chosen.column().bed().silicaGrams(),
                question.loading(),
                chosen.isDry() ? 0 : chosen.column().loadMl(),
                chosen.isDry() ? BedHabits.drySilicaGrams(chosen.portionMg()) : 0,
                chosen.portion());
    }

    private static Message chanceInWords(ChosenProgram chosen) {
        Message times = Hundreds.of(chosen.program().chance());
        if (!chosen.unshown().isEmpty()) {
            return Message.of(
                    "column.chance-unshown",
                    "target",
                    chosen.target(),
                    "others",
                    chosen.names(chosen.unshown()),
                    "times",
                    times);
        }
        return chosen.column().law().spots() == 1
                ? Message.of("column.chance-alone", "target", chosen.target(), "times", times)
                : Message.of("column.chance", "target", chosen.target(), "times", times);
    }

    private static List<ColumnPlan.Tried> tried(ChosenProgram chosen) {
        List<WeighedProgram> all = new ArrayList<>(chosen.isocratic());
        all.addAll(chosen.steps());
        return all.stream()
                .map(each -> new ColumnPlan.Tried(each.firstPercent(), each.steps(), each.chance(), each.runMl()))
                .toList();
    }
}
