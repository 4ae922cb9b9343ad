/**
 * From knowledge to a decision: which ratio to pour next, how likely it works, what each spot will do, and why.
 * It computes and says; reading input and writing answers is for the rooms above.
 */
@NullMarked
package midplate.advice;

import org.jspecify.annotations.NullMarked;
