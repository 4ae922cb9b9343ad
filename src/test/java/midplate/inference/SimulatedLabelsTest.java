package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import midplate.plate.Reading;
import midplate.plate.Setting;
import midplate.plate.UnlabelledLane;
import midplate.plate.UnlabelledSpot;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Simulated samples of two or three compounds: a plate with labels, then one or two without. Now and then a compound is not
 * seen or a foreign spot is, and spots nearer than 0.04 are seen as one. What is said of which is which comes true as often as it
 * is said; seeds are fixed.
 */
@DisplayName("Guesses and chances after simulated plates without labels")
class SimulatedLabelsTest {
    private static final SimulatedPair TRUTH = SimulatedPair.USUAL;
    private static final PlateModels MODELS = TRUTH.models();
    private static final List<String> NAMES = List.of("A", "B", "C");
    private static final int SHARES = 8;
    private static final double ALIKE = 0.04;
    private static final int BINS = 5;
    private static final int LEAST = 20;

    /** What is seen of some compounds at one place. */
    private record Seen(double rf, Set<String> spots) {}

    private static Reading reading(double rf, Setting setting) {
        if (setting == Setting.AUTOMATED || (rf > 0 && rf < 1)) {
            return Reading.of(rf);
        }
        return rf == 0 ? Reading.atStart(0.03) : Reading.atFront(0.97);
    }

    private static List<Seen> lane(
            List<SimulatedPair.Compound> sample, int share, SimulatedPair.Hand hand, Random random) {
        double error = SimulatedPair.plateError(hand, random);
        List<Seen> single = new ArrayList<>();
        for (int i = 0; i < sample.size(); i++) {
            double rf = TRUTH.read(sample.get(i), share, error, hand, random);
            if (random.nextDouble() >= 0.05) {
                single.add(new Seen(rf, Set.of(NAMES.get(i))));
            }
        }
        if (random.nextDouble() < 0.01) {
            single.add(new Seen(random.nextDouble(), Set.of()));
        }
        single.sort(Comparator.comparingDouble(Seen::rf));
        List<Seen> merged = new ArrayList<>();
        for (int from = 0; from < single.size(); ) {
            int to = from + 1;
            while (to < single.size()
                    && single.get(to).rf() - single.get(to - 1).rf() < ALIKE) {
                to++;
            }
            Set<String> spots = new TreeSet<>();
            single.subList(from, to).forEach(each -> spots.addAll(each.spots()));
            double rf = single.subList(from, to).stream()
                    .mapToDouble(Seen::rf)
                    .average()
                    .orElseThrow();
            merged.add(new Seen(rf, spots));
            from = to;
        }
        return merged;
    }

    private static PlateRun unlabelled(int share, List<Seen> lane, int number, Setting setting) {
        List<UnlabelledSpot> spots = new ArrayList<>();
        for (int i = 0; i < lane.size(); i++) {
            spots.add(new UnlabelledSpot(i, reading(lane.get(i).rf(), setting)));
        }
        List<UnlabelledLane> lanes = spots.isEmpty() ? List.of() : List.of(new UnlabelledLane(1, Set.of(), spots));
        return new PlateRun(Plates.ACETATE, TRUTH.percents()[share], Map.of(), number, lanes, Set.of());
    }

    private static PlateRun labelled(
            List<SimulatedPair.Compound> sample, int share, SimulatedPair.Hand hand, Setting setting, Random random) {
        double error = SimulatedPair.plateError(hand, random);
        Map<String, Reading> readings = new HashMap<>();
        for (int i = 0; i < sample.size(); i++) {
            readings.put(NAMES.get(i), reading(TRUTH.read(sample.get(i), share, error, hand, random), setting));
        }
        return new PlateRun(Plates.ACETATE, TRUTH.percents()[share], readings);
    }

    /** Said against came true. */
    private static final class Tally {
        private final double[] said = new double[BINS + 1];
        private final int[] came = new int[BINS + 1];
        private final int[] all = new int[BINS + 1];

        void add(double probability, boolean right) {
            for (int bin : new int[] {Math.min(BINS - 1, (int) (probability * BINS)), BINS}) {
                said[bin] += probability;
                came[bin] += right ? 1 : 0;
                all[bin]++;
            }
        }

        /** The most standard errors of independent tries between what was said and what came, over all that count. */
        double away() {
            double most = 0;
            for (int bin = 0; bin <= BINS; bin++) {
                if (all[bin] >= LEAST) {
                    double p = said[bin] / all[bin];
                    double error = Math.sqrt(p * (1 - p) / all[bin]);
                    most = Math.max(most, Math.abs(p - (double) came[bin] / all[bin]) / error);
                }
            }
            return most;
        }

        @Override
        public String toString() {
            StringBuilder text = new StringBuilder();
            for (int bin = 0; bin <= BINS; bin++) {
                text.append(String.format(
                        Locale.ROOT,
                        " [%.3f said, %.3f came, %d]",
                        said[bin] / all[bin],
                        (double) came[bin] / all[bin],
                        all[bin]));
            }
            return text.toString();
        }
    }

    /** What was said of samples, and what came of it. */
    private record Told(Tally guesses, Tally chances) {
        static Told of(Setting setting, SimulatedPair.Hand hand, int plates, int samples) {
            Told told = new Told(new Tally(), new Tally());
            Random random = new Random(23 + plates);
            for (int trial = 0; trial < samples; trial++) {
                told.sample(setting, hand, plates, random);
            }
            return told;
        }

        private void sample(Setting setting, SimulatedPair.Hand hand, int plates, Random random) {
            List<String> names = NAMES.subList(0, 2 + random.nextInt(2));
            List<SimulatedPair.Compound> sample = new ArrayList<>();
            names.forEach(name -> sample.add(TRUTH.compound(random)));
            List<List<Seen>> truth = new ArrayList<>(List.of(List.of()));
            List<PlateRun> runs = new ArrayList<>();
            runs.add(labelled(sample, random.nextInt(SHARES), hand, setting, random));
            for (int i = 1; i <= plates; i++) {
                int share = random.nextInt(SHARES);
                truth.add(lane(sample, share, hand, random));
                runs.add(unlabelled(share, truth.get(i), i, setting));
            }
            Outlook outlook = Plates.outlook(MODELS, Plates.ACETATE, setting, names, runs, 0.2, 0.8);
            for (SpotGuess guess : outlook.knowledge().guesses()) {
                Set<String> said = Set.copyOf(guess.guess().spots());
                boolean right =
                        truth.get(guess.run()).get(guess.index()).spots().equals(said);
                guesses.add(guess.guess().probability(), right);
            }
            int next = 2 + random.nextInt(4);
            PlateRun plate = labelled(sample, next, hand, Setting.AUTOMATED, random);
            boolean inside = plate.readings().values().stream().allMatch(read -> read.rf() >= 0.2 && read.rf() <= 0.8);
            List<Integer> all = IntStream.range(0, names.size()).boxed().toList();
            chances.add(outlook.chance(plate.percent(), all), inside);
        }
    }

    // Three binomial errors in each fifth with twenty tries or more, and over all.
    @ParameterizedTest
    @CsvSource({"AUTOMATED, 1, 900", "AUTOMATED, 2, 600", "BENCH, 1, 900", "BENCH, 2, 600"})
    void comeTrueAsOftenAsIsSaid(Setting setting, int plates, int samples) {
        SimulatedPair.Hand hand = setting == Setting.BENCH ? SimulatedPair.Hand.BENCH : SimulatedPair.Hand.AUTOMATED;
        Told told = Told.of(setting, hand, plates, samples);
        assertTrue(told.guesses().away() <= 3, "guesses" + told.guesses());
        assertTrue(told.chances().away() <= 3, "chances" + told.chances());
        assertTrue(told.guesses().all[BINS - 1] > 2 * told.guesses().all[2], "most are told apart" + told.guesses());
    }

    // The other way round: who takes shaky plates for those of the machine is too sure of what is which.
    @Test
    void shakyPlatesTakenForThoseOfAMachineAreFoundOut() {
        Told told = Told.of(Setting.AUTOMATED, new SimulatedPair.Hand(0.06, 0.7), 1, 400);
        assertTrue(told.guesses().away() > 3, told.guesses().toString());
    }
}
