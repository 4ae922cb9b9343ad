package midplate.wire;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import midplate.words.Message;

/** The ids of one kind of thing in a study, to which others refer. */
final class StudyIds {
    private final String list;
    private final FaultList faults;
    private final Set<String> ids = new LinkedHashSet<>();
    /** Whether some id cannot be taken: then nobody knows what refers to it. */
    private boolean unsure;

    /** Of what stands in a list of that name. */
    StudyIds(String list, FaultList faults) {
        this.list = list;
        this.faults = faults;
    }

    /** The id of one more. */
    String fresh(StudyFields fields) {
        int before = faults.count();
        String id = fields.freshId("id", ids);
        unsure |= faults.count() > before || id.isEmpty();
        return id;
    }

    /** The id of one that is there; empty where it came as no id. */
    Optional<String> refer(StudyFields fields, String name) {
        Optional<String> came = fields.idIfAny(name);
        came.filter(id -> !ids.contains(id) && !unsure)
                .ifPresent(id -> fields.fault(
                        name,
                        Message.of("fault.no-such-spot", "id", id),
                        Message.of("allowed.spot-of-study", "field", list),
                        Message.of("todo.add-to-list", "list", list)));
        return came;
    }
}
