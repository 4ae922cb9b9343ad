package midplate.advice;

import java.util.List;
import java.util.Optional;
import midplate.words.Digits;
import midplate.words.Message;

/**
 * Where the very best chance lies when the ratio advised has a smaller one: then because few ratios can be poured, since among
 * them {@link RatioSearch} gives up too little of the chance to be worth a word.
 */
final class BestChance {
    private static final double WORTH_SAYING = 0.01;

    private final RatioSearch search;

    BestChance(RatioSearch search) {
        this.search = search;
    }

    /**
     * What to say beside the ratio advised; empty where its chance is as good as the best.
     *
     * @param chance that of the ratio advised [1]
     * @param shown shares at which the curve of the chance is shown [% v/v]; the best is one of them, so that sentence and
     *     curve agree
     */
    Optional<Message> beside(double chance, List<Double> shown) {
        return search.likeliest(shown)
                .filter(best -> !RatioSearch.isHopeless(best.chance()))
                .filter(best -> isLess(chance, best.chance()))
                .map(best -> told(best, chance));
    }

    private static boolean isLess(double chance, double other) {
        return other - chance >= WORTH_SAYING && Reasons.times(other) > Reasons.times(chance);
    }

    private static Message told(RatioSearch.Found best, double chance) {
        return Message.of(
                "advice.why-rounding",
                "times",
                Reasons.times(best.chance()),
                "best",
                Digits.percent(best.percent()),
                "cost",
                Reasons.times(best.chance()) - Reasons.times(chance));
    }
}
