package midplate.structure;

import java.util.Optional;
import java.util.regex.Pattern;
import midplate.words.Message;
import midplate.words.Refusal;
import org.openscience.cdk.config.Elements;
import org.openscience.cdk.interfaces.IAtom;
import org.openscience.cdk.interfaces.IAtomContainer;
import org.openscience.cdk.interfaces.IBond;
import org.openscience.cdk.interfaces.IPseudoAtom;

/** What is wrong with a SMILES, told with the place where it shows. */
final class SmilesFaults {
    private static final int MOST_SHOWN = 60;
    private static final int MOST_CAME = 200;

    private static final Pattern CAS = Pattern.compile("(?i)(?:CAS[-\\s]*(?:No\\.?)?[:\\s]*)?\\d{2,7}-\\d\\d-\\d");
    /** Words, with what stands between and before them in names of compounds. */
    private static final Pattern WORDS = Pattern.compile("[\\p{L}\\d\\s,'()\\-]+");

    private static final Pattern WORD = Pattern.compile("\\p{L}{4}");
    private static final Pattern OF_SMILES = Pattern.compile("Cl|Br|[BCNOPSFIbcnops]|\\P{L}");
    /** So many letters without a meaning in SMILES make a word. */
    private static final int FOREIGN = 2;

    private final String field;
    private final String smiles;

    SmilesFaults(String field, String smiles) {
        this.field = field;
        this.smiles = smiles;
    }

    /** Refuses what can be seen without chemistry. */
    void checkText() {
        if (smiles.isEmpty()) {
            throw refusal(Message.of("structure.empty"));
        }
        if (smiles.length() > Structures.MOST_CHARACTERS) {
            throw new Refusal(
                    field,
                    Message.of("structure.too-long", "length", smiles.length(), "most", Structures.MOST_CHARACTERS),
                    came(),
                    Message.of("structure.allowed-length", "most", Structures.MOST_CHARACTERS),
                    Message.of("structure.give-part"));
        }
        if (CAS.matcher(smiles).matches()) {
            throw notLookedUp("structure.is-cas");
        }
        new SmilesText(smiles).slip().ifPresent(slip -> {
            throw isName() ? notLookedUp("structure.is-name") : at(slip);
        });
    }

    /** Whether a text that is no SMILES is a word: letters that have no meaning in SMILES, more than a slip makes. */
    private boolean isName() {
        String first = smiles.split("\\s", 2)[0];
        boolean line =
                !first.equals(smiles) && ReadSmiles.parsed(first).isPresent(); // a SMILES with something behind it
        return !line
                && WORDS.matcher(smiles).matches()
                && WORD.matcher(smiles).find()
                && OF_SMILES.matcher(smiles).replaceAll("").length() >= FOREIGN;
    }

    private Refusal notLookedUp(String key) {
        return new Refusal(
                field, Message.of(key), came(), Message.of("structure.allowed"), Message.of("structure.paste-line"));
    }

    /** Refuses what stands for no one molecule. */
    void checkAtoms(IAtomContainer molecule) {
        for (IAtom atom : molecule.atoms()) {
            if (atom instanceof IPseudoAtom pseudo) {
                String written = "[" + pseudo.getLabel() + "]";
                throw at(new SmilesText.Slip("structure.bad-atom", Math.max(0, smiles.indexOf(written)), written));
            }
            double bonds = atom.getImplicitHydrogenCount();
            for (IBond bond : molecule.getConnectedBondsList(atom)) {
                bonds += bond.getOrder() == null || bond.getOrder() == IBond.Order.UNSET
                        ? 1
                        : bond.getOrder().numeric();
            }
            if (bonds > most(atom.getAtomicNumber())) {
                throw refusal(Message.of("structure.too-many-bonds", "symbol", atom.getSymbol(), "bonds", (int) bonds));
            }
        }
    }

    /** More bonds than these no atom of the element has in a compound that reaches a plate. */
    private static double most(int element) {
        return switch (Elements.ofNumber(element)) {
            case Hydrogen, Fluorine -> 1;
            case Oxygen -> 3;
            case Carbon, Boron -> 4;
            case Nitrogen -> 5;
            default -> Double.POSITIVE_INFINITY;
        };
    }

    /** Refuses a molecule that is too large. */
    void checkSize(int atoms) {
        if (atoms > Structures.MOST_ATOMS) {
            throw new Refusal(
                    field,
                    Message.of("structure.too-large", "atoms", atoms, "most", Structures.MOST_ATOMS),
                    came(),
                    Message.of("structure.allowed-atoms", "most", Structures.MOST_ATOMS),
                    Message.of("structure.give-part"));
        }
    }

    /** That no part of it holds carbon. */
    Refusal noCarbon() {
        return refusal(Message.of("structure.no-carbon"));
    }

    /** That it cannot be read, with the place where reading stopped. */
    Refusal unreadable() {
        Optional<String> mended = new SmilesText(smiles)
                .withHydrogen(text -> ReadSmiles.parsed(text).isPresent());
        if (mended.isPresent()) {
            return new Refusal(
                    field,
                    Message.of("structure.no-double-bonds", "at", firstDifference(mended.get()) + 1),
                    came(),
                    Message.of("structure.allowed"),
                    Message.of("structure.did-you-mean", "smiles", shown(mended.get())));
        }
        return isName()
                ? notLookedUp("structure.is-name")
                : at(new SmilesText(smiles).stopped(text -> ReadSmiles.whyNot(text)));
    }

    private int firstDifference(String other) {
        int at = 0;
        while (at < smiles.length() && smiles.charAt(at) == other.charAt(at)) {
            at++;
        }
        return at;
    }

    private Refusal at(SmilesText.Slip slip) {
        return refusal(Message.of(
                slip.key(),
                "at",
                slip.at() + 1,
                "sign",
                shown(slip.sign()),
                "before",
                Message.of(slip.at() == 0 ? "structure.at-start" : "structure.after", "text", before(slip.at()))));
    }

    private String before(int at) {
        String before = smiles.substring(0, Math.min(at, smiles.length()));
        return before.length() <= MOST_SHOWN ? before : "…" + before.substring(before.length() - MOST_SHOWN);
    }

    private Refusal refusal(Message reason) {
        return new Refusal(field, reason, came(), Message.of("structure.allowed"), Message.of("structure.mend"));
    }

    private String came() {
        return smiles.length() <= MOST_CAME ? smiles : smiles.substring(0, MOST_CAME) + "…";
    }

    private static String shown(String text) {
        return text.length() <= MOST_SHOWN ? text : text.substring(0, MOST_SHOWN) + "…";
    }
}
