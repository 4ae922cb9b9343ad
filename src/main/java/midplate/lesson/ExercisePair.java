package midplate.lesson;

import java.util.Optional;

/** Two solvents of an exercise, on silica; their curves were measured. The order is part of every code. */
public enum ExercisePair {
    /** What most classes have. */
    HEXANE_ETHYL_ACETATE("hexane", "ethyl-acetate"),
    /** The stronger one boils at 35 °C. */
    HEXANE_DIETHYL_ETHER("hexane", "diethyl-ether"),
    /** For what is held fast. */
    DICHLOROMETHANE_METHANOL("dichloromethane", "methanol");

    private final String weak;
    private final String strong;

    ExercisePair(String weak, String strong) {
        this.weak = weak;
        this.strong = strong;
    }

    /** Id of the weaker solvent. */
    public String weak() {
        return weak;
    }

    /** Id of the stronger solvent. */
    public String strong() {
        return strong;
    }

    /** The pair of these two, by their ids. */
    public static Optional<ExercisePair> of(String weak, String strong) {
        for (ExercisePair pair : values()) {
            if (pair.weak.equals(weak) && pair.strong.equals(strong)) {
                return Optional.of(pair);
            }
        }
        return Optional.empty();
    }
}
