package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.WayOfSeeing;
import midplate.identity.PurityAnswer.Amounts;
import midplate.identity.PurityAnswer.Shares;
import midplate.words.Digits;
import midplate.words.Message;

/** What was put on a plate, and the least share of it that would have been seen. */
final class SpotAmounts {
    /** More on one place of an analytical layer makes a spot that streaks [µg]; common practice, no source. */
    static final double OVERLOADED_UG = 100;

    private static final double WHOLE = 100;

    private SpotAmounts() {}

    /**
     * The amounts.
     *
     * @param appliedUg what was put on [µg]
     * @param used how it was looked at
     */
    static Amounts of(double appliedUg, List<WayOfSeeing> used) {
        List<Message> parts = new ArrayList<>();
        parts.add(Message.of(
                "pure.amount-applied",
                "applied",
                Digits.factor(appliedUg),
                "percent",
                Digits.factor(appliedUg / WHOLE)));
        Optional<Shares> least = used.isEmpty() ? Optional.empty() : Optional.of(least(appliedUg, used));
        least.ifPresent(shares -> {
            parts.add(Message.of(
                    "pure.amount-least",
                    "ways",
                    WayNames.listed(used),
                    "lowUg",
                    Digits.factor(lowest(used)),
                    "highUg",
                    Digits.factor(highest(used)),
                    "low",
                    Digits.factor(shares.low()),
                    "high",
                    Digits.factor(shares.high())));
            if (shares.high() > 1) {
                double needed = highest(used) * WHOLE;
                parts.add(Message.of(
                        needed > OVERLOADED_UG ? "pure.amount-more-overload" : "pure.amount-more",
                        "needed",
                        Digits.factor(needed)));
            }
        });
        return new Amounts(appliedUg, least, Sentences.joined(parts));
    }

    private static Shares least(double appliedUg, List<WayOfSeeing> used) {
        return new Shares(
                Math.min(WHOLE, WHOLE * lowest(used) / appliedUg), Math.min(WHOLE, WHOLE * highest(used) / appliedUg));
    }

    private static double lowest(List<WayOfSeeing> used) {
        return used.stream().mapToDouble(WayOfSeeing::leastUg).min().orElseThrow();
    }

    private static double highest(List<WayOfSeeing> used) {
        return used.stream().mapToDouble(WayOfSeeing::mostUg).min().orElseThrow();
    }
}
