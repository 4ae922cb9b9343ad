/**
 * How good the advice is: cross-validation over compounds on open measurements, next to published models.
 * It asks and marks; what is asked knows neither the truth nor the marks.
 */
@NullMarked
package midplate.benchmark;

import org.jspecify.annotations.NullMarked;
