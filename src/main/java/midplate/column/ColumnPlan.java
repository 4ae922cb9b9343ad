package midplate.column;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.advice.Ratio;
import midplate.words.Message;

/**
 * What to do on the column, with what it is to give.
 *
 * @param bed the column
 * @param voidMl volume of eluent in the bed: one column volume [ml]
 * @param unretainedMl eluent run when what is not held leaves [ml]
 * @param load how much of it the bed carries
 * @param program what to pour
 * @param pours how to mix it
 * @param stopMl after how much to stop, most likely [ml]; absent where all of it will be needed
 * @param chancePure chance that some run of fractions holds at least 80 % of the target and is at least 95 % target, all
 *     compounds loaded alike, and lies between the neighbours that the likeliest order gives it [1]
 * @param chanceInWords the same in a sentence
 * @param bands when each spot leaves
 * @param cut the fractions to keep for the target where every band lies at its middle values; absent where none that is worth
 *     keeping is pure enough
 * @param fractionMl volume of a fraction [ml]
 * @param fractions how many
 * @param shares of each spot, in the order asked, the share of it in each fraction where its band starts and ends at the
 *     middle values of {@code bands} [1]
 * @param flowMlMin flow [ml/min]
 * @param minutes from the first drop to the last fraction [min]
 * @param solventMl eluent from the first drop to the last fraction [ml], without the spare
 * @param tried what else was weighed
 * @param reasons why this, in words
 * @param warnings where it may fail
 * @param cautions what harms
 */
public record ColumnPlan(
        Bed bed,
        double voidMl,
        double unretainedMl,
        Load load,
        Program program,
        List<StepPour> pours,
        OptionalDouble stopMl,
        double chancePure,
        Message chanceInWords,
        List<SpotBand> bands,
        Optional<Cut> cut,
        double fractionMl,
        int fractions,
        List<List<Double>> shares,
        double flowMlMin,
        double minutes,
        double solventMl,
        List<Tried> tried,
        List<Message> reasons,
        List<Message> warnings,
        List<Message> cautions) {
    /** Keeps its own copies. */
    public ColumnPlan {
        pours = List.copyOf(pours);
        bands = List.copyOf(bands);
        shares = shares.stream().map(List::copyOf).toList();
        tried = List.copyOf(tried);
        reasons = List.copyOf(reasons);
        warnings = List.copyOf(warnings);
        cautions = List.copyOf(cautions);
    }

    /**
     * The load.
     *
     * @param massMg mass put on in one run [mg]: a portion of the sample, where the bed does not carry all of it
     * @param runs how many such portions the sample is
     * @param mostMg what the bed carries at this distance of the spots [mg]
     * @param silicaGrams dry silica [g]
     * @param loading wet or dry
     * @param loadMl volume for a wet load [ml]; 0 for a dry one
     * @param loadSilicaGrams silica to dry it onto [g]; 0 for a wet one
     * @param portion that this is one of several portions, in words
     */
    public record Load(
            double massMg,
            int runs,
            double mostMg,
            double silicaGrams,
            Loading loading,
            double loadMl,
            double loadSilicaGrams,
            Optional<Message> portion) {}

    /**
     * One eluent to mix.
     *
     * @param ratio weak to strong
     * @param volumeMl what runs through [ml]
     * @param mixMl what to mix, a tenth more, rounded up [ml]
     * @param weakMl of it the weaker solvent [ml]
     * @param strongMl of it the stronger solvent [ml]
     */
    public record StepPour(Ratio ratio, double volumeMl, double mixMl, double weakMl, double strongMl) {}

    /**
     * One spot.
     *
     * @param spot its name
     * @param rf on a plate in the first eluent [1]
     * @param startMl when it begins to leave [ml]
     * @param middleMl midway: the peak is taken to be there [ml]
     * @param endMl when it has left [ml]
     * @param idealMl where the ideal law puts the middle [ml]
     */
    public record SpotBand(String spot, Range90 rf, Range90 startMl, Range90 middleMl, Range90 endMl, double idealMl) {}

    /**
     * Fractions to keep.
     *
     * @param fromFraction the first, counted from 1
     * @param toFraction the last
     * @param yield share of the target in them [1]
     * @param purity share of target among the compounds in them, all of them loaded alike [1]
     */
    public record Cut(int fromFraction, int toFraction, double yield, double purity) {}

    /**
     * Another program that was weighed.
     *
     * @param percentStrong share of the stronger solvent in its first eluent [% v/v]
     * @param steps how many eluents
     * @param chancePure as in the plan [1]
     * @param solventMl eluent needed [ml]
     */
    public record Tried(double percentStrong, int steps, double chancePure, double solventMl) {}

    /**
     * What one eluent would do on the bed.
     *
     * @param percentStrong its share of the stronger solvent [% v/v]
     * @param bands when each spot leaves
     */
    public record Prediction(double percentStrong, List<SpotBand> bands) {
        /** Keeps its own copy. */
        public Prediction {
            bands = List.copyOf(bands);
        }
    }
}
