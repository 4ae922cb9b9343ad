package midplate.lesson;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import midplate.advice.Advice;
import midplate.advice.Ratio;
import midplate.catalogue.TeachingCompounds;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;
import midplate.plate.Eluent;
import midplate.plate.Reading;
import midplate.plate.Run;
import midplate.plate.Setting;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * What the questions of a worksheet draw from: the compounds, the pair, and where the model says they run.
 *
 * @param model the adviser
 * @param pair the pair
 * @param weak the weaker solvent
 * @param strong the stronger one
 * @param possible where the compounds may run in them
 */
record WorksheetBench(LessonModel model, WorksheetPair pair, Solvent weak, Solvent strong, PossibleRf possible) {
    /** Mixtures that a class pours; own choice. */
    static final List<Ratio> RATIOS = List.of(
            new Ratio(19, 1), new Ratio(9, 1), new Ratio(6, 1), new Ratio(4, 1), new Ratio(3, 1), new Ratio(2, 1));

    private static final List<String> LETTERS = List.of("A", "B", "C", "D");

    /** The letter of a spot or compound. */
    static String letter(int place) {
        return LETTERS.get(place);
    }

    /** What a compound of the table is called. */
    static Message named(LessonCompound compound) {
        return TeachingCompounds.builtIn().byId(compound.name()).orElseThrow().said();
    }

    /** The compounds with their letters. */
    static Message lettered(List<LessonCompound> compounds) {
        return Allowed.list(IntStream.range(0, compounds.size())
                .mapToObj(i -> Message.of(
                        "lesson.worksheet-lettered", "letter", letter(i), "compound", named(compounds.get(i))))
                .toList());
    }

    /** An eluent as it is said. */
    Message eluent(Ratio ratio) {
        return Message.of(
                "lesson.worksheet-eluent",
                "weak",
                weak.said(),
                "strong",
                strong.said(),
                "ratio",
                ratio.weak() + " : " + ratio.strong());
    }

    /** Compounds whose expected Rf lies between two limits, in the order of the table. */
    List<LessonCompound> between(double low, double high, double percent) {
        return possible.compounds().stream()
                .filter(compound -> {
                    double rf = possible.middle(compound, percent);
                    return rf >= low && rf <= high;
                })
                .toList();
    }

    /** What the program advises a class that told it what the compounds are and what one plate showed. */
    Advice advice(List<LessonCompound> compounds, double percent, DrawnPlate plate) {
        Map<String, Reading> readings = new LinkedHashMap<>();
        for (int i = 0; i < compounds.size(); i++) {
            double rf = plate.measured(plate.spots().get(i)).rf();
            readings.put(compounds.get(i).name(), Reading.asTyped(rf, Setting.CLASS));
        }
        LessonSample sample = new LessonSample(compounds, Sorbent.SILICA, weak, strong, Setting.CLASS);
        Run run = new Run(Eluent.of(Sorbent.SILICA, weak, strong, percent), readings);
        return model.adviser().apply(sample.question(List.of(run))).advice();
    }
}
