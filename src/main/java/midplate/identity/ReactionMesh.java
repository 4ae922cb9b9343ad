package midplate.identity;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Times at which courses are worked out: those of the plates, and some between. */
final class ReactionMesh {
    private static final int BETWEEN = 24;
    /** Stands for nothing at all. */
    private static final double LEAST = 1e-9;

    private final double[] minutes;
    private final int[] plates;

    private ReactionMesh(double[] minutes, int[] plates) {
        this.minutes = minutes;
        this.plates = plates;
    }

    /** Of plates, the last of which came after the beginning. */
    static ReactionMesh of(List<ReactionPlate> plates) {
        double last = plates.get(plates.size() - 1).minutes();
        double[] minutes = DoubleStream.concat(
                        plates.stream().mapToDouble(ReactionPlate::minutes),
                        IntStream.rangeClosed(0, BETWEEN).mapToDouble(i -> last * i / BETWEEN))
                .sorted()
                .distinct()
                .toArray();
        int[] at = plates.stream()
                .mapToInt(plate -> Arrays.binarySearch(minutes, plate.minutes()))
                .toArray();
        return new ReactionMesh(minutes, at);
    }

    /** All times [min], rising. */
    double[] minutes() {
        return minutes.clone();
    }

    /** The time of the latest plate [min]. */
    double last() {
        return minutes[minutes.length - 1];
    }

    /** Logarithms of amounts on this mesh, at the plates. */
    double[] logAtPlates(double[] amounts) {
        return Arrays.stream(plates)
                .mapToDouble(at -> Math.log(Math.max(amounts[at], LEAST)))
                .toArray();
    }
}
