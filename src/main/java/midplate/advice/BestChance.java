package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.words.Digits;
import midplate.words.Message;

/**
 * Where the very best chance lies when the ratio advised has a smaller one, and what the ratio advised is better in: among
 * ratios of nearly the same chance {@link RatioSearch} takes the one that places the spots best.
 */
final class BestChance {
    private static final double WORTH_SAYING = 0.01;
    private static final int SHOWN = 100;

    private final Question question;
    private final Aim aim;
    private final RatioSearch search;

    BestChance(Question question, Aim aim, RatioSearch search) {
        this.question = question;
        this.aim = aim;
        this.search = search;
    }

    /**
     * What to say beside the ratio advised; empty where its chance is as good as the best.
     *
     * @param advised the ratio
     * @param chance its own [1]
     * @param shown shares at which the curve of the chance is shown [% v/v]; the best is one of them, so that sentence and
     *     curve agree
     */
    Optional<Message> beside(Ratio advised, double chance, List<Double> shown) {
        return search.likeliest(shown)
                .filter(best -> !RatioSearch.isHopeless(best.chance()))
                .filter(best -> isLess(chance, best.chance()))
                .map(best -> told(best, advised, chance));
    }

    private static boolean isLess(double chance, double other) {
        return other - chance >= WORTH_SAYING && Reasons.times(other) > Reasons.times(chance);
    }

    private Message told(RatioSearch.Found best, Ratio advised, double chance) {
        List<Object> args =
                new ArrayList<>(List.of("times", Reasons.times(best.chance()), "best", Digits.percent(best.percent())));
        Ratio other = search.likeliestPourable(question.glassware());
        double otherChance = aim.chance(other.percentStrong());
        double here = placing(advised);
        double there = placing(other);
        if (!isLess(chance, otherChance) || !isBetter(here, there)) {
            args.addAll(List.of("cost", Reasons.times(best.chance()) - Reasons.times(chance)));
            return Message.of("advice.why-rounding", args.toArray());
        }
        args.addAll(List.of("other", said(other), "otherTimes", Reasons.times(otherChance), "ratio", said(advised)));
        args.addAll(List.of("here", here, "there", there));
        return better(args);
    }

    private Message better(List<Object> args) {
        List<String> spots = question.spots();
        return switch (spots.size()) {
            case 1 -> {
                args.addAll(List.of("spot", spots.get(0), "favourite", RatioSearch.FAVOURITE_RF));
                yield Message.of("advice.why-best-nearer", args.toArray());
            }
            case 2 -> {
                args.addAll(List.of("one", spots.get(0), "two", spots.get(1)));
                yield Message.of("advice.why-best-parts-two", args.toArray());
            }
            default -> Message.of("advice.why-best-parts", args.toArray());
        };
    }

    /** By what ratios of nearly the same chance are told apart: Rf of the one spot [1], or the smallest resolution [1]. */
    private double placing(Ratio ratio) {
        return question.spots().size() == 1
                ? aim.outlook().rf(0, ratio.percentStrong())
                : search.resolution(ratio.percentStrong());
    }

    /** Whether the first places the spots better than the second, by numbers that differ as they are shown. */
    private boolean isBetter(double here, double there) {
        double gain = question.spots().size() == 1
                ? Math.abs(there - RatioSearch.FAVOURITE_RF) - Math.abs(here - RatioSearch.FAVOURITE_RF)
                : here - there;
        return gain > 0 && Math.round(SHOWN * here) != Math.round(SHOWN * there);
    }

    private Object said(Ratio ratio) {
        if (ratio.weak() == 0 || ratio.strong() == 0) {
            return Message.of(
                    "advice.only-one", "solvent", (ratio.strong() == 0 ? question.weak() : question.strong()).said());
        }
        return ratio.weak() + " : " + ratio.strong();
    }
}
