/**
 * Structural formulas: reads SMILES, finds the functional groups and draws. The only room that knows the Chemistry Development
 * Kit; none of its classes is loaded before the first SMILES comes.
 */
@org.jspecify.annotations.NullMarked
package midplate.structure;
