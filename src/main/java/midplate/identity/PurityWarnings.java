package midplate.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import midplate.catalogue.PairBasis;
import midplate.chemistry.Sorbent;
import midplate.words.Digits;
import midplate.words.Message;

/** What makes a plate say less of purity. */
final class PurityWarnings {
    /** A spot below crowds with others below it [1]; common practice, no source. */
    private static final double LOW_RF = 0.15;
    /** A spot above crowds with others above it [1]; common practice, no source. */
    private static final double HIGH_RF = 0.7;
    /** A spot longer than this share of the run hides its neighbours [1]; common practice, no source. */
    private static final double LONG_SPOT = 0.2;

    private PurityWarnings() {}

    /** Whether none of the ways used can have shown what the spot is said to be. */
    private static boolean isSomethingElse(PurityQuestion question) {
        return question.spot().structure().isPresent()
                && !question.seenBy().isEmpty()
                && question.seenBy().stream()
                        .allMatch(
                                way -> Eye.at(way, question.spot().structure()).sight() == Sight.BLIND);
    }

    /** All of them. */
    static List<Message> of(PurityQuestion question, Optional<HiddenCompound> hidden) {
        List<Message> all = new ArrayList<>();
        double rf = question.rf();
        if (question.isAtLine()) {
            all.add(Message.of("pure.warn-at-line", "rf", rf));
        } else if (rf < LOW_RF || rf > HIGH_RF) {
            all.add(Message.of(rf < LOW_RF ? "pure.warn-low" : "pure.warn-high", "rf", rf));
        }
        if (isSomethingElse(question)) {
            all.add(Message.of("pure.warn-something-else", "ways", WayNames.listed(question.seenBy())));
        }
        if (question.sizeMm().isEmpty() || question.runMm().isEmpty()) {
            all.add(Message.of("pure.warn-size", "size", question.size(), "run", question.run()));
        }
        if (question.sizeMm().orElse(0) > LONG_SPOT * question.run()) {
            all.add(Message.of("pure.warn-long", "size", question.size()));
        }
        question.appliedUg().ifPresent(applied -> {
            if (applied > SpotAmounts.OVERLOADED_UG) {
                all.add(Message.of("pure.warn-overloaded", "applied", Digits.factor(applied)));
            }
        });
        hidden.map(HiddenCompound::basis)
                .filter(basis -> basis != PairBasis.MEASURED)
                .ifPresent(basis -> all.add(Message.of("pure.warn-basis", "basis", basis(basis))));
        if (question.eluent().isEmpty()) {
            all.add(Message.of("pure.warn-no-eluent"));
        }
        question.eluent().filter(eluent -> hidden.isEmpty()).ifPresent(eluent -> all.add(unasked(eluent)));
        question.eluent()
                .filter(eluent -> hidden.isPresent())
                .flatMap(PlateEluent::additive)
                .ifPresent(additive -> all.add(Message.of("pure.warn-additive", "additive", additive)));
        return all;
    }

    /** Why the model was not asked about an eluent. */
    private static Message unasked(PlateEluent eluent) {
        return eluent.sorbent() == Sorbent.SILICA
                ? Message.of(
                        "pure.warn-no-model",
                        "weak",
                        eluent.weak().said(),
                        "strong",
                        eluent.strong().said())
                : Message.of("pure.warn-sorbent", "sorbent", eluent.sorbent().said());
    }

    /** What chances rest on. */
    static Message basis(PairBasis basis) {
        return switch (basis) {
            case MEASURED -> Message.of("pure.basis-measured");
            case THEORY -> Message.of("pure.basis-theory");
            case GUESS -> Message.of("pure.basis-guess");
        };
    }
}
