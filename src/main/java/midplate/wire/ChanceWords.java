package midplate.wire;

import midplate.advice.Question;
import midplate.words.Message;
import midplate.words.Texts;

/** Says a chance the way a person does: in plates of a hundred. */
public final class ChanceWords {
    private final Texts texts;

    /** In these texts. */
    public ChanceWords(Texts texts) {
        this.texts = texts;
    }

    /** The sentence for the chance that every spot asked about lies in the window [1]. */
    public Message of(Question question, double chance) {
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
