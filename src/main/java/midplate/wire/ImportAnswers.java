package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.notebook.Study;
import midplate.words.Message;
import midplate.words.Refusal;
import midplate.words.Texts;

/** Files that somebody brings are looked at here: a study, or a table of runs. Nothing is unpacked, and nothing kept. */
public final class ImportAnswers {
    private final SolventCatalogue catalogue;
    private final FunctionalGroups groups;
    private final Texts texts;

    ImportAnswers(SolventCatalogue catalogue, FunctionalGroups groups, Texts texts) {
        this.catalogue = catalogue;
        this.groups = groups;
        this.texts = texts;
    }

    /**
     * What a file holds.
     *
     * @param json the request in UTF-8
     * @throws BadInput where the request or the file cannot be taken
     */
    public String of(byte[] json) {
        FaultList faults = new FaultList(texts);
        ImportQuestion question =
                ImportQuestion.read(JsonText.read(JsonText.decoded(json, faults), faults), catalogue, groups, faults);
        Imported found = found(question, faults);
        return JsonWriting.text(found instanceof Imported.Runs runs ? runs(runs) : study((Imported.WholeStudy) found));
    }

    /** The plates of a study as a table in CSV. */
    public static String csv(Study study) {
        return RunsCsv.of(study);
    }

    private Imported found(ImportQuestion question, FaultList faults) {
        byte[] file = question.file();
        try {
            FileKind.of(file).ifPresent(kind -> {
                throw unlike(question, Message.of(kind.key()), Message.of(kind.todo()));
            });
            TableBytes text = TableBytes.of(file)
                    .orElseThrow(() ->
                            unlike(question, Message.of("import.kind-unknown"), Message.of("todo.choose-other-file")));
            if (looksLikeJson(text.text())) {
                return study(text.text(), faults);
            }
            return runs(text, question);
        } catch (Refusal refusal) {
            faults.add(refusal.field(), refusal);
            throw new BadInput(BadInput.Kind.FIELDS, faults.faults());
        }
    }

    /** A table may begin with [M+H]+ as well. */
    private static boolean looksLikeJson(String text) {
        String begin = text.stripLeading();
        return begin.startsWith("{") || begin.matches("(?s)\\[\\s*[\\[{\"\\]].*");
    }

    private static Refusal unlike(ImportQuestion question, Message kind, Message todo) {
        return new Refusal(
                ImportQuestion.FILE,
                Message.of("import.other-kind", "file", question.name(), "kind", kind),
                question.name(),
                Message.of("allowed.table-or-study"),
                todo);
    }

    private Imported study(String text, FaultList faults) {
        Json json = json(text, faults);
        Study study = new StudyReader(catalogue, groups, faults).read(json);
        List<Message> notes = new ArrayList<>();
        if (json instanceof Json.Fields fields
                && fields.members().get("version") instanceof Json.Numeral version
                && version.value() < StudyUpgrades.NEWEST) {
            notes.add(Message.of("import.newer-form", "version", version.written()));
        }
        return new Imported.WholeStudy(study, notes);
    }

    /** The request was JSON; that the file in it is none is a fault of that field. */
    private static Json json(String text, FaultList faults) {
        try {
            return JsonText.read(text, faults);
        } catch (BadInput bad) {
            throw new BadInput(
                    BadInput.Kind.FIELDS,
                    bad.faults().stream()
                            .map(fault -> fault.in(ImportQuestion.FILE))
                            .toList());
        }
    }

    private Imported runs(TableBytes text, ImportQuestion question) {
        Imported.Runs runs = new RunTable(catalogue).read(text.text(), question.asked(), question.into());
        List<Message> notes = new ArrayList<>();
        if (text.charset().equals(TableBytes.WINDOWS)) {
            notes.add(Message.of("import.windows"));
        } else if (!text.charset().equals(StandardCharsets.UTF_8)) {
            notes.add(Message.of("import.utf16"));
        }
        notes.addAll(runs.notes());
        return new Imported.Runs(
                runs.plan(), runs.decimal(), runs.delimiter(), runs.spots(), runs.plates(), runs.read(), notes);
    }

    private ObjectNode study(Imported.WholeStudy found) {
        ObjectNode body = JsonWriting.object().put("kind", "study");
        body.set("study", StudyWriter.tree(found.study()));
        body.set("notes", JsonWriting.messages(found.notes(), texts));
        return body;
    }

    private ObjectNode runs(Imported.Runs found) {
        ObjectNode body = JsonWriting.object().put("kind", "runs");
        ArrayNode columns = body.putArray("columns");
        for (int i = 0; i < found.plan().width(); i++) {
            columns.add(column(found.plan(), i));
        }
        body.put("decimal", found.decimal().name().toLowerCase(Locale.ROOT));
        body.put("delimiter", String.valueOf(found.delimiter()));
        ArrayNode spots = body.putArray("spots");
        found.spots().forEach(spot -> spots.add(StudyWriter.spot(spot)));
        ArrayNode plates = body.putArray("plates");
        found.plates().forEach(plate -> plates.add(StudyWriter.plate(plate)));
        ArrayNode rejected = body.putArray("rejected");
        found.read().rejected().forEach(row -> rejected.add(rejected(row)));
        body.put("rejectedInAll", found.read().rejectedInAll());
        body.set("notes", JsonWriting.messages(found.notes(), texts));
        return body;
    }

    private static ObjectNode column(ColumnPlan plan, int index) {
        ObjectNode node = JsonWriting.object().put("index", index);
        Optional<String> header = plan.header(index);
        node.put("header", header.map(ShownText::of).orElse(null));
        node.put("meaning", plan.meaning(index).map(RunColumn::id).orElse(null));
        ArrayNode examples = node.putArray("examples");
        plan.examples(index).forEach(examples::add);
        return node;
    }

    private ObjectNode rejected(RunRows.Rejected row) {
        Refusal why = row.why();
        return JsonWriting.object()
                .put("line", row.line())
                .put("row", row.row())
                .put("field", why.field())
                .put("code", why.reason().code())
                .put("came", why.came())
                .put("allowed", texts.render(why.allowed()))
                .put("todo", texts.render(why.todo()))
                .put("message", texts.render(why.reason()));
    }
}
