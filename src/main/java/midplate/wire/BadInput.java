package midplate.wire;

import java.util.List;
import java.util.stream.Collectors;
import midplate.words.Refusal;
import midplate.words.Texts;

/** An input that cannot be taken, with all its faults. */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** How bad it is. */
    public enum Kind {
        /** No JSON at all, so that nothing in it could be read. */
        NO_JSON,
        /** More than the {@value Exchange#MOST_BYTES} bytes that are read. */
        TOO_LARGE,
        /** JSON whose fields cannot be taken. */
        FIELDS
    }

    private final Kind kind;

    @SuppressWarnings("serial") // answered where it is caught, never stored
    private final List<Fault> faults;

    BadInput(Kind kind, List<Fault> faults) {
        super(faults.stream()
                .map(fault -> fault.field() + ": " + fault.message())
                .collect(Collectors.joining(" ")));
        this.kind = kind;
        this.faults = List.copyOf(faults);
    }

    /** An input refused at a door, before its JSON was looked at. */
    public static BadInput of(Kind kind, Texts texts, Refusal refusal) {
        FaultList list = new FaultList(texts);
        list.add(refusal.field(), refusal);
        return new BadInput(kind, list.faults());
    }

    /** How bad it is. */
    public Kind kind() {
        return kind;
    }

    /** All faults, at least one. */
    public List<Fault> faults() {
        return faults;
    }
}
