package midplate.wire;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;
import midplate.notebook.Entered;
import midplate.notebook.StudySpot;
import midplate.words.Message;
import midplate.words.Nearest;

/** Reads the compounds of a study, and keeps their ids, which everything else refers to. */
final class StudySpotReader {
    static final List<String> REQUIRED = List.of("id", "name");
    static final List<String> OPTIONAL = List.of("by", "smiles", "groups", "class");

    private static final List<String> WAYS = List.of("smiles", "groups", "class");
    private static final int LONGEST_SMILES = 20_000;

    private final FunctionalGroups groups;
    private final FaultList faults;
    private final Set<String> ids = new LinkedHashSet<>();
    /** Whether some compound has an id that cannot be taken: then nobody knows what refers to it. */
    private boolean unsure;

    StudySpotReader(FunctionalGroups groups, FaultList faults) {
        this.groups = groups;
        this.faults = faults;
    }

    /** One compound. */
    Optional<StudySpot> read(String path, Json value) {
        return StudyFields.of(path, value, faults, REQUIRED, OPTIONAL).map(fields -> {
            int before = faults.count();
            String id = fields.freshId("id", ids);
            unsure |= faults.count() > before;
            return new StudySpot(id, fields.line("name"), what(fields));
        });
    }

    /** What a compound is, as far as somebody said it. */
    Optional<StudySpot.Identity> what(StudyFields fields) {
        Optional<String> said = WAYS.stream().filter(fields::has).findFirst();
        if (!fields.has("by")) {
            said.ifPresent(way -> fields.fault(
                    way,
                    Message.of("fault.by-missing"),
                    Message.of("allowed.with-by", "field", "by"),
                    Message.of("todo.say-which-counts", "field", "by")));
            return Optional.empty();
        }
        StudySpot.By by = switch (fields.choice("by", WAYS)) {
            case "groups" -> StudySpot.By.GROUPS;
            case "class" -> StudySpot.By.CLASS;
            default -> StudySpot.By.SMILES;
        };
        return Optional.of(new StudySpot.Identity(
                by, fields.line("smiles", LONGEST_SMILES), groups(fields), compoundClass(fields)));
    }

    private Map<String, Entered> groups(StudyFields fields) {
        Map<String, Entered> counts = new LinkedHashMap<>();
        fields.any("groups")
                .flatMap(value -> JsonFields.open(fields.path("groups"), value, faults))
                .ifPresent(object -> {
                    for (String id : object.names()) {
                        if (groups.find(id).isPresent()) {
                            counts.put(
                                    id,
                                    StudyNumber.entered(
                                            object.path(id), object.any(id).orElseThrow(), faults));
                        } else {
                            unknown(object, id);
                        }
                    }
                });
        return counts;
    }

    private void unknown(JsonFields object, String id) {
        List<String> known = groups.ids();
        String came = new Json.Text(id).shown().replace("\"", "");
        faults.add(
                object.path(came),
                Message.of("fault.unknown-group", "came", came),
                object.any(id).map(Json::shown).orElse(""),
                Message.of("allowed.groups"),
                Nearest.to(id, known)
                        .map(near -> Message.of("todo.did-you-mean", "name", near))
                        .orElse(Message.of("todo.leave-out")));
    }

    /** A class is optional here, and may be empty: nothing chosen yet. */
    private String compoundClass(StudyFields fields) {
        String name = fields.line("class");
        boolean known = name.isEmpty()
                || name.equals(Compounds.HYDROCARBON)
                || groups.find(name).filter(Compounds::isClass).isPresent();
        if (!known) {
            List<String> classes = groups.all().stream()
                    .filter(Compounds::isClass)
                    .map(FunctionalGroup::id)
                    .toList();
            fields.fault(
                    "class",
                    Message.of(
                            "fault.unknown-class",
                            "came",
                            new Json.Text(name).shown().replace("\"", "")),
                    Message.of("allowed.classes"),
                    Nearest.to(name, classes)
                            .map(near -> Message.of("todo.did-you-mean", "name", near))
                            .orElse(Message.of("todo.leave-out")));
        }
        return known ? name : "";
    }

    /** Different ids of compounds that are there. */
    List<String> refer(StudyFields fields, String name) {
        List<String> came = fields.ids(name);
        came.forEach(id -> demand(fields, name, id));
        return came;
    }

    /** The id of a compound that is there; empty where it came as no id. */
    Optional<String> referToOne(StudyFields fields, String name) {
        Optional<String> came = fields.idIfAny(name);
        came.ifPresent(id -> demand(fields, name, id));
        return came;
    }

    private void demand(StudyFields fields, String name, String id) {
        if (ids.contains(id) || unsure || ids.isEmpty()) { // no compound at all: told already
            return;
        }
        faults.add(
                fields.path(name),
                Message.of("fault.no-such-spot", "id", id),
                new Json.Text(id).shown(),
                Message.of("allowed.spot-of-study", "field", "spots"),
                Message.of("todo.add-to-spots"));
    }
}
