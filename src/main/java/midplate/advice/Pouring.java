package midplate.advice;

import java.util.ArrayList;
import java.util.List;

/** From a ratio to millilitres, and what half a graduation on each volume does to the chance. */
final class Pouring {
    private Pouring() {}

    static Pour of(Ratio ratio, Glassware glassware, Aim aim) {
        double step = glassware.graduationMl();
        double strongMl = rounded(glassware.amountMl() * ratio.percentStrong() / 100, step);
        double weakMl = rounded(glassware.amountMl() - strongMl, step);
        boolean pure = strongMl == 0 || weakMl == 0;
        double poured = percent(weakMl, strongMl);
        double low = pure ? poured : percent(weakMl + step / 2, Math.max(0, strongMl - step / 2));
        double high = pure ? poured : percent(Math.max(0, weakMl - step / 2), strongMl + step / 2);
        double least = 1;
        double most = 0;
        List<Double> percents = new ArrayList<>(List.of(low, poured, high));
        RatioSearch.grid(low, high).stream().filter(p -> p > low && p < high).forEach(percents::add);
        for (double percent : percents) {
            double chance = aim.chance(percent);
            least = Math.min(least, chance);
            most = Math.max(most, chance);
        }
        return new Pour(weakMl, strongMl, poured, low, high, least, most);
    }

    private static double percent(double weakMl, double strongMl) {
        return 100 * strongMl / (weakMl + strongMl);
    }

    /** To the nearest graduation, without a tail of binary digits. */
    private static double rounded(double ml, double step) {
        return Math.round(Math.round(ml / step) * step * 1e6) / 1e6;
    }
}
