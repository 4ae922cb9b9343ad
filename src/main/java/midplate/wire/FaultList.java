package midplate.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.jspecify.annotations.Nullable;

/** Gathers the faults of one input, in the order they are found; the first {@value #MOST} are told one by one. */
final class FaultList {
    /** So many faults are told; of the rest only that there are more. */
    static final int MOST = 200;

    private final Texts texts;
    private final List<Fault> faults = new ArrayList<>();
    private int found;
    private @Nullable Message first;

    FaultList(Texts texts) {
        this.texts = texts;
    }

    /** A fault of a field. */
    void add(String field, Message reason, String came, Message allowed, Message todo) {
        found++;
        if (first == null) {
            first = field.equals("request") ? reason : Message.of("fault.at.place", "place", field, "why", reason);
        }
        if (found <= MOST) {
            faults.add(new Fault(
                    field, reason.code(), came, texts.render(allowed), texts.render(todo), texts.render(reason)));
        }
    }

    /** A fault that was put into words already. */
    void add(Fault fault) {
        found++;
        if (found <= MOST) {
            faults.add(fault);
        }
    }

    /** A fault of a field where what came is told in words. */
    void add(String field, Message reason, Message came, Message allowed, Message todo) {
        add(field, reason, texts.render(came), allowed, todo);
    }

    /** A refusal of a room below, at the place where its value stands in this input. */
    void add(String field, Refusal refusal) {
        add(field, refusal.reason(), refusal.came(), refusal.allowed(), refusal.todo());
    }

    /** The texts in which faults are told. */
    Texts texts() {
        return texts;
    }

    /** Whether nothing was found so far. */
    boolean isEmpty() {
        return found == 0;
    }

    /** What is wrong first of all, with its place. */
    Message first() {
        return Objects.requireNonNull(first, "asked where nothing was found");
    }

    /** How many were found so far. */
    int count() {
        return found;
    }

    /** All of them; the last says how many more there are where they are too many to tell. */
    List<Fault> faults() {
        List<Fault> all = new ArrayList<>(faults);
        if (found > MOST) {
            Message more = Message.of("fault.more-faults", "more", found - MOST);
            all.add(new Fault(
                    "request",
                    more.code(),
                    Integer.toString(found),
                    texts.render(Allowed.closed(0, 0)),
                    texts.render(Message.of("todo.mend")),
                    texts.render(more)));
        }
        return List.copyOf(all);
    }

    /** Ends the reading when anything was found. */
    void throwIfAny() {
        if (!isEmpty()) {
            throw new BadInput(BadInput.Kind.FIELDS, faults());
        }
    }
}
