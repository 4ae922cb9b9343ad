package midplate.advice;

/**
 * What to pour for an advised ratio and what the glassware does to it.
 *
 * @param weakMl volume of the weaker solvent, rounded to the graduation [ml]
 * @param strongMl volume of the stronger solvent, rounded to the graduation [ml]
 * @param percentStrong what these two volumes make [% v/v]
 * @param lowPercent if each volume is half a graduation off, the least it can be [% v/v]
 * @param highPercent and the most [% v/v]
 * @param lowChance the least chance between these two that every spot reads inside the window, named
 *     pairs apart [1]
 * @param highChance and the greatest [1]
 */
public record Pour(
        double weakMl,
        double strongMl,
        double percentStrong,
        double lowPercent,
        double highPercent,
        double lowChance,
        double highChance) {}
