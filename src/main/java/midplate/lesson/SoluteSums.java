package midplate.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroup.Kind;
import midplate.catalogue.FunctionalGroups;
import midplate.chemistry.GroupCounts;

/**
 * What published energies say of a compound on silica: {@code log10 k = const + α'·(S⁰ − A_s·ε)}, with {@code S⁰ = Σ nᵢ·Q⁰ᵢ}.
 *
 * <p>Q⁰ [1] energy of a group, A_s [8.5 Å²] area of the compound, ε [1] strength of the eluent, α' [1] activity of the layer. The plain
 * sum holds for one polar group; with more, only the strongest sits fully on its site, and the sum says too much.
 *
 * @param groups what it is made of, in the order of the groups
 * @param detail how much of it is known
 * @see "Snyder1968"
 */
public record SoluteSums(List<Counted> groups, GroupCounts.Detail detail) {
    /** Area of a carbon [8.5 Å²]: published for an aliphatic one, from memory, confidence M; own choice for the others. */
    public static final double CARBON_AREA = 0.9;

    /** Area of a functional group [8.5 Å²]; own estimate. */
    public static final double GROUP_AREA = 1.5;

    /** Groups that stand for two carbons. */
    private static final List<String> TWO_CARBONS = List.of("alkene", "alkyne");

    /** Keeps its own copy. */
    public SoluteSums {
        groups = List.copyOf(groups);
    }

    /**
     * A group and how often it is there.
     *
     * @param group which, with its published energy
     * @param count how often, 1 or more
     */
    public record Counted(FunctionalGroup group, int count) {}

    /** Of a compound by its groups. */
    public static SoluteSums of(FunctionalGroups known, GroupCounts counts) {
        List<Counted> groups = new ArrayList<>();
        for (FunctionalGroup group : known.all()) {
            if (counts.of(group.id()) > 0) {
                groups.add(new Counted(group, counts.of(group.id())));
            }
        }
        return new SoluteSums(groups, counts.detail());
    }

    /** S⁰ [1], the sum of the energies; empty where only groups or a class are known. */
    public OptionalDouble energy() {
        return isWhole()
                ? OptionalDouble.of(groups.stream()
                        .mapToDouble(each -> each.count() * each.group().energy())
                        .sum())
                : OptionalDouble.empty();
    }

    /**
     * A_s [8.5 Å²], estimated from the carbons and groups; empty where only groups or a class are known. Benzene and naphthalene (published
     * 6.0 and 8.2, from memory, confidence M) come out within a tenth; a group that sits on a site takes more than its size.
     */
    public OptionalDouble area() {
        if (!isWhole()) {
            return OptionalDouble.empty();
        }
        double area = 0;
        for (Counted each : groups) {
            double one = switch (each.group().kind()) {
                case SIZE -> (TWO_CARBONS.contains(each.group().id()) ? 2 : 1) * CARBON_AREA;
                case GROUP, UNKNOWN -> GROUP_AREA;
                case SURROUNDING -> 0;
            };
            area += each.count() * one;
        }
        return OptionalDouble.of(area);
    }

    /**
     * What holds it less what the eluent pushes it off with [1], {@code S⁰ − A_s·ε}: the larger, the later it moves. Empty where only groups
     * or a class are known; with several polar groups it says too much.
     *
     * @param strength ε of the eluent [1]
     */
    public OptionalDouble balance(double strength) {
        return isWhole()
                ? OptionalDouble.of(energy().orElseThrow() - area().orElseThrow() * strength)
                : OptionalDouble.empty();
    }

    /** The functional group of the highest energy; empty where there is none that holds. */
    public Optional<Counted> strongest() {
        return groups.stream()
                .filter(each ->
                        each.group().kind() == Kind.GROUP || each.group().kind() == Kind.UNKNOWN)
                .filter(each -> each.group().energy() > 0)
                .max(Comparator.comparingDouble(each -> each.group().energy()));
    }

    /** How many polar groups there are, each counted as often as it is there. */
    public int polarGroups() {
        return groups.stream()
                .filter(each -> each.group().isPolar())
                .mapToInt(Counted::count)
                .sum();
    }

    private boolean isWhole() {
        return detail == GroupCounts.Detail.WHOLE;
    }
}
