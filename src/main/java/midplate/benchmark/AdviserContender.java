package midplate.benchmark;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.advice.Advice;
import midplate.advice.Adviser;
import midplate.advice.Glassware;
import midplate.advice.Question;
import midplate.advice.Window;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;
import midplate.inference.OpenMeasurements;
import midplate.inference.PairCalibration;
import midplate.inference.PairName;
import midplate.plate.Eluent;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.plate.Setting;

/** The program itself, asked as a user asks it, in the setting of the automated laboratory. */
final class AdviserContender implements Contender {
    private final String name;
    private final SolventCatalogue catalogue;
    private final Adviser adviser;

    private AdviserContender(String name, SolventCatalogue catalogue, Adviser adviser) {
        this.name = name;
        this.catalogue = catalogue;
        this.adviser = adviser;
    }

    /** Fits the curves to the training folds. */
    static ContenderFactory factory(String name, SolventCatalogue catalogue, PairCalibration.Areas areas) {
        return new ContenderFactory() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public Contender trainedOn(OpenMeasurements training) {
                return new AdviserContender(
                        name,
                        catalogue,
                        Adviser.of(catalogue, PairCalibration.fit(training, catalogue, "benchmark FOLDER", areas)));
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
        Advice advice = adviser.advise(question(PairName.HEXANE_ETHYL_ACETATE, spots));
        return new Choice(advice.ratio().percentStrong(), advice.forecast().chance());
    }

    private Question question(PairName pair, List<List<TrialReading>> spots) {
        List<String> names = new ArrayList<>();
        Map<TrialPlate, Map<String, Reading>> plates = new LinkedHashMap<>();
        for (int i = 0; i < spots.size(); i++) {
            String spot = Integer.toString(i + 1);
            names.add(spot);
            for (TrialReading trial : spots.get(i)) {
                plates.computeIfAbsent(new TrialPlate(trial.pair(), trial.percent()), key -> new LinkedHashMap<>())
                        .put(spot, Reading.of(trial.rf()));
            }
        }
        List<Run> runs = new ArrayList<>();
        plates.forEach((plate, readings) -> runs.add(new Run(
                Eluent.of(
                        Sorbent.SILICA,
                        catalogue.solvent(plate.pair().weak()),
                        catalogue.solvent(plate.pair().strong()),
                        plate.percent()),
                readings)));
        return new Question(
                Sorbent.SILICA,
                catalogue.solvent(pair.weak()),
                catalogue.solvent(pair.strong()),
                Optional.empty(),
                names,
                runs,
                Window.USUAL,
                Setting.AUTOMATED,
                Glassware.AUTOMATED);
    }

    private record TrialPlate(PairName pair, double percent) {}
}
