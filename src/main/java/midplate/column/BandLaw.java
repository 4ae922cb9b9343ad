package midplate.column;

/** Foretells the bands of a sample on any bed, in any program, after what its plates and its earlier columns said. */
public interface BandLaw {
    /** How many spots. */
    int spots();

    /**
     * The bands.
     *
     * @param loadMl volume in which the sample is put on [ml]; 0 for a dry load
     */
    Bands bands(Bed bed, Program program, double loadMl);

    /** The Rf [1] a plate is to show at a share of the strong solvent [% v/v], and bounds that hold it with 90 %. */
    Range90 rf(int spot, double percentStrong);

    /**
     * Where the ideal law puts the middle of a band [ml], for the Rf to expect: in one eluent {@code V₀ + V_m·(1 − Rf)/Rf}, with V₀
     * as in {@link #unretainedMl} and V_m as in {@link #voidMl}.
     */
    double idealMl(int spot, Bed bed, Program program);

    /** Eluent run when what the silica does not hold leaves [ml]. */
    double unretainedMl(Bed bed);

    /** Whether columns were measured under the conditions asked about. */
    enum Conditions {
        /** In the pair of solvents of the law, without additive. */
        MEASURED,
        /** In others. */
        OTHER
    }

    /** Whether cartridges were run in such an eluent. */
    default Conditions conditions() {
        return Conditions.MEASURED;
    }

    /** The least share of the strong solvent of which something is known [% v/v]. */
    default double lowestPercent() {
        return 0;
    }

    /** The greatest [% v/v]. */
    default double highestPercent() {
        return 100;
    }

    /** Volume of eluent in the bed [ml]. */
    double voidMl(Bed bed);
}
