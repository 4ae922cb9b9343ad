package midplate.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How readings of a class scatter: by themselves, and because plates differ.
 *
 * @param way how the two were told apart
 * @param plates how many plates that rests on
 * @param within by itself, the standard deviation of a reading [Rf]; over all spots
 * @param between that of plates [Rf], as it moves these spots; over all spots
 * @param chance of as large a difference between plates if plates did not differ [1]
 * @param variance between plates before it was kept from being below 0 [Rf²]
 */
record ClassScatter(Way way, int plates, Spread within, Spread between, double chance, double variance) {
    /** Fewest degrees of freedom within plates that repeats tell anything with (own choice). */
    private static final int LEAST_FREEDOM = 4;
    /** By how many exchanges the chance of a shared shift is counted. */
    private static final int EXCHANGES = 999;

    private static final int SEED = 1;

    /** How two scatters are told apart. */
    enum Way {
        /** Plates were read more than once: {@link PlateAnova}. */
        REPEATS,
        /** A plate moves its spots alike: {@link SharedShift}. */
        SHARED
    }

    /** Of what was read; empty where nothing tells the two apart. */
    static Optional<ClassScatter> of(ClassTable table) {
        List<PlateAnova> spots = new ArrayList<>();
        for (int s = 0; s < table.spots(); s++) {
            PlateAnova.of(table.of(s)).ifPresent(spots::add);
        }
        if (spots.stream().mapToInt(PlateAnova::freeWithin).sum() >= LEAST_FREEDOM) {
            PlateAnova all = PlateAnova.pooled(spots);
            return Optional.of(new ClassScatter(
                    Way.REPEATS, table.plates(), all.within(), all.betweenPlates(), all.chance(), all.between()));
        }
        return SharedShift.of(table).map(shift -> {
            PlateAnova all = shift.anova();
            return new ClassScatter(
                    Way.SHARED,
                    shift.plates(),
                    all.within(),
                    all.betweenPlates(),
                    chance(table, shift.shift()),
                    shift.between());
        });
    }

    /** The share of exchanges of each spot's plates after which they move together as much, this one counted: a permutation test. */
    private static double chance(ClassTable table, double shift) {
        SeededDraws draws = SeededDraws.of(SEED);
        int asMuch = 1;
        for (int i = 0; i < EXCHANGES; i++) {
            boolean more = SharedShift.of(table.mixed(draws))
                    .map(other -> other.shift() >= shift)
                    .orElse(true);
            asMuch += more ? 1 : 0;
        }
        return (double) asMuch / (EXCHANGES + 1);
    }
}
