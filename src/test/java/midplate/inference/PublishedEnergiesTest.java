package midplate.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import midplate.catalogue.Basis;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.GroupEffects;
import midplate.catalogue.SolventCatalogue;
import midplate.structure.Structures;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Group adsorption energies on silica (Snyder, Principles of Adsorption Chromatography, 1968; from memory, confidence M) against
 * effects that were fitted to the open measurements (Xu et al., Chem 8 (2022) 3202, development part) without them.
 */
@DisplayName("Published group energies and the open measurements")
class PublishedEnergiesTest {
    private static final int COMPOUNDS = 7;

    private static GroupEffects ridge() {
        return PairCalibration.fit(
                        OpenData.read(),
                        SolventCatalogue.builtIn(),
                        "test",
                        Form.THREE_TRAITS,
                        FunctionalGroups.builtIn(),
                        Structures.of(FunctionalGroups.builtIn())::counts,
                        GroupForm.RIDGE)
                .structures()
                .get(0);
    }

    private static double effect(GroupEffects effects, String group) {
        return effects.effects().stream()
                .filter(each -> each.part().equals(group))
                .findFirst()
                .orElseThrow()
                .c();
    }

    @Test
    void agreeThoughTheFitKnewNothingOfThem() {
        GroupEffects fitted = ridge();
        assertEquals("silica-hexane-ethyl-acetate", fitted.pair());
        List<Double> energies = new ArrayList<>();
        List<Double> effects = new ArrayList<>();
        FunctionalGroups groups = FunctionalGroups.builtIn();
        for (GroupEffects.Effect effect : fitted.effects()) {
            groups.find(effect.part())
                    .filter(group -> group.kind() == FunctionalGroup.Kind.GROUP && group.basis() == Basis.MEMORY)
                    .filter(group -> effect.compounds() >= COMPOUNDS)
                    .ifPresent(group -> {
                        energies.add(group.energy());
                        effects.add(-effect.c());
                    });
        }
        assertTrue(energies.size() >= 10, energies.size() + " groups");
        double correlation = new PearsonsCorrelation()
                .correlation(
                        energies.stream().mapToDouble(Double::doubleValue).toArray(),
                        effects.stream().mapToDouble(Double::doubleValue).toArray());
        assertTrue(correlation > 0.9, "correlation " + correlation);
    }

    // Wide gaps only, in hexane and ethyl acetate: acid 7.0, amine 5.1, phenol 4.2 against nitro 2.77, ether 1.83,
    // chlorine −0.20.
    @Test
    void wideGapsHaveTheSameOrder() {
        GroupEffects fitted = ridge();
        double chlorine = effect(fitted, "aryl-chloride");
        for (String weak : List.of("aryl-ether", "nitro")) {
            assertTrue(effect(fitted, weak) < chlorine, weak);
            for (String strong : List.of("carboxylic-acid", "aniline", "phenol")) {
                assertTrue(effect(fitted, strong) < effect(fitted, weak), strong + " against " + weak);
            }
        }
    }
}
