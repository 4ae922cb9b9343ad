package midplate.identity;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a co-spot says of a spot of the sample and one of a reference.
 *
 * @param kind what was seen in the lane
 * @param chance that the lane of one compound would look at least so [1]; empty where the lane says nothing beside the gap
 */
record CoSpotFinding(Kind kind, OptionalDouble chance) {
    /** What was seen. */
    enum Kind {
        /** One spot, no longer than one compound gives. */
        ONE,
        /** One spot of which the length says that there may be two. */
        LONG,
        /** One spot of which no length was measured. */
        ONE_UNSIZED,
        /** One spot, though the lanes beside it lie so far apart that two should show. */
        ONE_AGAINST_GAP,
        /** The same, and it lies on the reference: the sample seems not to be in the lane. */
        ONE_ON_REFERENCE,
        /** The same, and it lies on the sample: the reference seems not to be in the lane. */
        ONE_ON_SAMPLE,
        /** Two spots as far apart as the lanes. */
        SPLIT,
        /** Two spots, though the lanes beside it do not lie so far apart. */
        SPLIT_AGAINST_GAP,
        /** Two spots, though the lanes beside it do not part. */
        SPLIT_AGAINST_EQUAL,
        /** No spot near. */
        MISSING
    }

    /** A co-spot whose length one compound gives with less than this chance is called long [1] (own choice). */
    private static final double LONG_BELOW = 0.15;
    /** Two compounds in one spot are so much of their gap longer [1] (own choice). */
    private static final double GAP_SHOWS = 0.9;

    /** A spot that lies farther than this share of the run above or below both is neither of them [1] (own choice). */
    private static final double FAR = 0.15;

    /**
     * What a lane says.
     *
     * @param lane the spots of the co-spot
     * @param one the spot of the sample
     * @param other the spot of the reference
     * @param further the other spots of both, which account for spots of the lane
     */
    static CoSpotFinding of(List<ReadSpot> lane, ReadSpot one, ReadSpot other, List<ReadSpot> further) {
        double low = Math.min(one.mm(), other.mm()) - FAR * one.runMm();
        double high = Math.max(one.mm(), other.mm()) + FAR * one.runMm();
        List<ReadSpot> near = lane.stream()
                .filter(spot -> spot.mm() >= low && spot.mm() <= high)
                .filter(spot -> further.stream()
                        .noneMatch(each -> each.distance(spot) < Math.min(one.distance(spot), other.distance(spot))))
                .sorted(Comparator.comparingDouble(spot -> Math.min(one.distance(spot), other.distance(spot))))
                .limit(2)
                .toList();
        if (near.isEmpty()) {
            return new CoSpotFinding(Kind.MISSING, OptionalDouble.empty());
        }
        return near.size() == 2
                ? split(near.get(0).distance(near.get(1)), one, other)
                : merged(near.get(0), one, other);
    }

    private static CoSpotFinding split(double distance, ReadSpot one, ReadSpot other) {
        double apart = Math.abs(distance - one.distance(other));
        double deviation = Math.sqrt(one.variance() + other.variance());
        boolean fits = apart < Math.max(PlateComparison.FITS * distance, PlateComparison.FITS_WITHIN * deviation);
        if (fits) {
            return new CoSpotFinding(Kind.SPLIT, OptionalDouble.of(PlateComparison.SECOND_SPOT));
        }
        boolean equal = PlateComparison.chanceOfGap(one.distance(other), deviation) > PlateComparison.UNREMARKABLE;
        return new CoSpotFinding(equal ? Kind.SPLIT_AGAINST_EQUAL : Kind.SPLIT_AGAINST_GAP, OptionalDouble.empty());
    }

    /** One spot where two should show: on one of the two lanes, or on neither. */
    private static Kind against(ReadSpot lane, ReadSpot one, ReadSpot other) {
        if (isOn(lane, other) && !isOn(lane, one)) {
            return Kind.ONE_ON_REFERENCE;
        }
        return isOn(lane, one) && !isOn(lane, other) ? Kind.ONE_ON_SAMPLE : Kind.ONE_AGAINST_GAP;
    }

    private static boolean isOn(ReadSpot lane, ReadSpot spot) {
        return lane.distance(spot) < PlateComparison.FITS_WITHIN * Math.sqrt(lane.variance() + spot.variance());
    }

    private static CoSpotFinding merged(ReadSpot lane, ReadSpot one, ReadSpot other) {
        boolean sized = Stream.of(lane, one, other).allMatch(spot -> spot.size() == ReadSpot.Size.MEASURED);
        double gap = one.distance(other);
        double usual = PlateComparison.CO_SPOT_LONGER * Math.sqrt(one.sizeMm() * other.sizeMm());
        if (!sized) {
            return new CoSpotFinding(
                    gap > usual ? against(lane, one, other) : Kind.ONE_UNSIZED, OptionalDouble.empty());
        }
        double asOne = PlateComparison.longer(lane.sizeMm(), usual);
        double asTwo = PlateComparison.longer(lane.sizeMm(), usual + GAP_SHOWS * gap);
        boolean against = PlateComparison.densityOfLonger(asOne)
                > PlateComparison.SPEAKS_AGAINST * PlateComparison.densityOfLonger(asTwo);
        double chance = PlateComparison.chanceOfLonger(asOne);
        return new CoSpotFinding(
                against ? against(lane, one, other) : chance < LONG_BELOW ? Kind.LONG : Kind.ONE,
                OptionalDouble.of(chance));
    }
}
