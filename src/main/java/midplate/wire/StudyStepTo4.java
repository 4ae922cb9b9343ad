package midplate.wire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** From version 3 to 4. Version 3 knew no checks; those that are absent were never asked for. */
final class StudyStepTo4 {
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
            "column",
            "notes");

    private StudyStepTo4() {}

    /** The same study in version 4; what is of no use in version 3 is told, and what is faulty stays as it is to be told later. */
    static Json apply(Json.Fields study, FaultList faults) {
        Map<String, Json> members = new LinkedHashMap<>(study.members());
        if (JsonFields.of("", study, faults, STUDY).isPresent()) {
            members.keySet().retainAll(STUDY);
        }
        members.put("version", new Json.Numeral(4, "4"));
        return new Json.Fields(members);
    }
}
