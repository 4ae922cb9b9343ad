package midplate.words;

/** Messages in English, for tests that hold their wording. */
public final class English {
    private static final Texts TEXTS = Texts.english();

    private English() {}

    public static String said(Message message) {
        return TEXTS.render(message);
    }

    /** A value of a message as it is shown. */
    public static String value(Message message, String name) {
        Object value = message.args().get(name);
        return value instanceof Message inner ? said(inner) : String.valueOf(value);
    }
}
