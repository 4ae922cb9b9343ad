package midplate.wire;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.SolventCatalogue;
import midplate.notebook.FolderTrouble;
import midplate.notebook.KeptStudy;
import midplate.notebook.PhotoName;
import midplate.notebook.Study;
import midplate.notebook.StudyId;
import midplate.notebook.StudyList;
import midplate.notebook.StudySearch;
import midplate.notebook.StudySearch.Which;
import midplate.notebook.StudySummary;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Nearest;
import midplate.words.Texts;

/** Studies as they are asked for and answered, in one language. */
public final class StudyAnswers {
    /** So many studies are listed at a time. */
    public static final int PAGE = 50;

    /** How a search says which studies it means; as the constants of {@link Which} are ordered. */
    private static final List<String> WHICH = List.of("at-hand", "archived", "all");

    private static final int LONGEST_SEARCH = 1000;
    private static final int MOST_DIGITS = 9;

    private final SolventCatalogue catalogue;
    private final FunctionalGroups groups;
    private final Texts texts;

    StudyAnswers(SolventCatalogue catalogue, FunctionalGroups groups, Texts texts) {
        this.catalogue = catalogue;
        this.groups = groups;
        this.texts = texts;
    }

    /**
     * A study that was sent to be kept under an id.
     *
     * @throws BadInput with all its faults
     */
    public Study study(byte[] json, StudyId id) {
        FaultList faults = new FaultList(texts);
        Study study =
                new StudyReader(catalogue, groups, faults).read(JsonText.read(JsonText.decoded(json, faults), faults));
        if (!study.id().equals(id)) {
            faults.add(
                    "id",
                    Message.of("fault.other-study-id"),
                    study.id().value(),
                    Allowed.words(id.value()),
                    Message.of("todo.send-to-own-address"));
        }
        faults.throwIfAny();
        return study;
    }

    /**
     * What is asked of the list; each is empty where it was not said.
     *
     * @throws BadInput with all its faults
     */
    public StudySearch search(Optional<String> find, Optional<String> which, Optional<String> from) {
        FaultList faults = new FaultList(texts);
        String words = find.orElse("");
        if (words.length() > LONGEST_SEARCH) {
            faults.add(
                    "find",
                    Message.of("fault.text-too-long", "longest", LONGEST_SEARCH),
                    new Json.Text(words).shown(),
                    Message.of("allowed.signs-at-most", "longest", LONGEST_SEARCH),
                    Message.of("todo.shorten"));
        }
        String meant = which.orElse(WHICH.get(0));
        if (!WHICH.contains(meant)) {
            faults.add(
                    "which",
                    Message.of("fault.unknown-choice", "name", "which"),
                    new Json.Text(meant).shown(),
                    Allowed.words(WHICH),
                    Nearest.to(meant, WHICH)
                            .map(near -> Message.of("todo.did-you-mean", "name", near))
                            .orElse(Message.of("todo.take-one-of-these")));
        }
        String first = from.orElse("0");
        if (!first.matches("[0-9]{1," + MOST_DIGITS + "}")) {
            Message allowed = Message.of("allowed.whole-number", "interval", Allowed.closed(0, 999_999_999));
            faults.add(
                    "from",
                    Message.of("fault.number-out-of-range", "allowed", allowed),
                    new Json.Text(first).shown(),
                    allowed,
                    Message.of("todo.give-number-inside"));
        }
        faults.throwIfAny();
        return new StudySearch(words, Which.values()[WHICH.indexOf(meant)], Integer.parseInt(first), PAGE);
    }

    /** A part of the list, with the folder it is of. */
    public String list(Path folder, StudyList list) {
        ObjectNode body = JsonWriting.object().put("folder", folder.toString()).put("total", list.total());
        ArrayNode studies = body.putArray("studies");
        list.studies().forEach(study -> studies.add(summary(study)));
        ArrayNode troubles = body.putArray("troubles");
        for (FolderTrouble trouble : list.troubles()) {
            troubles.addObject()
                    .put("file", trouble.file())
                    .put("kind", word(trouble.kind()))
                    .put("text", texts.render(trouble.text()));
        }
        return JsonWriting.text(body);
    }

    private ObjectNode summary(StudySummary study) {
        ObjectNode node = JsonWriting.object()
                .put("id", study.id().value())
                .put("title", study.title())
                .put("created", study.created().toString())
                .put("modified", study.modified().toString())
                .put("archived", study.keeping() == Study.Keeping.ARCHIVED)
                .put("origin", StudyReader.word(study.origin()))
                .put("plates", study.plates());
        ArrayNode spots = node.putArray("spots");
        study.spots().forEach(spots::add);
        node.put("tag", study.tag().value());
        node.set("notices", JsonWriting.messages(study.notices(), texts));
        return node;
    }

    private static String word(FolderTrouble.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A study as it is kept. */
    public String one(KeptStudy kept) {
        ObjectNode body = JsonWriting.object();
        body.set("study", StudyWriter.tree(kept.study()));
        body.set("notices", JsonWriting.messages(kept.notices(), texts));
        return JsonWriting.text(body);
    }

    /** What is told of a study that was just kept, or put away. */
    public String kept(KeptStudy kept) {
        Study study = kept.study();
        ObjectNode body = JsonWriting.object()
                .put("id", study.id().value())
                .put("tag", kept.tag().value())
                .put("created", study.created().toString())
                .put("modified", study.modified().toString())
                .put("archived", study.keeping() == Study.Keeping.ARCHIVED);
        body.set("notices", JsonWriting.messages(kept.notices(), texts));
        return JsonWriting.text(body);
    }

    /** Under which name a picture was kept. */
    public static String photo(PhotoName name) {
        return JsonWriting.text(JsonWriting.object().put("sha256", name.sha256()));
    }

    /** How often this laboratory's advice came true, by all studies that are kept, and what came of each advice of the one asked for. */
    public String outcomes(List<StudySummary> studies, Optional<Study> study) {
        return new OutcomesWriter(texts).write(studies, study);
    }

    /** What files hold that somebody brings. */
    public ImportAnswers imports() {
        return new ImportAnswers(catalogue, groups, texts);
    }
}
