package midplate.lesson;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import midplate.words.Message;

/**
 * A table on paper.
 *
 * @param columns what stands above them
 * @param rows each as long as the columns; an empty cell is to be filled in
 */
public record WorksheetTable(List<Message> columns, List<List<Optional<Message>>> rows) {
    /** Keeps its own copies. */
    public WorksheetTable {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** A row that begins with these cells, the rest to be filled in. */
    static List<Optional<Message>> toFill(int columns, Message... cells) {
        return Stream.concat(Stream.of(cells).map(Optional::of), Stream.generate(Optional::<Message>empty))
                .limit(columns)
                .toList();
    }

    /** A row with every cell filled. */
    static List<Optional<Message>> full(Message... cells) {
        return Stream.of(cells).map(Optional::of).toList();
    }
}
