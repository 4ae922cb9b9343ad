package midplate.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import midplate.catalogue.MeasuredPair;
import midplate.chemistry.RetentionFactor;
import midplate.chemistry.Solvent;
import midplate.inference.Knowledge;
import midplate.inference.Outlook;
import midplate.inference.Parting;
import midplate.inference.PlateModels;
import midplate.inference.SpotPair;
import midplate.words.Digits;
import midplate.words.Message;

/** What to do when one plate in this pair hardly works, ranked by chance: develop again, another pair, two plates. */
final class Alternatives {
    private static final int TOLD = 4;
    private static final double WORTH_CHANGING = 0.02;

    private final Question question;
    private final MeasuredPair asked;
    private final Outlook outlook;
    private final PlateModels models;
    private final UnaryOperator<Solvent> standard;
    private final Parting parting;
    private final List<Double> percents;

    Alternatives(
            Question question,
            MeasuredPair asked,
            Outlook outlook,
            PlateModels models,
            UnaryOperator<Solvent> standard) {
        this.standard = standard;
        this.parting = question.parting();
        this.question = question;
        this.asked = asked;
        this.outlook = outlook;
        this.models = models;
        this.percents = ratios(outlook);
    }

    /** Those that do better than a chance by more than 0.02, the best first. */
    List<Alternative> betterThan(double chance, UsedRuns runs, List<MeasuredPair> measured) {
        List<Alternative> all = new ArrayList<>();
        Alternative twice = repeated(2);
        Alternative thrice = repeated(3);
        all.add(thrice.chance() > twice.chance() + WORTH_CHANGING ? thrice : twice);
        twoPlates().ifPresent(all::add);
        for (MeasuredPair other : measured) {
            if (!other.id().equals(asked.id()) && models.reaches(outlook.knowledge(), other.id())) {
                otherPair(other, runs).ifPresent(all::add);
            }
        }
        return all.stream()
                .filter(alternative -> alternative.chance() > chance + WORTH_CHANGING)
                .sorted(Comparator.comparingDouble(Alternative::chance).reversed())
                .limit(TOLD)
                .toList();
    }

    /** The window that one run must hit for {@code 1 − (1 − Rf)ⁿ} to lie in the window after n runs. */
    private Alternative repeated(int times) {
        Window window = question.window();
        Outlook once = models.outlook(
                outlook.knowledge(),
                question.setting(),
                RetentionFactor.beforeDevelopments(window.low(), times),
                RetentionFactor.beforeDevelopments(window.high(), times));
        RatioSearch.Found found = RatioSearch.likeliest(Aim.everySpot(once, parting.after(times)), percents);
        return new Alternative(
                Message.of(
                        "advice.instead-repeat",
                        "count",
                        times,
                        "percent",
                        Digits.percent(found.percent()),
                        "strong",
                        question.strong().said()),
                found.chance());
    }

    /**
     * The spots parted by how weakly they are held, each part with a ratio of its own, for the best cut. A pair that the cut
     * parts must lie apart on the plate of the loose ones, where the held ones stay low.
     */
    private Optional<Alternative> twoPlates() {
        List<Integer> order = everySpot().stream()
                .sorted(Comparator.comparingDouble(spot -> outlook.knowledge().meanC(spot)))
                .toList();
        Alternative best = null;
        for (int cut = 1; cut < order.size(); cut++) {
            List<Integer> heldSpots = order.subList(0, cut);
            List<Integer> looseSpots = order.subList(cut, order.size());
            RatioSearch.Found held = RatioSearch.likeliest(
                    new Aim(outlook, heldSpots, pairs(pair -> isWithin(pair, heldSpots))), percents);
            RatioSearch.Found loose = RatioSearch.likeliest(
                    new Aim(outlook, looseSpots, pairs(pair -> !isWithin(pair, heldSpots))), percents);
            double chance = held.chance() * loose.chance();
            if (best == null || chance > best.chance()) {
                best = new Alternative(
                        Message.of(
                                "advice.instead-two-plates",
                                "strong",
                                question.strong().said(),
                                "heldPercent",
                                Digits.percent(held.percent()),
                                "held",
                                names(heldSpots),
                                "loosePercent",
                                Digits.percent(loose.percent()),
                                "loose",
                                names(looseSpots)),
                        chance);
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean isWithin(SpotPair pair, List<Integer> spots) {
        return spots.contains(pair.one()) && spots.contains(pair.other());
    }

    private Parting pairs(Predicate<SpotPair> wanted) {
        return Parting.of(parting.pairs().stream().filter(wanted).toList());
    }

    /** Another pair; empty where the shelf lacks one of its solvents. */
    private Optional<Alternative> otherPair(MeasuredPair other, UsedRuns runs) {
        Optional<Solvent> weak = question.wishes().shelf().inPlaceOf(other.weak(), standard);
        Optional<Solvent> strong = question.wishes().shelf().inPlaceOf(other.strong(), standard);
        if (weak.isEmpty() || strong.isEmpty()) {
            return Optional.empty();
        }
        Knowledge knowledge = models.learn(other.id(), question.setting(), question.spots(), runs.all());
        Outlook there = models.outlook(
                knowledge,
                question.setting(),
                question.window().low(),
                question.window().high());
        RatioSearch.Found found = RatioSearch.likeliest(Aim.everySpot(there, parting), trusted(other));
        return Optional.of(new Alternative(
                Message.of(
                        "advice.instead-pair",
                        "weak",
                        weak.get().said(),
                        "strong",
                        strong.get().said(),
                        "percent",
                        Digits.percent(found.percent())),
                found.chance()));
    }

    /** The mixtures of a pair that its curve can be trusted for. */
    private static List<Double> trusted(MeasuredPair pair) {
        return PourableRatios.between(pair.trustedFrom(), pair.trustedTo()).stream()
                .map(Ratio::percentStrong)
                .toList();
    }

    private static List<Double> ratios(Outlook outlook) {
        return PourableRatios.between(
                        outlook.knowledge().model().lowestPercent(),
                        outlook.knowledge().model().highestPercent())
                .stream()
                .map(Ratio::percentStrong)
                .toList();
    }

    private List<Integer> everySpot() {
        return IntStream.range(0, question.spots().size()).boxed().toList();
    }

    private String names(List<Integer> spots) {
        return String.join(
                ", ", spots.stream().map(spot -> question.spots().get(spot)).toList());
    }
}
