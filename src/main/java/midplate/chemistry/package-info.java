/**
 * The published laws of planar adsorption chromatography as plain arithmetic, and the few things they speak about.
 * Pure: no files, no JSON, no logging; a number outside a law's range is refused.
 */
@org.jspecify.annotations.NullMarked
package midplate.chemistry;
