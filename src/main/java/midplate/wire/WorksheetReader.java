package midplate.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import midplate.lesson.LessonCode;
import midplate.lesson.Worksheet;
import midplate.lesson.WorksheetChoices;
import midplate.lesson.WorksheetKind;
import midplate.lesson.WorksheetPair;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Nearest;
import midplate.words.Refusal;

/** Reads which worksheet is wanted: by its code, or by what is chosen and a seed. */
final class WorksheetReader {
    static final List<String> FIELDS = List.of("code", "seed", "questions", "variants", "pair");

    private static final int LONGEST_CODE = 40;
    private static final List<String> KINDS =
            Arrays.stream(WorksheetKind.values()).map(WorksheetKind::id).toList();
    private static final List<String> PAIRS =
            Arrays.stream(WorksheetPair.values()).map(WorksheetPair::id).toList();

    private final FaultList faults;

    WorksheetReader(FaultList faults) {
        this.faults = faults;
    }

    /**
     * The code of the worksheet.
     *
     * @throws BadInput with all faults
     */
    LessonCode read(JsonFields fields) {
        Optional<LessonCode> code = fields.has("code") ? typed(fields) : chosen(fields);
        faults.throwIfAny();
        return code.orElseThrow();
    }

    private Optional<LessonCode> typed(JsonFields fields) {
        for (String name : fields.names()) {
            if (!name.equals("code") && FIELDS.contains(name)) {
                faults.add(
                        fields.path(name),
                        Message.of("fault.worksheet-code-says", "name", name),
                        fields.any(name).map(Json::shown).orElse(""),
                        Message.of("allowed.worksheet-code-alone"),
                        Message.of("todo.leave-out"));
            }
        }
        return fields.text("code", LONGEST_CODE).flatMap(typed -> {
            try {
                LessonCode code = LessonCode.read(fields.path("code"), typed, LessonCode.Kind.WORKSHEET);
                Worksheet.choices(code);
                return Optional.of(code);
            } catch (Refusal refusal) {
                faults.add(fields.path("code"), refusal);
                return Optional.empty();
            }
        });
    }

    private Optional<LessonCode> chosen(JsonFields fields) {
        int before = faults.count();
        List<WorksheetKind> kinds = kinds(fields);
        int variants = whole(fields, "variants", 1, 1, WorksheetChoices.MOST_VARIANTS);
        WorksheetPair pair = fields.choice("pair", PAIRS)
                .map(id -> WorksheetPair.values()[PAIRS.indexOf(id)])
                .orElse(WorksheetPair.HEXANE_ETHYL_ACETATE);
        if (!fields.has("seed")) {
            fields.missing(
                    "seed",
                    Message.of("allowed.whole-number", "interval", Allowed.closed(0, LessonCode.MOST_SEED)),
                    Message.of("todo.give-worksheet-seed"));
        }
        int seed = whole(fields, "seed", 0, 0, LessonCode.MOST_SEED);
        return faults.count() > before
                ? Optional.empty()
                : Optional.of(Worksheet.code(new WorksheetChoices(kinds, variants, pair), seed));
    }

    private List<WorksheetKind> kinds(JsonFields fields) {
        if (!fields.has("questions")) {
            return List.of(WorksheetKind.values());
        }
        List<WorksheetKind> kinds = new ArrayList<>();
        int before = faults.count();
        fields.items("questions", KINDS.size()).ifPresent(items -> {
            for (int i = 0; i < items.size(); i++) {
                kind(fields.path("questions[" + i + "]"), items.get(i)).ifPresent(kinds::add);
            }
        });
        if (kinds.isEmpty() && faults.count() == before) {
            faults.add(
                    fields.path("questions"),
                    Message.of("fault.no-worksheet-question"),
                    "[]",
                    Allowed.words(KINDS),
                    Message.of("todo.take-one-of-these"));
        }
        return kinds;
    }

    private Optional<WorksheetKind> kind(String path, Json value) {
        String came = value instanceof Json.Text text ? text.value() : "";
        if (KINDS.contains(came)) {
            return Optional.of(WorksheetKind.values()[KINDS.indexOf(came)]);
        }
        if (!(value instanceof Json.Broken)) {
            faults.add(
                    path,
                    Message.of("fault.unknown-choice", "name", "questions"),
                    value.shown(),
                    Allowed.words(KINDS),
                    Nearest.to(came, KINDS)
                            .map(near -> Message.of("todo.did-you-mean", "name", near))
                            .orElse(Message.of("todo.take-one-of-these")));
        }
        return Optional.empty();
    }

    private int whole(JsonFields fields, String name, int ifUnsaid, int least, int most) {
        double came = fields.number(name).orElse(ifUnsaid);
        if (came >= least && came <= most && came == Math.rint(came)) {
            return (int) came;
        }
        Message interval = Allowed.closed(least, most);
        faults.add(
                fields.path(name),
                Message.of("fault.worksheet-number", "name", name),
                fields.any(name).map(Json::shown).orElse(""),
                Message.of("allowed.whole-number", "interval", interval),
                Message.of("todo.give-worksheet-number", "interval", interval));
        return ifUnsaid;
    }
}
