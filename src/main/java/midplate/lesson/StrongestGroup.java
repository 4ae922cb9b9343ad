package midplate.lesson;

import java.util.Comparator;
import java.util.Optional;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;

/**
 * Of the groups of a compound the one that silica holds most.
 *
 * @param id of the group
 * @param energy its group adsorption energy Q⁰ on silica [1]
 * @param count how many of it there are
 * @see "Snyder1968"
 */
record StrongestGroup(String id, double energy, int count) {
    /** Energies that differ by less give no order: published ones differ so much between aliphatic and aromatic; own choice [1]. */
    static final double CLEAR = 0.4;
    /** So that 0.4 as the difference of two decimal numbers counts [1]. */
    private static final double ROUNDING = 1e-9;

    /** Empty where silica holds none. */
    static Optional<StrongestGroup> of(LessonCompound compound) {
        return FunctionalGroups.builtIn().all().stream()
                .filter(group -> group.isPolar() && compound.counts().of(group.id()) > 0)
                .max(Comparator.comparingDouble(FunctionalGroup::energy))
                .map(group -> new StrongestGroup(
                        group.id(), group.energy(), compound.counts().of(group.id())));
    }

    /** Whether the strongest groups by themselves say that one compound stays below another: a clearly stronger one, or more of the same. */
    static boolean isReasonFor(LessonCompound lower, LessonCompound upper) {
        Optional<StrongestGroup> below = of(lower);
        Optional<StrongestGroup> above = of(upper);
        if (below.isEmpty() || above.isEmpty()) {
            return below.isPresent();
        }
        return below.get().id().equals(above.get().id())
                ? below.get().count() > above.get().count()
                : below.get().energy() - above.get().energy() >= CLEAR - ROUNDING;
    }
}
