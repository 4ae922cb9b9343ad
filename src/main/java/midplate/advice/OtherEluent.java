package midplate.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.PairBasis;
import midplate.chemistry.Solvent;
import midplate.words.Message;

/**
 * Another pair of solvents, at the ratio that is as strong as the mixture asked about, or as near as it comes.
 *
 * @param weak the weaker solvent
 * @param strong the stronger solvent
 * @param basis what its model rests on
 * @param kind whether its strong solvent holds on to silica as the one asked about does
 * @param equal the share that is equally strong; empty where the pair does not reach it
 * @param nearest the share that comes nearest, where none is equally strong
 * @param pour the simple ratio nearest to that share, and what it is measured with
 * @param chance that every spot reads inside the window at the poured ratio [1]
 * @param goal that it does and the two spots that lie closest now lie apart [1]; the same for one spot
 * @param closest what becomes there of the two spots that lie closest now; empty for one spot
 * @param spots what each spot does there
 * @param boilingPoint of the solvent that boils higher [°C]; empty where it is not published
 * @param flags what speaks against its solvents
 * @param ladder the middle of the sample at steps of this pair
 * @param reasons why it, and what to know of it
 * @param width of the band of equal strength [1 in Rf]; 0 where none is equally strong
 */
public record OtherEluent(
        Solvent weak,
        Solvent strong,
        PairBasis basis,
        Kind kind,
        Optional<Equal> equal,
        Optional<Nearest> nearest,
        Pour pour,
        double chance,
        double goal,
        Optional<ClosestSpots> closest,
        List<SpotForecast> spots,
        OptionalDouble boilingPoint,
        List<SolventFlag> flags,
        List<Rung> ladder,
        List<Message> reasons,
        double width) {
    /** Keeps its own copies. */
    public OtherEluent {
        spots = List.copyOf(spots);
        flags = List.copyOf(flags);
        ladder = List.copyOf(ladder);
        reasons = List.copyOf(reasons);
    }

    /** The same for these reasons. */
    OtherEluent because(List<Message> why) {
        return new OtherEluent(
                weak,
                strong,
                basis,
                kind,
                equal,
                nearest,
                pour,
                chance,
                goal,
                closest,
                spots,
                boilingPoint,
                flags,
                ladder,
                why,
                width);
    }

    /** Whether two strong solvents are of one class of localization. */
    public enum Kind {
        /** The order of the spots should stay. */
        SAME,
        /** It may change. */
        OTHER,
        /** One of the classes was not found. */
        UNKNOWN
    }

    /**
     * What is equally strong.
     *
     * @param percentStrong the share at which the middle of the sample is expected where it is now [% v/v]
     * @param low the share that is truly equally strong is below with probability 0.05 [% v/v]
     * @param high it is above with probability 0.05 [% v/v]
     */
    public record Equal(double percentStrong, double low, double high) {}

    /**
     * What comes nearest.
     *
     * @param percentStrong its share [% v/v]
     * @param rf the middle of the sample there [1]
     * @param side whether it is weaker or stronger than the mixture asked about
     */
    public record Nearest(double percentStrong, double rf, Side side) {}

    /** On which side of the mixture asked about. */
    public enum Side {
        /** Spots stay lower. */
        WEAKER,
        /** Spots run higher. */
        STRONGER
    }

    /**
     * What is poured.
     *
     * @param ratio the simple ratio
     * @param weakMl volume of the weaker solvent [ml]
     * @param strongMl volume of the stronger solvent [ml]
     */
    public record Pour(Ratio ratio, double weakMl, double strongMl) {}
}
