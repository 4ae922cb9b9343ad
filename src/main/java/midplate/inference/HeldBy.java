package midplate.inference;

import java.util.List;
import java.util.Optional;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroup.Kind;
import midplate.catalogue.FunctionalGroups;
import midplate.chemistry.GroupCounts;

/**
 * Which functional group holds a compound back the most. What surrounds a group counts with it, as far as every place of the groups
 * it is about is so surrounded: the phenol of 2-hydroxyacetophenone holds less than the ketone beside it, that of its 2,4-dihydroxy
 * kin does not, for one of its two stands free.
 */
final class HeldBy {
    private final FunctionalGroups groups;
    private final GroupCounts counts;
    private final List<StructureForecast.Part> parts;

    private HeldBy(FunctionalGroups groups, GroupCounts counts, List<StructureForecast.Part> parts) {
        this.groups = groups;
        this.counts = counts;
        this.parts = parts;
    }

    /** The group; empty where none holds. */
    static Optional<StructureForecast.Part> of(
            FunctionalGroups groups, GroupCounts counts, List<StructureForecast.Part> parts) {
        return new HeldBy(groups, counts, parts).strongest();
    }

    private Optional<StructureForecast.Part> strongest() {
        Optional<StructureForecast.Part> strongest = Optional.empty();
        double lowest = 0;
        for (StructureForecast.Part part : parts) {
            boolean holds = groups.find(part.id())
                    .filter(group -> group.kind() == Kind.GROUP || group.kind() == Kind.UNKNOWN)
                    .isPresent();
            double effect = holds ? part.effect() + around(part.id()) : 0;
            if (effect < lowest) {
                lowest = effect;
                strongest = Optional.of(part);
            }
        }
        return strongest;
    }

    private double around(String id) {
        double sum = 0;
        for (StructureForecast.Part part : parts) {
            sum += groups.find(part.id())
                            .filter(group -> group.about().contains(id) && isEverywhere(group))
                            .isPresent()
                    ? part.effect()
                    : 0;
        }
        return sum;
    }

    private boolean isEverywhere(FunctionalGroup surrounding) {
        int places = surrounding.about().stream().mapToInt(counts::of).sum();
        return counts.of(surrounding.id()) >= places;
    }
}
