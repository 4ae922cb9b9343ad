package midplate.catalogue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What cartridges of silica do with a compound whose plates are known, as fitted to columns that were run:
 *
 * <pre>
 *   V = V₀ + h·m·exp(−γ·η − λ·(ln(1 + p) − 2) + δ),   V₀ = V_ext + φ·m
 * </pre>
 *
 * with V [ml] the eluent run when the middle of the band leaves, m [g] the dry silica, p [% v/v] the share of the strong solvent, η
 * [ln units] where the model of the pair puts the compound in that eluent (the logit of Rf, but for the stretch near the lines), and δ [ln units] of each compound, normal around 0. Beside that, ln V
 * scatters from run to run as Student's t.
 *
 * @param pair id of the pair of solvents it was measured in
 * @param sizes the cartridges that were measured, dry silica [g], rising
 * @param lowestPercent the weakest eluent measured [% v/v]; weaker ones count as this one
 * @param highestPercent the strongest [% v/v]
 * @param outsideMl V_ext, tubing and detector [ml], at least 0
 * @param voidMlPerGram φ, eluent in the bed [ml/g], above 0
 * @param holdMlPerGram h, how much the bed holds beyond that at Rf 0.5 in an eluent of 6.4 % [ml/g], above 0
 * @param steepness γ [1], above 0; 1 for a column that holds in the proportion of a plate
 * @param drift λ [1], by how much less columns hold than plates as the eluent gets stronger
 * @param meanPlace mean of ln(1 + p) over the columns measured [1]: what is taken where λ was not measured
 * @param placeSpread its standard deviation [1]
 * @param spotSpread standard deviation of δ [ln units], at least 0
 * @param runScatter scale of the scatter from run to run [ln units], above 0
 * @param runFreedom its degrees of freedom [1], 1 or more
 * @param sizeSpread standard deviation by which a size that was not measured may lie beside the law [ln units]
 * @param idealSpread by how much the columns measured differ from the ideal law in what is held [ln units, root mean square]
 * @param width how wide bands are
 * @param fit what it was fitted to
 * @param provenance where it comes from
 * @see "Wu2024"
 */
public record ColumnLaw(
        String pair,
        List<Double> sizes,
        double lowestPercent,
        double highestPercent,
        double outsideMl,
        double voidMlPerGram,
        double holdMlPerGram,
        double steepness,
        double drift,
        double meanPlace,
        double placeSpread,
        double spotSpread,
        double runScatter,
        double runFreedom,
        double sizeSpread,
        double idealSpread,
        Width width,
        Fit fit,
        Provenance provenance) {
    /** The file that holds it, beside the curves. */
    public static final String FILE = "column.json";
    /** ln(1 + p) [1] of the eluent in which columns are taken to hold as h says. */
    public static final double ORIGIN = 2;

    /** Keeps its own copy. */
    public ColumnLaw {
        sizes = List.copyOf(sizes);
    }

    /** The law packed with the program. */
    public static ColumnLaw builtIn(SolventCatalogue catalogue) {
        return ColumnLawReader.read(DataFolder.packed(), "curves/", catalogue);
    }

    /**
     * The law from a folder that {@code calibrate} wrote; empty where no columns were at hand.
     *
     * @throws BadSolventData when a field in it is wrong
     */
    public static Optional<ColumnLaw> read(Path folder, SolventCatalogue catalogue) {
        return folder.resolve(FILE).toFile().exists()
                ? Optional.of(ColumnLawReader.read(DataFolder.of(folder), "", catalogue))
                : Optional.empty();
    }

    /**
     * How wide bands are: {@code ln u = w₀ + w_l·ln(l/m) + w_z·z + w_zz·z² + ω}, with {@code u = ln(end/start)}, l [ml] the volume of
     * the load, m [g] the dry silica, {@code z = ln(V/V₀)} how late the band is, and ω [ln units] of each compound, normal around 0.
     *
     * @param first w₀ [ln units]
     * @param perLogLoad w_l [1]
     * @param leastLoad the smallest l/m measured [ml/g], above 0; smaller ones count as this one
     * @param mostLoad the largest [ml/g]
     * @param perPlace w_z [1]
     * @param perPlaceSquared w_zz [1]
     * @param mostPlace the greatest z [1]; later bands count as this one, earlier ones than V₀ as 0
     * @param spotSpread standard deviation of ω [ln units], at least 0
     * @param spread standard deviation of ln u from run to run [ln units], above 0
     */
    public record Width(
            double first,
            double perLogLoad,
            double leastLoad,
            double mostLoad,
            double perPlace,
            double perPlaceSquared,
            double mostPlace,
            double spotSpread,
            double spread) {
        /** l/m held among those measured [ml/g]. */
        public double load(double loadMl, double grams) {
            return StrictMath.max(leastLoad, StrictMath.min(mostLoad, loadMl / grams));
        }

        /** z held among those measured [1]. */
        public double place(double middleMl, double unretainedMl) {
            return StrictMath.max(0, StrictMath.min(mostPlace, StrictMath.log(middleMl / unretainedMl)));
        }

        /** The middle of ln u [ln units] for a load [ml/g] and a place [1]. */
        public double logWidth(double load, double place) {
            return first + perLogLoad * StrictMath.log(load) + perPlace * place + perPlaceSquared * place * place;
        }
    }

    /**
     * What it was fitted to.
     *
     * @param compounds compounds whose plates are known, too
     * @param runs their runs on columns
     * @param widthRuns runs of any compound for the widths
     */
    public record Fit(int compounds, int runs, int widthRuns) {}

    /**
     * Where it comes from.
     *
     * @param sources keys of {@code sources.json}
     * @param columnsSha256 SHA-256 of the table of columns
     * @param platesSha256 SHA-256 of the table of plates
     * @param leftOut what was left out, and why
     * @param command the command that made it
     */
    public record Provenance(
            List<String> sources, String columnsSha256, String platesSha256, String leftOut, String command) {
        /** Keeps its own copy. */
        public Provenance {
            sources = List.copyOf(sources);
        }
    }
}
