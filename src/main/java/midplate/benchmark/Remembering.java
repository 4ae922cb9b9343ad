package midplate.benchmark;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairName;
import midplate.plate.Setting;

/** A contender that is asked each question once and gives the same answer when it comes again. For one thread. */
final class Remembering implements Contender {
    private final Contender asked;
    private final Map<Question, List<Guess>> guesses = new HashMap<>();
    private final Map<List<List<TrialReading>>, Choice> choices = new HashMap<>();
    private final Map<Round, Optional<Scouted>> rounds = new HashMap<>();

    Remembering(Contender asked) {
        this.asked = asked;
    }

    @Override
    public String name() {
        return asked.name();
    }

    @Override
    public boolean foretells(PairName pair, PairName trials) {
        return asked.foretells(pair, trials);
    }

    @Override
    public List<Guess> guesses(PairName pair, List<TrialReading> trials, double[] percents) {
        List<Double> places = Arrays.stream(percents).boxed().toList();
        return guesses.computeIfAbsent(
                new Question(pair, trials, places), question -> asked.guesses(pair, trials, percents));
    }

    @Override
    public Choice choose(List<List<TrialReading>> spots) {
        return choices.computeIfAbsent(spots, asked::choose);
    }

    /** A plate that an error of its own moves hardly ever comes again: not remembered. */
    @Override
    public Optional<Choice> choose(List<List<TrialReading>> spots, Setting setting) {
        return asked.choose(spots, setting);
    }

    @Override
    public Optional<Scouted> scout(int spots, Scouted.Way way) {
        return rounds.computeIfAbsent(new Round(spots, way), round -> asked.scout(spots, way));
    }

    /** Two plates of one sample hardly ever come again: not remembered. */
    @Override
    public Optional<Matched> match(HalfLabelled plates, double[] percents) {
        return asked.match(plates, percents);
    }

    @Override
    public Optional<OpenMeasurements> expected(OpenMeasurements like, int number) {
        return asked.expected(like, number);
    }

    private record Round(int spots, Scouted.Way way) {}

    private record Question(PairName pair, List<TrialReading> trials, List<Double> percents) {}
}
