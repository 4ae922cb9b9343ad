package midplate.lesson;

import java.util.List;
import java.util.Optional;
import midplate.advice.Ratio;
import midplate.words.Message;

/** A plate with three compounds in lanes of their own: measure, and work out each Rf. */
final class RfQuestion {
    private static final int SPOTS = 3;
    private static final double LEAST_RF = 0.1;
    private static final double MOST_RF = 0.9;
    /** Neighbours lie at least so far apart in Rf: three places, not two. */
    private static final double APART = 0.1;

    private RfQuestion() {}

    /** A plate drawn: three compounds, the ratio, and one possible truth. */
    record Drawn(List<LessonCompound> compounds, Ratio ratio, DrawnPlate plate) {}

    static Optional<WorksheetQuestion> of(SeededDraws draws, WorksheetBench bench) {
        return drawn(draws, bench)
                .map(drawn -> new WorksheetQuestion(
                        WorksheetKind.RF,
                        List.of(
                                Message.of(
                                        "lesson.worksheet-plate-of",
                                        "eluent",
                                        bench.eluent(drawn.ratio()),
                                        "compounds",
                                        WorksheetBench.lettered(drawn.compounds())),
                                Message.of("lesson.worksheet-rf-ask")),
                        Optional.of(drawn.plate()),
                        Optional.of(RulerTables.toFill(drawn.plate())),
                        0,
                        new WorksheetQuestion.Key(
                                List.of(Message.of("lesson.worksheet-ruler")),
                                Optional.of(RulerTables.key(drawn.plate())),
                                RulerTables.figures(drawn.plate()))));
    }

    /** Three compounds well apart on a plate; empty where this draw gives none. */
    static Optional<Drawn> drawn(SeededDraws draws, WorksheetBench bench) {
        Ratio ratio = draws.some(WorksheetBench.RATIOS, 1).get(0);
        double percent = ratio.percentStrong();
        List<LessonCompound> compounds = bench.between(LEAST_RF, MOST_RF, percent);
        if (compounds.size() < SPOTS) {
            return Optional.empty();
        }
        List<LessonCompound> drawn = draws.some(compounds, SPOTS);
        int sample = bench.possible().central(draws, drawn, List.of(percent));
        DrawnPlate plate = DrawnPlate.bare(draws, List.of("A", "B", "C"));
        for (int i = 0; i < SPOTS; i++) {
            double rf = bench.possible().rf(sample, drawn.get(i), percent);
            for (int other = 0; other < i; other++) {
                if (Math.abs(rf - bench.possible().rf(sample, drawn.get(other), percent)) < APART) {
                    return Optional.empty();
                }
            }
            plate = plate.with(i, WorksheetBench.letter(i), plate.halfWay(rf));
        }
        return Optional.of(new Drawn(drawn, ratio, plate));
    }
}
