package midplate.advice;

import midplate.words.Message;
import midplate.words.Refusal;

/**
 * The Rf between which every spot should lie [1].
 *
 * @param low lower edge, in [0, 1)
 * @param high upper edge, in (low, 1], at least 0.02 above the lower one
 */
public record Window(double low, double high) {
    /** 0.2 to 0.8: where spots are told apart and measured well. */
    public static final Window USUAL = new Window(0.2, 0.8);

    private static final double NARROWEST = 0.02;

    /** Refuses edges out of order or outside 0 to 1. */
    public Window {
        if (!(low >= 0 && high <= 1 && high - low >= NARROWEST)) {
            throw new Refusal(
                    "window",
                    Message.of("advice.window-out-of-range", "low", low, "high", high),
                    "[" + low + ", " + high + "]",
                    Message.of("allowed.window"),
                    Message.of("todo.give-window"));
        }
    }

    /** Whether an Rf lies in it, edges included. */
    public boolean holds(double rf) {
        return rf >= low && rf <= high;
    }
}
