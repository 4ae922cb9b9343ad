package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.advice.Ratio;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * A sample, a reference, and a lane with both: what the plate says of whether they are the same, and what it does not. The answer comes from
 * what is drawn: two spots in the middle lane are two compounds.
 */
final class CoSpotQuestion {
    private static final double LEAST_RF = 0.25;
    private static final double MOST_RF = 0.75;
    /** Two compounds are drawn this far apart [half mm]: more than a spot is high, so that nobody takes them for one. */
    private static final int LEAST_APART = 7;

    private static final int MOST_APART = 12;
    /** Compounds this near in Rf would show the same [1]. */
    private static final double ALIKE = 0.05;

    private static final List<String> LANES = List.of("1", "2", "3");

    private CoSpotQuestion() {}

    /** What the plate shows. */
    enum Case {
        /** One spot where both are. */
        ONE,
        /** Two. */
        TWO
    }

    static Optional<WorksheetQuestion> of(SeededDraws draws, WorksheetBench bench, Case wanted) {
        Ratio ratio = draws.some(WorksheetBench.RATIOS, 1).get(0);
        double percent = ratio.percentStrong();
        List<LessonCompound> compounds = bench.between(LEAST_RF, MOST_RF, percent);
        if (compounds.size() < 2) {
            return Optional.empty();
        }
        List<LessonCompound> two = draws.some(compounds, 2);
        int sample = bench.possible().central(draws, two, List.of(percent));
        LessonCompound reference = two.get(0);
        LessonCompound unknown = wanted == Case.ONE ? reference : two.get(1);
        DrawnPlate bare = DrawnPlate.bare(draws, LANES);
        int ofReference = bare.halfWay(bench.possible().rf(sample, reference, percent));
        int ofSample = bare.halfWay(bench.possible().rf(sample, unknown, percent));
        int apart = Math.abs(ofReference - ofSample);
        if (wanted == Case.TWO && (apart < LEAST_APART || apart > MOST_APART)) {
            return Optional.empty();
        }
        // a front is never quite level: the same compound may lie half a millimetre higher at the other side
        int slant = wanted == Case.ONE ? draws.whole(-1, 1) : 0;
        DrawnPlate plate = bare.with(0, "a", ofSample);
        plate = wanted == Case.ONE
                ? plate.with(1, "b", ofSample).with(2, "c", ofReference + slant)
                : plate.with(1, "b", Math.max(ofSample, ofReference))
                        .with(1, "c", Math.min(ofSample, ofReference))
                        .with(2, "d", ofReference);
        List<LessonCompound> alike = alike(bench, reference, percent);
        return Optional.of(question(bench, ratio, plate, reference, unknown, alike));
    }

    private static List<LessonCompound> alike(WorksheetBench bench, LessonCompound reference, double percent) {
        double rf = bench.possible().middle(reference, percent);
        return bench.between(rf - ALIKE, rf + ALIKE, percent).stream()
                .filter(each -> !each.equals(reference))
                .toList();
    }

    private static WorksheetQuestion question(
            WorksheetBench bench,
            Ratio ratio,
            DrawnPlate plate,
            LessonCompound reference,
            LessonCompound unknown,
            List<LessonCompound> alike) {
        List<Message> says = new ArrayList<>();
        List<DrawnPlate.Spot> both =
                plate.spots().stream().filter(spot -> spot.lane() == 1).toList();
        if (both.size() > 1) {
            double apart = both.get(0).centreMm() - both.get(1).centreMm();
            says.add(Message.of("lesson.worksheet-co-spot-two", "mm", apart, "high", DrawnPlate.ALONG_MM));
            says.add(Message.of("lesson.worksheet-co-spot-was", "compound", WorksheetBench.named(unknown)));
        } else {
            says.add(Message.of("lesson.worksheet-co-spot-one"));
            says.add(
                    alike.isEmpty()
                            ? Message.of("lesson.worksheet-co-spot-others")
                            : Message.of(
                                    "lesson.worksheet-co-spot-alike",
                                    "compounds",
                                    Allowed.list(alike.stream()
                                            .map(WorksheetBench::named)
                                            .toList())));
        }
        says.add(Message.of("lesson.worksheet-ruler"));
        return new WorksheetQuestion(
                WorksheetKind.CO_SPOT,
                List.of(
                        Message.of(
                                "lesson.worksheet-co-spot-plate",
                                "eluent",
                                bench.eluent(ratio),
                                "reference",
                                WorksheetBench.named(reference)),
                        Message.of("lesson.worksheet-co-spot-ask")),
                Optional.of(plate),
                Optional.of(RulerTables.toFill(plate)),
                3,
                new WorksheetQuestion.Key(says, Optional.of(RulerTables.key(plate)), RulerTables.figures(plate)));
    }
}
