package midplate.lesson;

import java.util.List;
import java.util.Optional;
import midplate.chemistry.Solvent;
import midplate.chemistry.Sorbent;

/**
 * What is asked of a series of plates.
 *
 * @param sample what runs in what
 * @param percents shares of the strong solvent, rising [% v/v]; empty where they are to be chosen
 * @param against another pair to set beside it at equal published strength
 * @param otherLayer another layer to set beside it, by theory alone
 */
public record SeriesQuestion(
        LessonSample sample, List<Double> percents, Optional<Eluent> against, Optional<Sorbent> otherLayer) {
    /** The fewest plates of a series that are asked for by their shares. */
    public static final int FEWEST = 2;

    /** The most: more are not told apart side by side. */
    public static final int MOST = 7;

    /** Keeps its own copy. */
    public SeriesQuestion {
        percents = List.copyOf(percents);
    }

    /**
     * Two solvents.
     *
     * @param weak the weaker one
     * @param strong the stronger one
     */
    public record Eluent(Solvent weak, Solvent strong) {}
}
