package midplate.advice;

import midplate.plate.Setting;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * How much eluent is wanted and how finely it can be measured.
 *
 * @param amountMl both solvents together [ml], in (0, 10 000]
 * @param graduationMl the smallest step of the cylinder or pipette [ml], in (0, amountMl / 2]
 */
public record Glassware(double amountMl, double graduationMl) {
    /** 10 ml in a cylinder divided into 0.1 ml; common practice, no source. */
    public static final Glassware USUAL = new Glassware(10, 0.1);

    /** 10 ml by a machine that pipettes by 0.01 ml; common practice, no source. */
    public static final Glassware AUTOMATED = new Glassware(10, 0.01);

    private static final double MOST_ML = 10_000;

    /** Refuses what cannot be poured. */
    public Glassware {
        if (!(amountMl > 0 && amountMl <= MOST_ML)) {
            throw new Refusal(
                    "amountMl",
                    Message.of("advice.amount-out-of-range", "amountMl", amountMl),
                    Double.toString(amountMl),
                    Allowed.leftOpen("0", "10000"),
                    Message.of("todo.give-amount"));
        }
        if (!(graduationMl > 0 && graduationMl <= amountMl / 2)) {
            throw new Refusal(
                    "graduationMl",
                    Message.of("advice.graduation-out-of-range", "graduationMl", graduationMl),
                    Double.toString(graduationMl),
                    Allowed.leftOpen("0", Double.toString(amountMl / 2)),
                    Message.of("todo.give-graduation"));
        }
    }

    /** What is usual in a setting. */
    public static Glassware usual(Setting setting) {
        return setting == Setting.AUTOMATED ? AUTOMATED : USUAL;
    }

    /** Whether both parts of a mixture come to a graduation when rounded, or one of them is nothing at all. */
    boolean measures(Ratio ratio) {
        double strongMl = amountMl * ratio.percentStrong() / 100;
        double weakMl = amountMl - strongMl;
        return (ratio.strong() == 0 || strongMl >= graduationMl / 2)
                && (ratio.weak() == 0 || weakMl >= graduationMl / 2);
    }
}
