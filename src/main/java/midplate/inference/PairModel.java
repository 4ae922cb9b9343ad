package midplate.inference;

import java.util.Arrays;
import java.util.List;
import midplate.catalogue.PlatePair;
import midplate.chemistry.MonotoneCubic;
import midplate.chemistry.RetentionFactor;
import midplate.plate.Setting;

/**
 * What is known about one solvent pair: {@code η = a(p)·c + s·G(p) + t·L(p)}, with G [ln units] the strength curve of the pair over
 * the share p [% v/v] of the strong solvent, L [ln units] how far spots are ahead there where the layer lets them climb early, c [ln units] and s [1]
 * the traits of a compound, t [1] the state of the layers on the day it was run, and η [ln units] the logit of Rf up to what a plate shows near its lines ({@code Rf = (1 + ε₀ + ε₁)/(1 + e^(−η)) − ε₀}, ε small).
 *
 * <p>It is Snyder's law with a measured curve in place of the tabulated one: c holds the compound's adsorption energy, s its
 * area relative to the average. Where the strong solvent covers the surface only in part, what was run one day climbs higher or lower than
 * what was run another day, all of it alike: t says so, and L is 0 elsewhere. Nothing tells on which day the next plate is run, so t is
 * spread as it was measured, and taken for each spot by itself. In the pure
 * weak solvent nothing covers the surface, and compounds differ in how they are held by a > 1 times as much as beside the strong
 * one, which is Snyder's activity of the sorbent; a is 1 elsewhere. Between the measured shares G, L and a are monotone cubics in ln(p + 1); above the last one G goes
 * on straight in ln(p + 1), as the straight line of Soczewiński does.
 *
 * @see "Snyder1968"
 * @see "Soczewinski1969"
 */
public final class PairModel {
    private final String id;
    private final StrengthCurve strength;
    private final MonotoneCubic hold;
    private final MonotoneCubic early;
    private final Noise noise;
    private final Stretch stretch;
    private final TraitPrior prior;
    private final double[] range;
    private final double[] rf = new double[LogitScale.SIZE];
    private final double[] beyond = new double[LogitScale.SIZE];

    private PairModel(
            String id,
            StrengthCurve strength,
            MonotoneCubic hold,
            MonotoneCubic early,
            Noise noise,
            Stretch stretch,
            TraitPrior prior,
            double lowest,
            double highest) {
        this.id = id;
        this.strength = strength;
        this.hold = hold;
        this.early = early;
        this.noise = noise;
        this.stretch = stretch;
        for (int mark = 0; mark < rf.length; mark++) {
            rf[mark] = stretch.rf(LogitScale.logistic(mark));
            beyond[mark] = stretch.beyond(LogitScale.logistic(mark));
        }
        this.prior = prior;
        this.range = new double[] {lowest, highest};
    }

    /** The model of a pair, measured or made from published strengths. */
    public static PairModel of(PlatePair pair) {
        double[] percents = array(pair.percentStrong());
        double[] places = Arrays.stream(percents).map(Math::log1p).toArray();
        return new PairModel(
                pair.id(),
                measured(percents, array(pair.strength())),
                MonotoneCubic.through(places, array(pair.hold())),
                MonotoneCubic.through(places, array(pair.early())),
                Noise.of(percents, array(pair.noiseScale()), pair.noiseLeftAtLines(), pair.atLines()),
                new Stretch(pair.stretchStart(), pair.stretchFront()),
                TraitPrior.of(pair.prior()),
                percents[0],
                percents[percents.length - 1]);
    }

    /** The curve through measured points, straight in ln(p + 1) above the last. */
    static StrengthCurve measured(double[] percents, double[] strength) {
        double[] x = Arrays.stream(percents).map(Math::log1p).toArray();
        int last = x.length - 1;
        MonotoneCubic inside = MonotoneCubic.through(x, strength);
        double slope = (strength[last] - strength[last - 1]) / (x[last] - x[last - 1]);
        return percent -> {
            double place = Math.log1p(percent);
            return place <= x[last] ? inside.at(place) : strength[last] + slope * (place - x[last]);
        };
    }

    /** The pair's id, such as {@code silica-hexane-ethyl-acetate}. */
    public String id() {
        return id;
    }

    /** G at a share of the strong solvent [ln units]. */
    public double strength(double percent) {
        return strength.at(percent);
    }

    /** What the eluent of a share of the strong solvent does [% v/v]. */
    public Climb climb(double percent) {
        double place = Math.log1p(percent);
        return new Climb(hold.at(place), strength.at(percent), early.at(place));
    }

    /** The least share of the curve: of a measured pair the least that was measured [% v/v]. */
    public double lowestPercent() {
        return range[0];
    }

    /** The largest share of the curve, likewise [% v/v]. */
    public double highestPercent() {
        return range[1];
    }

    /** The scale σ [1] by which a reading at that share and Rf scatters in a setting, the plate's own error included. */
    public double scatter(double percent, double rf, Setting setting) {
        return noise.sigma(percent, rf, PlateScatter.of(setting).unshared().readingError());
    }

    /**
     * η [1] at which a spot shows an Rf [1]: the inverse of {@code Rf = (1 + ε₀ + ε₁)/(1 + e^(−η)) − ε₀}; −∞ for 0 and +∞ for
     * 1, at which every spot is that sits on the line.
     */
    public double eta(double rf) {
        if (!(rf > 0)) {
            return Double.NEGATIVE_INFINITY;
        }
        return rf < 1 ? RetentionFactor.logit(stretch.logistic(rf)) : Double.POSITIVE_INFINITY;
    }

    /** The Rf [1] that a spot of some η [1] shows, held between the lines. */
    public double rf(double eta) {
        return rf[LogitScale.mark(eta)];
    }

    /** Rf at each mark of η [1]; not to be changed. */
    double[] rf() {
        return rf;
    }

    /** The same, not held between the lines; not to be changed. */
    double[] beyond() {
        return beyond;
    }

    /** σ [1] of a reading at each mark of η, at that share and with an error on top. */
    double[] sigma(double percent, double extra) {
        double middle = noise.middle(percent);
        double[] sigma = new double[rf.length];
        for (int mark = 0; mark < sigma.length; mark++) {
            sigma[mark] = noise.sigmaFrom(middle, rf[mark], extra);
        }
        return sigma;
    }

    Noise noise() {
        return noise;
    }

    TraitPrior prior() {
        return prior;
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** A strength curve: the share of the strong solvent [% v/v] to G [ln units], never falling. */
    @FunctionalInterface
    interface StrengthCurve {
        /** G at that share [ln units]. */
        double at(double percent);
    }
}
