package midplate.identity;

import java.util.List;
import midplate.words.Message;

/** Sentences said one after the other. */
final class Sentences {
    private Sentences() {}

    /** All of them in one message; at least one. */
    static Message joined(List<Message> sentences) {
        Message all = sentences.get(0);
        for (Message next : sentences.subList(1, sentences.size())) {
            all = Message.of("seeing.order-two", "one", all, "other", next);
        }
        return all;
    }
}
