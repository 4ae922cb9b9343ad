package midplate.identity;

import java.util.Optional;
import java.util.OptionalDouble;
import midplate.chemistry.GroupCounts;

/**
 * A compound as far as it is known.
 *
 * @param name what it is called
 * @param rf where it was read in the eluent at hand [1], if it was
 * @param structure what it is made of, if that is known
 */
public record Compound(String name, OptionalDouble rf, Optional<GroupCounts> structure) {}
