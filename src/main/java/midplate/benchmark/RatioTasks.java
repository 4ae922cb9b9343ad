package midplate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import midplate.inference.ReadingTable;

/** All questions about single compounds that measurements allow, in a fixed order. */
final class RatioTasks {
    private static final double SWITCH_LOW = 0.2;
    private static final double SWITCH_HIGH = 0.8;
    /** Pure ether is saturated: only mixtures are asked about. */
    private static final double MIXTURE = 99;

    private final List<RatioTask> tasks = new ArrayList<>();

    private RatioTasks() {}

    static List<RatioTask> of(OpenMeasurements measurements) {
        RatioTasks all = new RatioTasks();
        ReadingTable acetate = measurements.table(PairName.HEXANE_ETHYL_ACETATE);
        ReadingTable methanol = measurements.table(PairName.DICHLOROMETHANE_METHANOL);
        ReadingTable ether =
                measurements.table(PairName.HEXANE_DIETHYL_ETHER).above(0).below(MIXTURE);
        for (int row = 0; row < acetate.series().size(); row++) {
            all.oneTrial(RatioKind.ONE_TRIAL, acetate, row);
            all.twoTrials(acetate, row);
            all.otherPair(RatioKind.SWITCH_TO_ETHER, acetate, row, ether);
            all.otherPair(RatioKind.SWITCH_TO_METHANOL, acetate, row, methanol);
        }
        for (int row = 0; row < ether.series().size(); row++) {
            all.otherPair(RatioKind.SWITCH_TO_ACETATE, ether, row, acetate);
        }
        for (int row = 0; row < methanol.series().size(); row++) {
            all.oneTrial(RatioKind.METHANOL_ONE_TRIAL, methanol, row);
        }
        return List.copyOf(all.tasks);
    }

    /** Every reading of each compound in hexane/ethyl acetate and in dichloromethane/methanol, with no trial. */
    static List<RatioTask> wholes(OpenMeasurements measurements) {
        RatioTasks all = new RatioTasks();
        all.wholes(RatioKind.ONE_TRIAL, measurements.table(PairName.HEXANE_ETHYL_ACETATE));
        all.wholes(RatioKind.METHANOL_ONE_TRIAL, measurements.table(PairName.DICHLOROMETHANE_METHANOL));
        return List.copyOf(all.tasks);
    }

    private void wholes(RatioKind kind, ReadingTable table) {
        for (int row = 0; row < table.series().size(); row++) {
            ask(kind, table, row, List.of(), table, row);
        }
    }

    private void oneTrial(RatioKind kind, ReadingTable table, int row) {
        double[] percents = table.percents();
        for (int column = 0; column < percents.length; column++) {
            if (!Double.isNaN(table.rf(row, column))) {
                ask(kind, table, row, List.of(column), table, row);
            }
        }
    }

    private void twoTrials(ReadingTable table, int row) {
        int columns = table.percents().length;
        for (int one = 0; one < columns; one++) {
            for (int other = one + 1; other < columns; other++) {
                if (RatioTask.informative(table.rf(row, one)) && RatioTask.informative(table.rf(row, other))) {
                    ask(RatioKind.TWO_TRIALS, table, row, List.of(one, other), table, row);
                }
            }
        }
    }

    private void otherPair(RatioKind kind, ReadingTable from, int row, ReadingTable to) {
        OptionalInt target = to.rowOf(from.series().get(row));
        for (int column = 0; target.isPresent() && column < from.percents().length; column++) {
            double rf = from.rf(row, column);
            if (rf >= SWITCH_LOW && rf <= SWITCH_HIGH) {
                ask(kind, from, row, List.of(column), to, target.getAsInt());
            }
        }
    }

    private void ask(RatioKind kind, ReadingTable told, int row, List<Integer> trials, ReadingTable asked, int target) {
        List<Double> percents = new ArrayList<>();
        List<Double> truths = new ArrayList<>();
        for (int column = 0; column < asked.percents().length; column++) {
            double truth = asked.rf(target, column);
            boolean known = asked == told && trials.contains(column);
            if (!known && !Double.isNaN(truth)) {
                percents.add(asked.percents()[column]);
                truths.add(truth);
            }
        }
        if (!percents.isEmpty()) {
            List<TrialReading> readings = trials.stream()
                    .map(column -> new TrialReading(told.pair(), told.percents()[column], told.rf(row, column)))
                    .toList();
            tasks.add(new RatioTask(kind, told.series().get(row), readings, percents, truths));
        }
    }
}
