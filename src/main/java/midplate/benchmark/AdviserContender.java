package midplate.benchmark;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import midplate.advice.Advice;
import midplate.advice.Adviser;
import midplate.advice.Consultation;
import midplate.advice.Forecast;
import midplate.advice.Question;
import midplate.advice.Ratio;
import midplate.advice.ScoutingPlan;
import midplate.catalogue.MeasuredPairs;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;
import midplate.inference.Form;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairCalibration;
import midplate.inference.PairName;
import midplate.inference.SpotGuess;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.plate.Setting;
import midplate.plate.UnlabelledLane;
import midplate.plate.UnlabelledSpot;

/** The program itself, asked as a user asks it, in the setting of the automated laboratory unless another one is asked for. */
final class AdviserContender implements Contender {
    private final String name;
    private final PlateQuestions questions;
    private final Adviser adviser;

    /** With curves that are fitted already. */
    AdviserContender(String name, SolventCatalogue catalogue, Adviser adviser) {
        this.name = name;
        this.questions = new PlateQuestions(catalogue);
        this.adviser = adviser;
    }

    /** Fits the curves to the training folds; beyond the usual its contenders are asked what is named. */
    static ContenderFactory factory(String name, SolventCatalogue catalogue, Form form, Further... further) {
        Set<Further> asked = Set.of(further);
        return new ContenderFactory() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public Contender trainedOn(OpenMeasurements training) {
                return new AdviserContender(name, catalogue, Adviser.of(catalogue, fit(training)));
            }

            @Override
            public Contender trainedWithout(PairName pair, OpenMeasurements training) {
                String id =
                        PlatePair.id(Sorbent.SILICA, catalogue.solvent(pair.weak()), catalogue.solvent(pair.strong()));
                return new AdviserContender(
                        name, catalogue, Adviser.of(catalogue, fit(training).without(id)));
            }

            private MeasuredPairs fit(OpenMeasurements training) {
                return PairCalibration.fit(training, catalogue, "benchmark FOLDER", form);
            }

            @Override
            public Set<Further> further() {
                return asked;
            }
        };
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<Guess> guesses(PairName pair, List<TrialReading> trials, double[] percents) {
        return adviser
                .predict(
                        question(pair, List.of(trials)),
                        Arrays.stream(percents).boxed().toList())
                .stream()
                .map(forecast -> forecast.spots().get(0))
                .map(spot -> new Guess(spot.rf(), spot.low(), spot.high()))
                .toList();
    }

    @Override
    public Choice choose(List<List<TrialReading>> spots) {
        return choice(adviser.advise(question(PairName.HEXANE_ETHYL_ACETATE, spots)));
    }

    @Override
    public Optional<Choice> choose(List<List<TrialReading>> spots, Setting setting) {
        return Optional.of(choice(adviser.advise(question(PairName.HEXANE_ETHYL_ACETATE, spots, List.of(), setting))));
    }

    @Override
    public Optional<Scouted> scout(int spots, Scouted.Way way) {
        ScoutingPlan plan = adviser.scout(
                question(PairName.HEXANE_ETHYL_ACETATE, Collections.nCopies(spots, List.of())), way.jars());
        return switch (way) {
            case STRAIGHT ->
                Optional.of(new Scouted(
                        List.of(plan.straight().ratio().percentStrong()),
                        plan.straight().round().chance()));
            case ONE, TWO, THREE ->
                Optional.of(new Scouted(plan.percentsStrong(), plan.round().chance()));
            case HABIT ->
                plan.habit()
                        .map(habit -> new Scouted(
                                habit.ratios().stream()
                                        .map(Ratio::percentStrong)
                                        .toList(),
                                habit.round().chance()));
        };
    }

    @Override
    public Optional<OpenMeasurements> expected(OpenMeasurements like, int number) {
        return Optional.of(ExpectedCompounds.of(adviser, questions, like, number));
    }

    private static Choice choice(Advice advice) {
        return new Choice(advice.ratio().percentStrong(), advice.forecast().chance());
    }

    @Override
    public Optional<Matched> match(HalfLabelled plates, double[] percents) {
        PairName pair = PairName.HEXANE_ETHYL_ACETATE;
        Consultation consultation = adviser.consult(question(
                pair,
                plates.labelled().stream().map(List::of).toList(),
                List.of(unlabelled(pair, plates.percent(), plates.seen()))));
        List<Matched.Which> guesses = consultation.whichIsWhich().stream()
                .map(SpotGuess::guess)
                .map(AdviserContender::which)
                .toList();
        List<Forecast> forecasts =
                consultation.at(Arrays.stream(percents).boxed().toList());
        List<List<Double>> rfs = IntStream.range(0, plates.labelled().size())
                .mapToObj(spot -> forecasts.stream()
                        .map(forecast -> forecast.spots().get(spot).rf())
                        .toList())
                .toList();
        return Optional.of(new Matched(guesses, rfs, choice(consultation.advice())));
    }

    private Run unlabelled(PairName pair, double percent, List<Double> seen) {
        List<UnlabelledSpot> spots = new ArrayList<>();
        for (int i = 0; i < seen.size(); i++) {
            spots.add(new UnlabelledSpot(i, Reading.of(seen.get(i))));
        }
        return new Run(
                questions.eluent(pair, percent), Map.of(), List.of(new UnlabelledLane(1, Set.of(), spots)), Set.of());
    }

    private static Matched.Which which(SpotGuess.Possibility guess) {
        return new Matched.Which(
                guess.spots().stream().map(PlateQuestions::place).collect(Collectors.toSet()),
                Math.min(1, guess.probability()));
    }

    private Question question(PairName pair, List<List<TrialReading>> spots) {
        return question(pair, spots, List.of());
    }

    private Question question(PairName pair, List<List<TrialReading>> spots, List<Run> further) {
        return question(pair, spots, further, Setting.AUTOMATED);
    }

    private Question question(PairName pair, List<List<TrialReading>> spots, List<Run> further, Setting setting) {
        return questions.of(pair, spots, further, setting);
    }
}
