package midplate.inference;

import java.util.List;
import java.util.Locale;

/** A solvent of the open measurements, in the order of their columns. */
enum OpenSolvent {
    HEXANE,
    ETHYL_ACETATE,
    DIETHYL_ETHER,
    DICHLOROMETHANE,
    METHANOL;

    /** Its share [1] among the fractions of an eluent, which stand in the order of the columns. */
    double of(List<Double> fractions) {
        return fractions.get(List.of(values()).indexOf(this));
    }

    /** Its column in the file: {@code ethyl_acetate}. */
    String column() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Its id in the catalogue: {@code ethyl-acetate}. */
    String id() {
        return column().replace('_', '-');
    }
}
