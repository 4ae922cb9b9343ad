/**
 * What is measured on a plate: its geometry, its spots, the readings worked out from them with their error.
 * Impossible geometry is refused here, and the usual mistakes of measuring are told.
 */
@org.jspecify.annotations.NullMarked
package midplate.plate;
