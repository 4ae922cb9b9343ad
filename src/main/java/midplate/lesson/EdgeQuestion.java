package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.words.Message;

/**
 * A plate that an invented student measured from its lower edge: {@code c/f} instead of {@code (c − s)/(f − s)}, too large by {@code (1 −
 * Rf)·s/f} (own algebra).
 */
final class EdgeQuestion {
    private EdgeQuestion() {}

    static Optional<WorksheetQuestion> of(SeededDraws draws, WorksheetBench bench) {
        return RfQuestion.drawn(draws, bench).map(drawn -> question(drawn, bench));
    }

    private static WorksheetQuestion question(RfQuestion.Drawn drawn, WorksheetBench bench) {
        DrawnPlate plate = drawn.plate();
        List<Message> says = List.of(
                Message.of("lesson.worksheet-edge-found", "startMm", plate.startMm()),
                Message.of("lesson.worksheet-edge-how-much", "most", mostOff(plate)),
                Message.of("lesson.worksheet-ruler"));
        return new WorksheetQuestion(
                WorksheetKind.EDGE,
                List.of(
                        Message.of(
                                "lesson.worksheet-plate-of",
                                "eluent",
                                bench.eluent(drawn.ratio()),
                                "compounds",
                                WorksheetBench.lettered(drawn.compounds())),
                        Message.of("lesson.worksheet-edge-ask")),
                Optional.of(plate),
                Optional.of(noted(plate)),
                2,
                new WorksheetQuestion.Key(says, Optional.of(RulerTables.key(plate)), RulerTables.figures(plate)));
    }

    /** What the student wrote down, and room for what is right. */
    private static WorksheetTable noted(DrawnPlate plate) {
        List<Message> columns = List.of(
                Message.of("lesson.worksheet-column-spot"),
                Message.of("lesson.worksheet-column-noted-way"),
                Message.of("lesson.worksheet-column-noted-run"),
                Message.of("lesson.worksheet-column-noted-rf"),
                Message.of("lesson.worksheet-column-right-rf"));
        List<List<Optional<Message>>> rows = new ArrayList<>();
        for (DrawnPlate.Spot spot : plate.spots()) {
            rows.add(WorksheetTable.toFill(
                    columns.size(),
                    RulerTables.letter(spot),
                    RulerTables.mm(spot.centreMm()),
                    RulerTables.mm(plate.frontMm()),
                    RulerTables.rf(spot.centreMm() / plate.frontMm())));
        }
        return new WorksheetTable(columns, rows);
    }

    private static double mostOff(DrawnPlate plate) {
        return plate.spots().stream()
                .mapToDouble(spot ->
                        spot.centreMm() / plate.frontMm() - plate.measured(spot).rf())
                .max()
                .orElse(0);
    }
}
