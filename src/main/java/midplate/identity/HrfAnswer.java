package midplate.identity;

import java.util.List;
import java.util.Optional;
import midplate.catalogue.HrfSystem;
import midplate.words.Message;

/**
 * The spots as they would lie on the plates of the table.
 *
 * @param corrected one for each spot asked, in that order
 * @param system the tabulated system, where one was asked for
 * @param text how it was corrected
 * @param warnings what to mind
 * @param cautions what to mind at the bench
 */
public record HrfAnswer(
        List<Corrected> corrected,
        Optional<HrfSystem> system,
        Message text,
        List<Message> warnings,
        List<Message> cautions) {
    /** Keeps its own copies. */
    public HrfAnswer {
        corrected = List.copyOf(corrected);
        warnings = List.copyOf(warnings);
        cautions = List.copyOf(cautions);
    }

    /**
     * A corrected spot.
     *
     * @param name what it is called
     * @param hrf its corrected hRf [1], 0 to 100
     * @param low the lower end of its 90 % band, from reading and between laboratories [1]
     * @param high the upper end [1]
     * @param text that in a sentence
     */
    public record Corrected(String name, double hrf, double low, double high, Message text) {}
}
