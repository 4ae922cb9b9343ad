package midplate.identity;

/** How far a reaction has come. */
public enum ReactionState {
    /** The starting material goes on falling. */
    RUNNING("running"),
    /** Some starting material stays, and does not fall any more or has not begun to. */
    STALLED("stalled"),
    /** The starting material is no longer seen and the product is. */
    FINISHED("finished"),
    /** The product is lost again, does not appear, or other things outgrow it. */
    GONE_WRONG("gone-wrong"),
    /** The plates do not tell. */
    NOT_TOLD("not-told");

    private final String id;

    ReactionState(String id) {
        this.id = id;
    }

    /** Its word in an answer. */
    public String id() {
        return id;
    }
}
