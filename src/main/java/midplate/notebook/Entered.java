package midplate.notebook;

import java.util.OptionalDouble;

/**
 * A number as somebody entered it. What is no number yet, or no longer, is kept as it was typed, since nothing entered may be
 * lost.
 *
 * @param typed what was typed; empty where nothing was
 * @param value the number, where it is one
 */
public record Entered(String typed, OptionalDouble value) {
    /** Nothing was entered. */
    public static final Entered NOTHING = new Entered("", OptionalDouble.empty());

    /** A text that is no number. */
    public static Entered text(String typed) {
        return new Entered(typed, OptionalDouble.empty());
    }

    /** A finite number, written as it came: {@code 13.5}. */
    public static Entered number(String written, double value) {
        return new Entered(written, OptionalDouble.of(value));
    }
}
