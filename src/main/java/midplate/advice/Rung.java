package midplate.advice;

/**
 * A step on the ladder of a pair.
 *
 * @param percentStrong share of the strong solvent [% v/v]
 * @param rf the middle of the sample there: the mean over its spots of the Rf foretold [1]
 */
public record Rung(double percentStrong, double rf) {}
