package midplate.advice;

/**
 * Two spots that are to be kept apart.
 *
 * @param one name of the first
 * @param other name of the second, another spot
 */
public record ApartNames(String one, String other) {
    /** Whether another pair names the same two, in either order. */
    public boolean isSameAs(ApartNames pair) {
        return equals(pair) || (one.equals(pair.other) && other.equals(pair.one));
    }
}
