package midplate.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers with no more digits than they deserve, for messages that show them plainly. */
public final class Digits {
    private static final double WHOLE_ABOVE = 10;

    private Digits() {}

    /** A percentage of a mixture [% v/v]: one decimal, none where it is whole. */
    public static double percent(double percent) {
        return BigDecimal.valueOf(percent).setScale(1, RoundingMode.HALF_UP).doubleValue();
    }

    /** A percentage that nobody pours as it stands [% v/v]: whole above 10, where a decimal means nothing, else one decimal. */
    public static double aboutPercent(double percent) {
        return percent > WHOLE_ABOVE ? Math.rint(percent) : percent(percent);
    }

    /** A factor [1]: two significant digits. */
    public static double factor(double factor) {
        return BigDecimal.valueOf(factor)
                .round(new MathContext(2, RoundingMode.HALF_UP))
                .doubleValue();
    }
}
