package midplate.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import midplate.chemistry.GroupCounts;
import midplate.words.Message;
import org.openscience.cdk.exception.CDKException;
import org.openscience.cdk.graph.GraphUtil;
import org.openscience.cdk.graph.invariant.Canon;
import org.openscience.cdk.interfaces.IAtom;
import org.openscience.cdk.interfaces.IAtomContainer;
import org.openscience.cdk.interfaces.IBond;
import org.openscience.cdk.smarts.SmartsPattern;
import org.openscience.cdk.smiles.SmiFlavor;
import org.openscience.cdk.smiles.SmilesGenerator;
import org.openscience.cdk.tools.manipulator.AtomContainerManipulator;

/** Makes a molecule of a SMILES that was read: its canonical form, and the groups by the order of atoms there. */
final class MoleculeReading {
    private static final int WRITTEN =
            SmiFlavor.StereoTetrahedral | SmiFlavor.StereoCisTrans | SmiFlavor.UseAromaticSymbols;

    private MoleculeReading() {}

    static Molecule of(ReadSmiles read, GroupSearch search) {
        SmartsPattern.prepare(read.molecule());
        String smiles = canonical(read.molecule());
        IAtomContainer molecule = ReadSmiles.parsed(smiles).orElse(read.molecule());
        List<Molecule.Found> found = search.of(molecule);
        Map<String, Integer> counts = new TreeMap<>();
        found.forEach(each -> counts.put(each.group(), each.count()));
        List<Message> notes = new ArrayList<>(read.notes());
        notes.addAll(StructureNotes.of(molecule, counts));
        return new Molecule(
                smiles,
                Formula.hill(molecule),
                AtomContainerManipulator.getMass(molecule, AtomContainerManipulator.MolWeight),
                heavy(molecule),
                new GroupCounts(counts, GroupCounts.Detail.WHOLE),
                found,
                notes);
    }

    /** The SMILES of a molecule, its atoms and bonds put in canonical order before. */
    private static String canonical(IAtomContainer molecule) {
        long[] labels = Canon.label(molecule, GraphUtil.toAdjList(molecule));
        IAtom[] atoms = new IAtom[labels.length];
        for (int i = 0; i < labels.length; i++) {
            atoms[(int) labels[i] - 1] = molecule.getAtom(i);
        }
        molecule.setAtoms(atoms);
        List<IBond> bonds = new ArrayList<>();
        molecule.bonds().forEach(bonds::add);
        bonds.sort(Comparator.comparingInt(MoleculeReading::lower).thenComparingInt(MoleculeReading::upper));
        molecule.setBonds(bonds.toArray(IBond[]::new));
        try {
            return new SmilesGenerator(WRITTEN).create(molecule);
        } catch (CDKException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static int lower(IBond bond) {
        return Math.min(bond.getBegin().getIndex(), bond.getEnd().getIndex());
    }

    private static int upper(IBond bond) {
        return Math.max(bond.getBegin().getIndex(), bond.getEnd().getIndex());
    }

    private static int heavy(IAtomContainer molecule) {
        int heavy = 0;
        for (IAtom atom : molecule.atoms()) {
            heavy += atom.getAtomicNumber() == 1 ? 0 : 1;
        }
        return heavy;
    }
}
