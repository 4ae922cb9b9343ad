package midplate.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.PairBasis;
import midplate.catalogue.PlatePair;
import midplate.inference.Knowledge;
import midplate.inference.Parting;
import midplate.inference.PlateRun;
import midplate.words.Digits;
import midplate.words.Message;

/** The sentences of why, worked out from what is known: what the step does, which spot limits, at which edge, by how much. */
final class Reasons {
    private static final double HARDLY = 0.01;
    private static final double SAME_STRENGTH = 0.02;
    private static final double TOUCHING = 0.05;
    /** Where the expected Rf differ by less than this share of the gap, nobody knows which spot is the upper one. */
    private static final double KNOWN_GAP = 0.5;

    private final Question question;
    private final Forecast forecast;
    private final Optional<Message> bestChance;
    private final Knowledge knowledge;
    private final Goal goal;
    private final Suggestions suggestions;

    Reasons(
            Question question,
            Forecast forecast,
            Goal goal,
            Optional<Message> bestChance,
            Knowledge knowledge,
            Suggestions suggestions) {
        this.goal = goal;
        this.suggestions = suggestions;
        this.question = question;
        this.forecast = forecast;
        this.bestChance = bestChance;
        this.knowledge = knowledge;
    }

    /** All reasons, the most important first. */
    List<Message> all(UsedRuns runs, double smallestGap, PlatePair asked, StructureReasons structures) {
        List<Message> reasons = new ArrayList<>();
        Optional<ApartChance> pair = likeliestTogether();
        if (!isAnyRead(runs)) {
            reasons.add(structures.isEverySpotJudged() ? Message.of("advice.why-structure-first") : unknown(asked));
            reasons.addAll(structures.all(forecast));
            pair.ifPresent(least -> reasons.add(apart("advice.why-apart", least)));
            bestChance.ifPresent(reasons::add);
            return reasons;
        }
        if (pair.isPresent() && 1 - pair.get().chance() > missed(worst())) {
            reasons.add(apart("advice.why-apart-decides", pair.get()));
        } else {
            reasons.add(limit());
            pair.ifPresent(least -> reasons.add(apart("advice.why-apart", least)));
        }
        if (!runs.own().isEmpty()) {
            reasons.add(step(runs.own().get(runs.own().size() - 1)));
        } else {
            reasons.add(Message.of("advice.why-other-pair"));
        }
        reasons.addAll(structures.all(forecast));
        Identities.of(knowledge).why().ifPresent(reasons::add);
        neighbours(smallestGap).ifPresent(reasons::add);
        bestChance.ifPresent(reasons::add);
        return reasons;
    }

    private static Message unknown(PlatePair asked) {
        return asked.basis() == PairBasis.MEASURED
                ? Message.of("advice.why-no-plate", "compounds", asked.compounds())
                : Message.of("advice.why-no-plate-theory");
    }

    /** Whether any spot was read on a plate that counts; without one no spot decides anything. */
    private static boolean isAnyRead(UsedRuns runs) {
        return runs.all().stream()
                .anyMatch(plate ->
                        !plate.readings().isEmpty() || !plate.unlabelled().isEmpty());
    }

    /** The spot that most likely misses the window, and where. */
    private Message limit() {
        SpotForecast worst = worst();
        boolean low = worst.below() >= worst.above();
        double edge = low ? question.window().low() : question.window().high();
        double room = low ? worst.rf() - edge : edge - worst.rf();
        if (missed(worst) < HARDLY) {
            return Message.of("advice.why-safe", "spot", worst.spot(), "rf", worst.rf(), "room", room, "edge", edge);
        }
        String key = "advice.why-" + (low ? "low" : "high") + (room < 0 ? "-out" : "");
        return Message.of(
                key,
                "spot",
                worst.spot(),
                "rf",
                worst.rf(),
                "edge",
                edge,
                "room",
                Math.abs(room),
                "times",
                times(low ? worst.below() : worst.above()));
    }

    private SpotForecast worst() {
        SpotForecast worst = forecast.spots().get(0);
        for (SpotForecast spot : forecast.spots()) {
            if (missed(spot) > missed(worst)) {
                worst = spot;
            }
        }
        return worst;
    }

    private static double missed(SpotForecast spot) {
        return spot.below() + spot.above();
    }

    /** What changing the ratio does to every spot, told as the change of k. */
    private Message step(PlateRun last) {
        double change = change(knowledge, last.percent(), forecast.percentStrong());
        if (isSameStrength(knowledge, last.percent(), forecast.percentStrong())) {
            return Message.of(
                    "advice.why-same",
                    "percent",
                    Digits.percent(last.percent()),
                    "strong",
                    question.strong().said());
        }
        return Message.of(
                change > 0 ? "advice.why-stronger" : "advice.why-weaker",
                "before",
                Digits.percent(last.percent()),
                "after",
                Digits.percent(forecast.percentStrong()),
                "strong",
                question.strong().said(),
                "factor",
                Digits.factor(Math.exp(Math.abs(change))));
    }

    /** By how much ln k of an average spot falls from one share of the strong solvent to another [ln units]. */
    private static double change(Knowledge knowledge, double fromPercent, double toPercent) {
        double s = 0;
        for (int spot = 0; spot < knowledge.spots(); spot++) {
            s += knowledge.meanS(spot) / knowledge.spots();
        }
        return s * (knowledge.model().strength(toPercent) - knowledge.model().strength(fromPercent));
    }

    /** Whether two shares of the strong solvent [% v/v] make the same eluent, as far as the spots can tell. */
    static boolean isSameStrength(Knowledge knowledge, double onePercent, double otherPercent) {
        return Math.abs(change(knowledge, onePercent, otherPercent)) < SAME_STRENGTH;
    }

    /** Of the pairs to be kept apart, the one that most likely is not. */
    private Optional<ApartChance> likeliestTogether() {
        return goal.apart().stream().min(Comparator.comparingDouble(ApartChance::chance));
    }

    private static Message apart(String key, ApartChance pair) {
        return Message.of(
                key,
                "one",
                pair.names().one(),
                "other",
                pair.names().other(),
                "least",
                Parting.LEAST_RF,
                "times",
                times(pair.chance()));
    }

    /** How far apart the closest two spots should come. */
    private Optional<Message> neighbours(double smallestGap) {
        if (forecast.spots().size() < 2) {
            return Optional.empty();
        }
        List<SpotForecast> sorted = new ArrayList<>(forecast.spots());
        sorted.sort((one, other) -> Double.compare(one.rf(), other.rf()));
        int closest = 1;
        for (int i = 2; i < sorted.size(); i++) {
            if (sorted.get(i).rf() - sorted.get(i - 1).rf()
                    < sorted.get(closest).rf() - sorted.get(closest - 1).rf()) {
                closest = i;
            }
        }
        String lower = sorted.get(closest - 1).spot();
        String upper = sorted.get(closest).spot();
        double expected = sorted.get(closest).rf() - sorted.get(closest - 1).rf();
        if (smallestGap >= TOUCHING && expected < KNOWN_GAP * smallestGap) {
            return Optional.of(Message.of("advice.why-gap-unknown", "lower", lower, "upper", upper));
        }
        return Optional.of(
                smallestGap < TOUCHING
                        ? suggestions.touching(lower, upper, smallestGap)
                        : Message.of("advice.why-gap", "lower", lower, "upper", upper, "gap", smallestGap));
    }

    /** A chance as so many of 100, never 0 or 100 unless it is. */
    static int times(double chance) {
        if (chance <= 0 || chance >= 1) {
            return (int) Math.round(100 * chance);
        }
        return (int) Math.max(1, Math.min(99, Math.round(100 * chance)));
    }
}
