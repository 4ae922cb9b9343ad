package midplate.identity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One plate as it is compared: the spots of the sample, and those of each reference and co-spot, lanes of one content taken together.
 */
final class ReadPlate {
    /** Spots of one content count as the same where they lie nearer than this share of the run [1] (own choice). */
    private static final double SAME_SPOT = 0.06;

    private final ComparedPlate plate;
    private final int number;

    private ReadPlate(ComparedPlate plate, int number) {
        this.plate = plate;
        this.number = number;
    }

    /** @param number as a person counts, from 1 */
    static ReadPlate of(ComparedPlate plate, int number) {
        return new ReadPlate(plate, number);
    }

    int number() {
        return number;
    }

    List<ReadSpot> unknown() {
        return together(plate.lanes().stream()
                .filter(lane -> lane.role() == LaneRole.UNKNOWN)
                .toList());
    }

    List<ReadSpot> reference(String name) {
        return together(lanes(LaneRole.REFERENCE, name));
    }

    List<ReadSpot> coSpot(String name) {
        return together(lanes(LaneRole.CO_SPOT, name));
    }

    List<ReadSpot> everySpot() {
        return plate.lanes().stream()
                .flatMap(lane -> lane.spots().stream())
                .map(spot -> ReadSpot.of(spot, plate))
                .toList();
    }

    /** Two lanes of the sample, one spot each, that one compound would hardly give; the lower first. */
    Optional<List<ReadSpot>> unlikeLanes() {
        return unlike(plate.lanes().stream().filter(lane -> lane.role() == LaneRole.UNKNOWN));
    }

    /** The same for a reference. */
    Optional<List<ReadSpot>> unlikeLanes(String name) {
        return unlike(lanes(LaneRole.REFERENCE, name).stream());
    }

    /** The lowest and the highest lane, judged by the chance asked of lanes alone, shared between all pairs of lanes. */
    private Optional<List<ReadSpot>> unlike(Stream<ComparedLane> lanes) {
        List<ReadSpot> single = lanes.filter(lane -> lane.spots().size() == 1)
                .map(lane -> ReadSpot.of(lane.spots().get(0), plate))
                .sorted(Comparator.comparingDouble(ReadSpot::mm))
                .toList();
        if (single.size() < 2) {
            return Optional.empty();
        }
        ReadSpot low = single.get(0);
        ReadSpot high = single.get(single.size() - 1);
        int pairs = single.size() * (single.size() - 1) / 2;
        double chance = PlateComparison.chanceOfGap(
                high.boundMm() - low.boundMm(), Math.sqrt(low.variance() + high.variance()));
        return pairs * chance < PlateComparison.STATED_ALONE ? Optional.of(List.of(low, high)) : Optional.empty();
    }

    /** Whether nothing but Rf were noted. */
    boolean isOfRfOnly() {
        return plate.startMm().isEmpty() || plate.frontMm().isEmpty();
    }

    private List<ComparedLane> lanes(LaneRole role, String name) {
        return plate.lanes().stream()
                .filter(lane -> lane.role() == role
                        && lane.reference().filter(name::equals).isPresent())
                .toList();
    }

    /** The spots of lanes of one content, from the start line up: each the mean of where it was seen. */
    private List<ReadSpot> together(List<ComparedLane> lanes) {
        List<List<ReadSpot>> seen = new ArrayList<>();
        for (ComparedLane lane : byCount(lanes)) {
            List<List<ReadSpot>> free = new ArrayList<>(seen);
            for (LaneSpot spot : lane.spots()) {
                ReadSpot read = ReadSpot.of(spot, plate);
                List<ReadSpot> same = free.stream()
                        .filter(known -> ReadSpot.mean(known).distance(read) <= SAME_SPOT * read.runMm())
                        .min(Comparator.comparingDouble(
                                known -> ReadSpot.mean(known).distance(read)))
                        .orElse(null);
                if (same == null) {
                    seen.add(new ArrayList<>(List.of(read)));
                } else {
                    free.remove(same);
                    same.add(read);
                }
            }
        }
        return seen.stream()
                .map(ReadSpot::mean)
                .sorted(Comparator.comparingDouble(ReadSpot::mm))
                .toList();
    }

    /** The fullest lanes first, so that the order in which lanes are given does not matter. */
    private static List<ComparedLane> byCount(List<ComparedLane> lanes) {
        return lanes.stream()
                .sorted(Comparator.comparingInt(
                                (ComparedLane lane) -> -lane.spots().size())
                        .thenComparing(lane -> lane.spots().toString()))
                .toList();
    }
}
