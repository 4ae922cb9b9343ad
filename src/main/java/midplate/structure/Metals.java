package midplate.structure;

import java.util.Set;
import org.openscience.cdk.config.Elements;
import org.openscience.cdk.interfaces.IAtom;
import org.openscience.cdk.interfaces.IAtomContainer;

/**
 * Tells complexes and organometallic compounds, however they are written, from salts. A metal that makes salts (groups 1 and 2)
 * belongs to the compound only where it has a bond or some carbon carries a negative charge; any other metal always does, as
 * written in ferrocene {@code [Fe+2].c1ccc[cH-]1.c1ccc[cH-]1}: its parts are ligands then, not counter-ions.
 */
final class Metals {
    private static final int CARBON = 6;

    private static final Set<Elements> NOT_METALS = Set.of(
            Elements.Hydrogen,
            Elements.Helium,
            Elements.Boron,
            Elements.Carbon,
            Elements.Nitrogen,
            Elements.Oxygen,
            Elements.Fluorine,
            Elements.Neon,
            Elements.Silicon,
            Elements.Phosphorus,
            Elements.Sulfur,
            Elements.Chlorine,
            Elements.Argon,
            Elements.Germanium,
            Elements.Arsenic,
            Elements.Selenium,
            Elements.Bromine,
            Elements.Krypton,
            Elements.Antimony,
            Elements.Tellurium,
            Elements.Iodine,
            Elements.Xenon,
            Elements.Astatine,
            Elements.Radon);

    private Metals() {}

    /** Whether a metal belongs to the compound. */
    static boolean belongTo(IAtomContainer whole) {
        boolean carbanion = false;
        for (IAtom atom : whole.atoms()) {
            carbanion |= atom.getAtomicNumber() == CARBON && atom.getFormalCharge() < 0;
        }
        for (IAtom atom : whole.atoms()) {
            if (isMetal(atom) && (carbanion || !makesSalts(atom) || atom.getBondCount() > 0)) {
                return true;
            }
        }
        return false;
    }

    /** Whether an atom is a metal. */
    static boolean isMetal(IAtom atom) {
        return atom.getAtomicNumber() > 0 && !NOT_METALS.contains(Elements.ofNumber(atom.getAtomicNumber()));
    }

    private static boolean makesSalts(IAtom atom) {
        int group = Elements.ofNumber(atom.getAtomicNumber()).group();
        return group == 1 || group == 2;
    }
}
