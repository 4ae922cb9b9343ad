/** The studies of a laboratory: what one holds, the folder they are kept in, what was advised and what came of it. */
@NullMarked
package midplate.notebook;

import org.jspecify.annotations.NullMarked;
