/**
 * What plates answer every day: whether two samples are the same, whether one is pure, how far a reaction has come, and how to see
 * what has no colour.
 */
@NullMarked
package midplate.identity;

import org.jspecify.annotations.NullMarked;
