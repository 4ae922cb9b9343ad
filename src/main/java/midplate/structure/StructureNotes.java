package midplate.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import midplate.catalogue.FunctionalGroups;
import midplate.words.Message;
import org.openscience.cdk.interfaces.IAtom;
import org.openscience.cdk.interfaces.IAtomContainer;

/** What is to be told of a molecule that was read. */
final class StructureNotes {
    /** Elements of the compounds measured, and P and B, whose groups are taken by analogy. */
    private static final Set<Integer> USUAL = Set.of(1, 5, 6, 7, 8, 9, 14, 15, 16, 17, 35, 53);

    private static final Set<String> BASES = Set.of("primary-amine", "secondary-amine", "tertiary-amine", "amidine");
    private static final Set<String> ACIDS = Set.of("carboxylic-acid", "sulfonic-acid", "phosphonic-acid");

    private StructureNotes() {}

    static List<Message> of(IAtomContainer molecule, Map<String, Integer> counts) {
        List<Message> notes = new ArrayList<>();
        TreeSet<String> foreign = new TreeSet<>();
        int charge = 0;
        int foreignAtoms = 0;
        boolean opposite = false;
        boolean metal = false;
        for (IAtom atom : molecule.atoms()) {
            if (!USUAL.contains(atom.getAtomicNumber())) {
                foreign.add(atom.getSymbol());
                foreignAtoms++;
            }
            metal |= Metals.isMetal(atom);
            if (atom.getFormalCharge() != 0 && !besideOpposite(molecule, atom)) {
                charge += atom.getFormalCharge();
                opposite = true;
            }
        }
        if (!foreign.isEmpty()) {
            notes.add(Message.of("structure.foreign", "elements", String.join(", ", foreign)));
        }
        int unknown = counts.getOrDefault(FunctionalGroups.UNRECOGNISED, 0) - foreignAtoms;
        if (unknown > 0) {
            notes.add(Message.of("structure.unrecognised", "count", unknown));
        }
        if (metal) {
            return notes; // the charges of ligands and metal are no ions of their own
        }
        boolean both =
                BASES.stream().anyMatch(counts::containsKey) && ACIDS.stream().anyMatch(counts::containsKey);
        if ((opposite && charge == 0) || both) {
            notes.add(Message.of("structure.zwitterion"));
        } else if (opposite) {
            notes.add(Message.of("structure.charged"));
        }
        return notes;
    }

    private static boolean besideOpposite(IAtomContainer molecule, IAtom atom) {
        return molecule.getConnectedAtomsList(atom).stream()
                .anyMatch(other -> other.getFormalCharge() * atom.getFormalCharge() < 0);
    }
}
