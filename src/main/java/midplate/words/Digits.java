package midplate.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers with no more digits than they deserve, for messages that show them plainly. */
public final class Digits {
    private Digits() {}

    /** A percentage of a mixture [% v/v]: one decimal, none where it is whole. */
    public static double percent(double percent) {
        return BigDecimal.valueOf(percent).setScale(1, RoundingMode.HALF_UP).doubleValue();
    }

    /** A factor [1]: two significant digits. */
    public static double factor(double factor) {
        return BigDecimal.valueOf(factor)
                .round(new MathContext(2, RoundingMode.HALF_UP))
                .doubleValue();
    }
}
