package midplate.wire;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import midplate.notebook.Entered;
import midplate.notebook.SaidAdditive;
import midplate.notebook.Study;
import midplate.notebook.StudyPlate;
import midplate.notebook.StudyPlate.Given;
import midplate.notebook.StudyPlate.Lane;
import midplate.notebook.StudyPlate.SpotSeen;
import midplate.notebook.StudySpot;
import midplate.words.Texts;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes the plates of a study as a table, one row a reading, for spreadsheets and other programs: RFC 4180, comma, decimal point, UTF-8
 * with the mark by which spreadsheets know it. A lane without a reading has a row of its own.
 */
final class RunsCsv {
    private static final String UTF8_MARK = "\uFEFF";
    private static final CSVFormat FORM = CSVFormat.RFC4180;

    private final Texts english = Texts.english();
    private final Map<String, String> names = new HashMap<>();
    private final StringBuilder text = new StringBuilder(UTF8_MARK);

    private RunsCsv(Study study) {
        for (StudySpot spot : study.spots()) {
            names.put(spot.id(), spot.name());
        }
        try (CSVPrinter printer = new CSVPrinter(text, FORM)) {
            printer.printRecord(RunColumn.written().stream().map(RunColumn::id).toList());
            for (StudyPlate plate : study.plates()) {
                for (List<String> row : rows(plate)) {
                    printer.printRecord(row);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("A text in memory could not be written", e);
        }
    }

    /** The table. */
    static String of(Study study) {
        return new RunsCsv(study).text.toString();
    }

    private List<List<String>> rows(StudyPlate plate) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < plate.lanes().size(); i++) {
            Lane lane = plate.lanes().get(i);
            String number = Integer.toString(i + 1);
            lane.readings().forEach(spot -> rows.add(row(plate, number, Optional.of(spot))));
            if (lane.readings().isEmpty()) {
                rows.add(row(plate, number, Optional.empty()));
            }
        }
        if (rows.isEmpty()) {
            rows.add(row(plate, "", Optional.empty()));
        }
        return rows;
    }

    private List<String> row(StudyPlate plate, String lane, Optional<SpotSeen> spot) {
        List<String> cells = new ArrayList<>();
        for (RunColumn column : RunColumn.written()) {
            cells.add(cell(column, plate, lane, spot));
        }
        return cells;
    }

    private String cell(RunColumn column, StudyPlate plate, String lane, Optional<SpotSeen> spot) {
        return switch (column) {
            case PLATE -> SafeCell.out(plate.id());
            case WEAK -> plate.weak();
            case STRONG -> plate.strong();
            case PERCENT_STRONG ->
                plate.percentStrong().isPresent()
                        ? JsonWriting.exact(plate.percentStrong().getAsDouble()).asText()
                        : "";
            case ELUENT -> SafeCell.out(plate.eluent());
            case ADDITIVE -> SafeCell.out(SaidAdditive.words(plate.additive(), english));
            case HEIGHT -> cell(plate.heightMm());
            case WIDTH -> cell(plate.widthMm());
            case START -> cell(plate.startMm());
            case FRONT -> cell(plate.frontMm());
            case LANE -> lane;
            case SPOT -> spot.map(seen -> named(seen.spots())).orElse("");
            case CENTRE -> place(spot, Given.CENTRE_MM);
            case RF -> place(spot, Given.RF);
            case SIZE -> spot.flatMap(SpotSeen::sizeMm).map(RunsCsv::cell).orElse("");
            case ERROR -> spot.flatMap(SpotSeen::errorMm).map(RunsCsv::cell).orElse("");
            case SHAPE -> SafeCell.out(spot.flatMap(SpotSeen::shape).orElse(""));
            case SEEN -> SafeCell.out(spot.flatMap(SpotSeen::seen).orElse(""));
            case NOT_SEEN -> named(plate.notSeen());
            case DISTANCE, FRONT_DISTANCE -> throw new IllegalArgumentException(column.id());
        };
    }

    private static String place(Optional<SpotSeen> spot, Given given) {
        return spot.filter(seen -> seen.given() == given)
                .map(seen -> cell(seen.place()))
                .orElse("");
    }

    /** A number stays one; what was typed and is none is a text. */
    private static String cell(Entered entered) {
        return entered.value().isPresent() ? entered.typed() : SafeCell.out(entered.typed());
    }

    private String named(List<String> ids) {
        return SafeCell.out(JoinedNames.joined(
                ids.stream().map(id -> names.getOrDefault(id, id)).toList()));
    }
}
