package midplate.column;

import midplate.catalogue.ColumnLaw;
import midplate.inference.PairModel;

/**
 * What one bed does: how much eluent runs before anything leaves, and how much more a compound needs.
 *
 * <p>A cartridge follows the law that was fitted ({@link ColumnLaw}). In another pair of solvents, on another sorbent or with an
 * additive its term for the eluent was not measured: the mean of the columns measured stands in for it, and their spread in it comes
 * on top of that of compounds. A size that was not measured may lie beside the law as measured sizes do. Both shift all compounds
 * alike, and part none.
 *
 * <p>A glass column follows the published bed and the ideal law: eluent fills 0.8 of the bed, and {@code V = V_m/Rf}. Its scatter is
 * that of the cartridges around that same ideal law, since no such columns were measured: it is that much wider because cartridges
 * hold more than the ideal law says. What goes beyond the spread of compounds shifts all of them alike, too.
 *
 * @param law fitted to cartridges
 * @param pair the pair asked about
 * @param isMeasured whether the columns of the law were run in this pair
 * @see "Still1978"
 */
record BedLaw(ColumnLaw law, PairModel pair, boolean isMeasured) {
    /** Share of a packed bed that eluent fills [1]; from memory. */
    static final double POROSITY = 0.8;

    private static final double MOST_LOG = 20;

    /** Eluent run when the middle of a band leaves by the ideal law, {@code 1/Rf} [column volumes]; tubing comes on top. */
    static double columnVolumes(double rf) {
        return 1 / rf;
    }

    /** Eluent in the bed [ml]. */
    double voidMl(Bed bed) {
        if (bed instanceof GlassColumn glass) {
            return POROSITY * glass.volumeMl();
        }
        return law.voidMlPerGram() * bed.silicaGrams();
    }

    /** Eluent run when what is not held leaves [ml]. */
    double unretainedMl(Bed bed) {
        return bed instanceof GlassColumn ? voidMl(bed) : law.outsideMl() + voidMl(bed);
    }

    /** What is held beyond that [ml], at a logit of Rf [ln units] and a share of the strong solvent [% v/v]; a compound's δ aside. */
    double heldMl(Bed bed, double eta, double percent) {
        if (bed instanceof GlassColumn) {
            return voidMl(bed) * Math.exp(Math.min(MOST_LOG, -eta));
        }
        double log = -law.steepness() * eta - law.drift() * (place(percent) - ColumnLaw.ORIGIN);
        return law.holdMlPerGram() * bed.silicaGrams() * Math.exp(Math.min(MOST_LOG, log));
    }

    private double place(double percent) {
        return isMeasured
                ? Math.log1p(Math.max(law.lowestPercent(), Math.min(law.highestPercent(), percent)))
                : law.meanPlace();
    }

    /** Standard deviation of all by which a compound may be held otherwise than the law says [ln units]. */
    double spread(Bed bed) {
        return Math.hypot(ownSpread(), commonSpread(bed));
    }

    /** The part of it that is each compound's own: of δ [ln units]. */
    double ownSpread() {
        return law.spotSpread();
    }

    /** The part of it that all compounds on a bed have in common [ln units]. */
    double commonSpread(Bed bed) {
        double unmeasured = isMeasured ? 0 : law.drift() * law.placeSpread();
        double size = bed.basis() == BedBasis.MEASURED || bed.basis() == BedBasis.PUBLISHED ? 0 : law.sizeSpread();
        double ideal = bed instanceof GlassColumn
                ? law.idealSpread() * law.idealSpread() - law.spotSpread() * law.spotSpread()
                : 0;
        return Math.sqrt(Math.max(0, ideal) + unmeasured * unmeasured + size * size);
    }

    /** The middle of ln u [ln units], u = ln(end/start), of a compound without an ω of its own. */
    double logWidth(Bed bed, double middleMl, double loadMl) {
        ColumnLaw.Width width = law.width();
        return width.logWidth(width.load(loadMl, bed.silicaGrams()), width.place(middleMl, unretainedMl(bed)));
    }

    /** By how much a load is larger than any that was measured on so much silica [ml]: a plug that comes on top of the band. */
    double plugMl(Bed bed, double loadMl) {
        return Math.max(0, loadMl - law.width().mostLoad() * bed.silicaGrams());
    }
}
