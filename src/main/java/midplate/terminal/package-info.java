/**
 * The door for a person at a terminal: options in, sentences out, as a chemist would say them.
 * It translates and never computes.
 */
@org.jspecify.annotations.NullMarked
package midplate.terminal;
