package midplate.benchmark;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import midplate.identity.ComparedLane;
import midplate.identity.ComparedPlate;
import midplate.identity.Compound;
import midplate.identity.IdentityAnswer;
import midplate.identity.IdentityQuestion;
import midplate.identity.LaneSpot;
import midplate.identity.SameOrNot;
import midplate.identity.SpotShape;
import midplate.identity.Verdict;

/** Puts drawn plates before the verdict and counts what it says. */
final class JudgedPlates {
    /** Whether the lengths of spots are told. */
    enum Sizes {
        TOLD,
        UNTOLD
    }

    private static final SameOrNot JUDGE = SameOrNot.withoutModel();
    private static final double SMALL_MM = 2.8;

    private final Map<Verdict.Outcome, Integer> outcomes = new EnumMap<>(Verdict.Outcome.class);
    private int small;
    private int smallDifferent;
    private int plates;

    private JudgedPlates() {}

    /** Verdicts on so many plates of a sample and one reference. */
    static JudgedPlates of(SimulatedPlates drawn, double apart, int count, Sizes sizes) {
        JudgedPlates judged = new JudgedPlates();
        for (int i = 0; i < count; i++) {
            SimulatedPlates.Plate plate = drawn.pair(apart);
            judged.count(plate, answer(plate, sizes).verdicts().get(0).outcome());
        }
        return judged;
    }

    private void count(SimulatedPlates.Plate plate, Verdict.Outcome outcome) {
        plates++;
        outcomes.merge(outcome, 1, Integer::sum);
        if (plate.spotMm() < SMALL_MM) {
            small++;
            smallDifferent += outcome == Verdict.Outcome.DIFFERENT ? 1 : 0;
        }
    }

    /** The share of an outcome. */
    Figure share(Verdict.Outcome outcome) {
        return share(outcomes.getOrDefault(outcome, 0), plates);
    }

    /** The share called different of those with spots below 2.8 mm halfway up. */
    Figure differentOfSmall() {
        return share(smallDifferent, small);
    }

    /** The share called different of the others. */
    Figure differentOfLarge() {
        return share(outcomes.getOrDefault(Verdict.Outcome.DIFFERENT, 0) - smallDifferent, plates - small);
    }

    /** The share of plates of a sample and two references of which the answer has some property. */
    static Figure share(
            SimulatedPlates drawn,
            List<Double> sample,
            List<Double> references,
            int count,
            Predicate<IdentityAnswer> is) {
        int yes = 0;
        for (int i = 0; i < count; i++) {
            yes += is.test(answer(drawn.plate(sample, references), Sizes.TOLD)) ? 1 : 0;
        }
        return share(yes, count);
    }

    /** The share called different of plates of one compound on which the sample ran in two lanes. */
    static Figure differentOfTwice(SimulatedPlates drawn, int count) {
        int different = 0;
        for (int i = 0; i < count; i++) {
            Verdict verdict = JUDGE.judge(twice(drawn.twice())).verdicts().get(0);
            different += verdict.outcome() == Verdict.Outcome.DIFFERENT ? 1 : 0;
        }
        return share(different, count);
    }

    private static IdentityQuestion twice(SimulatedPlates.Plate plate) {
        int last = plate.lanes().size() - 1;
        SimulatedPlates.Plate once = new SimulatedPlates.Plate(
                plate.startMm(), plate.frontMm(), plate.lanes().subList(0, last), plate.spotMm());
        IdentityQuestion question = question(once, Sizes.TOLD);
        List<ComparedLane> lanes = new ArrayList<>(question.plates().get(0).lanes());
        lanes.add(ComparedLane.unknown(plate.lanes().get(last).stream()
                .map(seen -> spot(seen, Sizes.TOLD))
                .toArray(LaneSpot[]::new)));
        return IdentityQuestion.of(
                List.of(ComparedPlate.of(plate.startMm(), plate.frontMm(), lanes.toArray(ComparedLane[]::new))),
                question.references());
    }

    /** A share with its standard error, √(p·(1 − p)/n). */
    private static Figure share(int yes, int of) {
        double p = (double) yes / of;
        return new Figure(p, Math.sqrt(p * (1 - p) / of), of);
    }

    private static IdentityAnswer answer(SimulatedPlates.Plate plate, Sizes sizes) {
        return JUDGE.judge(question(plate, sizes));
    }

    private static IdentityQuestion question(SimulatedPlates.Plate plate, Sizes sizes) {
        List<ComparedLane> lanes = new ArrayList<>();
        List<Compound> references = new ArrayList<>();
        for (int i = 0; i < plate.lanes().size(); i++) {
            LaneSpot[] spots =
                    plate.lanes().get(i).stream().map(seen -> spot(seen, sizes)).toArray(LaneSpot[]::new);
            String name = "reference " + (i + 1) / 2;
            if (i == 0) {
                lanes.add(ComparedLane.unknown(spots));
            } else if (i % 2 == 1) {
                lanes.add(ComparedLane.coSpot(name, spots));
                references.add(new Compound(name, OptionalDouble.empty(), Optional.empty()));
            } else {
                lanes.add(ComparedLane.reference(name, spots));
            }
        }
        ComparedPlate compared = ComparedPlate.of(plate.startMm(), plate.frontMm(), lanes.toArray(ComparedLane[]::new));
        return IdentityQuestion.of(List.of(compared), references);
    }

    private static LaneSpot spot(SimulatedPlates.Seen seen, Sizes sizes) {
        return new LaneSpot(
                OptionalDouble.of(seen.centreMm()),
                OptionalDouble.empty(),
                sizes == Sizes.TOLD ? OptionalDouble.of(seen.sizeMm()) : OptionalDouble.empty(),
                seen.told() == SimulatedPlates.Told.STREAK ? SpotShape.STREAK : SpotShape.ROUND);
    }
}
