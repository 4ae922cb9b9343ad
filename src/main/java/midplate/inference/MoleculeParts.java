package midplate.inference;

import java.util.ArrayList;
import java.util.List;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.GroupEffects;
import midplate.chemistry.GroupCounts;

/**
 * A compound as a row of numbers: how often each part stands in it. First the constant (1), then each functional group in
 * order, last the further groups {@code (Σ Qᵢ − max Qᵢ)/5} over its polar groups: on silica the strongest group takes its place
 * in full and the others less (Snyder's localization), and 5 is the energy of a usual group.
 *
 * @see "Snyder1968"
 */
final class MoleculeParts {
    private static final double USUAL_ENERGY = 5;

    private final List<FunctionalGroup> groups;

    MoleculeParts(FunctionalGroups groups) {
        this.groups = groups.all();
    }

    /** The names of the parts, in order. */
    List<String> names() {
        List<String> names = new ArrayList<>();
        names.add(GroupEffects.CONSTANT);
        groups.forEach(group -> names.add(group.id()));
        names.add(GroupEffects.FURTHER);
        return names;
    }

    /** How many parts there are. */
    int count() {
        return groups.size() + 2;
    }

    /** The functional group at a place; the places of the constant and of the further groups have none. */
    FunctionalGroup group(int place) {
        return groups.get(place - 1);
    }

    /** Whether a functional group stands at a place. */
    boolean isGroup(int place) {
        return place >= 1 && place <= groups.size();
    }

    /** Whether a part of the molecule's size stands at a place. */
    boolean isSize(int place) {
        return isGroup(place) && group(place).kind() == FunctionalGroup.Kind.SIZE;
    }

    /** The row of a compound. */
    double[] row(GroupCounts counts) {
        double[] row = new double[count()];
        row[0] = 1;
        double sum = 0;
        double strongest = 0;
        for (int i = 0; i < groups.size(); i++) {
            FunctionalGroup group = groups.get(i);
            int number = counts.of(group.id());
            row[i + 1] = number;
            if (group.isPolar() && number > 0) {
                sum += number * group.energy();
                strongest = Math.max(strongest, group.energy());
            }
        }
        row[row.length - 1] = (sum - strongest) / USUAL_ENERGY;
        return row;
    }
}
