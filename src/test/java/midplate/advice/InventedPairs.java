package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import midplate.catalogue.JointTraits;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PairBasis;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;

/**
 * Two invented pairs and invented compounds of which the truth is known: {@code Rf = 1/(1 + e^−(c + G))}, c of a compound normal in
 * the first pair and normal around that in the second. It shares the formulas with the model and no code.
 */
final class InventedPairs {
    static final double MEAN = 0.3;
    static final double DEVIATION = 1.3;
    /** Of c in the second pair around c in the first [ln units]. */
    static final double AROUND = 0.5;

    static final double NOISE = 0.025;
    private static final double[] SHARES = {0, 10, 30, 60, 100};
    private static final double[] FIRST = {-4, -1.2, 0, 1.2, 2.2};
    private static final double[] SECOND = {-5, -2.6, -1, 0.6, 1.8};

    private InventedPairs() {}

    /** Both pairs as a perfect calibration would have them. */
    static MeasuredPairs measured() {
        PlatePair one = pair("ethyl-acetate", FIRST, DEVIATION * DEVIATION);
        double variance = DEVIATION * DEVIATION + AROUND * AROUND;
        PlatePair other = pair("diethyl-ether", SECOND, variance);
        return new MeasuredPairs(
                List.of(one, other),
                Optional.of(new JointTraits(
                        List.of(
                                new JointTraits.Axis(one.id(), JointTraits.Trait.C),
                                new JointTraits.Axis(other.id(), JointTraits.Trait.C)),
                        List.of(MEAN, MEAN),
                        List.of(DEVIATION * DEVIATION, DEVIATION * DEVIATION, variance),
                        List.of(
                                new JointTraits.Reach(one.id(), other.id(), 100, -10, 10),
                                new JointTraits.Reach(other.id(), one.id(), 100, -10, 10)),
                        JointTraits.Width.OF_THE_CURVE,
                        List.of())),
                List.of());
    }

    private static PlatePair pair(String strong, double[] strength, double variance) {
        SolventCatalogue catalogue = Asking.CATALOGUE;
        return new PlatePair(
                PairBasis.MEASURED,
                Sorbent.SILICA,
                catalogue.solvent("hexane"),
                catalogue.solvent(strong),
                0,
                100,
                list(SHARES),
                list(strength),
                List.of(0.0, 0.0, 0.0, 0.0, 0.0),
                List.of(1.0, 1.0, 1.0, 1.0, 1.0),
                List.of(0.0, 0.0, 0.0, 0.0, 0.0),
                List.of(NOISE, NOISE, NOISE, NOISE, NOISE),
                1,
                0,
                0,
                0,
                new PlatePair.Traits(List.of(new PlatePair.Bell(1, MEAN, 1, 0, variance, 0, 0, 0, 0, 0))),
                100,
                500,
                0.02,
                new PlatePair.Provenance(List.of(), "", "invented", ""));
    }

    /** c of a compound in both pairs [ln units]. */
    record Compound(double first, double second) {}

    static List<Compound> compounds(int count, Random random) {
        List<Compound> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double c = MEAN + DEVIATION * random.nextGaussian();
            all.add(new Compound(c, c + AROUND * random.nextGaussian()));
        }
        return all;
    }

    /** Student's t with 5 degrees of freedom. */
    static double student(Random random) {
        double squares = 0;
        for (int i = 0; i < 5; i++) {
            double each = random.nextGaussian();
            squares += each * each;
        }
        return random.nextGaussian() / Math.sqrt(squares / 5);
    }

    static double rf(double eta) {
        return 1 / (1 + Math.exp(-eta));
    }

    /** The true middle of a sample in the first pair at one of its shares. */
    static double middle(List<Compound> sample, int share) {
        return sample.stream()
                .mapToDouble(each -> rf(each.first() + FIRST[share]))
                .average()
                .orElseThrow();
    }

    /** G of the first pair at one of its shares [ln units]. */
    static double first(int share) {
        return FIRST[share];
    }

    /** The share at one place [% v/v]. */
    static double percent(int share) {
        return SHARES[share];
    }

    /** The strength that the second pair must have for the true middle to lie at an Rf [ln units], by halving. */
    static double strengthFor(List<Compound> sample, double wanted) {
        double low = -12;
        double high = 12;
        while (high - low > 1e-9) {
            double g = (low + high) / 2;
            double at = sample.stream()
                    .mapToDouble(each -> rf(each.second() + g))
                    .average()
                    .orElseThrow();
            low = at < wanted ? g : low;
            high = at < wanted ? high : g;
        }
        return low;
    }

    private static List<Double> list(double[] values) {
        List<Double> list = new ArrayList<>();
        for (double value : values) {
            list.add(value);
        }
        return list;
    }
}
