package midplate.wire;

import java.util.Optional;
import midplate.words.Message;

/**
 * Something to know beside an answer.
 *
 * @param message what it is
 * @param about the place in the request that it is about, such as {@code runs[0]}
 */
public record Note(Message message, Optional<String> about) {}
