package midplate.chemistry;

/**
 * What Snyder's law needs to know about one solvent of an eluent.
 *
 * @param strength ε⁰ [1], the eluent strength of the pure solvent on the sorbent in question, 0 to 2; pentane is 0
 * @param molarVolume V [cm³/mol], molar mass over density, above 0; turns volume fractions into mole fractions
 * @param molecularArea n_b [8.5 Å², benzene is 6.0], the area one molecule takes on the surface, above 0 to 20;
 *     for alcohols an effective value far above the molecule. The law uses that of the stronger solvent only.
 * @see "Snyder1968"
 */
public record EluentComponent(double strength, double molarVolume, double molecularArea) {
    private static final Range STRENGTH = Range.closed(0, 2);
    private static final Range VOLUME = Range.open(0, Double.POSITIVE_INFINITY);
    private static final Range AREA = Range.leftOpen(0, 20);

    /**
     * Checks the ranges.
     *
     * @throws midplate.words.Refusal outside of them
     */
    public EluentComponent {
        STRENGTH.require("strength", strength);
        VOLUME.require("molarVolume", molarVolume);
        AREA.require("molecularArea", molecularArea);
    }

    /**
     * A component from what tables print.
     *
     * @param strength ε⁰ [1]
     * @param molarMass M [g/mol], above 0
     * @param density d [g/mL], above 0
     * @param molecularArea n_b [8.5 Å²]
     */
    public static EluentComponent of(double strength, double molarMass, double density, double molecularArea) {
        VOLUME.require("molarMass", molarMass);
        VOLUME.require("density", density);
        return new EluentComponent(strength, molarMass / density, molecularArea);
    }
}
