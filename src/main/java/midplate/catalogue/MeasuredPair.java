package midplate.catalogue;

import java.util.List;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;

/**
 * A solvent pair as fitted to open measurements: its strength curve, its noise, and how compounds are spread in it.
 *
 * @param sorbent the layer
 * @param weak the weaker solvent
 * @param strong the stronger solvent
 * @param trustedFrom least share of the strong solvent at which the curve may be trusted [% v/v]
 * @param trustedTo largest such share [% v/v]
 * @param percentStrong the measured shares [% v/v], rising
 * @param strength G at these shares [ln units], 0 at the reference share, rising
 * @param strengthError standard error of each G for given traits of the compounds [ln units]
 * @param noiseScale σ₀ at these shares [1]
 * @param noiseLeftAtLines share of the noise variance left at start line and front [1], in (0, 1]
 * @param stretchStart by how much of the run the scale of Rf reaches below the start line [1], in [0, 0.2]
 * @param stretchFront and beyond the front [1], in [0, 0.2]
 * @param prior how the traits of compounds are spread
 * @param compounds number of series fitted
 * @param readings number of readings fitted
 * @param residual mean absolute deviation in Rf of the readings from the fitted curves [1], in the sample itself
 * @param provenance where the measurements come from and how the file was made
 */
public record MeasuredPair(
        Sorbent sorbent,
        Solvent weak,
        Solvent strong,
        double trustedFrom,
        double trustedTo,
        List<Double> percentStrong,
        List<Double> strength,
        List<Double> strengthError,
        List<Double> noiseScale,
        double noiseLeftAtLines,
        double stretchStart,
        double stretchFront,
        Traits prior,
        int compounds,
        int readings,
        double residual,
        Provenance provenance) {
    /** Keeps its own copies. */
    public MeasuredPair {
        percentStrong = List.copyOf(percentStrong);
        strength = List.copyOf(strength);
        strengthError = List.copyOf(strengthError);
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
     * How the traits (c, s) of compounds are spread: any density of c, and s normal around a line in c.
     *
     * @param cFrom first node of c [ln units]
     * @param cStep distance of the nodes [ln units], above 0
     * @param cDensity weight of each node, at least 0, sum 1
     * @param sMean mean of s at cCentre [1]
     * @param sSlope change of the mean of s with c [1/ln unit]
     * @param cCentre mean of c [ln units]
     * @param sDeviation standard deviation of s around the line [1], above 0
     */
    public record Traits(
            double cFrom,
            double cStep,
            List<Double> cDensity,
            double sMean,
            double sSlope,
            double cCentre,
            double sDeviation) {
        /** Keeps its own copy. */
        public Traits {
            cDensity = List.copyOf(cDensity);
        }
    }

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
