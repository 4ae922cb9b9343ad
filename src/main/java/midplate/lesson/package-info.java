/**
 * Teaching why polarity moves spots: plates, exercises and worksheets, computed with the model that advises. What is drawn by chance is
 * drawn from a code, the same on every machine.
 */
@NullMarked
package midplate.lesson;

import org.jspecify.annotations.NullMarked;
