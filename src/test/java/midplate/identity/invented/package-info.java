/** Reactions made up for checks. It knows nothing of what it checks. */
@NullMarked
package midplate.identity.invented;

import org.jspecify.annotations.NullMarked;
