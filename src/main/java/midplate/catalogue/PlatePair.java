package midplate.catalogue;

import java.util.List;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;

/**
 * A solvent pair of which there is a model, fitted to open measurements or made from published strengths: its strength curve, its noise,
 * and how compounds are spread in it.
 *
 * @param basis what the model rests on
 * @param sorbent the layer
 * @param weak the weaker solvent
 * @param strong the stronger solvent
 * @param trustedFrom least share of the strong solvent at which the curve may be trusted [% v/v]
 * @param trustedTo largest such share [% v/v]
 * @param percentStrong the shares that were measured, or for which a theory was worked out [% v/v], rising
 * @param strength G at these shares [ln units], 0 at the reference share, rising
 * @param strengthError standard error of each G for given traits of the compounds [ln units]
 * @param hold a at these shares [1], above 0: by how much of what it is elsewhere compounds differ there in how weakly they are held
 * @param early L at these shares [ln units], at least 0: by how much a compound of t = 1 is ahead there
 * @param noiseScale σ₀ at these shares [1]
 * @param noiseLeftAtLines share of the noise variance left at start line and front [1], in (0, 1]
 * @param atLines a spot read no farther than this from a line sits on it [1], in [0, 0.1]
 * @param stretchStart by how much of the run the scale of Rf reaches below the start line [1], in [0, 0.2]
 * @param stretchFront and beyond the front [1], in [0, 0.2]
 * @param prior how the traits of compounds are spread
 * @param compounds number of series fitted
 * @param readings number of readings fitted
 * @param residual mean absolute deviation in Rf of the readings from the fitted curves [1], in the sample itself
 * @param provenance where the measurements come from and how the file was made
 */
public record PlatePair(
        PairBasis basis,
        Sorbent sorbent,
        Solvent weak,
        Solvent strong,
        double trustedFrom,
        double trustedTo,
        List<Double> percentStrong,
        List<Double> strength,
        List<Double> strengthError,
        List<Double> hold,
        List<Double> early,
        List<Double> noiseScale,
        double noiseLeftAtLines,
        double atLines,
        double stretchStart,
        double stretchFront,
        Traits prior,
        int compounds,
        int readings,
        double residual,
        Provenance provenance) {
    /** Keeps its own copies. */
    public PlatePair {
        percentStrong = List.copyOf(percentStrong);
        strength = List.copyOf(strength);
        strengthError = List.copyOf(strengthError);
        hold = List.copyOf(hold);
        early = List.copyOf(early);
        noiseScale = List.copyOf(noiseScale);
    }

    /** The pair's name in file names and keys: {@code silica-hexane-ethyl-acetate}. */
    public String id() {
        return id(sorbent, weak, strong);
    }

    /** The name of a pair in file names and keys. */
    public static String id(Sorbent sorbent, Solvent weak, Solvent strong) {
        return sorbent.id() + "-" + weak.id() + "-" + strong.id();
    }

    /**
     * How the traits of compounds are spread: a sum of normal curves, one for each compound measured and a wide one for those
     * never seen.
     *
     * @param bells the curves, at least one; their weights sum to 1
     */
    public record Traits(List<Bell> bells) {
        /** Keeps its own copy. */
        public Traits {
            bells = List.copyOf(bells);
        }
    }

    /**
     * A normal curve over the traits c [ln units], s [1] and t [1].
     *
     * @param weight its share of all compounds [1], at least 0
     * @param c middle [ln units]
     * @param s middle [1]
     * @param t middle [1]
     * @param varianceC [ln units²], above 0
     * @param covarianceCS [ln units]
     * @param covarianceCT [ln units]
     * @param varianceS [1]; 0 where all compounds have one s
     * @param covarianceST [1]
     * @param varianceT [1]; 0 where all compounds have one t
     */
    public record Bell(
            double weight,
            double c,
            double s,
            double t,
            double varianceC,
            double covarianceCS,
            double covarianceCT,
            double varianceS,
            double covarianceST,
            double varianceT) {}

    /**
     * Where a fitted file comes from.
     *
     * @param sources keys of the publications of the measurements
     * @param inputSha256 SHA-256 of the table that was read, in hexadecimal
     * @param leftOut what was left out of it and why
     * @param command how to make the file again
     */
    public record Provenance(List<String> sources, String inputSha256, String leftOut, String command) {
        /** Keeps its own copy. */
        public Provenance {
            sources = List.copyOf(sources);
        }
    }
}
