package midplate.wire;

import java.util.Optional;
import midplate.words.Message;

/** Reads the texts of a study, exactly as they were typed. */
final class StudyText {
    private StudyText() {}

    /** A text on one line, of at most so many signs; empty where it is faulty. */
    static Optional<String> line(String path, Json value, int longest, FaultList faults) {
        return whole(path, value, faults).flatMap(text -> {
            if (signs(text) <= longest && text.chars().noneMatch(Character::isISOControl)) {
                return Optional.of(text);
            }
            faults.add(
                    path,
                    Message.of("fault.line-not-taken", "longest", longest),
                    value.shown(),
                    Message.of("allowed.line", "longest", longest),
                    Message.of("todo.shorten-or-clean"));
            return Optional.empty();
        });
    }

    /** A text on as many lines as it likes, of at most so many signs; empty where it is faulty. */
    static Optional<String> lines(String path, Json value, int longest, FaultList faults) {
        return whole(path, value, faults).filter(text -> {
            boolean fits = signs(text) <= longest;
            if (!fits) {
                faults.add(
                        path,
                        Message.of("fault.text-too-long", "longest", longest),
                        value.shown(),
                        Message.of("allowed.signs-at-most", "longest", longest),
                        Message.of("todo.shorten"));
            }
            return fits;
        });
    }

    private static int signs(String text) {
        return text.codePointCount(0, text.length());
    }

    /** A text without half signs, which no file can hold. */
    private static Optional<String> whole(String path, Json value, FaultList faults) {
        if (!(value instanceof Json.Text text)) {
            JsonFields.wrongType(path, value, Message.of("kind.text"), faults);
            return Optional.empty();
        }
        boolean half = text.value()
                .codePoints()
                .anyMatch(sign -> sign >= Character.MIN_SURROGATE && sign <= Character.MAX_SURROGATE);
        if (half) {
            faults.add(
                    path,
                    Message.of("fault.half-sign"),
                    value.shown(),
                    Message.of("allowed.whole-signs"),
                    Message.of("todo.type-again"));
        }
        return half ? Optional.empty() : Optional.of(text.value());
    }
}
