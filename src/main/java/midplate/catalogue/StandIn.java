package midplate.catalogue;

import midplate.chemistry.Solvent;

/**
 * A solvent that may be calculated as if it were another, better known one.
 *
 * @param solvent the one in the jar
 * @param standsInFor the one that was measured
 * @param source the publication
 * @param basis how this got here
 * @param note why, and what differs
 */
public record StandIn(Solvent solvent, Solvent standsInFor, Source source, Basis basis, String note) {}
