package midplate.wire;

/**
 * What a spot is said to be.
 *
 * @param spot its name
 * @param about its place in the request
 * @param described the compound
 */
record SpotStructure(String spot, String about, Compounds.Described described) {}
