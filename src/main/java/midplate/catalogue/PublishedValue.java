package midplate.catalogue;

/**
 * One published value with where it stands. An empty text means that nothing is printed there.
 *
 * @param property what is told: {@code density}
 * @param value as printed
 * @param unit as printed
 * @param condition sorbent and series, temperature, scale: values under different conditions do not compete
 * @param uncertainty as printed
 * @param source the publication
 * @param locator page, table or figure in it
 * @param basis how the value got here
 * @param confidence of a value from memory: {@code H}, {@code M} or {@code L}; empty otherwise
 * @param derivedFrom what an own value was worked out from
 * @param use where several values compete: {@code preferred: reason} or {@code kept: reason}
 * @param note what a reader should know
 */
public record PublishedValue(
        String property,
        String value,
        String unit,
        String condition,
        String uncertainty,
        Source source,
        String locator,
        Basis basis,
        String confidence,
        String derivedFrom,
        String use,
        String note) {
    static final String PREFERRED = "preferred: ";
    static final String KEPT = "kept: ";

    /**
     * The value as a number, in its unit.
     *
     * @throws IllegalStateException when it is a word: not every property is a number, and a flash point may be
     *     {@code none}
     */
    public double number() {
        try {
            return Double.parseDouble(value);
        } catch (NumberFormatException e) {
            throw new IllegalStateException(property + " is \"" + value + "\", no number: read value() instead", e);
        }
    }

    boolean preferred() {
        return use.startsWith(PREFERRED);
    }
}
