package midplate.identity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What one plate says of the sample and one reference: the spot of the reference, the nearest spot of the sample, and their co-spot.
 *
 * @param plate the plate
 * @param one the spot of the sample
 * @param other the spot of the reference
 * @param ofSample how many spots the sample shows
 * @param ofReference how many the reference shows
 * @param coSpot what the co-spot says, where one ran
 * @param ofSampleUnlike two lanes of the sample that contradict each other, if two do
 * @param ofReferenceUnlike the same for the reference
 */
record PlateEvidence(
        ReadPlate plate,
        ReadSpot one,
        ReadSpot other,
        int ofSample,
        int ofReference,
        Optional<CoSpotFinding> coSpot,
        Optional<List<ReadSpot>> ofSampleUnlike,
        Optional<List<ReadSpot>> ofReferenceUnlike) {
    /** A spot of a reference is its own where it is so many times as long as the next one [1] (own choice); else the nearest counts. */
    private static final double CLEARLY_LARGER = 1.2;

    /** What a plate says; empty where the sample or the reference has no spot on it. */
    static Optional<PlateEvidence> of(ReadPlate plate, String reference) {
        List<ReadSpot> sample = plate.unknown();
        List<ReadSpot> others = plate.reference(reference);
        if (sample.isEmpty() || others.isEmpty()) {
            return Optional.empty();
        }
        List<ReadSpot> mine = moved(sample);
        List<ReadSpot> its = moved(others);
        ReadSpot other = main(its).orElseGet(() -> nearest(its, mine));
        ReadSpot one = nearest(mine, List.of(other));
        List<ReadSpot> further = new ArrayList<>(sample);
        further.addAll(others);
        further.remove(one);
        further.remove(other);
        List<ReadSpot> lane = plate.coSpot(reference);
        Optional<CoSpotFinding> coSpot =
                lane.isEmpty() ? Optional.empty() : Optional.of(CoSpotFinding.of(lane, one, other, further));
        return Optional.of(new PlateEvidence(
                plate,
                one,
                other,
                sample.size(),
                others.size(),
                coSpot,
                plate.unlikeLanes(),
                plate.unlikeLanes(reference)));
    }

    /** The spots between the lines, or all where none is. */
    private static List<ReadSpot> moved(List<ReadSpot> spots) {
        List<ReadSpot> between = spots.stream()
                .filter(spot -> spot.place() == ReadSpot.Place.BETWEEN)
                .toList();
        return between.isEmpty() ? spots : between;
    }

    private static Optional<ReadSpot> main(List<ReadSpot> spots) {
        List<ReadSpot> bySize = spots.stream()
                .sorted(Comparator.comparingDouble(ReadSpot::sizeMm).reversed())
                .toList();
        boolean clear = bySize.size() == 1
                || (bySize.stream().allMatch(spot -> spot.size() == ReadSpot.Size.MEASURED)
                        && bySize.get(0).sizeMm()
                                >= CLEARLY_LARGER * bySize.get(1).sizeMm());
        return clear ? Optional.of(bySize.get(0)) : Optional.empty();
    }

    /** Of some spots the one nearest to any of others. */
    private static ReadSpot nearest(List<ReadSpot> spots, List<ReadSpot> others) {
        return spots.stream()
                .min(Comparator.comparingDouble(spot ->
                        others.stream().mapToDouble(spot::distance).min().orElseThrow()))
                .orElseThrow();
    }

    /** Where both sit at one line, or one sits at a line near the other, nothing can be said. */
    boolean isSilent() {
        boolean atLine = one.place() != ReadSpot.Place.BETWEEN || other.place() != ReadSpot.Place.BETWEEN;
        return atLine && !(chanceOfGap() < PlateComparison.STATED);
    }

    /** How far the sample's spot lies above that of the reference, at least, where one sits at a line [1 in Rf]. */
    double gapRf() {
        if (one.place() != ReadSpot.Place.BETWEEN && one.place() == other.place()) {
            return 0;
        }
        return (one.boundMm() - other.boundMm()) / one.runMm();
    }

    /** Its standard deviation [1 in Rf]. */
    double deviationRf() {
        return Math.sqrt(one.variance() + other.variance()) / one.runMm();
    }

    double chanceOfGap() {
        return PlateComparison.chanceOfGap(gapRf(), deviationRf());
    }

    /** Whether lanes of one content, or the co-spot and the lanes beside it, contradict each other. */
    boolean contradicts() {
        if (ofSampleUnlike.isPresent() || ofReferenceUnlike.isPresent()) {
            return true;
        }
        return coSpot.map(found -> switch (found.kind()) {
                    case ONE_AGAINST_GAP, ONE_ON_REFERENCE, ONE_ON_SAMPLE, MISSING -> true;
                    // where the lanes lie apart for sure, both say two, and only the distances differ
                    case SPLIT_AGAINST_GAP, SPLIT_AGAINST_EQUAL -> chanceOfGap() > PlateComparison.UNREMARKABLE;
                    case ONE, LONG, ONE_UNSIZED, SPLIT -> false;
                })
                .orElse(false);
    }
}
