package midplate.web;

import midplate.words.Refusal;

/** A request turned away at the door, with the status to say so. */
final class Turned extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int status;

    @SuppressWarnings("serial") // answered where it is caught, never stored
    private final Refusal refusal;

    Turned(int status, Refusal refusal) {
        super(refusal.getMessage(), refusal);
        this.status = status;
        this.refusal = refusal;
    }

    int status() {
        return status;
    }

    Refusal refusal() {
        return refusal;
    }
}
