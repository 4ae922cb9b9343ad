package midplate.advice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import midplate.catalogue.PairBasis;
import midplate.catalogue.PlatePair;
import midplate.inference.Knowledge;
import midplate.inference.PlateModels;
import midplate.inference.PlateRun;
import midplate.plate.Reading;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.primes.Primes;

/**
 * The shares of another pair between which the one truly lies that is as strong as a mixture, with probability 0.9.
 *
 * <p>Truly equally strong is the share q* at which the mean of the sample's true Rf is what it is in the mixture asked about. Two
 * things are not known: where the spots truly lie there, and what that says of the other pair. So the first is drawn ({@value #DRAWS}
 * times, evenly: a Kronecker sequence over what is known of each spot), and the other pair is learned each time as if plates of the mixture had shown
 * just that ({@value #COPIES} alike, so that the noise of their readings hardly counts). In the other pair
 * {@code P(q* > q) = Φ((f − m(q)) / σ(q))}, f the mean of the Rf drawn, m the middle of the sample there, σ its standard
 * deviation; the band ends where the mean of this over the draws is 0.95 and 0.05.
 *
 * <p>σ² = Σσᵢ²/n² over n spots where the pair was measured: what one compound does says nothing of the next. Where it was not, all
 * may be off together, since the published strengths may be: σ = Σσᵢ/n. Outside the range of the pair the band is cut off.
 */
final class EqualStrengthBand {
    /** Draws of where the spots truly lie. */
    static final int DRAWS = 8;
    /** Plates that show them there. */
    static final int COPIES = 4;

    private static final double TAIL = 0.05;
    /** An Rf nearer to a line than this is read as this: nearer, a reading tells nothing [1]. */
    private static final double NEAR_LINE = 0.02;

    /** A place is found to so much [ln(% + 1)]. */
    private static final double FINE = 1e-3;
    /** An end at which the probability is off by so few deviations is taken: 0.05 is then 0.048 to 0.052. */
    private static final double NEAR_ENOUGH = 0.02;

    private static final int MOST_STEPS = 30;
    private static final double LEAST = 1e-9;
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private final Question question;
    private final PlateModels models;
    private final PlatePair other;
    private final List<Draw> draws = new ArrayList<>();

    /** The other pair as one draw has it, and where the middle lies in the mixture asked about [1]. */
    private record Draw(SampleMiddle middle, double rf) {}

    /**
     * @param runs all plates that count
     * @param now the sample in the pair asked about
     * @param shown the plate that would show it: pair and share of the mixture asked about, without readings
     */
    EqualStrengthBand(
            Question question,
            PlateModels models,
            PlatePair other,
            List<PlateRun> runs,
            SampleMiddle now,
            double percent,
            PlateRun shown) {
        this.question = question;
        this.models = models;
        this.other = other;
        List<SampleMiddle.Spread> spreads = new ArrayList<>();
        for (int spot = 0; spot < question.spots().size(); spot++) {
            spreads.add(now.spread(spot, percent));
        }
        for (int draw = 0; draw < DRAWS; draw++) {
            draws.add(drawn(draw, spreads, runs, shown));
        }
    }

    private Draw drawn(int draw, List<SampleMiddle.Spread> spreads, List<PlateRun> runs, PlateRun shown) {
        Map<String, Reading> readings = new HashMap<>();
        double sum = 0;
        int prime = 2;
        for (int spot = 0; spot < spreads.size(); spot++) {
            double place = (draw + 1) * Math.sqrt(prime);
            double rf = drawn(spreads.get(spot), place - Math.floor(place));
            readings.put(question.spots().get(spot), Reading.of(rf));
            sum += rf;
            prime = Primes.nextPrime(prime + 1);
        }
        List<PlateRun> all = new ArrayList<>(runs);
        for (int copy = 0; copy < COPIES; copy++) {
            all.add(new PlateRun(shown.pair(), shown.percent(), readings));
        }
        Knowledge knowledge =
                models.learn(other.id(), question.setting(), question.spots(), all, question.structures());
        Window window = question.window();
        return new Draw(
                new SampleMiddle(
                        models.outlook(knowledge, question.setting(), window.low(), window.high()), question.setting()),
                sum / spreads.size());
    }

    private static double drawn(SampleMiddle.Spread spread, double probability) {
        double z = NORMAL.inverseCumulativeProbability(probability);
        double rf = spread.median() + z * (z < 0 ? spread.below() : spread.above());
        return Math.max(NEAR_LINE, Math.min(1 - NEAR_LINE, rf));
    }

    /** The lower end [% v/v]. */
    double low() {
        return share(1 - TAIL);
    }

    /** The upper end [% v/v]. */
    double high() {
        return share(TAIL);
    }

    /**
     * The share that the true one is above with a probability; the end of the range where that lies outside. As deviations of a
     * normal curve the probabilities are nearly a straight line in ln(q + 1), so they are looked for by false position, the end that stays
     * counting half at each step.
     */
    private double share(double probability) {
        double wanted = deviation(probability);
        double low = Math.log1p(draws.get(0).middle().lowest());
        double high = Math.log1p(draws.get(0).middle().highest());
        double atLow = deviation(above(Math.expm1(low))) - wanted;
        double atHigh = deviation(above(Math.expm1(high))) - wanted;
        if (atLow <= 0) {
            return Math.expm1(low);
        }
        if (atHigh >= 0) {
            return Math.expm1(high);
        }
        double place = low;
        for (int step = 0; step < MOST_STEPS && high - low > FINE; step++) {
            place = low + (high - low) * atLow / (atLow - atHigh);
            double at = deviation(above(Math.expm1(place))) - wanted;
            if (Math.abs(at) < NEAR_ENOUGH) {
                return Math.expm1(place);
            }
            boolean wasLow = at > 0;
            low = wasLow ? place : low;
            high = wasLow ? high : place;
            atLow = wasLow ? at : atLow / 2;
            atHigh = wasLow ? atHigh / 2 : at;
        }
        return Math.expm1(place);
    }

    private static double deviation(double probability) {
        return NORMAL.inverseCumulativeProbability(Math.max(LEAST, Math.min(1 - LEAST, probability)));
    }

    /** The probability that the truly equal share lies above one [1]. */
    private double above(double percent) {
        double sum = 0;
        for (Draw draw : draws) {
            double mean = 0;
            double squares = 0;
            double together = 0;
            int spots = question.spots().size();
            for (int spot = 0; spot < spots; spot++) {
                SampleMiddle.Spread spread = draw.middle().spread(spot, percent);
                mean += spread.mean() / spots;
                squares += spread.deviation() * spread.deviation();
                together += spread.deviation() / spots;
            }
            double deviation = other.basis() == PairBasis.MEASURED ? Math.sqrt(squares) / spots : together;
            sum += NORMAL.cumulativeProbability((draw.rf() - mean) / deviation);
        }
        return sum / draws.size();
    }
}
