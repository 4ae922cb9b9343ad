package midplate.benchmark;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.advice.Glassware;
import midplate.advice.Question;
import midplate.advice.Window;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Sorbent;
import midplate.inference.PairName;
import midplate.plate.Eluent;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.plate.Setting;

/**
 * Puts what a task tells into questions as a user asks them; spots are named by their place, from 1.
 *
 * @param catalogue for the solvents
 */
record PlateQuestions(SolventCatalogue catalogue) {
    /** The name of the spot at a place, from 0. */
    static String name(int place) {
        return Integer.toString(place + 1);
    }

    /** The place, from 0, of the spot of that name. */
    static int place(String name) {
        return Integer.parseInt(name) - 1;
    }

    /**
     * A question.
     *
     * @param pair the solvents asked about
     * @param spots what was read of each spot
     * @param further plates beside these readings
     * @param setting where the plates are run
     */
    Question of(PairName pair, List<List<TrialReading>> spots, List<Run> further, Setting setting) {
        List<String> names = new ArrayList<>();
        Map<TrialPlate, Map<String, Reading>> plates = new LinkedHashMap<>();
        for (int i = 0; i < spots.size(); i++) {
            String spot = name(i);
            names.add(spot);
            for (TrialReading trial : spots.get(i)) {
                plates.computeIfAbsent(new TrialPlate(trial.pair(), trial.percent()), key -> new LinkedHashMap<>())
                        .put(spot, Reading.of(trial.rf()));
            }
        }
        List<Run> runs = new ArrayList<>();
        plates.forEach((plate, readings) -> runs.add(new Run(eluent(plate.pair(), plate.percent()), readings)));
        runs.addAll(further);
        return new Question(
                Sorbent.SILICA,
                catalogue.solvent(pair.weak()),
                catalogue.solvent(pair.strong()),
                Optional.empty(),
                names,
                runs,
                Window.USUAL,
                setting,
                Glassware.AUTOMATED);
    }

    /** A mixture of a pair [% v/v of the stronger solvent]. */
    Eluent eluent(PairName pair, double percent) {
        return Eluent.of(Sorbent.SILICA, catalogue.solvent(pair.weak()), catalogue.solvent(pair.strong()), percent);
    }

    private record TrialPlate(PairName pair, double percent) {}
}
