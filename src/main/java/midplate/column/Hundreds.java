package midplate.column;

import midplate.words.Message;

/** Says a chance in columns of a hundred, without claiming none or all. */
final class Hundreds {
    private static final double HUNDRED = 100;

    private Hundreds() {}

    static Message of(double chance) {
        long count = Math.round(HUNDRED * chance);
        if (count < 1) {
            return Message.of("answer.fewer-than-one");
        }
        return count > HUNDRED - 1
                ? Message.of("answer.more-than-99")
                : Message.of("answer.about", "count", (int) count);
    }
}
