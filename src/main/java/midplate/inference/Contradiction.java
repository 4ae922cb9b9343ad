package midplate.inference;

/**
 * A structure that was left out because its series do not agree: surely one of them was another substance.
 *
 * @param smiles the structure
 * @param meanSpread mean over its repeated eluents of largest less smallest Rf [1]
 */
public record Contradiction(String smiles, double meanSpread) {}
