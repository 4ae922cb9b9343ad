package midplate.lesson;

import java.util.List;
import java.util.Optional;
import midplate.words.Message;

/**
 * What the readings of a class show.
 *
 * @param spots each spot that was read
 * @param scatter how readings scatter by themselves and with their plates; empty where nothing tells the two apart
 * @param kept the same without the readings far off; empty where there are none, nothing tells them apart then, or
 *     readings do not scatter less
 * @param plates each plate, as far as it lies to one side
 * @param far readings far from where their spot and their plate have them
 * @param farPlates plates far from the others as a whole, which no mistake of measuring explains
 * @param slips pairs that seem to have measured wrongly
 * @param sentences what that comes to
 */
public record ClassFindings(
        List<OfSpot> spots,
        Optional<Scatter> scatter,
        Optional<Scatter> kept,
        List<OfPlate> plates,
        List<Far> far,
        List<FarPlate> farPlates,
        List<Slip> slips,
        List<Message> sentences) {
    /** Keeps its own copies. */
    public ClassFindings {
        spots = List.copyOf(spots);
        plates = List.copyOf(plates);
        far = List.copyOf(far);
        farPlates = List.copyOf(farPlates);
        slips = List.copyOf(slips);
        sentences = List.copyOf(sentences);
    }

    /**
     * A spot.
     *
     * @param spot which
     * @param readings how many
     * @param onPlates on how many plates
     * @param mean of the readings [Rf]
     * @param meanError standard error of the mean over the plates [Rf]; empty with one plate
     * @param median of the readings [Rf]
     * @param histogram how many readings fall where
     * @param within scatter of a reading by itself [Rf]; empty where it is not told from that of plates
     * @param between scatter of plates [Rf], likewise
     * @param inside how many readings lie in the model's band; empty without one
     * @param text all that in a sentence
     */
    public record OfSpot(
            ClassSpot spot,
            int readings,
            int onPlates,
            double mean,
            Optional<Double> meanError,
            double median,
            ReadingHistogram histogram,
            Optional<Double> within,
            Optional<Double> between,
            Optional<Integer> inside,
            Message text) {}

    /**
     * Two scatters told apart.
     *
     * @param way {@code repeats} or {@code shared}
     * @param onPlates on how many plates it rests
     * @param within of a reading by itself
     * @param between of plates
     * @param chance of as much between plates by chance alone [1]
     * @param sentences one of each, and what to know of them
     */
    public record Scatter(
            String way, int onPlates, Spread within, Spread between, double chance, List<Message> sentences) {
        /** Keeps its own copy. */
        public Scatter {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * A plate.
     *
     * @param plate which
     * @param pairs who read it
     * @param shift by how much its spots lie above the class midway up the plate [Rf]
     */
    public record OfPlate(ClassPlate plate, List<String> pairs, double shift) {}

    /**
     * A reading far from the others.
     *
     * @param reading which
     * @param text in a sentence
     */
    public record Far(ClassReading reading, Message text) {}

    /**
     * A plate far from the others.
     *
     * @param plate which, and by how much
     * @param text in a sentence
     */
    public record FarPlate(OfPlate plate, Message text) {}

    /**
     * A mistake that a pair seems to have made.
     *
     * @param pair which
     * @param slip {@code edge}, {@code front} or {@code line}
     * @param chance how likely [1]
     * @param behind what the readings would be without it, in the order of the pair's readings
     * @param text in a sentence
     */
    public record Slip(String pair, String slip, double chance, List<Behind> behind, Message text) {
        /** Keeps its own copy. */
        public Slip {
            behind = List.copyOf(behind);
        }
    }

    /**
     * A reading set right.
     *
     * @param reading which
     * @param rf without the mistake [1]
     */
    public record Behind(ClassReading reading, double rf) {}
}
