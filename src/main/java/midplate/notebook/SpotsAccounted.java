package midplate.notebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import midplate.notebook.GivenAdvice.Foretold;
import midplate.notebook.SeenPlate.OpenLane;
import midplate.plate.Limit;
import midplate.plate.Reading;

/**
 * The spots of an advice found again on a plate. One that bears its label is known. The others are accounted for by a lane that has
 * at least as many spots without a label as compounds that no label of that lane names; which of them is which need not be known.
 * Fewer are not enough: two compounds may lie in one spot, or one of them may not have been put on.
 */
final class SpotsAccounted {
    private static final double ROUNDING = 1e-9;

    private final GivenAdvice advice;
    private final SeenPlate seen;
    private final Set<String> wanted = new LinkedHashSet<>();

    SpotsAccounted(GivenAdvice advice, SeenPlate seen) {
        this.advice = advice;
        this.seen = seen;
        advice.spots().stream().map(Foretold::spot).forEach(wanted::add);
    }

    /** All of them; empty when one is missing, or the advice had none. */
    Optional<All> whole() {
        Map<String, Reading> known = new LinkedHashMap<>(seen.readings());
        known.keySet().retainAll(wanted);
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        if (known.size() == wanted.size()) {
            return Optional.of(new All(advice, known, List.of(), Set.of()));
        }
        return fullest().map(lane -> {
            Set<String> open = without(wanted, lane.labelled());
            Set<String> missing = without(wanted, known.keySet());
            List<Reading> spots = together(lane);
            if (spots.size() == 1 && missing.size() == 1) {
                known.put(missing.iterator().next(), spots.get(0));
                return new All(advice, known, List.of(), Set.of());
            }
            return new All(advice, known, spots, open);
        });
    }

    /** The lane that accounts for the rest: with as many spots as are to be found if there is one, else with the most. */
    private Optional<OpenLane> fullest() {
        return seen.lanes().stream()
                .filter(lane -> surplus(lane) >= 0)
                .min(Comparator.comparingInt((OpenLane lane) -> surplus(lane) == 0 ? 0 : 1)
                        .thenComparingInt(lane -> -surplus(lane)));
    }

    private int surplus(OpenLane lane) {
        return lane.open().size() - without(wanted, lane.labelled()).size();
    }

    /** How many spots a lane has beyond those of the advice, at most; none where no lane has more. */
    int more() {
        return Math.max(0, seen.lanes().stream().mapToInt(this::surplus).max().orElse(0));
    }

    private static Set<String> without(Set<String> all, Set<String> some) {
        Set<String> rest = new LinkedHashSet<>(all);
        rest.removeAll(some);
        return rest;
    }

    /** The spots of a lane from the start line up, each at the mean of all lanes that look the same. */
    private List<Reading> together(OpenLane lane) {
        List<List<Reading>> alike = seen.lanes().stream()
                .filter(each -> each.labelled().equals(lane.labelled())
                        && each.open().size() == lane.open().size())
                .map(each -> each.open().stream()
                        .sorted(Comparator.comparingDouble(Reading::rf))
                        .toList())
                .toList();
        List<Reading> mean = new ArrayList<>();
        for (int i = 0; i < lane.open().size(); i++) {
            int place = i;
            List<Reading> same = alike.stream().map(each -> each.get(place)).toList();
            mean.add(mean(same));
        }
        return mean;
    }

    private static Reading mean(List<Reading> same) {
        Reading first = same.get(0);
        double rf = same.stream().mapToDouble(Reading::rf).average().orElseThrow();
        boolean alike = same.stream().allMatch(each -> each.limit() == first.limit());
        return alike ? new Reading(rf, first.limit(), first.standardError()) : Reading.of(rf);
    }

    /**
     * All spots of an advice on a plate.
     *
     * @param known those with a reading of their own, by id
     * @param unlabelled the spots among which the others are, from the start line up
     * @param open ids of the spots of the advice that are among these
     */
    record All(GivenAdvice advice, Map<String, Reading> known, List<Reading> unlabelled, Set<String> open) {
        /** Whether every one lies in the window. */
        Judgement inside() {
            List<Judgement> each = new ArrayList<>();
            known.values().forEach(reading -> each.add(inside(reading)));
            each.add(openInside());
            return Judgement.allOf(each);
        }

        /** Of spots that nobody named at most so many may lie outside as are none of the advice. */
        private Judgement openInside() {
            List<Judgement> each = unlabelled.stream().map(this::inside).toList();
            long outside = each.stream().filter(one -> one == Judgement.NO).count();
            if (outside > unlabelled.size() - open.size()) {
                return Judgement.NO;
            }
            return each.stream().allMatch(one -> one == Judgement.YES) ? Judgement.YES : Judgement.UNSURE;
        }

        private Judgement inside(Reading reading) {
            double low = low(reading);
            double high = high(reading);
            if (low >= advice.windowLow() - ROUNDING && high <= advice.windowHigh() + ROUNDING) {
                return Judgement.YES;
            }
            return high < advice.windowLow() - ROUNDING || low > advice.windowHigh() + ROUNDING
                    ? Judgement.NO
                    : Judgement.UNSURE;
        }

        /** Whether the two that were to be kept apart are; yes where none were. */
        Judgement apart() {
            if (advice.apart().size() < 2) {
                return Judgement.YES;
            }
            String one = advice.apart().get(0);
            String other = advice.apart().get(1);
            if (known.containsKey(one) && known.containsKey(other)) {
                return apart(known.get(one), known.get(other));
            }
            List<Reading> ones = places(one);
            List<Reading> others = places(other);
            List<Judgement> each = new ArrayList<>();
            for (int i = 0; i < ones.size(); i++) {
                for (int j = 0; j < others.size(); j++) {
                    if (i != j || !open.contains(one) || !open.contains(other)) {
                        each.add(apart(ones.get(i), others.get(j)));
                    }
                }
            }
            return Judgement.whicheverOf(each);
        }

        /** Where a spot may lie: both of a pair in one lane where it has both. */
        private List<Reading> places(String spot) {
            return open.contains(spot) ? unlabelled : known.containsKey(spot) ? List.of(known.get(spot)) : List.of();
        }

        private static Judgement apart(Reading one, Reading other) {
            double least = Math.max(low(one) - high(other), low(other) - high(one));
            double most = Math.max(high(one) - low(other), high(other) - low(one));
            if (least >= AdviceOutcomes.APART_RF - ROUNDING) {
                return Judgement.YES;
            }
            return most < AdviceOutcomes.APART_RF - ROUNDING ? Judgement.NO : Judgement.UNSURE;
        }

        private static double low(Reading reading) {
            return reading.limit() == Limit.AT_START ? 0 : reading.rf();
        }

        private static double high(Reading reading) {
            return reading.limit() == Limit.AT_FRONT ? 1 : reading.rf();
        }
    }
}
