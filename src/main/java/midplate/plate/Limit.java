package midplate.plate;

/** Whether a reading is a number or only a bound, because the spot sits on one of the two lines. */
public enum Limit {
    /** The spot lies visibly between the lines: its Rf is a number. */
    NONE,
    /** The spot is not visibly off the start line: its Rf is at most the value read. */
    AT_START,
    /** The spot is not visibly behind the front: its Rf is at least the value read. */
    AT_FRONT
}
