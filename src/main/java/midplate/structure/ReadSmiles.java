package midplate.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import midplate.words.Message;
import org.openscience.cdk.exception.CDKException;
import org.openscience.cdk.graph.ConnectivityChecker;
import org.openscience.cdk.interfaces.IAtom;
import org.openscience.cdk.interfaces.IAtomContainer;
import org.openscience.cdk.silent.SilentChemObjectBuilder;
import org.openscience.cdk.smiles.SmilesParser;
import org.openscience.cdk.tools.manipulator.AtomContainerManipulator;

/**
 * A SMILES as it was read: the part of it that is judged, and what is to be told of the rest.
 *
 * @param molecule the largest part that holds carbon, its hydrogens counted on their atoms, without isotopes; the whole where a
 *     metal belongs to the compound ({@link Metals})
 * @param notes what is to be told
 */
record ReadSmiles(IAtomContainer molecule, List<Message> notes) {
    private static final String LOG_LEVEL = "cdk.logging.level";
    private static final int CARBON = 6;
    private static final int BONDS_OF_CARBON = 4;
    private static final int NITROGEN = 7;
    private static final int OXYGEN = 8;
    private static final int MOST_TOLD = 6;
    /** Acids of which salts are made, as chemists write them, by their formula in Hill order. */
    private static final Map<String, String> USUAL = Map.of(
            "FH", "HF", "ClH", "HCl", "BrH", "HBr", "HI", "HI", "H2O4S", "H2SO4", "HNO3", "HNO3", "H3O4P", "H3PO4",
            "C2HF3O2", "CF3COOH");

    static {
        // what it cannot make sense of is told by refusals and notes, not in the log
        if (System.getProperty(LOG_LEVEL) == null) {
            System.setProperty(LOG_LEVEL, "fatal");
        }
    }

    /**
     * Reads a SMILES.
     *
     * @param field the place in the input, for a refusal
     * @param smiles as it came
     * @throws midplate.words.Refusal when it cannot be read
     */
    static ReadSmiles of(String field, String smiles) {
        String plain = smiles.strip();
        SmilesFaults faults = new SmilesFaults(field, plain);
        faults.checkText();
        IAtomContainer whole = parsed(plain).orElseThrow(faults::unreadable);
        faults.checkAtoms(whole);
        List<Message> notes = new ArrayList<>();
        if (forgetIsotopes(whole)) {
            notes.add(Message.of("structure.isotopes"));
        }
        if (completed(whole)) {
            notes.add(Message.of("structure.radical"));
        }
        AtomContainerManipulator.suppressHydrogens(whole);
        if (Metals.belongTo(whole)) {
            if (carbons(whole) == 0) {
                throw faults.noCarbon();
            }
            faults.checkSize(whole.getAtomCount());
            return new ReadSmiles(whole, notes);
        }
        List<IAtomContainer> parts = new ArrayList<>();
        ConnectivityChecker.partitionIntoMolecules(whole).atomContainers().forEach(parts::add);
        IAtomContainer taken = parts.stream()
                .filter(part -> carbons(part) > 0)
                .max(Comparator.comparingInt(IAtomContainer::getAtomCount))
                .orElseThrow(faults::noCarbon);
        faults.checkSize(taken.getAtomCount());
        int before = charge(taken);
        boolean discharged = discharge(taken);
        if (parts.size() > 1) {
            notes.add(left(parts, taken, discharged));
        } else if (discharged && charge(taken) != before) {
            notes.add(Message.of("structure.discharged"));
        }
        return new ReadSmiles(taken, notes);
    }

    /** The molecule of a SMILES; empty where it has none. */
    static Optional<IAtomContainer> parsed(String smiles) {
        try {
            return Optional.of(new SmilesParser(SilentChemObjectBuilder.getInstance()).parseSmiles(smiles));
        } catch (CDKException | RuntimeException bad) {
            return Optional.empty();
        }
    }

    /** Why a SMILES has no molecule, and where. */
    static SmilesText.Stop whyNot(String smiles) {
        try {
            new SmilesParser(SilentChemObjectBuilder.getInstance()).parseSmiles(smiles);
        } catch (CDKException | RuntimeException bad) {
            String told = String.valueOf(bad.getMessage());
            if (told.contains("kekul")) {
                return new SmilesText.Stop(firstAromatic(smiles), "structure.no-double-bonds-at");
            }
            int caret = told.lastIndexOf('^');
            int line = told.lastIndexOf('\n');
            if (caret > line && line >= 0) {
                boolean atom = told.contains("bracket atom");
                return new SmilesText.Stop(caret - line - 1, atom ? "structure.bad-atom" : "structure.not-read");
            }
        }
        return new SmilesText.Stop(0, "structure.not-read");
    }

    private static int firstAromatic(String smiles) {
        for (int at = 0; at < smiles.length(); at++) {
            if ("bcnops".indexOf(smiles.charAt(at)) >= 0) {
                return at;
            }
        }
        return 0;
    }

    private static boolean forgetIsotopes(IAtomContainer molecule) {
        boolean any = false;
        for (IAtom atom : molecule.atoms()) {
            any |= atom.getMassNumber() != null;
            atom.setMassNumber(null);
        }
        return any;
    }

    /** Gives a neutral carbon that lacks bonds the hydrogens for them. */
    private static boolean completed(IAtomContainer molecule) {
        boolean any = false;
        for (IAtom atom : molecule.atoms()) {
            if (atom.getAtomicNumber() == CARBON && atom.getFormalCharge() == 0) {
                int bonds = (int) molecule.getBondOrderSum(atom) + atom.getImplicitHydrogenCount();
                if (bonds < BONDS_OF_CARBON) {
                    atom.setImplicitHydrogenCount(atom.getImplicitHydrogenCount() + BONDS_OF_CARBON - bonds);
                    any = true;
                }
            }
        }
        return any;
    }

    private static int carbons(IAtomContainer part) {
        int carbons = 0;
        for (IAtom atom : part.atoms()) {
            carbons += atom.getAtomicNumber() == CARBON ? 1 : 0;
        }
        return carbons;
    }

    private static int charge(IAtomContainer part) {
        int charge = 0;
        for (IAtom atom : part.atoms()) {
            charge += atom.getFormalCharge();
        }
        return charge;
    }

    /** What to tell of the parts left out. */
    private static Message left(List<IAtomContainer> parts, IAtomContainer taken, boolean discharged) {
        TreeSet<String> others = new TreeSet<>();
        for (IAtomContainer part : parts) {
            if (part != taken) {
                String formula = Formula.hill(part);
                others.add(USUAL.getOrDefault(formula, formula));
            }
        }
        String names = others.size() <= MOST_TOLD
                ? String.join(", ", others)
                : String.join(", ", others.stream().limit(MOST_TOLD).toList()) + ", …";
        boolean acid = others.stream().anyMatch(USUAL::containsValue);
        if (charge(taken) != 0) {
            return Message.of("structure.counter-ion", "left", names);
        }
        return Message.of(discharged || acid ? "structure.salt" : "structure.mixture", "left", names);
    }

    /** Adds the proton that a base lacks, takes off the one that an acid gave; charges that belong together stay. */
    private static boolean discharge(IAtomContainer molecule) {
        boolean any = false;
        for (IAtom atom : molecule.atoms()) {
            int charge = atom.getFormalCharge();
            boolean besideOpposite = false;
            for (IAtom other : molecule.getConnectedAtomsList(atom)) {
                besideOpposite |= other.getFormalCharge() * charge < 0;
            }
            int hydrogens = atom.getImplicitHydrogenCount();
            if (besideOpposite || charge == 0) {
                continue;
            }
            if (charge == -1 && atom.getAtomicNumber() >= NITROGEN) {
                atom.setFormalCharge(0);
                atom.setImplicitHydrogenCount(hydrogens + 1);
                any = true;
            } else if (charge == 1
                    && hydrogens > 0
                    && (atom.getAtomicNumber() == NITROGEN || atom.getAtomicNumber() == OXYGEN)) {
                atom.setFormalCharge(0);
                atom.setImplicitHydrogenCount(hydrogens - 1);
                any = true;
            }
        }
        return any;
    }
}
