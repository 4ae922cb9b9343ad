/**
 * The published tables of {@code solvent-data}: every value with its source, and the solvents by all their names.
 * Reads them once at start and refuses a bad file with file, row, column and cell.
 */
@org.jspecify.annotations.NullMarked
package midplate.catalogue;
