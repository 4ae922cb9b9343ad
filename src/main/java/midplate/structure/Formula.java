package midplate.structure;

import java.util.Map;
import java.util.TreeMap;
import org.openscience.cdk.interfaces.IAtom;
import org.openscience.cdk.interfaces.IAtomContainer;

/** Molecular formula in Hill order: C, H, then the other elements by letter; the charge last. */
final class Formula {
    private Formula() {}

    static String hill(IAtomContainer molecule) {
        Map<String, Integer> counts = new TreeMap<>();
        int hydrogens = 0;
        int charge = 0;
        for (IAtom atom : molecule.atoms()) {
            counts.merge(atom.getSymbol(), 1, Integer::sum);
            Integer implicit = atom.getImplicitHydrogenCount();
            hydrogens += implicit == null ? 0 : implicit;
            Integer charged = atom.getFormalCharge();
            charge += charged == null ? 0 : charged;
        }
        if (hydrogens > 0) {
            counts.merge("H", hydrogens, Integer::sum);
        }
        StringBuilder formula = new StringBuilder();
        if (counts.containsKey("C")) {
            append(formula, "C", counts);
            append(formula, "H", counts);
        }
        counts.keySet().stream().toList().forEach(element -> append(formula, element, counts));
        return formula.append(charged(charge)).toString();
    }

    private static void append(StringBuilder formula, String element, Map<String, Integer> counts) {
        Integer count = counts.remove(element);
        if (count != null) {
            formula.append(element).append(count == 1 ? "" : count);
        }
    }

    private static String charged(int charge) {
        if (charge == 0) {
            return "";
        }
        String sign = charge > 0 ? "+" : "-";
        return Math.abs(charge) == 1 ? sign : Math.abs(charge) + sign;
    }
}
