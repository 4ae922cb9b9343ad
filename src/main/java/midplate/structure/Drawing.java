package midplate.structure;

import java.util.regex.Pattern;
import org.openscience.cdk.depict.DepictionGenerator;
import org.openscience.cdk.exception.CDKException;
import org.openscience.cdk.interfaces.IAtomContainer;

/** Draws a structure. */
final class Drawing {
    private static final double WIDE = 320;
    private static final double HIGH = 220;
    private static final double ZOOM = 2.2;
    private static final Pattern BEFORE = Pattern.compile("\\A.*?(?=<svg)", Pattern.DOTALL);
    private static final Pattern SIZE = Pattern.compile(" width='[0-9.]+px' height='[0-9.]+px'");
    private static final Pattern TITLE = Pattern.compile("\\s*<desc>.*?</desc>", Pattern.DOTALL);
    private static final Pattern PAPER = Pattern.compile("\\s*<rect [^>]*/>");
    private static final Pattern INK = Pattern.compile("'#444444'");
    private static final Pattern MOLECULE = Pattern.compile("id='mol1' ");
    private static final Pattern PART = Pattern.compile("id='mol1(atm|bnd)([0-9]+)' class='(atom|bond)'");

    static {
        if (System.getProperty("java.awt.headless") == null) {
            System.setProperty("java.awt.headless", "true");
        }
    }

    private Drawing() {}

    static String svg(String smiles) {
        IAtomContainer molecule = ReadSmiles.parsed(smiles).orElse(null);
        if (molecule == null) {
            return "";
        }
        try {
            return plain(new DepictionGenerator()
                    .withSize(WIDE, HIGH)
                    .withZoom(ZOOM)
                    .depict(molecule)
                    .toSvgStr("px"));
        } catch (CDKException | RuntimeException failed) {
            return "";
        } catch (LinkageError | InternalError noFonts) {
            return ""; // letters are drawn from the fonts of the computer, and some computers have none
        }
    }

    /** Without what a page may not carry: a prolog, paper, ink and ids that another drawing has too. */
    private static String plain(String svg) {
        String drawn = BEFORE.matcher(svg).replaceFirst("");
        drawn = SIZE.matcher(drawn).replaceFirst("");
        drawn = TITLE.matcher(drawn).replaceFirst("");
        drawn = PAPER.matcher(drawn).replaceFirst("");
        drawn = INK.matcher(drawn).replaceAll("'currentColor'");
        drawn = MOLECULE.matcher(drawn).replaceFirst("");
        return PART.matcher(drawn)
                .replaceAll(part -> "class='" + part.group(3) + " "
                        + part.group(3).charAt(0) + (Integer.parseInt(part.group(2)) - 1) + "'")
                .trim();
    }
}
