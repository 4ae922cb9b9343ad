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
import midplate.chemistry.Solvent;
import midplate.notebook.SaidAdditive;
import midplate.notebook.Study;
import midplate.notebook.StudyPlate;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;
import midplate.words.Texts;

/** Files that somebody brings are looked at here: a study, or a table of runs. Nothing is unpacked, and nothing kept. */
public final class ImportAnswers {
    private static final String CAN_BE_TAKEN = "canBeTaken";

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
        return JsonWriting.text(found(
                ImportQuestion.read(JsonText.read(JsonText.decoded(json, faults), faults), catalogue, groups, faults),
                faults));
    }

    /** The plates of a study as a table in CSV. */
    public static String csv(Study study) {
        return RunsCsv.of(study);
    }

    private ObjectNode found(ImportQuestion question, FaultList faults) {
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

    private ObjectNode study(String text, FaultList faults) {
        Json json = json(text, faults);
        Study study = new StudyReader(catalogue, groups, faults).read(json);
        List<Message> notes = new ArrayList<>();
        if (json instanceof Json.Fields fields
                && fields.members().get("version") instanceof Json.Numeral version
                && version.value() < StudyUpgrades.NEWEST) {
            notes.add(Message.of("import.newer-form", "version", version.written()));
        }
        ObjectNode body = JsonWriting.object().put("kind", "study").put(CAN_BE_TAKEN, true);
        body.set("study", StudyWriter.tree(study));
        body.set("notes", JsonWriting.messages(notes, texts));
        return body;
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

    private ObjectNode runs(TableBytes text, ImportQuestion question) {
        RunTable.Runs found = new RunTable(catalogue).read(text.text(), question.asked(), question.into());
        List<Message> notes = new ArrayList<>();
        if (text.charset().equals(TableBytes.WINDOWS)) {
            notes.add(Message.of("import.windows"));
        } else if (!text.charset().equals(StandardCharsets.UTF_8)) {
            notes.add(Message.of("import.utf16"));
        }
        notes.addAll(found.notes());
        ObjectNode body = JsonWriting.object()
                .put("kind", "runs")
                .put(CAN_BE_TAKEN, !found.plates().isEmpty());
        ArrayNode columns = body.putArray("columns");
        for (int i = 0; i < found.plan().width(); i++) {
            columns.add(column(found.plan(), i));
        }
        body.put("decimal", found.decimal().name().toLowerCase(Locale.ROOT));
        body.put("delimiter", String.valueOf(found.delimiter()));
        ArrayNode spots = body.putArray("spots");
        found.spots().forEach(spot -> spots.add(StudyWriter.spot(spot)));
        ArrayNode plates = body.putArray("plates");
        found.plates().forEach(plate -> plates.add(StudyWriter.plate(plate.plate())));
        ArrayNode jars = body.putArray("jars");
        found.plates().forEach(plate -> jars.add(jar(plate)));
        ArrayNode rejected = body.putArray("rejected");
        found.read().rejected().forEach(row -> rejected.add(rejected(row)));
        body.put("rejectedInAll", found.read().rejectedInAll());
        body.set("notes", JsonWriting.messages(notes, texts));
        return body;
    }

    /** What ran on a plate in words, and what the file said of it: whoever looks at both sees whether it was understood. */
    private ObjectNode jar(RunTable.Plate read) {
        StudyPlate plate = read.plate();
        Message weak = said(plate.weak());
        Message strong = said(plate.strong());
        Message jar = plate.percentStrong().isPresent()
                ? Message.of("import.share-in", "share", percent(plate), "strong", strong, "weak", weak)
                : Message.of("import.jar-no-ratio", "weak", weak, "strong", strong);
        String additive = SaidAdditive.words(plate.additive(), texts);
        Message all = additive.isEmpty()
                ? jar
                : Message.of("import.jar-with", "jar", jar, "additive", ShownText.of(additive));
        String said = ShownText.of(read.said());
        Message told = said.isEmpty()
                ? Message.of("import.jar-unsaid", "jar", all)
                : Message.of("import.jar-said", "jar", all, "said", said);
        return JsonWriting.object().put("plate", plate.id()).put("said", said).put("text", texts.render(told));
    }

    private static Message percent(StudyPlate plate) {
        double percent = plate.percentStrong().orElseThrow();
        return Message.of(
                "import.percent",
                "percent",
                Allowed.figure(JsonWriting.number(percent, 2).asText()));
    }

    private Message said(String solvent) {
        return catalogue.find(solvent).map(Solvent::said).orElseGet(() -> Allowed.words(solvent));
    }

    private static ObjectNode column(TableColumns plan, int index) {
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
