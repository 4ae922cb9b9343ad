package midplate.wire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** From version 4 to 5. Version 4 knew neither the picture of a plate nor the error of a height that was read from one. */
final class StudyStepTo5 {
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
            "checks",
            "notes");
    private static final List<String> PLATE = List.of(
            "id",
            "heightMm",
            "widthMm",
            "startMm",
            "frontMm",
            "weak",
            "strong",
            "eluent",
            "percentStrong",
            "additive",
            "conditions",
            "lanes",
            "notSeen");
    private static final List<String> LANE = List.of("id", "readings");
    private static final List<String> READING = List.of("id", "spots", "centreMm", "rf", "sizeMm", "shape", "seen");

    private final FaultList faults;

    private StudyStepTo5(FaultList faults) {
        this.faults = faults;
    }

    /** The same study in version 5; what is of no use in version 4 is told, and what is faulty stays as it is to be told later. */
    static Json apply(Json.Fields study, FaultList faults) {
        StudyStepTo5 step = new StudyStepTo5(faults);
        Map<String, Json> members = step.known("", study, STUDY);
        step.each(members, "plates", "", step::plate);
        members.put("version", new Json.Numeral(5, "5"));
        return new Json.Fields(members);
    }

    private Json plate(String path, Json.Fields plate) {
        Map<String, Json> members = known(path, plate, PLATE);
        each(members, "lanes", path, this::lane);
        return new Json.Fields(members);
    }

    private Json lane(String path, Json.Fields lane) {
        Map<String, Json> members = known(path, lane, LANE);
        each(members, "readings", path, (place, reading) -> new Json.Fields(known(place, reading, READING)));
        return new Json.Fields(members);
    }

    /** The members of an object, to be changed; any that version 4 does not know is told and left out. */
    private Map<String, Json> known(String path, Json.Fields object, List<String> names) {
        Map<String, Json> members = new LinkedHashMap<>(object.members());
        if (JsonFields.of(path, object, faults, names).isPresent()) {
            members.keySet().retainAll(names);
        }
        return members;
    }

    private void each(Map<String, Json> members, String name, String path, BiFunction<String, Json.Fields, Json> step) {
        if (members.get(name) instanceof Json.Items list) {
            List<Json> stepped = new ArrayList<>();
            for (Json item : list.items()) {
                String place = JsonText.joined(path, name) + "[" + stepped.size() + "]";
                stepped.add(item instanceof Json.Fields object ? step.apply(place, object) : item);
            }
            members.put(name, new Json.Items(stepped));
        }
    }
}
