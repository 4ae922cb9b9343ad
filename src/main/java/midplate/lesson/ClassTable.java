package midplate.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.StatUtils;

/** The readings of a class by plate and spot. */
final class ClassTable {
    private final int spots;
    /** By plate, by spot: what was read [1]. */
    private final List<double[][]> plates;

    private ClassTable(int spots, List<double[][]> plates) {
        this.spots = spots;
        this.plates = plates;
    }

    /** Of readings, plates in the order they first come. */
    static ClassTable of(int spots, List<ClassReading> readings) {
        Map<ClassPlate, List<ClassReading>> byPlate = new LinkedHashMap<>();
        readings.forEach(each -> byPlate.computeIfAbsent(each.plate(), plate -> new ArrayList<>())
                .add(each));
        List<double[][]> plates = new ArrayList<>();
        for (List<ClassReading> on : byPlate.values()) {
            double[][] read = new double[spots][];
            for (int s = 0; s < spots; s++) {
                int spot = s;
                read[s] = on.stream()
                        .filter(each -> each.spot() == spot)
                        .mapToDouble(ClassReading::rf)
                        .toArray();
            }
            plates.add(read);
        }
        return new ClassTable(spots, List.copyOf(plates));
    }

    int spots() {
        return spots;
    }

    int plates() {
        return plates.size();
    }

    /** What was read of a spot on each plate that has it. */
    List<double[]> of(int spot) {
        return plates.stream()
                .map(plate -> plate[spot])
                .filter(read -> read.length > 0)
                .toList();
    }

    /** All readings of a spot. */
    double[] all(int spot) {
        return of(spot).stream().flatMapToDouble(Arrays::stream).toArray();
    }

    /** The mean of a spot on a plate [1]; empty where it was not read there. */
    OptionalDouble mean(int plate, int spot) {
        double[] read = plates.get(plate)[spot];
        return read.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(StatUtils.mean(read));
    }

    /** The same with the plates of each spot exchanged by chance, so that no plate moves its spots together any more. */
    ClassTable mixed(SeededDraws draws) {
        double[][][] other = new double[plates.size()][spots][];
        for (int spot = 0; spot < spots; spot++) {
            int[] having = having(spot);
            int[] order = having.clone();
            for (int i = order.length - 1; i > 0; i--) {
                int j = draws.whole(0, i);
                int kept = order[i];
                order[i] = order[j];
                order[j] = kept;
            }
            for (double[][] plate : other) {
                plate[spot] = new double[0];
            }
            for (int i = 0; i < having.length; i++) {
                other[having[i]][spot] = plates.get(order[i])[spot];
            }
        }
        return new ClassTable(spots, List.of(other));
    }

    private int[] having(int spot) {
        int[] found = new int[plates.size()];
        int count = 0;
        for (int i = 0; i < plates.size(); i++) {
            if (plates.get(i)[spot].length > 0) {
                found[count++] = i;
            }
        }
        return Arrays.copyOf(found, count);
    }
}
