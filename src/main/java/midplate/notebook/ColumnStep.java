package midplate.notebook;

import java.util.OptionalDouble;

/**
 * An eluent poured on a column.
 *
 * @param eluent the ratio or share as it was typed: {@code 9 : 1}; may be empty
 * @param percentStrong the share of the stronger solvent that it means [% v/v], where it means one
 * @param volumeMl how much of it [ml]
 */
public record ColumnStep(String eluent, OptionalDouble percentStrong, Entered volumeMl) {}
