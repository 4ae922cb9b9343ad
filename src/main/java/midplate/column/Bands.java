package midplate.column;

/**
 * When the band of each spot leaves a column, in many possible cases of the same weight: what is known of the compounds and how
 * columns scatter are both in them.
 */
public interface Bands {
    /** How many cases. */
    int cases();

    /** Eluent run when a spot begins to leave [ml]. */
    double startMl(int spot, int oneCase);

    /** Eluent run midway between start and end [ml]; the peak is taken to be there. */
    double middleMl(int spot, int oneCase);

    /** Eluent run when it has left [ml]. */
    double endMl(int spot, int oneCase);
}
