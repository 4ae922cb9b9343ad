package midplate.catalogue;

import java.util.Optional;

/**
 * A publication.
 *
 * @param key what rows call it by: {@code Sadek2004}
 * @param citation authors, title, where and when, as a reader needs it to find it
 * @param year year of publication, or words saying that it is not known
 * @param address a public address where it can be looked at, if there is one
 */
public record Source(String key, String citation, String year, Optional<String> address) {}
