package midplate.notebook;

import java.util.List;
import java.util.Optional;

/**
 * A tube of a column, with what a plate showed of it.
 *
 * @param id its name in the run
 * @param marks what was seen, none for nothing; absent where nobody looked
 */
public record ColumnTube(String id, Optional<List<TubeMark>> marks) {
    /** Keeps its own copy. */
    public ColumnTube {
        marks = marks.map(List::copyOf);
    }
}
