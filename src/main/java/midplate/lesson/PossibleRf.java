package midplate.lesson;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.inference.PossiblePlates;
import midplate.plate.Setting;

/**
 * Where the compounds of the table of lessons may lie on a plate, of which nothing but the structure is known: every possible sample of
 * the model with each of them in it. The same every time.
 */
final class PossibleRf {
    /** The share of possible samples below the lower end of a band, and above its upper end. */
    private static final double OUTSIDE = 0.05;

    private final List<LessonCompound> compounds;
    private final PossiblePlates plates;
    /** What was asked for before; the same whenever it is computed. */
    private final Map<Asked, double[]> computed = new ConcurrentHashMap<>();

    private PossibleRf(List<LessonCompound> compounds, PossiblePlates plates) {
        this.compounds = compounds;
        this.plates = plates;
    }

    /** Of these compounds on silica. */
    static PossibleRf of(LessonModel model, List<LessonCompound> compounds, Solvent weak, Solvent strong) {
        LessonSample sample = new LessonSample(compounds, Sorbent.SILICA, weak, strong, Setting.CLASS);
        return new PossibleRf(
                List.copyOf(compounds), PossiblePlates.of(model.consult(sample).knowledge()));
    }

    /** The compounds. */
    List<LessonCompound> compounds() {
        return compounds;
    }

    /** How many samples there are. */
    int samples() {
        return plates.samples();
    }

    /** The true Rf [1] of a compound in a sample, at a share of the strong solvent [% v/v]. */
    double rf(int sample, LessonCompound compound, double percent) {
        return plates.rf(sample, compounds.indexOf(compound), percent);
    }

    /** The Rf [1] of a compound in every sample, rising. */
    private double[] sorted(LessonCompound compound, double percent) {
        double[] all = each(compound, percent);
        Arrays.sort(all);
        return all;
    }

    /** The Rf [1] of a compound in every sample, in their order. */
    double[] each(LessonCompound compound, double percent) {
        return computed.computeIfAbsent(new Asked(compound, percent), asked -> {
                    int spot = compounds.indexOf(compound);
                    return IntStream.range(0, samples())
                            .mapToDouble(sample -> plates.rf(sample, spot, percent))
                            .toArray();
                })
                .clone();
    }

    private record Asked(LessonCompound compound, double percent) {}

    /** Half the samples have a lower Rf [1]. */
    double middle(LessonCompound compound, double percent) {
        return sorted(compound, percent)[samples() / 2];
    }

    /**
     * A sample in which compounds run as the model expects them.
     *
     * @param draws by what it is drawn
     * @param some of the compounds
     * @param percents the shares at which they are looked at [% v/v]
     * @see CentralSamples
     */
    int central(SeededDraws draws, List<LessonCompound> some, List<Double> percents) {
        return CentralSamples.of(percents.stream()
                        .map(percent -> some.stream()
                                .map(compound -> each(compound, percent))
                                .toArray(double[][]::new))
                        .toArray(double[][][]::new))
                .draw(draws);
    }

    /** From where to where the Rf [1] lies in 90 % of the samples. */
    double[] band(LessonCompound compound, double percent) {
        double[] sorted = sorted(compound, percent);
        int below = (int) (OUTSIDE * samples());
        return new double[] {sorted[below], sorted[samples() - 1 - below]};
    }

    /** The share of samples [1] in which one compound lies above another by at least so much in Rf. */
    static double shareAbove(double[] upper, double[] lower, double gap) {
        int above = 0;
        for (int k = 0; k < upper.length; k++) {
            if (upper[k] - lower[k] >= gap) {
                above++;
            }
        }
        return (double) above / upper.length;
    }
}
