package midplate.identity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.WayOfSeeing;
import midplate.plate.Reading;

/**
 * What a plate showed of a sample that may be pure.
 *
 * @param spot the spot that is looked at, with its Rf
 * @param spotsSeen how many spots were seen in its lane, this one among them
 * @param eluent what the plate ran in, if it was said
 * @param seenBy how it was looked at
 * @param volumeUl what one touch of the capillary puts on [µl]
 * @param concentrationPercent of the solution [g in 100 ml]
 * @param touches how often the capillary touched the same place
 * @param sizeMm diameter of the spot along the run [mm]
 * @param runMm from the start line to the front [mm]
 * @param startSpot what was left at the start line, if somebody looked
 */
public record PurityQuestion(
        Compound spot,
        int spotsSeen,
        Optional<PlateEluent> eluent,
        List<WayOfSeeing> seenBy,
        OptionalDouble volumeUl,
        OptionalDouble concentrationPercent,
        int touches,
        OptionalDouble sizeMm,
        OptionalDouble runMm,
        Optional<StartSpot> startSpot) {
    /** Keeps its own copy. */
    public PurityQuestion {
        seenBy = List.copyOf(seenBy);
    }

    /** What was left at the start line. */
    public enum StartSpot {
        /** Nothing. */
        NONE,
        /** Less than in the spot. */
        WEAK,
        /** About as much as in the spot, or more. */
        STRONG;

        /** The word in requests: {@code weak}. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Taken for the diameter of a spot where none was measured [mm]; own choice. */
    private static final double USUAL_SIZE_MM = 3;
    /** Taken for the run where none was measured [mm]; own choice. */
    private static final double USUAL_RUN_MM = 50;

    /** The run [mm], measured or taken for it. */
    double run() {
        return runMm.orElse(USUAL_RUN_MM);
    }

    /** The diameter of the spot [mm], measured or taken for it. */
    double size() {
        return sizeMm.orElse(USUAL_SIZE_MM);
    }

    /** Whether the spot lies at the start line or at the front, where nothing is parted. */
    boolean isAtLine() {
        return rf() <= Reading.AT_START_RF || rf() >= Reading.AT_FRONT_RF;
    }

    /** The Rf of the spot [1]. */
    double rf() {
        return spot.rf().orElseThrow();
    }

    /** What was put on, where volume and concentration were said [µg]: 1 µl of 1 % holds 10 µg. */
    OptionalDouble appliedUg() {
        double microgramsPerMicrolitrePercent = 10;
        return volumeUl.isPresent() && concentrationPercent.isPresent()
                ? OptionalDouble.of(volumeUl.getAsDouble()
                        * concentrationPercent.getAsDouble()
                        * microgramsPerMicrolitrePercent
                        * touches)
                : OptionalDouble.empty();
    }
}
