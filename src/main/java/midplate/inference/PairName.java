package midplate.inference;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A solvent pair with open measurements on silica.
 *
 * @see "Xu2022"
 */
public enum PairName {
    /** Hexane and ethyl acetate, 0 to 100 % ethyl acetate. */
    HEXANE_ETHYL_ACETATE(OpenSolvent.HEXANE, OpenSolvent.ETHYL_ACETATE),
    /** Hexane and diethyl ether, 0 to 100 % ether; pure ether is saturated. */
    HEXANE_DIETHYL_ETHER(OpenSolvent.HEXANE, OpenSolvent.DIETHYL_ETHER),
    /** Dichloromethane and methanol, 0 to 9.1 % methanol. */
    DICHLOROMETHANE_METHANOL(OpenSolvent.DICHLOROMETHANE, OpenSolvent.METHANOL);

    private final OpenSolvent weak;
    private final OpenSolvent strong;

    PairName(OpenSolvent weak, OpenSolvent strong) {
        this.weak = weak;
        this.strong = strong;
    }

    /** The id of the weaker solvent in the catalogue. */
    public String weak() {
        return weak.id();
    }

    /** The id of the stronger solvent in the catalogue. */
    public String strong() {
        return strong.id();
    }

    /** Both ids: {@code hexane/ethyl-acetate}. */
    public String id() {
        return weak() + "/" + strong();
    }

    /** The pair of that id; empty when there is none. */
    public static Optional<PairName> byId(String id) {
        return Arrays.stream(values()).filter(pair -> pair.id().equals(id)).findFirst();
    }

    /**
     * The share of the stronger solvent [% v/v, two decimals] in a mixture; empty when the mixture holds a solvent of
     * neither side.
     */
    public OptionalDouble percentIn(List<Double> fractions) {
        for (OpenSolvent solvent : OpenSolvent.values()) {
            if (solvent != weak && solvent != strong && solvent.of(fractions) != 0) {
                return OptionalDouble.empty();
            }
        }
        double percent = strong.of(fractions) * 100;
        return OptionalDouble.of(Math.rint(percent * 100) / 100);
    }

    /** The volume fractions [1] of a mixture, in the order of {@link Measurement#fractions}. */
    public List<Double> fractionsAt(double percent) {
        return Arrays.stream(OpenSolvent.values())
                .map(solvent -> solvent == strong ? percent / 100 : solvent == weak ? 1 - percent / 100 : 0.0)
                .toList();
    }
}
