package midplate.identity;

import java.util.Optional;
import java.util.OptionalDouble;
import midplate.chemistry.GroupCounts;

/**
 * What the sample might be, without having run beside it.
 *
 * @param name what it is called
 * @param rf its Rf as printed or as read on another plate [1], if there is one
 * @param hrf its hRf [1], 0 to 100, as tabulated for a system with reference spots, if there is one
 * @param structure what it is made of, if that is known
 * @param sameAs the name of the reference that has the very same structural formula, if one has
 */
public record Candidate(
        String name, OptionalDouble rf, OptionalDouble hrf, Optional<GroupCounts> structure, Optional<String> sameAs) {}
