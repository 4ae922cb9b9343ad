package midplate.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.LocalizationClass;
import midplate.catalogue.PairBasis;
import midplate.catalogue.PlatePair;
import midplate.catalogue.SolventCatalogue;
import midplate.words.Digits;
import midplate.words.Message;

/** The sentences beside another eluent: what it may do to the order of the spots, what it rests on, what to mind. */
final class OtherReasons {
    private static final double DEMIXING_BELOW = 5;

    private final Question question;
    private final SolventCatalogue catalogue;
    private final OtherRank rank;

    OtherReasons(Question question, SolventCatalogue catalogue, OtherRank rank) {
        this.question = question;
        this.catalogue = catalogue;
        this.rank = rank;
    }

    /** Whether the strong solvent of a pair holds on to silica as the one asked about does. */
    OtherEluent.Kind kind(PairsToOffer.Offered offered) {
        LocalizationClass asked = catalogue.localization(question.strong());
        LocalizationClass other = catalogue.localization(offered.strong());
        if (asked == LocalizationClass.UNKNOWN || other == LocalizationClass.UNKNOWN) {
            return OtherEluent.Kind.UNKNOWN;
        }
        return asked == other ? OtherEluent.Kind.SAME : OtherEluent.Kind.OTHER;
    }

    /**
     * All of them, the most important first.
     *
     * @param now the two spots that lie closest in the mixture asked about
     * @param wasRun whether plates were run in it
     */
    List<Message> all(
            PairsToOffer.Offered offered,
            OtherEluent found,
            Optional<ClosestSpots> now,
            List<Message> standIns,
            Run wasRun) {
        List<Message> reasons = new ArrayList<>();
        found.nearest().ifPresent(nearest -> reasons.add(notReached(offered, nearest)));
        apart(found, now).ifPresent(reasons::add);
        if (now.isPresent()) {
            reasons.add(order(offered, found.kind()));
        }
        if (rank == OtherRank.DRYING && found.boilingPoint().isPresent()) {
            reasons.add(
                    Message.of("other.boils", "celsius", found.boilingPoint().getAsDouble()));
        }
        if (wasRun == Run.YES) {
            reasons.add(Message.of("other.was-run"));
        }
        range(offered, found.pour().ratio().percentStrong()).ifPresent(reasons::add);
        reasons.addAll(standIns);
        found.flags().forEach(flag -> reasons.add(flag.said()));
        return reasons;
    }

    /** Whether plates were run in a pair. */
    enum Run {
        YES,
        NO
    }

    private static Message notReached(PairsToOffer.Offered offered, OtherEluent.Nearest nearest) {
        return Message.of(
                nearest.side() == OtherEluent.Side.WEAKER ? "other.stays-weaker" : "other.stays-stronger",
                "percent",
                Digits.percent(nearest.percentStrong()),
                "strong",
                offered.strong().said(),
                "rf",
                nearest.rf());
    }

    private static Optional<Message> apart(OtherEluent found, Optional<ClosestSpots> now) {
        return found.closest()
                .flatMap(there -> now.map(here -> Message.of(
                        "other.apart",
                        "one",
                        there.one(),
                        "other",
                        there.other(),
                        "there",
                        Reasons.times(there.chance()),
                        "here",
                        Reasons.times(here.chance()))));
    }

    private Message order(PairsToOffer.Offered offered, OtherEluent.Kind kind) {
        if (offered.strong().equals(question.strong())) {
            return Message.of("other.same-strong", "strong", offered.strong().said());
        }
        return Message.of(
                switch (kind) {
                    case SAME -> "other.order-stays";
                    case OTHER -> "other.order-may-change";
                    case UNKNOWN -> "other.order-unknown";
                },
                "one",
                offered.strong().said(),
                "other",
                question.strong().said());
    }

    private Optional<Message> range(PairsToOffer.Offered offered, double percent) {
        PlatePair pair = offered.pair();
        boolean localizing = switch (catalogue.localization(pair.strong())) {
            case LOCALIZING_BASIC, LOCALIZING_NON_BASIC, VERY_STRONG_LOCALIZING -> true;
            case WEAK, NON_LOCALIZING, UNKNOWN -> false;
        };
        boolean alkane = catalogue.localization(pair.weak()) == LocalizationClass.WEAK;
        if (alkane && localizing && percent > 0 && percent < DEMIXING_BELOW) {
            return Optional.of(Message.of(
                    "other.demixing",
                    "percent",
                    Digits.percent(percent),
                    "strong",
                    offered.strong().said()));
        }
        boolean trusted = percent >= pair.trustedFrom() - PourableRatios.PRINTED
                && percent <= pair.trustedTo() + PourableRatios.PRINTED;
        return trusted
                ? Optional.empty()
                : Optional.of(Message.of(
                        pair.basis() == PairBasis.MEASURED ? "advice.untrusted-range" : "advice.untrusted-range-theory",
                        "percent",
                        Digits.percent(percent),
                        "from",
                        pair.trustedFrom(),
                        "to",
                        pair.trustedTo()));
    }
}
