package midplate.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import midplate.inference.PairModel;
import midplate.plate.Setting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Compounds and plates are invented and the truth is known. */
@DisplayName("The band of equal strength")
class EqualStrengthBandTest {
    private static final int SAMPLES = 160;
    /** 0.9 less and more three standard errors of a share of {@value #SAMPLES}. */
    private static final double FEWEST = 0.83;

    private static final double MOST = 0.97;

    private static final Adviser ADVISER = Adviser.of(Asking.CATALOGUE, InventedPairs.measured());
    /** G of the second pair, between its shares as the model has it. */
    private static final PairModel SECOND =
            PairModel.of(InventedPairs.measured().pairs().get(1));

    @ParameterizedTest
    @CsvSource({
        // spots, plates read at 30 % of the first pair, setting, what is to be equalled
        "1, 1, AUTOMATED, 2",
        "3, 1, AUTOMATED, 3",
        "1, 0, AUTOMATED, 2",
        "3, 0, AUTOMATED, 2",
        "3, 1, BENCH, 2",
        "2, 2, CLASS, 2",
    })
    void holdsTheTrulyEqualShareInAboutNineOfTen(int spots, int plates, Setting setting, int share) {
        Random random = new Random(7);
        int held = 0;
        for (int i = 0; i < SAMPLES; i++) {
            List<InventedPairs.Compound> sample = InventedPairs.compounds(spots, random);
            Replacements found = others(sample, plates, setting, share, random);
            if (found.of().aim().isPresent()) {
                i--; // sits at a line: then nothing is equalled
                continue;
            }
            OtherEluent other = found.others().get(0);
            double needed = InventedPairs.strengthFor(sample, InventedPairs.middle(sample, share));
            held += other.equal().isPresent() && holds(other.equal().get(), needed) ? 1 : 0;
        }
        double came = (double) held / SAMPLES;
        assertTrue(came >= FEWEST && came <= MOST, "held the truth: " + came);
    }

    /** A band that ends where the pair does holds whatever lies beyond. */
    private static boolean holds(OtherEluent.Equal band, double needed) {
        boolean low = band.low() <= 0 || SECOND.strength(band.low()) <= needed;
        boolean high = band.high() >= 100 || SECOND.strength(band.high()) >= needed;
        return low && high;
    }

    private static Replacements others(
            List<InventedPairs.Compound> sample, int plates, Setting setting, int share, Random random) {
        String[] names =
                IntStream.range(0, sample.size()).mapToObj(spot -> "S" + spot).toArray(String[]::new);
        Asking asking = Asking.acetate().spots(names).in(setting);
        for (int plate = 0; plate < plates; plate++) {
            double together = shared(setting) * random.nextGaussian();
            Map<String, Double> rf = new LinkedHashMap<>();
            for (int spot = 0; spot < names.length; spot++) {
                double at = InventedPairs.rf(sample.get(spot).first() + InventedPairs.first(2) + together);
                double sigma = Math.hypot(InventedPairs.NOISE, alone(setting));
                rf.put(names[spot], Math.max(0, Math.min(1, at + sigma * InventedPairs.student(random))));
            }
            asking.run(InventedPairs.percent(2), rf);
        }
        Replacements found = ADVISER.others(
                asking.question(),
                new OthersWish(OptionalDouble.of(InventedPairs.percent(share)), java.util.Optional.empty()));
        assertEquals(1, found.others().size());
        return found;
    }

    /** The errors of the settings as the README has them; a shift of η is 4 times that of Rf midway. */
    private static double shared(Setting setting) {
        return switch (setting) {
            case AUTOMATED -> 0;
            case BENCH -> 4 * 0.035;
            case CLASS -> 4 * 0.06;
        };
    }

    private static double alone(Setting setting) {
        return switch (setting) {
            case AUTOMATED -> 0;
            case BENCH -> 0.015;
            case CLASS -> 0.02;
        };
    }
}
