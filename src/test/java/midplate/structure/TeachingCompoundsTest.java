package midplate.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import midplate.catalogue.FunctionalGroups;
import midplate.catalogue.TeachingCompound;
import midplate.catalogue.TeachingCompounds;
import midplate.words.Language;
import midplate.words.Texts;
import org.junit.jupiter.api.Test;

/** The compounds that lessons offer are what their names say, and all of each is recognised. */
class TeachingCompoundsTest {
    /** A tripwire: changes with the file, and then the edition of the codes does, too. */
    private static final int COUNT = 29;

    private static final Structures STRUCTURES = Structures.of(FunctionalGroups.builtIn());

    /** Molecular formulas: general knowledge, written down by hand, not by the program. */
    private static final Map<String, String> FORMULAS = Map.ofEntries(
            Map.entry("biphenyl", "C12H10"),
            Map.entry("anthracene", "C14H10"),
            Map.entry("stilbene", "C14H12"),
            Map.entry("anisole", "C7H8O"),
            Map.entry("dimethoxybenzene", "C8H10O2"),
            Map.entry("benzophenone", "C13H10O"),
            Map.entry("acetophenone", "C8H8O"),
            Map.entry("fluorenone", "C13H8O"),
            Map.entry("benzil", "C14H10O2"),
            Map.entry("anisaldehyde", "C8H8O2"),
            Map.entry("methyl-benzoate", "C8H8O2"),
            Map.entry("benzyl-benzoate", "C14H12O2"),
            Map.entry("ethyl-cinnamate", "C11H12O2"),
            Map.entry("chalcone", "C15H12O"),
            Map.entry("benzyl-alcohol", "C7H8O"),
            Map.entry("benzhydrol", "C13H12O"),
            Map.entry("fluorenol", "C13H10O"),
            Map.entry("cinnamyl-alcohol", "C9H10O"),
            Map.entry("benzoin", "C14H12O2"),
            Map.entry("eugenol", "C10H12O2"),
            Map.entry("thymol", "C10H14O"),
            Map.entry("vanillin", "C8H8O3"),
            Map.entry("ethyl-vanillin", "C9H10O3"),
            Map.entry("benzoic-acid", "C7H6O2"),
            Map.entry("benzamide", "C7H7NO"),
            Map.entry("acetanilide", "C8H9NO"),
            Map.entry("menthol", "C10H20O"),
            Map.entry("menthone", "C10H18O"),
            Map.entry("caffeine", "C8H10N4O2"));

    /** What a note says of a compound's groups, in the groups that may stand for it: common practice, no source. */
    private static final Map<String, Set<String>> SAID = Map.of(
            "alcohol", Set.of("alcohol"),
            "phenol", Set.of("phenol"),
            "ketone", Set.of("ketone", "aryl-ketone", "diaryl-ketone", "dicarbonyl"),
            "aldehyde", Set.of("aldehyde"),
            "ester", Set.of("ester"),
            "amide", Set.of("primary-amide", "secondary-amide", "tertiary-amide"),
            "acid", Set.of("carboxylic-acid"),
            "ether", Set.of("aryl-ether", "alkyl-ether"));

    private static List<TeachingCompound> all() {
        return TeachingCompounds.builtIn().all();
    }

    private static Molecule molecule(TeachingCompound compound) {
        return STRUCTURES.read("smiles", compound.smiles());
    }

    @Test
    void eachHasTheFormulaOfItsName() {
        Map<String, String> found = new HashMap<>();
        all().forEach(compound -> found.put(compound.id(), molecule(compound).formula()));
        assertEquals(new TreeMap<>(FORMULAS), new TreeMap<>(found));
        assertEquals(COUNT, found.size());
    }

    @Test
    void noTwoAreTheSameStructure() {
        Set<String> canonical =
                all().stream().map(each -> molecule(each).smiles()).collect(Collectors.toSet());
        assertEquals(COUNT, canonical.size());
    }

    @Test
    void nothingOfAnyIsUnrecognised() {
        for (TeachingCompound compound : all()) {
            Molecule molecule = molecule(compound);
            assertEquals(0, molecule.counts().of(FunctionalGroups.UNRECOGNISED), compound.id());
            assertEquals(List.of(), molecule.notes(), compound.id());
        }
    }

    @Test
    void eachNoteNamesTheGroupsThatAreThere() {
        for (TeachingCompound compound : all()) {
            Set<String> words = new HashSet<>(List.of(compound.note().split("[ ;,]+|s\\b")));
            SAID.forEach((word, groups) -> {
                boolean there = groups.stream()
                        .anyMatch(group -> molecule(compound).counts().of(group) > 0);
                boolean elsewhere = compound.id().equals("caffeine"); // its note tells where it runs
                assertTrue(elsewhere || there == words.contains(word), compound.id() + ": " + word);
            });
        }
    }

    @Test
    void eachHasANameInEachLanguageAndNoOtherHas() {
        Set<String> ids = all().stream().map(each -> "compound." + each.id()).collect(Collectors.toSet());
        Set<String> named = Texts.english().keys().stream()
                .filter(key -> key.startsWith("compound."))
                .collect(Collectors.toSet());
        assertEquals(new TreeSet<>(ids), new TreeSet<>(named));
        for (Language language : Language.values()) {
            Set<String> names = all().stream()
                    .map(each -> Texts.of(language).render(each.said()))
                    .collect(Collectors.toSet());
            assertEquals(COUNT, names.size(), language + ": each its own name");
        }
    }
}
