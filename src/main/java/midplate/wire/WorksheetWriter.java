package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import midplate.catalogue.SolventCatalogue;
import midplate.lesson.DrawnPlate;
import midplate.lesson.Worksheet;
import midplate.lesson.WorksheetKind;
import midplate.lesson.WorksheetPair;
import midplate.lesson.WorksheetQuestion;
import midplate.lesson.WorksheetTable;
import midplate.words.Message;

/** Writes worksheets: the questions of each variant, and apart from them the answers. */
final class WorksheetWriter {
    private static final int DECIMALS = 4;
    /** Of the cautions for every solvent, those for running a plate and looking at it under the lamp; as the page tells them. */
    private static final List<String> AT_A_PLATE =
            List.of("sheet-first", "hood", "vapours", "static", "uv-lamps", "silica-dust", "waste", "labels", "gloves");

    private final SolventCatalogue catalogue;
    private final Speech speech;

    WorksheetWriter(SolventCatalogue catalogue, Speech speech) {
        this.catalogue = catalogue;
        this.speech = speech;
    }

    String text(Worksheet worksheet) {
        ObjectNode answer = JsonWriting.object()
                .put("code", worksheet.code().text())
                .put("seed", worksheet.code().seed())
                .put("variants", worksheet.choices().variants());
        ArrayNode questions = answer.putArray("questions");
        worksheet.choices().kinds().forEach(kind -> questions.add(kind.id()));
        WorksheetPair pair = worksheet.choices().pair();
        answer.put("pair", pair.id());
        answer.set("weak", JsonWriting.solvent(pair.weak(catalogue), speech.texts()));
        answer.set("strong", JsonWriting.solvent(pair.strong(catalogue), speech.texts()));
        answer.set("notes", JsonWriting.messages(notes(pair), speech.texts()));
        answer.set("cautions", cautions(pair));
        ArrayNode sheets = answer.putArray("sheets");
        ArrayNode answers = answer.putArray("answers");
        for (Worksheet.Sheet sheet : worksheet.sheets()) {
            ArrayNode asked = sheets.addObject().put("letter", sheet.letter()).putArray("questions");
            ArrayNode told = answers.addObject().put("letter", sheet.letter()).putArray("answers");
            for (WorksheetQuestion question : sheet.questions()) {
                asked.add(question(question));
                told.add(key(question.kind(), question.key()));
            }
        }
        return JsonWriting.text(answer);
    }

    /** What to mind with these two solvents, each sentence once. */
    private ArrayNode cautions(WorksheetPair pair) {
        ArrayNode list = JsonWriting.array();
        Stream.of(
                        catalogue.generalCautions().stream().filter(each -> AT_A_PLATE.contains(each.key())),
                        catalogue.cautions(pair.weak(catalogue)).stream(),
                        catalogue.cautions(pair.strong(catalogue)).stream())
                .flatMap(each -> each)
                .distinct()
                .forEach(each -> {
                    ObjectNode node = list.addObject().put("key", each.key());
                    node.putObject("args");
                    node.put("text", speech.said(each.text()));
                });
        return list;
    }

    /** What a reader must know of all of it. */
    private static List<Message> notes(WorksheetPair pair) {
        return List.of(
                Message.of("lesson.worksheet-invented"),
                switch (pair) {
                    case HEXANE_ETHYL_ACETATE -> Message.of("lesson.worksheet-measured");
                    case HEPTANE_ETHYL_ACETATE -> Message.of("lesson.worksheet-stand-in");
                    case CYCLOHEXANE_ETHYL_ACETATE, HEXANE_ACETONE -> Message.of("lesson.worksheet-theory");
                });
    }

    private ObjectNode question(WorksheetQuestion question) {
        ObjectNode node = JsonWriting.object().put("kind", question.kind().id());
        node.set("title", title(question.kind()));
        node.set("asked", JsonWriting.messages(question.asked(), speech.texts()));
        question.plate().ifPresent(plate -> node.set("plate", plate(plate)));
        table(node, question.toFill());
        return node.put("lines", question.lines());
    }

    private ObjectNode title(WorksheetKind kind) {
        Message title = switch (kind) {
            case RF -> Message.of("lesson.worksheet-title-rf");
            case ORDER -> Message.of("lesson.worksheet-title-order");
            case CO_SPOT -> Message.of("lesson.worksheet-title-co-spot");
            case RATIO -> Message.of("lesson.worksheet-title-ratio");
            case EDGE -> Message.of("lesson.worksheet-title-edge");
        };
        return JsonWriting.message(title, speech.texts());
    }

    private static ObjectNode plate(DrawnPlate plate) {
        ObjectNode node = JsonWriting.object();
        node.set("widthMm", JsonWriting.exact(DrawnPlate.WIDTH_MM));
        node.set("heightMm", JsonWriting.exact(DrawnPlate.HEIGHT_MM));
        node.set("startMm", JsonWriting.exact(plate.startMm()));
        node.set("frontMm", JsonWriting.exact(plate.frontMm()));
        ArrayNode lanes = node.putArray("lanes");
        plate.lanes().forEach(lanes::add);
        ArrayNode spots = node.putArray("spots");
        for (DrawnPlate.Spot spot : plate.spots()) {
            ObjectNode drawn = spots.addObject().put("lane", spot.lane()).put("letter", spot.letter());
            drawn.set("centreMm", JsonWriting.exact(spot.centreMm()));
            drawn.set("acrossMm", JsonWriting.exact(DrawnPlate.ACROSS_MM));
            drawn.set("alongMm", JsonWriting.exact(DrawnPlate.ALONG_MM));
        }
        return node;
    }

    private ObjectNode key(WorksheetKind kind, WorksheetQuestion.Key key) {
        ObjectNode node = JsonWriting.object().put("kind", kind.id());
        node.set("title", title(kind));
        node.set("says", JsonWriting.messages(key.says(), speech.texts()));
        table(node, key.table());
        ArrayNode figures = node.putArray("figures");
        for (WorksheetQuestion.Figure figure : key.figures()) {
            ObjectNode written = figures.addObject().put("of", figure.of());
            written.set("value", JsonWriting.number(figure.value(), DECIMALS));
            written.set("from", JsonWriting.number(figure.from(), DECIMALS));
            written.set("to", JsonWriting.number(figure.to(), DECIMALS));
        }
        return node;
    }

    /** The words of a table; what is to be filled in is an empty text. */
    private void table(ObjectNode node, Optional<WorksheetTable> table) {
        table.ifPresent(present -> {
            ObjectNode written = node.putObject("table");
            ArrayNode columns = written.putArray("columns");
            present.columns().forEach(column -> columns.add(speech.texts().render(column)));
            ArrayNode rows = written.putArray("rows");
            for (List<Optional<Message>> row : present.rows()) {
                ArrayNode cells = rows.addArray();
                row.forEach(cell -> cells.add(cell.map(speech.texts()::render).orElse("")));
            }
        });
    }
}
