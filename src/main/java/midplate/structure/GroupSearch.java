package midplate.structure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import midplate.catalogue.FunctionalGroup;
import midplate.catalogue.FunctionalGroups;
import org.openscience.cdk.interfaces.IAtom;
import org.openscience.cdk.interfaces.IAtomContainer;
import org.openscience.cdk.interfaces.IBond;
import org.openscience.cdk.smarts.SmartsPattern;

/**
 * Finds functional groups by the patterns of {@code groups.csv}. A group may have several patterns, separated by blanks; it
 * counts once for each atom that is the first of a match, and takes all atoms of the matches that begin there. An atom other than
 * C and H that no group of kind group or size takes is {@link FunctionalGroups#UNRECOGNISED}.
 */
final class GroupSearch {
    private static final int CARBON = 6;

    private final List<Sought> sought;

    private record Sought(FunctionalGroup group, List<SmartsPattern> patterns) {
        private boolean takesAtoms() {
            return group.kind() == FunctionalGroup.Kind.GROUP || group.kind() == FunctionalGroup.Kind.SIZE;
        }
    }

    private GroupSearch(List<Sought> sought) {
        this.sought = sought;
    }

    static GroupSearch of(List<FunctionalGroup> groups) {
        List<Sought> sought = new ArrayList<>();
        for (FunctionalGroup group : groups) {
            List<SmartsPattern> patterns = new ArrayList<>();
            for (String smarts : group.smarts().split(" ", -1)) {
                if (!smarts.isEmpty()) {
                    patterns.add(compiled(group.id(), smarts));
                }
            }
            sought.add(new Sought(group, patterns));
        }
        return new GroupSearch(sought);
    }

    private static SmartsPattern compiled(String group, String smarts) {
        try {
            return SmartsPattern.create(smarts).setPrepare(false);
        } catch (IllegalArgumentException bad) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "groups.csv, %s: the pattern %s cannot be read. Correct it: %s",
                            group,
                            smarts,
                            bad.getMessage()),
                    bad);
        }
    }

    /** The groups of a molecule, in order. */
    List<Molecule.Found> of(IAtomContainer molecule) {
        SmartsPattern.prepare(molecule);
        Map<String, Map<Integer, Set<Integer>>> found = new LinkedHashMap<>();
        Set<Integer> taken = new TreeSet<>();
        for (Sought each : sought) {
            Map<Integer, Set<Integer>> places = places(each, molecule);
            found.put(each.group().id(), places);
            if (each.takesAtoms()) {
                places.values().forEach(taken::addAll);
            }
        }
        found.put(FunctionalGroups.UNRECOGNISED, left(molecule, taken));
        return found.entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .map(entry -> told(entry.getKey(), entry.getValue(), molecule))
                .toList();
    }

    /** By first atom all atoms of the matches that begin there. */
    private static Map<Integer, Set<Integer>> places(Sought sought, IAtomContainer molecule) {
        Map<Integer, Set<Integer>> places = new TreeMap<>();
        for (SmartsPattern pattern : sought.patterns()) {
            for (int[] match : pattern.matchAll(molecule).uniqueAtoms()) {
                Set<Integer> atoms = places.computeIfAbsent(match[0], first -> new TreeSet<>());
                for (int atom : match) {
                    atoms.add(atom);
                }
            }
        }
        return places;
    }

    private static Map<Integer, Set<Integer>> left(IAtomContainer molecule, Set<Integer> taken) {
        Map<Integer, Set<Integer>> left = new TreeMap<>();
        for (IAtom atom : molecule.atoms()) {
            int number = atom.getAtomicNumber();
            if (number != CARBON && number != 1 && !taken.contains(atom.getIndex())) {
                left.put(atom.getIndex(), Set.of(atom.getIndex()));
            }
        }
        return left;
    }

    /** A carbon by itself has no letter in a drawing: it shows by its bonds. */
    private static boolean isBare(Set<Integer> place, IAtomContainer molecule) {
        return place.size() == 1 && molecule.getAtom(place.iterator().next()).getAtomicNumber() == CARBON;
    }

    private static Molecule.Found told(String group, Map<Integer, Set<Integer>> places, IAtomContainer molecule) {
        List<List<Integer>> atoms = new ArrayList<>();
        List<List<Integer>> bonds = new ArrayList<>();
        for (Set<Integer> place : places.values()) {
            atoms.add(List.copyOf(place));
            List<Integer> between = new ArrayList<>();
            for (IBond bond : molecule.bonds()) {
                boolean begins = place.contains(bond.getBegin().getIndex());
                boolean ends = place.contains(bond.getEnd().getIndex());
                if (begins && ends || isBare(place, molecule) && (begins || ends)) {
                    between.add(bond.getIndex());
                }
            }
            bonds.add(between);
        }
        return new Molecule.Found(group, atoms, bonds);
    }
}
