package midplate.notebook;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A plate as it was entered. Heights are measured from its lower edge.
 *
 * @param id by which advices refer to it
 * @param heightMm height [mm]
 * @param widthMm width [mm]
 * @param startMm height of the start line [mm]
 * @param frontMm height of the front [mm]
 * @param weak id of the weaker solvent
 * @param strong id of the stronger solvent
 * @param eluent the ratio or share as it was typed: {@code 9 : 1}; may be empty
 * @param percentStrong the share of the stronger solvent that it means [% v/v], where it means one
 * @param additive what was added to the eluent
 * @param conditions how it was run, as far as noted
 * @param lanes from left to right
 * @param notSeen ids of compounds that were looked for and not seen
 * @param photo the picture that was kept of it, if any was
 */
public record StudyPlate(
        String id,
        Entered heightMm,
        Entered widthMm,
        Entered startMm,
        Entered frontMm,
        String weak,
        String strong,
        String eluent,
        OptionalDouble percentStrong,
        JarAdditive additive,
        Optional<RunConditions> conditions,
        List<Lane> lanes,
        List<String> notSeen,
        Optional<PlatePhoto> photo) {
    /** Keeps its own copies. */
    public StudyPlate {
        lanes = List.copyOf(lanes);
        notSeen = List.copyOf(notSeen);
    }

    /**
     * A lane.
     *
     * @param id its name on the plate
     * @param readings in the order they were entered
     */
    public record Lane(String id, List<SpotSeen> readings) {
        /** Keeps its own copy. */
        public Lane {
            readings = List.copyOf(readings);
        }
    }

    /** How the place of a spot was given. */
    public enum Given {
        /** By the height of its centre [mm]. */
        CENTRE_MM,
        /** By its Rf. */
        RF
    }

    /**
     * A spot that was seen in a lane.
     *
     * @param id its name in the study
     * @param spots ids of the compounds in it: none where it is not known which, two where it hides two
     * @param given how its place was given
     * @param place the height of its centre [mm], or its Rf
     * @param sizeMm its size along the lane [mm], where it was measured
     * @param errorMm standard error of the height of its centre [mm], where a picture told it
     * @param shape its shape, in words; those of {@link midplate.plate.SpotForm} count in advice
     * @param seen how it was seen, in words
     */
    public record SpotSeen(
            String id,
            List<String> spots,
            Given given,
            Entered place,
            Optional<Entered> sizeMm,
            Optional<Entered> errorMm,
            Optional<String> shape,
            Optional<String> seen) {
        /** Keeps its own copy. */
        public SpotSeen {
            spots = List.copyOf(spots);
        }
    }

    /**
     * How a plate was run; each as far as it was noted.
     *
     * @param lot of the plates
     * @param humidity relative humidity [%]
     * @param lined whether the jar was lined
     * @param minutesEquilibrated how long the jar stood closed before [min]
     * @param temperatureC temperature [°C]
     * @param eluentAge how old the eluent was, in words
     */
    public record RunConditions(
            Optional<String> lot,
            Optional<Entered> humidity,
            Optional<Lining> lined,
            Optional<Entered> minutesEquilibrated,
            Optional<Entered> temperatureC,
            Optional<String> eluentAge) {}

    /** Whether a jar was lined with filter paper. */
    public enum Lining {
        /** It was. */
        LINED,
        /** It was not. */
        UNLINED
    }
}
