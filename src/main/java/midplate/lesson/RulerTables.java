package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.words.Message;

/** Tables and figures of plates that are measured with a ruler. */
final class RulerTables {
    private RulerTables() {}

    /** One row a spot: what to measure, and the Rf. */
    static WorksheetTable toFill(DrawnPlate plate) {
        List<Message> columns = columns();
        return new WorksheetTable(
                columns,
                plate.spots().stream()
                        .map(spot -> WorksheetTable.toFill(columns.size(), letter(spot)))
                        .toList());
    }

    /** The same with every number, and what is accepted. */
    static WorksheetTable key(DrawnPlate plate) {
        List<Message> columns = new ArrayList<>(columns());
        columns.add(Message.of("lesson.worksheet-column-accepted"));
        List<List<Optional<Message>>> rows = new ArrayList<>();
        for (DrawnPlate.Spot spot : plate.spots()) {
            RulerRf measured = plate.measured(spot);
            rows.add(WorksheetTable.full(
                    letter(spot),
                    mm(measured.wayMm()),
                    mm(measured.runMm()),
                    rf(measured.rf()),
                    Message.of(
                            "lesson.worksheet-range", "from", measured.acceptedFrom(), "to", measured.acceptedTo())));
        }
        return new WorksheetTable(columns, rows);
    }

    /** The Rf of each spot by itself. */
    static List<WorksheetQuestion.Figure> figures(DrawnPlate plate) {
        return plate.spots().stream()
                .map(spot -> {
                    RulerRf measured = plate.measured(spot);
                    return new WorksheetQuestion.Figure(
                            spot.letter(), measured.rf(), measured.acceptedFrom(), measured.acceptedTo());
                })
                .toList();
    }

    private static List<Message> columns() {
        return List.of(
                Message.of("lesson.worksheet-column-spot"),
                Message.of("lesson.worksheet-column-way"),
                Message.of("lesson.worksheet-column-run"),
                Message.of("lesson.worksheet-column-rf"));
    }

    static Message letter(DrawnPlate.Spot spot) {
        return Message.of("lesson.worksheet-letter", "letter", spot.letter());
    }

    static Message mm(double mm) {
        return Message.of("lesson.worksheet-mm", "mm", mm);
    }

    static Message rf(double rf) {
        return Message.of("lesson.worksheet-rf", "rf", rf);
    }
}
