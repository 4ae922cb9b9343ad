package midplate.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import midplate.catalogue.MeasuredPair;
import midplate.chemistry.RetentionFactor;
import midplate.inference.Knowledge;
import midplate.inference.Outlook;
import midplate.inference.PlateModels;
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
    private final List<Double> percents;

    Alternatives(Question question, MeasuredPair asked, Outlook outlook, PlateModels models) {
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
                all.add(otherPair(other, runs));
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
        RatioSearch.Found found = RatioSearch.likeliest(once, everySpot(), percents);
        return new Alternative(
                Message.of(
                        "advice.instead-repeat",
                        "count",
                        times,
                        "percent",
                        Digits.percent(found.percent()),
                        "strong",
                        question.strong().name()),
                found.chance());
    }

    /** The spots parted by how weakly they are held, each part with a ratio of its own, for the best cut. */
    private Optional<Alternative> twoPlates() {
        List<Integer> order = everySpot().stream()
                .sorted(Comparator.comparingDouble(spot -> outlook.knowledge().meanC(spot)))
                .toList();
        Alternative best = null;
        for (int cut = 1; cut < order.size(); cut++) {
            RatioSearch.Found held = RatioSearch.likeliest(outlook, order.subList(0, cut), percents);
            RatioSearch.Found loose = RatioSearch.likeliest(outlook, order.subList(cut, order.size()), percents);
            double chance = held.chance() * loose.chance();
            if (best == null || chance > best.chance()) {
                best = new Alternative(
                        Message.of(
                                "advice.instead-two-plates",
                                "strong",
                                question.strong().name(),
                                "heldPercent",
                                Digits.percent(held.percent()),
                                "held",
                                names(order.subList(0, cut)),
                                "loosePercent",
                                Digits.percent(loose.percent()),
                                "loose",
                                names(order.subList(cut, order.size()))),
                        chance);
            }
        }
        return Optional.ofNullable(best);
    }

    private Alternative otherPair(MeasuredPair other, UsedRuns runs) {
        Knowledge knowledge = models.learn(other.id(), question.setting(), question.spots(), runs.all());
        Outlook there = models.outlook(
                knowledge,
                question.setting(),
                question.window().low(),
                question.window().high());
        RatioSearch.Found found = RatioSearch.likeliest(there, everySpot(), trusted(other));
        return new Alternative(
                Message.of(
                        "advice.instead-pair",
                        "weak",
                        other.weak().name(),
                        "strong",
                        other.strong().name(),
                        "percent",
                        Digits.percent(found.percent())),
                found.chance());
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
