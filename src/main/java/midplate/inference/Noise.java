package midplate.inference;

import java.util.Arrays;
import java.util.function.DoubleSupplier;
import midplate.chemistry.MonotoneCubic;
import midplate.plate.Limit;
import midplate.plate.Reading;

/**
 * How a reading scatters around the Rf that the model gives, as calibrated for one pair.
 *
 * <p>The deviation is Student's t with 5 degrees of freedom times {@code σ = √(σ₀(p)²·(a + (1 − a)·4·Rf·(1 − Rf)) + e²)}: p
 * [% v/v] the share of the strong solvent, σ₀ [1] the scale in the middle of the plate at that share, a [1] in (0, 1] the
 * share of the variance that is left at the start line and at the front, e [1] an error on top (ruler, setting). Heavy tails
 * let a misread spot count little; spots near either line scatter less in Rf because both lines hold them.
 *
 * @see "Xu2022"
 */
public final class Noise {
    /** Degrees of freedom: heavy enough for misread rows, and the distribution function stays closed. */
    static final int DEGREES = 5;

    private static final double MOST_AT_LINES = 0.1;
    private static final double ROOT5 = Math.sqrt(5);
    /** Γ(3)/(√(5π)·Γ(5/2)), the height of the density at 0. */
    private static final double PEAK = 8 / (3 * Math.PI * ROOT5);

    private final double leftAtLines;
    private final double atLines;
    private final MonotoneCubic scale;

    private Noise(double[] percents, double[] scales, double leftAtLines, double atLines) {
        this.leftAtLines = leftAtLines;
        this.atLines = atLines;
        this.scale =
                MonotoneCubic.through(Arrays.stream(percents).map(Math::log1p).toArray(), scales);
    }

    /**
     * A noise from its values at the measured ratios.
     *
     * @param percents shares of the strong solvent [% v/v], rising
     * @param scales σ₀ there [1], above 0
     * @param leftAtLines a [1], in (0, 1]
     * @param atLines a spot read no farther than this from a line sits on it [1], in [0, 0.1]; 0 where every reading is a number
     */
    public static Noise of(double[] percents, double[] scales, double leftAtLines, double atLines) {
        if (!(leftAtLines > 0 && leftAtLines <= 1)) {
            throw new IllegalArgumentException("leftAtLines " + leftAtLines + "; allowed (0, 1]");
        }
        if (!(atLines >= 0 && atLines <= MOST_AT_LINES)) {
            throw new IllegalArgumentException("atLines " + atLines + "; allowed [0, " + MOST_AT_LINES + "]");
        }
        for (double each : scales) {
            if (!(each > 0)) {
                throw new IllegalArgumentException("scale " + each + "; allowed above 0");
            }
        }
        return new Noise(percents, scales, leftAtLines, atLines);
    }

    /** σ₀ [1] at that share: the scale in the middle of the plate. */
    double middle(double percent) {
        return scale.at(Math.log1p(percent));
    }

    /** σ [1] of a reading at that share and Rf, with an error e on top. */
    double sigma(double percent, double rf, double extra) {
        return sigmaFrom(middle(percent), rf, extra);
    }

    /** σ [1] at an Rf where σ₀ is known already. */
    double sigmaFrom(double middle, double rf, double extra) {
        return Math.sqrt(middle * middle * shape(rf, leftAtLines) + extra * extra);
    }

    /** How the variance depends on Rf [1]: 1 in the middle of the plate, a at the lines. */
    static double shape(double rf, double leftAtLines) {
        return leftAtLines + (1 - leftAtLines) * 4 * rf * (1 - rf);
    }

    /** A spot read no farther than this from a line sits on it [1]. */
    double atLines() {
        return atLines;
    }

    /** A number at a line as the bound that it is; any other reading as it came. */
    Reading bound(Reading reading) {
        if (atLines > 0 && reading.limit() == Limit.NONE) {
            if (reading.rf() <= atLines) {
                return new Reading(atLines, Limit.AT_START, reading.standardError());
            }
            if (reading.rf() >= 1 - atLines) {
                return new Reading(1 - atLines, Limit.AT_FRONT, reading.standardError());
            }
        }
        return reading;
    }

    /**
     * How likely a reading is: Student's density; of one at a line, which says no more than that the spot did not leave it, the chance
     * to read there.
     *
     * @param read the Rf read [1]
     * @param at where the model has it, not held between the lines [1]
     * @param sigma σ [1]
     * @param atLines a spot read no farther than this from a line sits on it [1]
     */
    static double likelihood(double read, double at, double sigma, double atLines) {
        if (atLines > 0 && read <= atLines) {
            return below((atLines - at) / sigma);
        }
        if (atLines > 0 && read >= 1 - atLines) {
            return below((at - 1 + atLines) / sigma);
        }
        return density((read - at) / sigma, sigma);
    }

    /** Student's density with 5 degrees of freedom at z, over σ. */
    static double density(double z, double sigma) {
        double d = 1 + z * z / DEGREES;
        return PEAK / (d * d * d * sigma);
    }

    /**
     * Student's distribution function with 5 degrees of freedom, closed: with θ = arctan(z/√5), {@code ½ + (θ +
     * sin θ·cos θ·(1 + ⅔·cos² θ))/π}.
     */
    static double below(double z) {
        double theta = Math.atan(z / ROOT5);
        double cos = Math.cos(theta);
        return 0.5 + (theta + Math.sin(theta) * cos * (1 + 2 * cos * cos / 3)) / Math.PI;
    }

    /**
     * A number that scatters by Student's distribution: a normal one over the root of a mean of squares.
     *
     * @param normal numbers of the standard normal distribution
     */
    static double student(DoubleSupplier normal) {
        double above = normal.getAsDouble();
        double squares = 0;
        for (int i = 0; i < DEGREES; i++) {
            double each = normal.getAsDouble();
            squares += each * each;
        }
        return above / Math.sqrt(squares / DEGREES);
    }
}
