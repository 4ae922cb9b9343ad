/**
 * The front step: reads the command line and hands it to the door that was asked for.
 * Computes nothing itself.
 */
@org.jspecify.annotations.NullMarked
package midplate;
