package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.identity.PurityAnswer.Hidden;
import midplate.identity.PurityAnswer.Kind;
import midplate.words.Digits;
import midplate.words.Message;

/** What could be on a plate unseen: under the spot, to the ways used, at either line, or gone. */
final class HidingPlaces {
    /** Nearer than this two centres are never told apart, however small the spots [1 in Rf]; own choice. */
    private static final double LEAST_REACH = 0.02;

    private static final double WHOLE = 100;

    private final PurityQuestion question;
    private final Optional<HiddenCompound> hidden;
    private final Blindness blindness;

    /**
     * For one plate.
     *
     * @param hidden where a further compound would lie; empty where the model is not asked
     */
    HidingPlaces(PurityQuestion question, Optional<HiddenCompound> hidden, Blindness blindness) {
        this.question = question;
        this.hidden = hidden;
        this.blindness = blindness;
    }

    /** All of it, each kind once. */
    List<Hidden> all() {
        return List.of(
                coinciding(),
                new Hidden(Kind.BLIND, OptionalDouble.empty(), blindness.said()),
                baseline(),
                front(),
                leaving());
    }

    /** Two centres are seen as two where they lie a spot's diameter apart [1 in Rf]; own choice. */
    private double reach() {
        return Math.max(LEAST_REACH, question.size() / question.run());
    }

    private Hidden coinciding() {
        double reach = reach();
        if (question.isAtLine()) {
            return new Hidden(Kind.COINCIDING, OptionalDouble.empty(), Message.of("pure.hide-at-line"));
        }
        if (hidden.isEmpty()) {
            return new Hidden(Kind.COINCIDING, OptionalDouble.empty(), Message.of("pure.hide-unasked", "reach", reach));
        }
        double chance = hidden.get().between(question.rf() - reach, question.rf() + reach);
        return new Hidden(
                Kind.COINCIDING,
                OptionalDouble.of(chance),
                Sentences.joined(List.of(
                        Message.of(
                                "pure.hide-coinciding",
                                "low",
                                Math.max(0, question.rf() - reach),
                                "high",
                                Math.min(1, question.rf() + reach),
                                "percent",
                                percent(chance)),
                        Message.of("pure.hide-like"))));
    }

    /** Without a chance: what stays there, salts, polymers, inorganic matter, is not what the model was measured with. */
    private Hidden baseline() {
        return new Hidden(
                Kind.BASELINE,
                OptionalDouble.empty(),
                question.startSpot()
                        .map(start -> switch (start) {
                            case NONE -> Message.of("pure.start-none");
                            case WEAK -> Message.of("pure.start-weak");
                            case STRONG -> Message.of("pure.start-strong");
                        })
                        .orElse(Message.of("pure.start-unsaid")));
    }

    /** Without a chance for the same reason: grease and plasticizers were not measured. */
    private static Hidden front() {
        return new Hidden(Kind.FRONT, OptionalDouble.empty(), Message.of("pure.hide-front"));
    }

    private Hidden leaving() {
        List<Message> parts = new ArrayList<>();
        parts.add(Message.of("pure.hide-volatile"));
        if (Volatility.of(question.spot().structure()) == Volatility.Volatile.MAY_LEAVE) {
            parts.add(Message.of("pure.hide-volatile-itself"));
        }
        return new Hidden(Kind.VOLATILE, OptionalDouble.empty(), Sentences.joined(parts));
    }

    /** A chance as people say it [%]. */
    static double percent(double chance) {
        return Digits.aboutPercent(WHOLE * chance);
    }
}
