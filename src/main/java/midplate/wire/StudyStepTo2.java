package midplate.wire;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * From version 1 to 2. Version 1 knew neither the next jar nor ids of lanes and readings; a reading showed one compound, an additive was
 * a text, a compound was a structure or groups.
 */
final class StudyStepTo2 {
    private static final List<String> STUDY = List.of(
            "format",
            "version",
            "sha256",
            "id",
            "title",
            "created",
            "modified",
            "sorbent",
            "setting",
            "shelf",
            "spots",
            "plates",
            "advices",
            "notes");
    private static final List<String> SPOT = List.of("id", "name", "smiles", "groups");
    private static final List<String> PLATE = List.of(
            "id",
            "heightMm",
            "widthMm",
            "startMm",
            "frontMm",
            "weak",
            "strong",
            "percentStrong",
            "additive",
            "conditions",
            "lanes");
    private static final List<String> LANE = List.of("readings");
    private static final List<String> READING = List.of("spot", "centreMm", "rf", "sizeMm", "shape", "seen");

    private final FaultList faults;
    private int lanes;
    private int readings;

    private StudyStepTo2(FaultList faults) {
        this.faults = faults;
    }

    /** The same study in version 2; what is of no use in version 1 is told, and what is faulty stays as it is to be told later. */
    static Json apply(Json.Fields study, FaultList faults) {
        return new StudyStepTo2(faults).study(study);
    }

    private Json study(Json.Fields study) {
        Map<String, Json> members = known("", study, STUDY);
        members.put("version", number("2"));
        each(members, "spots", "", this::spot);
        each(members, "plates", "", this::plate);
        members.put("archived", new Json.Truth(false));
        members.put("origin", new Json.Text("own"));
        members.put("next", next(Optional.ofNullable(members.get("plates"))));
        return new Json.Fields(members);
    }

    private Json spot(String path, Json.Fields spot) {
        Map<String, Json> members = known(path, spot, SPOT);
        boolean empty = members.get("smiles") instanceof Json.Text smiles
                && smiles.value().isEmpty();
        if (members.containsKey("smiles") && !(empty && members.containsKey("groups"))) {
            members.put("by", new Json.Text("smiles"));
        } else if (members.containsKey("groups")) {
            members.put("by", new Json.Text("groups"));
        }
        return new Json.Fields(members);
    }

    private Json plate(String path, Json.Fields plate) {
        Map<String, Json> members = known(path, plate, PLATE);
        each(members, "lanes", path, this::lane);
        members.put("eluent", eluent(members));
        Json additive = members.get("additive");
        if (additive == null) {
            members.put("additive", additive("none", ""));
        } else if (additive instanceof Json.Text text) {
            members.put("additive", additive("own", text.value()));
        }
        members.put("notSeen", new Json.Items(List.of()));
        return new Json.Fields(members);
    }

    /** The share as the page would type it; a text that was no share yet stands in the place of the eluent from now on. */
    private static Json eluent(Map<String, Json> plate) {
        Json percent = plate.get("percentStrong");
        if (percent instanceof Json.Numeral share) {
            return new Json.Text(plain(share));
        }
        if (percent instanceof Json.Text typed) {
            plate.remove("percentStrong");
            return typed;
        }
        return new Json.Text("");
    }

    /** Without an exponent, since nobody types one; by its value, as the digits of an exponent may be a gigabyte of zeros. */
    private static String plain(Json.Numeral share) {
        boolean exponent = share.written().toLowerCase(Locale.ROOT).indexOf('e') >= 0;
        return exponent ? BigDecimal.valueOf(share.value()).stripTrailingZeros().toPlainString() : share.written();
    }

    private Json lane(String path, Json.Fields lane) {
        Map<String, Json> members = known(path, lane, LANE);
        lanes++;
        members.put("id", new Json.Text("l" + lanes));
        each(members, "readings", path, this::reading);
        return new Json.Fields(members);
    }

    private Json reading(String path, Json.Fields reading) {
        Map<String, Json> members = known(path, reading, READING);
        readings++;
        members.put("id", new Json.Text("r" + readings));
        Json spot = members.remove("spot");
        members.put("spots", new Json.Items(spot == null ? List.of() : List.of(spot)));
        return new Json.Fields(members);
    }

    /** The next jar goes on with what was in the last. */
    private static Json next(Optional<Json> plates) {
        Map<String, Json> members = new LinkedHashMap<>();
        members.put("weak", new Json.Text("hexane"));
        members.put("strong", new Json.Text("ethyl-acetate"));
        members.put("additive", additive("none", ""));
        plates.flatMap(StudyStepTo2::last)
                .ifPresent(plate -> members.replaceAll((name, usual) -> plate.getOrDefault(name, usual)));
        members.put("window", new Json.Items(List.of(number("0.2"), number("0.8"))));
        members.put("windowKind", new Json.Text("usual"));
        members.put("apart", new Json.Items(List.of()));
        members.put("amountMl", number("10"));
        members.put("jarDiameterMm", number("50"));
        return new Json.Fields(members);
    }

    private static Optional<Map<String, Json>> last(Json list) {
        return list instanceof Json.Items items
                        && !items.items().isEmpty()
                        && items.items().get(items.items().size() - 1) instanceof Json.Fields plate
                ? Optional.of(plate.members())
                : Optional.empty();
    }

    private static Json additive(String kind, String text) {
        Map<String, Json> members = new LinkedHashMap<>();
        members.put("kind", new Json.Text(kind));
        members.put("text", new Json.Text(text));
        return new Json.Fields(members);
    }

    private static Json number(String written) {
        return new Json.Numeral(Double.parseDouble(written), written);
    }

    /** The members of an object, to be changed; any that version 1 does not know is told and left out. */
    private Map<String, Json> known(String path, Json.Fields object, List<String> names) {
        Map<String, Json> members = new LinkedHashMap<>(object.members());
        if (JsonFields.of(path, object, faults, names).isPresent()) {
            members.keySet().retainAll(names);
        }
        return members;
    }

    private static void each(
            Map<String, Json> members, String name, String path, BiFunction<String, Json.Fields, Json> step) {
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
