package midplate.identity;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.words.Message;

/**
 * Whether a rest of a starting material that is not seen any more would be covered by what is seen near it on the latest plate.
 *
 * <p>A spot hides a trace whose Rf differs from its own by less than {@link #reach}: the length of a spot, which is 3 mm on a run of 50 mm
 * where it is as strong as the starting material's own lane, and half of that where it is a trace. Near the start line and near the front
 * spots are drawn together, and more is hidden. All figures are own choices. Where the Rf of one is not known, nothing is found.
 */
final class HiddenRest {
    /** Length of a spot of strength {@value ReactionMark#FULL} [1], in Rf; of a trace half of it. */
    static final double LONG = 0.06;
    /** So near a line spots are drawn together [1], in Rf from the line; own choice. */
    private static final double NEAR_LINE = 0.12;
    /** A trace is hidden by a spot nearer than this where both are drawn together [1], in Rf. */
    private static final double DRAWN_TOGETHER = 0.1;

    private final ReactionSight sight;
    private final ReactionRf places;

    HiddenRest(ReactionSight sight, ReactionRf places) {
        this.sight = sight;
        this.places = places;
    }

    /** Why a rest would not be seen; empty where nothing known speaks against it. */
    Optional<Message> why() {
        OptionalDouble known =
                sight.question().first(SpeciesPart.START).map(places::rf).orElse(OptionalDouble.empty());
        if (known.isEmpty()) {
            return Optional.empty();
        }
        double rf = known.getAsDouble();
        if (rf < ReactionRf.ONE_SPOT || rf > 1 - ReactionRf.ONE_SPOT) {
            return Optional.of(Message.of("done.end-at-edge", "start", sight.startName(), "rf", rf));
        }
        int line = sight.last().baseline().orElse(ReactionMark.UNSEEN);
        if (line > ReactionMark.UNSEEN && rf < reach(line, rf, 0)) {
            return Optional.of(Message.of("done.end-hidden-line", "start", sight.startName(), "rf", rf, "grade", line));
        }
        return cover(rf);
    }

    private Optional<Message> cover(double rf) {
        return sight.question().species().stream()
                .filter(species -> !species.name().equals(sight.startName()))
                .filter(species -> grade(species) > ReactionMark.UNSEEN)
                .filter(species -> gap(species, rf) < reach(grade(species), rf, rf(species)))
                .min(Comparator.comparingDouble(species -> gap(species, rf)))
                .map(species -> Message.of(
                        "done.end-hidden",
                        "start",
                        sight.startName(),
                        "cover",
                        species.name(),
                        "grade",
                        grade(species),
                        "gap",
                        gap(species, rf)));
    }

    /**
     * How far from itself a spot hides a trace [1], in Rf.
     *
     * @param grade of the spot, 1 to 4
     * @param one Rf of the trace, in [0, 1]
     * @param other Rf of the spot, in [0, 1]
     */
    static double reach(int grade, double one, double other) {
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        if (high < NEAR_LINE || low > 1 - NEAR_LINE) {
            return DRAWN_TOGETHER;
        }
        double ofStrength = (double) (grade - ReactionMark.TRACE) / (ReactionMark.FULL - ReactionMark.TRACE);
        return LONG * (1 + ofStrength) / 2;
    }

    private int grade(ReactionSpecies species) {
        return sight.last().grade(species.name()).orElse(ReactionMark.UNSEEN);
    }

    private double gap(ReactionSpecies species, double rf) {
        return Math.abs(rf(species) - rf);
    }

    /** Far from everything where it is not known. */
    private double rf(ReactionSpecies species) {
        return places.rf(species).orElse(Double.POSITIVE_INFINITY);
    }
}
