package midplate.advice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import midplate.catalogue.Caution;
import midplate.catalogue.Hazard;
import midplate.catalogue.PublishedValue;
import midplate.catalogue.SolventCatalogue;
import midplate.chemistry.Solvent;

/** What the published data say of the solvents of a pair that matters when one is chosen: flags and boiling point. */
final class SolventFlags {
    /** Of the classifications printed, those that hold for every grade, not what some suppliers add. */
    private static final List<String> HOLDING = List.of("harmonized", "supplemental");

    private static final Pattern CHLORINE = Pattern.compile("Cl\\d*");
    private static final String PEROXIDES = "peroxides";
    private static final String NERVES = "nerve-damage";

    private final SolventCatalogue catalogue;

    SolventFlags(SolventCatalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The flags of both solvents, each once, in the order of {@link SolventFlag}. */
    List<SolventFlag> of(Solvent weak, Solvent strong) {
        Set<SolventFlag> flags = EnumSet.noneOf(SolventFlag.class);
        flags.addAll(of(weak));
        flags.addAll(of(strong));
        return List.copyOf(flags);
    }

    private Set<SolventFlag> of(Solvent solvent) {
        Set<SolventFlag> flags = EnumSet.noneOf(SolventFlag.class);
        if (CHLORINE.matcher(solvent.formula()).find()) {
            flags.add(SolventFlag.CHLORINATED);
        }
        for (Hazard hazard : catalogue.hazards(solvent)) {
            if (HOLDING.stream().anyMatch(hazard.value().condition()::startsWith)) {
                for (SolventFlag flag : SolventFlag.values()) {
                    if (flag.isSaidBy(hazard.code())) {
                        flags.add(flag);
                    }
                }
            }
        }
        List<String> cautions =
                catalogue.cautions(solvent).stream().map(Caution::key).toList();
        if (cautions.contains(NERVES)) {
            flags.add(SolventFlag.NERVES);
            flags.remove(SolventFlag.ORGANS);
        }
        if (cautions.contains(PEROXIDES) && !flags.contains(SolventFlag.PEROXIDES)) {
            flags.add(SolventFlag.SLOW_PEROXIDES);
        }
        return flags;
    }

    /** The boiling point of the solvent that boils higher [°C], of a mixture the end of its range; empty where one is not published. */
    OptionalDouble boilingPoint(Solvent weak, Solvent strong) {
        OptionalDouble one = boilingPoint(weak);
        OptionalDouble other = boilingPoint(strong);
        return one.isEmpty() || other.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(one.getAsDouble(), other.getAsDouble()));
    }

    private OptionalDouble boilingPoint(Solvent solvent) {
        List<PublishedValue> found = new ArrayList<>();
        catalogue.preferred(solvent, "boiling_point", "").ifPresent(found::add);
        catalogue.preferred(solvent, "boiling_range_high", "").ifPresent(found::add);
        return found.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(found.get(0).number());
    }
}
