package midplate.advice;

import java.util.List;
import java.util.Optional;
import midplate.words.Message;

/**
 * What to do at the jar with the volumes advised; heights from the plate's lower edge, which stands on the jar's base.
 *
 * @param levelMm how high the eluent stands in the jar [mm]
 * @param startMm height of the start line [mm]
 * @param stopMm height of the front at which to take the plate out [mm]
 * @param runMm from the start line to there [mm]
 * @param time how long that takes, by theory; empty where no figures are known or the jar is too full
 * @param order how to mix
 * @param paper how to make the jar ready
 * @param warnings what does not fit together
 */
public record PourCard(
        double levelMm,
        double startMm,
        double stopMm,
        double runMm,
        Optional<Time> time,
        Message order,
        Message paper,
        List<Message> warnings) {
    /** Keeps its own copy. */
    public PourCard {
        warnings = List.copyOf(warnings);
    }

    /**
     * From when to when the front arrives.
     *
     * @param lowMinutes at the earliest [min]
     * @param highMinutes at the latest [min]
     */
    public record Time(double lowMinutes, double highMinutes) {}
}
