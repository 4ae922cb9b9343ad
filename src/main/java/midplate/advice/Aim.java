package midplate.advice;

import java.util.List;
import java.util.stream.IntStream;
import midplate.inference.Outlook;
import midplate.inference.Parting;

/**
 * What the next plate should show: some spots inside the window, some pairs apart.
 *
 * @param outlook what plates may show
 * @param spots places of the spots that should read inside
 * @param parting the pairs that should come apart
 */
record Aim(Outlook outlook, List<Integer> spots, Parting parting) {
    Aim {
        spots = List.copyOf(spots);
    }

    /** Every spot inside, the pairs apart. */
    static Aim everySpot(Outlook outlook, Parting parting) {
        return new Aim(
                outlook, IntStream.range(0, outlook.knowledge().spots()).boxed().toList(), parting);
    }

    /** The chance of it at a share of the strong solvent [% v/v]. */
    double chance(double percent) {
        return outlook.chance(percent, spots, parting);
    }

    /** The same, or, where the chance of the window alone is below what is needed, that chance, which is no smaller. */
    double chance(double percent, double needed) {
        double inside = outlook.chance(percent, spots, needed);
        return inside < needed ? inside : chance(percent);
    }

    /** How much of it to expect at a share: so many spots inside, so many pairs apart. */
    double expected(double percent) {
        double apart = parting.pairs().stream()
                .mapToDouble(
                        pair -> outlook.chance(percent, List.of(), new Parting(List.of(pair), parting.developments())))
                .sum();
        return inside(percent) + apart;
    }

    /** How many spots to expect inside at a share. */
    double inside(double percent) {
        return spots.stream()
                .mapToDouble(spot -> outlook.chance(percent, List.of(spot)))
                .sum();
    }
}
