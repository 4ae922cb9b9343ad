package midplate.benchmark;

import java.util.List;

/**
 * Plates of hexane and ethyl acetate to run at once, advised before anything was read.
 *
 * @param percents their shares of ethyl acetate [% v/v]
 * @param chance said that all spots of a sample come into the window on one of them or on the next plate [1]
 */
public record Scouted(List<Double> percents, double chance) {
    /** Keeps its own copy. */
    public Scouted {
        percents = List.copyOf(percents);
    }

    /** How the plates were come by. */
    public enum Way {
        /** The single ratio advised where one plate is run after the other. */
        STRAIGHT("going straight", 1),
        /** The best single plate. */
        ONE("one jar", 1),
        /** The best two. */
        TWO("two jars", 2),
        /** The best three. */
        THREE("three jars", 3),
        /** 9:1, 1:1 and pure ethyl acetate. */
        HABIT("9:1, 1:1 and pure", 1);

        private final String told;
        private final int jars;

        Way(String told, int jars) {
            this.told = told;
            this.jars = jars;
        }

        /** Its name in tables. */
        String told() {
            return told;
        }

        /** How many jars are asked for. */
        int jars() {
            return jars;
        }
    }
}
