package midplate.lesson;

import java.util.List;
import java.util.Optional;
import midplate.advice.Forecast;
import midplate.advice.Window;
import midplate.plate.Reading;
import midplate.words.Message;

/**
 * What a slip does.
 *
 * @param slip which
 * @param size how large it is here and how large it can be
 * @param given the size taken, in the unit of its field
 * @param right the plate of a careful pair
 * @param careful what it notes and is advised
 * @param seen the plate of this time
 * @param noted what is noted of it and advised then
 * @param errs where the advice errs
 * @param what the slip in a sentence
 * @param does what it does to the numbers and the advice
 * @param formula its formula in words, and where that is from
 * @param noticed what the program itself says of such a plate; empty where it notices nothing
 * @param now what to do with the plate
 * @param next how to avoid it
 */
public record SlipAnswer(
        Slip slip,
        Slip.Size size,
        double given,
        SeenPlate right,
        Noted careful,
        SeenPlate seen,
        List<Noted> noted,
        Errs errs,
        Message what,
        List<Message> does,
        Message formula,
        List<Message> noticed,
        Message now,
        Message next) {
    /** Keeps its own copies. */
    public SlipAnswer {
        noted = List.copyOf(noted);
        does = List.copyOf(does);
        noticed = List.copyOf(noticed);
    }

    /** Where an advice errs. */
    public enum Errs {
        /** Too little of the strong solvent. */
        WEAK,
        /** Too much of it. */
        STRONG,
        /** Not at all. */
        SAME,
        /** To either side. */
        EITHER,
        /** There is none: the program does not take the plate. */
        REFUSED;

        /** Its word in answers. */
        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * What is noted of a plate.
     *
     * @param reading how the ruler was read: {@code as-seen}, {@code too-low}, {@code too-high}
     * @param startMm the start line, as noted [mm]
     * @param frontMm the front, as noted [mm]
     * @param spots each spot of the sample
     * @param advised empty where the program does not take the plate
     */
    public record Noted(String reading, double startMm, double frontMm, List<Spot> spots, Optional<Advised> advised) {
        /** Keeps its own copy. */
        public Noted {
            spots = List.copyOf(spots);
        }
    }

    /**
     * A spot as noted.
     *
     * @param name its compound
     * @param centreMm its height as noted [mm]; empty where it is not noted
     * @param reading what the program takes; empty where it is left out
     */
    public record Spot(String name, Optional<Double> centreMm, Optional<Reading> reading) {}

    /**
     * A ratio advised.
     *
     * @param ratio as it is poured
     * @param percentStrong its share of the strong solvent [% v/v]
     * @param bestPercentStrong the optimum before it was made pourable [% v/v]
     * @param chance that all spots lie in the window, as the adviser says with these numbers [1]
     * @param lands where the spots would lie, by what a careful pair knows
     */
    public record Advised(String ratio, double percentStrong, double bestPercentStrong, double chance, Forecast lands) {
        /** Below or above the usual window, negative or positive; 0 inside it. An Rf counts with the two decimals that are shown. */
        public static int outside(double rf) {
            double shown = Math.round(rf * 100) / 100.0;
            return shown < Window.USUAL.low() ? -1 : shown > Window.USUAL.high() ? 1 : 0;
        }
    }
}
