/**
 * From readings to knowledge: what a solvent pair does (fitted), what a spot is like (a distribution over its traits).
 * The model of the plate stands here and nowhere else.
 */
@NullMarked
package midplate.inference;

import org.jspecify.annotations.NullMarked;
