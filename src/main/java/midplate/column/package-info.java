/**
 * From the plate to the column: when each band leaves, which eluent and bed to take, and which fractions to keep.
 */
@NullMarked
package midplate.column;

import org.jspecify.annotations.NullMarked;
