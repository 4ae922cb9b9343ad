package midplate.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import midplate.advice.PourableRatios;
import midplate.advice.Ratio;
import midplate.inference.PairModel;
import midplate.inference.PossiblePlates;

/**
 * One possible sample near what the model expects, taken for the truth: where its spots are in every eluent. Compounds at a bench run otherwise.
 * Everything is rounded to thousandths of Rf, so that no last
 * bit of a machine decides.
 *
 * @param plates possible samples and their plates
 * @param sample which of them is the truth, from 0
 * @param spots how many spots there are
 * @param model the pair
 */
record TrueCourse(PossiblePlates plates, int sample, int spots, PairModel model) {
    private static final double THOUSANDTHS = 1000;
    /** Nearer to a line than this nothing moves [1 in Rf]. */
    private static final double LINES = 0.05;
    /** Shares are tried by so much [% v/v]: no one pours finer. */
    private static final double STEP = 0.05;

    /**
     * One in which the spots run as the model expects them, at all ratios that are poured and at which something moves; empty where nothing does,
     * or where no sample fits.
     *
     * @param plates possible samples
     * @param spots how many spots there are
     * @param model the pair
     * @param draws by what it is drawn
     */
    static Optional<TrueCourse> drawn(PossiblePlates plates, int spots, PairModel model, SeededDraws draws) {
        double[][][] rf = PourableRatios.between(model.lowestPercent(), model.highestPercent()).stream()
                .map(ratio -> IntStream.range(0, spots)
                        .mapToObj(spot -> IntStream.range(0, plates.samples())
                                .mapToDouble(sample -> plates.rf(sample, spot, ratio.percentStrong()))
                                .toArray())
                        .toArray(double[][]::new))
                .filter(TrueCourse::isMoving)
                .toArray(double[][][]::new);
        if (rf.length == 0) {
            return Optional.empty();
        }
        CentralSamples central = CentralSamples.of(rf);
        return Optional.of(central.draw(draws))
                .filter(central::fits)
                .map(sample -> new TrueCourse(plates, sample, spots, model));
    }

    /** Whether one of the spots is between the lines in the middle of the samples [Rf by the spot, then by the sample]. */
    private static boolean isMoving(double[][] rf) {
        return Arrays.stream(rf)
                .map(each -> Arrays.stream(each).sorted().toArray())
                .mapToDouble(sorted -> sorted[sorted.length / 2])
                .anyMatch(middle -> middle > LINES && middle < 1 - LINES);
    }

    /** A stretch of shares [% v/v]. */
    record Stretch(double from, double to) {}

    /** The true Rf of each spot at a share [% v/v], rounded to a thousandth. */
    List<Double> at(double percent) {
        return IntStream.range(0, spots)
                .mapToObj(spot -> Math.round(plates.rf(sample, spot, percent) * THOUSANDTHS) / THOUSANDTHS)
                .toList();
    }

    /** The ratios that are poured and that the curve of the pair holds, from weak to strong. */
    List<Ratio> ratios() {
        return PourableRatios.between(model.lowestPercent(), model.highestPercent());
    }

    /** The ratios at which what is wanted is true. */
    List<Ratio> ratios(Aimed aimed) {
        return ratios().stream()
                .filter(ratio -> aimed.at(at(ratio.percentStrong())))
                .toList();
    }

    /** The stretches of shares at which what is wanted is true, by twentieths of a per cent. */
    List<Stretch> stretches(Aimed aimed) {
        List<Stretch> found = new ArrayList<>();
        double from = Double.NaN;
        double before = Double.NaN;
        int steps = (int) Math.floor((model.highestPercent() - model.lowestPercent()) / STEP);
        for (int i = 0; i <= steps; i++) {
            double percent = Math.round((model.lowestPercent() + i * STEP) * 100) / 100.0;
            if (aimed.at(at(percent))) {
                from = Double.isNaN(from) ? percent : from;
                before = percent;
            } else if (!Double.isNaN(from)) {
                found.add(new Stretch(from, before));
                from = Double.NaN;
            }
        }
        if (!Double.isNaN(from)) {
            found.add(new Stretch(from, before));
        }
        return found;
    }

    /** The smallest distance between neighbours [1]; 1 where there is one spot. */
    static double smallestGap(List<Double> rf) {
        double[] sorted = rf.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return IntStream.range(1, sorted.length)
                .mapToDouble(i -> sorted[i] - sorted[i - 1])
                .min()
                .orElse(1);
    }

    /** Whether every spot lies between two Rf [1], ends included. */
    static boolean within(List<Double> rf, double low, double high) {
        return rf.stream().allMatch(each -> each >= low && each <= high);
    }

    /** Something wanted of the Rf of all spots. */
    @FunctionalInterface
    interface Aimed {
        /** Whether it is true. */
        boolean at(List<Double> rf);
    }

    /** A number of ratios, spread over those at which something moves. */
    List<Ratio> usual(int most) {
        List<Ratio> moving = ratios(
                rf -> rf.stream().anyMatch(each -> each > 0.05) && rf.stream().anyMatch(each -> each < 0.95));
        List<Ratio> from = moving.isEmpty() ? ratios() : moving;
        int count = Math.min(most, from.size());
        return Arrays.stream(IntStream.range(0, count)
                        .map(i -> count == 1 ? 0 : (int) Math.round((double) i * (from.size() - 1) / (count - 1)))
                        .distinct()
                        .toArray())
                .mapToObj(from::get)
                .toList();
    }
}
