package midplate.wire;

import java.util.stream.Collectors;
import midplate.advice.Question;
import midplate.inference.Parting;
import midplate.words.Message;
import midplate.words.Texts;

/** Says a chance the way a person does: in plates of a hundred. */
public final class ChanceWords {
    private final Texts texts;

    /** In these texts. */
    public ChanceWords(Texts texts) {
        this.texts = texts;
    }

    /** The sentence for the chance that every spot asked about lies in the window and the named pairs apart [1]. */
    public Message of(Question question, double chance) {
        if (!question.wishes().apart().isEmpty()) {
            return goal(question, chance);
        }
        String key = question.spots().size() == 1 ? "answer.chance-one" : "answer.chance-all";
        return Message.of(
                key,
                "count",
                plates(chance),
                "low",
                question.window().low(),
                "high",
                question.window().high());
    }

    private Message goal(Question question, double chance) {
        return Message.of(
                "answer.chance-goal",
                "count",
                plates(chance),
                "low",
                question.window().low(),
                "high",
                question.window().high(),
                "pairs",
                question.wishes().apart().stream()
                        .map(pair ->
                                texts.render(Message.of("answer.apart-pair", "one", pair.one(), "other", pair.other())))
                        .collect(Collectors.joining(", ")),
                "least",
                Parting.LEAST_RF);
    }

    /** How many plates of a hundred, without claiming none or all. */
    public String plates(double chance) {
        long count = Math.round(100 * chance);
        if (count < 1) {
            return texts.render(Message.of("answer.fewer-than-one"));
        }
        return texts.render(
                count > 99 ? Message.of("answer.more-than-99") : Message.of("answer.about", "count", (int) count));
    }
}
