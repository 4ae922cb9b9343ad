package midplate.identity;

import java.util.List;
import java.util.stream.Stream;
import midplate.words.Message;

/** How a plate of a reaction is taken, and what may hurt somebody; common practice, no source. */
final class ReactionPractice {
    private ReactionPractice() {}

    /** In the order in which it is done. */
    static List<Message> steps() {
        return said("done.practice-cool", "done.practice-work-up", "done.practice-lanes", "done.practice-dry");
    }

    /** What may hurt somebody. */
    static List<Message> cautions() {
        return said("done.caution-sample", "done.caution-quench", "done.caution-sheet");
    }

    private static List<Message> said(String... keys) {
        return Stream.of(keys).map(Message::of).toList();
    }
}
