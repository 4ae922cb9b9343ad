package midplate.wire;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import midplate.words.Allowed;
import midplate.words.Message;

/**
 * Brings a study of an older version to the newest, one version at a time, on the tree of its JSON. A further version adds one step
 * here; no step is ever changed, since files of its version are about.
 */
final class StudyUpgrades {
    /** What a study says that it is. */
    static final String FORMAT = "midplate-study";

    /** The steps, the first from version 1 to 2; each tells what in a study of its own version cannot be taken. */
    private static final List<BiFunction<Json.Fields, FaultList, Json>> STEPS =
            List.of(StudyStepTo2::apply, StudyStepTo3::apply, StudyStepTo4::apply, StudyStepTo5::apply);

    /** The version that is written. */
    static final int NEWEST = STEPS.size() + 1;

    private StudyUpgrades() {}

    /** The study in the newest version; empty where it says no version that is known, which is told. */
    static Optional<Json> newest(Json value, FaultList faults) {
        if (!(value instanceof Json.Fields study)) {
            JsonFields.wrongType("", value, Message.of("kind.object"), faults);
            return Optional.empty();
        }
        OptionalInt version = version(study, faults);
        if (version.isEmpty()) {
            return Optional.empty();
        }
        Json upgraded = study;
        for (int from = version.getAsInt(); from < NEWEST; from++) {
            upgraded = STEPS.get(from - 1).apply((Json.Fields) upgraded, faults);
        }
        return Optional.of(upgraded);
    }

    private static OptionalInt version(Json.Fields study, FaultList faults) {
        Map<String, Json> members = study.members();
        Json format = members.get("format");
        if (!(format instanceof Json.Text text && text.value().equals(FORMAT))) {
            faults.add(
                    "format",
                    Message.of("fault.no-study"),
                    format == null ? "" : format.shown(),
                    Allowed.words(FORMAT),
                    Message.of("todo.take-study"));
            return OptionalInt.empty();
        }
        Json version = members.get("version");
        if (version instanceof Json.Numeral number && number.value() == Math.rint(number.value())) {
            if (number.value() >= 1 && number.value() <= NEWEST) {
                return OptionalInt.of((int) number.value());
            }
            if (number.value() > NEWEST) {
                faults.add(
                        "version",
                        newer(number.written()),
                        number.shown(),
                        Allowed.closed(1, NEWEST),
                        Message.of("todo.take-newer-program"));
                return OptionalInt.empty();
            }
        }
        faults.add(
                "version",
                Message.of("fault.no-version"),
                version == null ? "" : version.shown(),
                Message.of("allowed.whole-number", "interval", Allowed.closed(1, NEWEST)),
                Message.of("todo.take-study"));
        return OptionalInt.empty();
    }

    /** What is said of a study of a version that is not known yet. */
    static Message newer(String version) {
        return Message.of("fault.newer-study", "version", version, "newest", NEWEST);
    }
}
