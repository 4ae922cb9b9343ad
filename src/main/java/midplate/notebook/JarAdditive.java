package midplate.notebook;

/**
 * What is added to an eluent.
 *
 * @param kind {@code none}, the id of one against streaking, or {@code own}, which the text says
 * @param text what was typed; kept where another kind is chosen
 */
public record JarAdditive(String kind, String text) {
    /** Nothing is added. */
    public static final JarAdditive NONE = new JarAdditive("none", "");
}
