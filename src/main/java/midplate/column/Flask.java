package midplate.column;

/**
 * A flask into which neighbouring tubes were poured together, weighed empty and with what was left in it.
 *
 * @param fromTube the first tube in it, counted from 1
 * @param toTube the last
 * @param tareGrams mass of the empty flask [g]
 * @param grossGrams mass with the residue [g]
 */
public record Flask(int fromTube, int toTube, double tareGrams, double grossGrams) {
    private static final double MG_PER_G = 1000;

    /** What is in it [mg], without the last binary digits. */
    double netMg() {
        return Math.round((grossGrams - tareGrams) * MG_PER_G * MG_PER_G) / MG_PER_G;
    }
}
