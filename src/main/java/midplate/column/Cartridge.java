package midplate.column;

import java.util.List;
import java.util.stream.Collectors;
import midplate.words.Allowed;
import midplate.words.Message;
import midplate.words.Refusal;

/**
 * A packed cartridge.
 *
 * @param silicaGrams mass of dry silica [g], one of {@link #SIZES}; anything else is refused
 */
public record Cartridge(double silicaGrams) implements Bed {
    /** The sizes in trade of which something can be said [g]. */
    public static final List<Double> SIZES = List.of(4.0, 8.0, 12.0, 25.0, 40.0, 80.0, 120.0);

    /** Those on which compounds were measured [g]. */
    private static final List<Double> MEASURED = List.of(4.0, 8.0, 25.0, 40.0);

    /** Refuses a size that does not exist. */
    public Cartridge {
        if (!SIZES.contains(silicaGrams)) {
            throw new Refusal(
                    "column.bed.cartridgeGrams",
                    Message.of("column.no-such-cartridge"),
                    Double.toString(silicaGrams),
                    Allowed.words(SIZES.stream().map(Allowed::number).collect(Collectors.toList())),
                    Message.of("column.todo-cartridge"));
        }
    }

    @Override
    public BedBasis basis() {
        if (MEASURED.contains(silicaGrams)) {
            return BedBasis.MEASURED;
        }
        return silicaGrams < MEASURED.get(MEASURED.size() - 1) ? BedBasis.BETWEEN : BedBasis.EXTRAPOLATED;
    }
}
