package midplate.advice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import midplate.inference.Outlook;
import midplate.inference.PairModel;
import midplate.plate.Setting;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * The middle of a sample in one pair: the mean over its spots of the Rf foretold, which rises with the share of the strong solvent.
 * Two mixtures are equally strong for a sample when its middle lies at the same Rf in both. For one thread.
 */
final class SampleMiddle {
    /** 95 of 100 values of a normal curve lie below its middle and so many standard deviations [1]. */
    private static final double NORMAL = 1.645;
    /** The same of Student's curve with 5 degrees of freedom, which readings follow [scales σ]. */
    private static final double STUDENT = 2.015;
    /** A share is found to so much [% v/v]. */
    private static final double FINE = 0.01;

    /** A middle so near to the Rf is that Rf: it is shown by two decimals [1]. */
    private static final double NEAR_ENOUGH = 5e-4;

    /** A range that is told by steps of 1 % [% v/v]. */
    private static final double NARROW = 20;

    /** From a step to the end of a narrow range it is at least so far [% v/v]. */
    private static final double NARROW_ROOM = 0.5;

    private static final double LEAST_DEVIATION = 0.002;

    private final Outlook outlook;
    private final Setting setting;
    private final Map<Double, Double> known = new HashMap<>();

    SampleMiddle(Outlook outlook, Setting setting) {
        this.outlook = outlook;
        this.setting = setting;
    }

    /**
     * Where the true Rf of a spot may lie at some share.
     *
     * @param mean its mean [1]
     * @param median half of what is possible lies below [1]
     * @param below standard deviation below the median [1]
     * @param above standard deviation above it [1]
     */
    record Spread(double mean, double median, double below, double above) {
        /** Of both sides together [1]. */
        double deviation() {
            return Math.max(LEAST_DEVIATION, (below + above) / 2);
        }
    }

    Outlook outlook() {
        return outlook;
    }

    private PairModel model() {
        return outlook.knowledge().model();
    }

    /** The least share of the pair's curve [% v/v]. */
    double lowest() {
        return model().lowestPercent();
    }

    /** The largest [% v/v]. */
    double highest() {
        return model().highestPercent();
    }

    /** The middle at a share [1]. */
    double at(double percent) {
        return known.computeIfAbsent(percent, share -> {
            double sum = 0;
            for (int spot = 0; spot < outlook.knowledge().spots(); spot++) {
                sum += outlook.spot(spot, share).rf();
            }
            return sum / outlook.knowledge().spots();
        });
    }

    /**
     * The share [% v/v] with the middle at an Rf [1], by halving the range of the pair's curve; its end where the middle does not
     * come there.
     */
    double shareOf(double rf) {
        double low = lowest();
        double high = highest();
        while (high - low > FINE) {
            double share = Math.expm1((Math.log1p(low) + Math.log1p(high)) / 2);
            if (Math.abs(at(share) - rf) < NEAR_ENOUGH) {
                return share;
            }
            if (at(share) < rf) {
                low = share;
            } else {
                high = share;
            }
        }
        return (low + high) / 2;
    }

    /**
     * The share [% v/v] at which the middle lies below an Rf [1] with a probability, all spots off together; the end of the range where
     * that is outside.
     */
    double shareWhereBelow(double rf, double probability) {
        double low = lowest();
        double high = highest();
        double wanted = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(probability);
        while (high - low > FINE) {
            double share = (low + high) / 2;
            double mean = 0;
            double deviation = 0;
            int spots = outlook.knowledge().spots();
            for (int spot = 0; spot < spots; spot++) {
                Spread each = spread(spot, share);
                mean += each.mean() / spots;
                deviation += each.deviation() / spots;
            }
            if ((rf - mean) / deviation > wanted) {
                low = share;
            } else {
                high = share;
            }
        }
        return (low + high) / 2;
    }

    /**
     * Where a spot truly lies at a share: the halves between which 5 and 95 of 100 readings lie less those of a reading, as squares. Both are taken for
     * what normal and Student curves have.
     */
    Spread spread(int spot, double percent) {
        Outlook.Spot band = outlook.spot(spot, percent);
        double noise = noise(percent, band.rf());
        return new Spread(
                outlook.rf(spot, percent),
                band.rf(),
                deviation(band.rf() - band.percentile5(), noise),
                deviation(band.percentile95() - band.rf(), noise));
    }

    /**
     * Half the 90 % band of a reading around the true Rf: a Student curve, widened by the errors of the setting: these are
     * normal, and nearly all of them an error of the plate, so they are told for Rf 0.5 and shrink towards the lines.
     */
    private double noise(double percent, double rf) {
        double own = model().scatter(percent, rf, Setting.AUTOMATED);
        double all = model().scatter(percent, rf, setting);
        double midway = Math.sqrt(Math.max(0, all * all - own * own));
        return Math.hypot(STUDENT * own, NORMAL * midway * 4 * rf * (1 - rf));
    }

    private static double deviation(double half, double noise) {
        return Math.sqrt(Math.max(0, half * half - noise * noise)) / NORMAL;
    }

    /** Steps that make a ladder: by 1 % in a narrow range, by 10 % in a wide one, closer where little strong solvent does much. */
    List<Rung> ladder() {
        List<Rung> rungs = new ArrayList<>();
        double room = highest() - lowest() > NARROW ? 1 : NARROW_ROOM;
        for (double share : steps()) {
            if (share > lowest() + room && share < highest() - room) {
                rungs.add(new Rung(share, at(share)));
            }
        }
        rungs.add(0, new Rung(lowest(), at(lowest())));
        rungs.add(new Rung(highest(), at(highest())));
        return rungs;
    }

    private List<Double> steps() {
        List<Double> steps = new ArrayList<>();
        if (highest() - lowest() > NARROW) {
            steps.addAll(List.of(2.0, 5.0));
        }
        double step = highest() - lowest() > NARROW ? 10 : 1;
        for (double share = step; share < 100; share += step) {
            steps.add(share);
        }
        return steps;
    }
}
