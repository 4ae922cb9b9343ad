package midplate.lesson;

/**
 * A plate of a class.
 *
 * @param owner the pair that ran it; empty where the class shares it, and several pairs may have read it
 * @param name its number or name
 */
public record ClassPlate(String owner, String name) {
    /** A plate of one pair: its first is number 1. */
    public static ClassPlate ofPair(String pair, int number) {
        return new ClassPlate(pair, Integer.toString(number));
    }

    /** A plate that whoever names it has read. */
    public static ClassPlate ofClass(String name) {
        return new ClassPlate("", name);
    }
}
