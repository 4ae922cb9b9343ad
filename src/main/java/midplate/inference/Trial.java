package midplate.inference;

import java.util.Comparator;
import midplate.plate.Reading;

/**
 * One reading of one spot, with where it was taken.
 *
 * @param plate number of the plate among all plates of the sample, from 0; spots of one plate share its error
 * @param percent share of the strong solvent [% v/v]
 * @param reading what was read
 * @param blur the spot lies within so much of the reading, which it shares with another spot [1 in Rf]; 0 where it lies alone
 */
record Trial(int plate, double percent, Reading reading, double blur) {
    /** An order that depends on what was read and not on when it was typed. */
    static final Comparator<Trial> BY_CONTENT;

    /** The same for readings. */
    static final Comparator<Reading> READING = Comparator.comparingDouble(Reading::rf)
            .thenComparing(Reading::limit)
            .thenComparingDouble(reading -> reading.standardError().orElse(-1));

    static {
        BY_CONTENT = Comparator.comparingDouble(Trial::percent)
                .thenComparing(Trial::reading, READING)
                .thenComparingDouble(Trial::blur);
    }

    /** A reading of a spot that lies alone. */
    Trial(int plate, double percent, Reading reading) {
        this(plate, percent, reading, 0);
    }

    /**
     * The likelihood of the reading at each mark of η.
     *
     * <p>A number: Student's density at the reading, or its mean within the blur. A spot on the start line: the chance that it would read no
     * higher than the bound; at the front: no lower. A number at a line is such a bound.
     */
    double[] likelihood(PairModel model, PlateScatter scatter) {
        double ruler = reading.standardError().orElse(0);
        double extra = Math.max(ruler, scatter.readingError());
        Reading told = model.noise().bound(reading);
        double[] beyond = model.beyond();
        double[] sigmas = model.sigma(percent, extra);
        double[] likelihood = new double[LogitScale.SIZE];
        for (int mark = 0; mark < likelihood.length; mark++) {
            double sigma = sigmas[mark];
            double z = (told.rf() - beyond[mark]) / sigma;
            likelihood[mark] = switch (told.limit()) {
                case NONE -> blur > 0 ? blurred(beyond[mark], sigma) : Noise.density(z, sigma);
                case AT_START -> told.rf() < 1 ? Noise.below(z) : 1;
                case AT_FRONT -> told.rf() > 0 ? Noise.below(-z) : 1;
            };
        }
        return likelihood;
    }

    private double blurred(double at, double sigma) {
        double upper = Noise.below((reading.rf() + blur - at) / sigma);
        double lower = Noise.below((reading.rf() - blur - at) / sigma);
        return Math.max(Double.MIN_NORMAL, upper - lower) / (2 * blur);
    }
}
