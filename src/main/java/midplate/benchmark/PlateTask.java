package midplate.benchmark;

import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import midplate.inference.PairName;
import midplate.inference.Series;

/**
 * One sample of one to three compounds on one trial plate: which ratio next?
 *
 * @param spots the compounds, in the order of their series
 * @param percent ethyl acetate of the trial plate [% v/v]
 */
record PlateTask(List<TrueCurve> spots, double percent) {
    private static final double AT_BASELINE = 0.05;
    private static final double AT_FRONT = 0.95;

    PlateTask {
        spots = spots.stream().sorted(Comparator.comparing(TrueCurve::series)).toList();
    }

    /** What is told: each spot's Rf on the trial plate, rounded to 0.01 and sorted, so that the order tells nothing. */
    List<List<TrialReading>> trials() {
        return told(rf -> rf);
    }

    /** The same on a plate that something moves. */
    List<List<TrialReading>> told(DoubleUnaryOperator moved) {
        return spots.stream()
                .map(spot -> reading(moved.applyAsDouble(spot.rf(percent))))
                .sorted()
                .map(List::of)
                .toList();
    }

    /** What is told where structures are known: each spot's Rf on the trial plate beside its structure, sorted by Rf. */
    List<ToldSpot> structuresAndTrials() {
        return spots.stream()
                .map(spot -> new ToldSpot(spot.series().smiles(), List.of(reading(spot.rf(percent)))))
                .sorted()
                .toList();
    }

    /** The structures alone, sorted. */
    List<ToldSpot> structures() {
        return spots.stream()
                .map(spot -> new ToldSpot(spot.series().smiles(), List.of()))
                .sorted()
                .toList();
    }

    /** All that was measured of each compound, as measured. */
    List<List<TrialReading>> allReadings() {
        return spots.stream().map(TrueCurve::readings).toList();
    }

    /** The compounds, in the order of their series. */
    List<Series> members() {
        return spots.stream().map(TrueCurve::series).toList();
    }

    private TrialReading reading(double rf) {
        return new TrialReading(PairName.HEXANE_ETHYL_ACETATE, percent, Math.rint(rf * 100) / 100);
    }

    /** Whether all spots lie at 0.2 to 0.8 at a percentage [% v/v]. */
    boolean hitAt(double next) {
        return spots.stream().allMatch(spot -> spot.inWindow(next));
    }

    /** Whether some ratio is a hit. */
    boolean possible() {
        return TrueCurve.possible(spots);
    }

    /** Whether the trial plate itself was no hit. */
    boolean failedTrial() {
        return !hitAt(percent);
    }

    /** Whether some spot of the trial plate read below 0.05. */
    boolean baseline() {
        return trials().stream().anyMatch(trial -> trial.get(0).rf() < AT_BASELINE);
    }

    /** Whether some spot of the trial plate read above 0.95. */
    boolean front() {
        return trials().stream().anyMatch(trial -> trial.get(0).rf() > AT_FRONT);
    }
}
