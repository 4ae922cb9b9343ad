package midplate.wire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** From version 2 to 3. Version 2 knew no column; one that is absent means that nobody thought of one. */
final class StudyStepTo3 {
    private static final List<String> STUDY = List.of(
            "format",
            "version",
            "sha256",
            "id",
            "title",
            "created",
            "modified",
            "archived",
            "origin",
            "sorbent",
            "setting",
            "shelf",
            "spots",
            "plates",
            "next",
            "advices",
            "notes");

    private StudyStepTo3() {}

    /** The same study in version 3; what is of no use in version 2 is told, and what is faulty stays as it is to be told later. */
    static Json apply(Json.Fields study, FaultList faults) {
        Map<String, Json> members = new LinkedHashMap<>(study.members());
        if (JsonFields.of("", study, faults, STUDY).isPresent()) {
            members.keySet().retainAll(STUDY);
        }
        members.put("version", new Json.Numeral(3, "3"));
        return new Json.Fields(members);
    }
}
